package washbook.runner.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import washbook.functions.SafetyNote;
import washbook.log.overview.Warning;
import washbook.runner.report.OverviewLine;

/** What stands in the workbooks besides the numbers, the same in all kinds. */
final class SeasonTable {
  static final String SHEET = "Season";
  static final String CURVES = "Season curves";
  static final String WARNINGS = "Season warnings";

  /** State of a batch that is in no log any more but has notes of the person's. */
  static final String GONE = "in no log any more";

  /** More lines in one chart tell nothing, and spreadsheet programs take at most 255. */
  static final int MOST_CURVES = 60;

  static final String NOTE =
      "Columns that you add to the right are kept with their batch when this table is brought up to"
          + " date; everything else on the sheets Season, Season curves and Season warnings is"
          + " written anew.";

  static final List<String> WARNING_HEADS =
      List.of("Batch", "File", "Warning", "Cell", "Reason", "Limit");

  private SeasonTable() {}

  /** The lines of the sheet of warnings below its heads; what was refused comes after a blank. */
  static List<List<String>> warnings(Season season) {
    List<List<String>> lines = new ArrayList<>();
    for (SeasonRow row : season.rows()) {
      OverviewLine line = row.line();
      for (Warning warning : line.batch().warnings()) {
        lines.add(
            List.of(
                line.batch().batch(),
                line.file(),
                warning.kind().word(),
                warning.cell(),
                warning.reason(),
                warning.source()));
      }
    }
    return lines;
  }

  /** What was not read, as lines of the same columns. */
  static List<List<String>> left(Season season) {
    return season.left().stream()
        .map(
            one ->
                List.of(
                    "", one.file(), "not read", one.refusal().cells(), one.refusal().reason(), ""))
        .toList();
  }

  static List<String> safety() {
    List<String> lines = new ArrayList<>(List.of(SafetyNote.TITLE));
    lines.addAll(SafetyNote.LINES);
    return lines;
  }

  static String chartTitle(String wash) {
    return "Gravity of all batches, wash " + wash.toLowerCase(Locale.ROOT) + " (SG)";
  }

  static String alcoholTitle(String wash) {
    return "Alcohol of all batches, wash " + wash.toLowerCase(Locale.ROOT) + " (% vol)";
  }
}
