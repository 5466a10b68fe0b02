package washbook.runner.season;

import java.util.ArrayList;
import java.util.List;
import washbook.log.overview.Warning;
import washbook.runner.language.Caution;
import washbook.runner.language.Wording;
import washbook.runner.report.OverviewHtml;
import washbook.runner.report.OverviewLine;

/** What stands in the workbooks besides the numbers, the same in all kinds. */
final class SeasonTable {
  /** More lines in one chart tell nothing, and spreadsheet programs take at most 255. */
  static final int MOST_CURVES = 60;

  private SeasonTable() {}

  static String sheet(Wording words) {
    return words.say("season.sheet");
  }

  static String curves(Wording words) {
    return words.say("season.sheet.curves");
  }

  static String warnings(Wording words) {
    return words.say("season.sheet.warnings");
  }

  /** State of a batch that is in no log any more but has notes of the person's. */
  static String gone(Wording words) {
    return words.say("season.gone");
  }

  static String note(Wording words) {
    return words.say("season.note", sheet(words), curves(words), warnings(words));
  }

  static List<String> warningHeads(Wording words) {
    return OverviewHtml.heads(words, "batch", "file", "warning", "cell", "reason", "limit");
  }

  /** The heads of the numbers drawn. */
  static List<String> curveHeads(Wording words) {
    return OverviewHtml.heads(words, "day", "gravitySg", "alcoholVol", "batch");
  }

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
                season.words().say(warning.kind().message()),
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
                    "",
                    one.file(),
                    season.words().say("season.notRead"),
                    one.refusal().cells(),
                    one.refusal().reason(),
                    ""))
        .toList();
  }

  static List<String> safety(Wording words) {
    List<String> lines = new ArrayList<>(List.of(Caution.title(words)));
    lines.addAll(Caution.lines(words));
    return lines;
  }

  static String chartTitle(String wash, Wording words) {
    return words.say("season.gravity", OverviewHtml.wash(wash, words));
  }

  static String alcoholTitle(String wash, Wording words) {
    return words.say("season.alcohol", OverviewHtml.wash(wash, words));
  }
}
