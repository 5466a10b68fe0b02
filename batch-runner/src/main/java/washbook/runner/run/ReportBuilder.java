package washbook.runner.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import washbook.log.Doubt;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.fill.Filling;
import washbook.log.fill.Filling.BatchCount;
import washbook.log.fill.Filling.TableCount;
import washbook.log.language.Language;
import washbook.log.overview.BatchOverview;
import washbook.log.sheet.CellRefusal;
import washbook.runner.report.BatchSeries;
import washbook.runner.report.FileReport;
import washbook.runner.report.FileReport.BatchReport;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.FileReport.TableReport;

/** Gathers a file's report sheet by sheet. */
final class ReportBuilder {
  private final String path;
  private final Language language;
  private final String map;
  private final List<TableReport> tables = new ArrayList<>();
  private final List<Refusal> refusals = new ArrayList<>();
  private final List<BatchSeries> curves = new ArrayList<>();
  private final List<BatchOverview> overview = new ArrayList<>();

  /**
   * @param language in which the reasons are told
   * @param map what the map that went with the log is called; null for none
   */
  ReportBuilder(String path, Language language, String map) {
    this.path = path;
    this.language = language;
    this.map = map;
  }

  void add(Understanding understanding, Filling filling) {
    String sheet = understanding.sheet();
    Map<LogTable, TableCount> counts = new HashMap<>();
    filling.tables().forEach(count -> counts.put(count.table(), count));
    filling
        .accounts()
        .forEach(
            (table, account) ->
                tables.add(
                    TableReport.of(
                        sheet,
                        understanding.range(table),
                        batches(counts.get(table)),
                        understanding.runs().stream().anyMatch(run -> run.table() == table),
                        account)));
    for (Doubt doubt : understanding.doubts()) {
      refusals.add(
          new Refusal(inSheet(sheet, doubt.cell()), Refusal.NOT_SETTLED, doubt.question(language)));
    }
    for (CellRefusal refusal : filling.refusals()) {
      refusals.add(
          new Refusal(
              inSheet(sheet, refusal.cell()), refusal.code().name(), refusal.reason(language)));
    }
  }

  /** Those of a table; none where it waits for an answer. */
  private static List<BatchReport> batches(TableCount table) {
    List<BatchReport> batches = new ArrayList<>();
    if (table != null) {
      for (BatchCount batch : table.batches()) {
        Double gravity =
            batch.originalGravity().isPresent() ? batch.originalGravity().getAsDouble() : null;
        batches.add(
            new BatchReport(batch.name(), gravity, batch.rows(), batch.filled(), batch.refused()));
      }
    }
    return batches;
  }

  void addCurves(List<BatchSeries> more) {
    curves.addAll(more);
  }

  void addOverview(List<BatchOverview> more) {
    overview.addAll(more);
  }

  FileReport build() {
    FileReport report =
        new FileReport(path, Status.FILLED, tables, refusals, curves, overview, map);
    Status status =
        report.rows() == 0 && refusals.isEmpty()
            ? Status.NOTHING_RECOGNISED
            : refusals.isEmpty()
                ? Status.FILLED
                : report.filled() > 0 ? Status.PARTLY_FILLED : Status.REFUSED;
    return new FileReport(path, status, tables, refusals, curves, overview, map);
  }

  /** Sheet and cell as spreadsheets write them, the sheet quoted where it must be. */
  static String inSheet(String sheet, String cell) {
    boolean plain = !sheet.isEmpty() && !Character.isDigit(sheet.charAt(0));
    for (int i = 0; i < sheet.length(); i++) {
      plain &= Character.isLetterOrDigit(sheet.charAt(i)) || sheet.charAt(i) == '_';
    }
    return (plain ? sheet : "'" + sheet.replace("'", "''") + "'") + "!" + cell;
  }
}
