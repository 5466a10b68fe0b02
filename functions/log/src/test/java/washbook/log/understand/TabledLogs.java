package washbook.log.understand;

import java.util.function.Function;
import java.util.stream.Collectors;
import washbook.log.MapAnswer;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;

/**
 * Logs as they stand in a table of tests: lines of a map (divided by +), rows of a log (by a
 * semicolon, their cells by ^).
 */
final class TabledLogs {
  private TabledLogs() {}

  /**
   * @param map null for none
   */
  static Understanding understood(String map, String log) {
    return SheetUnderstanding.understand(
        TestGrid.of("Cellar", log.replace('^', '|').replace(" ;", "\n")),
        LogMap.parse(map == null ? "" : map.replace(" + ", "\n")));
  }

  /** What is asked and the answers that are offered. */
  static String asks(Understanding sheet) {
    return asks(sheet, answer -> String.join("+", answer.lines()));
  }

  /** The same with what would follow from each answer. */
  static String asksWithRemarks(Understanding sheet) {
    return asks(
        sheet,
        answer -> {
          String remark = answer.remark().in(Language.EN);
          return String.join("+", answer.lines()) + (remark.isEmpty() ? "" : " (" + remark + ")");
        });
  }

  private static String asks(Understanding sheet, Function<MapAnswer, String> told) {
    return sheet.doubts().stream()
        .map(
            doubt ->
                " asks "
                    + doubt.cell()
                    + " "
                    + doubt.answers().stream().map(told).collect(Collectors.joining(" or ")))
        .collect(Collectors.joining());
  }
}
