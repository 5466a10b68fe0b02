package washbook.log.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.Vocabulary;

/** Rows below the one that names the columns which go on with the header. */
final class RestOfHeader {
  /** There are no more of them. */
  private static final int MOST = 2;

  private final Grid grid;
  private final int[] readingColumns;

  RestOfHeader(Grid grid, int[] readingColumns) {
    this.grid = grid;
    this.readingColumns = readingColumns;
  }

  /**
   * Words over the first reading that no date stands beside, or that speak of the instrument; or
   * when the vessels were filled.
   *
   * @param isTime whether a date, a day or an hour stands in a row
   */
  List<Integer> rows(int firstRow, int lastRow, IntPredicate isTime) {
    List<Integer> found = new ArrayList<>();
    for (int row = firstRow; row < lastRow && row < firstRow + MOST; row++) {
      boolean words = false;
      boolean instrument = readingColumns.length > 0;
      boolean dates = readingColumns.length > 0;
      for (int column : readingColumns) {
        Kind kind = grid.kind(row, column);
        CellText text = kind == Kind.TEXT ? CellText.read(grid.text(row, column)) : null;
        if (kind != Kind.BLANK && (text == null || text.form == CellText.Form.VALUE)) {
          return found;
        }
        words |= text != null && isRemark(grid.text(row, column));
        instrument &= text != null && isOfInstrument(grid.text(row, column));
        dates &= text != null && isDate(grid.text(row, column));
      }
      if (!words || isTime.test(row) && !instrument && !dates) {
        return found;
      }
      found.add(row);
    }
    return found;
  }

  /** Words, or something in brackets as {@code (60/60)}. */
  private static boolean isRemark(String text) {
    return text.chars().anyMatch(Character::isLetter) || text.strip().matches("[(\\[].*[)\\]]");
  }

  private static boolean isDate(String text) {
    return !Double.isNaN(DateText.serial(text, DateText.Order.DAY_FIRST));
  }

  private static boolean isOfInstrument(String text) {
    Set<Concept> meanings = Vocabulary.meanings(text);
    return meanings.contains(Concept.HYDROMETER)
        || meanings.contains(Concept.CALIBRATION)
        || meanings.contains(Concept.REFRACTOMETER);
  }
}
