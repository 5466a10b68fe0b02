package washbook.log.answer;

import java.util.EnumSet;
import java.util.List;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.Doubt;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.fill.ComputedTable;
import washbook.log.fill.Filling;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/**
 * What would follow from an answer: the sheet is understood and filled with it, nothing written.
 *
 * @param map the map with the answer
 * @param firstAbv alcohol at the first reading that is filled, % vol; NaN where none is
 * @param lastAbv alcohol at the last one
 * @param filled rows filled in the table
 * @param refused rows refused in it
 * @param questions still open on the sheet
 */
public record AnswerTrial(
    LogMap map, double firstAbv, double lastAbv, int filled, int refused, int questions) {

  /**
   * Tries an answer.
   *
   * @param lines the statements of a map that answer
   * @throws IllegalArgumentException when they are none, with what is wrong
   */
  public static AnswerTrial of(Grid grid, LogMap map, Doubt doubt, List<String> lines) {
    LogMap with = map.with(grid.name(), doubt, lines);
    Understanding sheet = SheetUnderstanding.understand(grid, with);
    double first = Double.NaN;
    double last = Double.NaN;
    int filled = 0;
    int refused = 0;
    for (LogTable table : sheet.tables()) {
      if (!table.settled() || table.headerRow() != doubt.headerRow()) {
        continue;
      }
      ComputedTable figures =
          new ComputedTable(sheet.seen(grid), table, EnumSet.of(ComputedColumn.ABV));
      for (Batch batch : table.batches()) {
        for (int row : batch.rows()) {
          double abv = figures.number(ComputedColumn.ABV, row);
          if (!Double.isNaN(abv)) {
            first = Double.isNaN(first) ? abv : first;
            last = abv;
          }
        }
      }
      for (Filling.BatchCount count : figures.count().batches()) {
        filled += count.filled();
        refused += count.refused();
      }
    }
    return new AnswerTrial(with, first, last, filled, refused, sheet.doubts().size());
  }

  /** It in words. */
  public Message told() {
    Message figures =
        filled == 0
            ? Message.of("trial.nothing")
            : Message.of(
                filled == 1 ? "trial.alcohol.one" : "trial.alcohol.many",
                new Figure(Numbers.round(firstAbv, 1)),
                new Figure(Numbers.round(lastAbv, 1)),
                filled);
    Message told = refused == 0 ? figures : Message.of("trial.refused", figures, refused);
    return switch (questions) {
      case 0 -> told;
      case 1 -> Message.of("trial.left.one", told);
      default -> Message.of("trial.left.many", told, questions);
    };
  }
}
