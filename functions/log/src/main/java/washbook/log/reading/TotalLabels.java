package washbook.log.reading;

import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.sheet.Grid;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/** Words for a total where other rows of a table have their date. */
final class TotalLabels {
  private final Grid grid;
  private final int column;

  TotalLabels(Grid grid, LogTable table) {
    this.grid = grid;
    this.column =
        table.columns().stream()
            .findFirst()
            .filter(TotalLabels::isTime)
            .map(LogColumn::column)
            .orElse(-1);
  }

  private static boolean isTime(LogColumn use) {
    return switch (use.role()) {
      case DATE, TIME, DAY, HOURS -> true;
      default -> false;
    };
  }

  boolean isTotal(int row) {
    if (column < 0 || grid.kind(row, column) != Grid.Kind.TEXT) {
      return false;
    }
    String label = of(row);
    return !label.isEmpty()
        && Character.isLetter(label.charAt(0))
        && Vocabulary.meanings(label).contains(Concept.TOTAL);
  }

  /** What stands there. */
  String of(int row) {
    return grid.text(row, column).strip();
  }
}
