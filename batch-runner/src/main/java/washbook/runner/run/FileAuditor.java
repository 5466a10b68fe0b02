package washbook.runner.run;

import com.google.gson.JsonElement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import washbook.log.Doubt;
import washbook.log.Understanding;
import washbook.log.audit.Audit;
import washbook.log.audit.LogAuditor;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.runner.FileFormats;
import washbook.runner.ask.MapBeside;
import washbook.runner.report.AuditReport;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.Status;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.Json;

/** Compares one file's own figures with ours. */
public final class FileAuditor implements FolderRun.Work<AuditReport> {
  private final LogMap map;
  private final boolean keepCurves;
  private final Language language;

  /**
   * @param keepCurves whether the report has curves
   * @param language in which causes are told
   */
  public FileAuditor(LogMap map, boolean keepCurves, Language language) {
    this.map = map;
    this.language = language;
    this.keepCurves = keepCurves;
  }

  @Override
  public Journal.Note note(AuditReport report) {
    return report.status() == Status.FAILED
        ? null
        : new Journal.Note(Json.GSON.toJsonTree(report), null);
  }

  @Override
  public AuditReport restore(JsonElement report) {
    return Json.GSON.fromJson(report, AuditReport.class);
  }

  @Override
  public FolderRun.Made<AuditReport> make(WorkItem item) {
    return new FolderRun.Made<>(work(item), null);
  }

  @Override
  public AuditReport failed(WorkItem item, Exception failure) {
    return failed(item, Failure.reason(failure, language));
  }

  private AuditReport work(WorkItem item) {
    if (item.refused() != null) {
      Refusal refusal = item.refused().refusals().get(0);
      return failed(item, refusal.reason());
    }
    try {
      return audit(item);
    } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError failure) {
      return failed(item, Failure.reason(failure, language));
    }
  }

  private static AuditReport failed(WorkItem item, String reason) {
    return AuditReport.failed(item.shown(), Refusal.UNREADABLE, reason);
  }

  private AuditReport audit(WorkItem item) throws IOException {
    List<ColumnReport> columns = new ArrayList<>();
    List<Refusal> questions = new ArrayList<>();
    List<AuditReport.Curves> curves = new ArrayList<>();
    boolean recognised = false;
    LogMap used = MapBeside.of(item.file(), map).map();
    for (Grid grid : FileFormats.of(item.file()).reader().read(item.file())) {
      Understanding understanding = SheetUnderstanding.understand(grid, used);
      recognised |= !understanding.tables().isEmpty() || !understanding.runs().isEmpty();
      for (Doubt doubt : understanding.doubts()) {
        String cell = ReportBuilder.inSheet(grid.name(), doubt.cell());
        questions.add(new Refusal(cell, Refusal.NOT_SETTLED, doubt.question(language)));
      }
      Audit audit = LogAuditor.audit(grid, understanding);
      for (Audit.Column column : audit.columns()) {
        columns.add(AuditColumns.report(audit.sheet(), column, language));
        if (keepCurves) {
          curves.addAll(AuditColumns.curves(column));
        }
      }
    }
    Status status =
        !columns.isEmpty()
            ? Status.COMPARED
            : recognised || !questions.isEmpty()
                ? Status.NOTHING_TO_COMPARE
                : Status.NOTHING_RECOGNISED;
    return new AuditReport(item.shown(), status, columns, questions, curves);
  }
}
