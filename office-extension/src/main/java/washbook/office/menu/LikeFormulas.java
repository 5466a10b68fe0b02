package washbook.office.menu;

import com.sun.star.container.XEnumerationAccess;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCellFormatRangesSupplier;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.sheet.XSheetAnnotation;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.util.TreeSet;
import java.util.function.IntFunction;

/**
 * Writes formulas below each other that are the same but for their own row: the first one, which
 * the office then fills down as one group. Written one by one, each makes the office regroup its
 * neighbours, which takes minutes for a long column.
 *
 * <p>Filling down takes formats along and comments away, so that pieces end where the format
 * changes or a comment stands.
 */
final class LikeFormulas {
  private final XSpreadsheet sheet;

  LikeFormulas(XSpreadsheet sheet) {
    this.sheet = sheet;
  }

  /** Takes the formula of each row, of which only a few are asked for. */
  void write(int column, int firstRow, int lastRow, IntFunction<String> formula)
      throws com.sun.star.uno.Exception {
    TreeSet<Integer> starts = starts(column, firstRow, lastRow);
    for (int start : starts) {
      Integer next = starts.higher(start);
      int end = next == null ? lastRow : next - 1;
      sheet.getCellByPosition(column, start).setFormula(formula.apply(start));
      if (end > start) {
        XCellRange piece = sheet.getCellRangeByPosition(column, start, column, end);
        UnoRuntime.queryInterface(XCellSeries.class, piece).fillAuto(FillDirection.TO_BOTTOM, 1);
        writeSkipped(piece, start, formula);
      }
    }
  }

  /** Rows that a filter hides are not filled by the office. */
  private static void writeSkipped(XCellRange piece, int start, IntFunction<String> formula)
      throws com.sun.star.uno.Exception {
    if (isVisible(piece)) {
      return; // reading long formulas back takes 8 kB each
    }
    String[][] written =
        UnoRuntime.queryInterface(XCellRangeFormula.class, piece).getFormulaArray();
    String first = RelativeFormula.of(written[0][0], start);
    for (int i = 1; i < written.length; i++) {
      if (!RelativeFormula.of(written[i][0], start + i).equals(first)) {
        piece.getCellByPosition(0, i).setFormula(formula.apply(start + i));
      }
    }
  }

  /** Whether no row of it is hidden. */
  private static boolean isVisible(XCellRange piece) {
    CellRangeAddress all =
        UnoRuntime.queryInterface(XCellRangeAddressable.class, piece).getRangeAddress();
    CellRangeAddress[] shown =
        UnoRuntime.queryInterface(XCellRangesQuery.class, piece)
            .queryVisibleCells()
            .getRangeAddresses();
    return shown.length == 1
        && shown[0].StartRow == all.StartRow
        && shown[0].EndRow == all.EndRow
        && shown[0].StartColumn == all.StartColumn;
  }

  private TreeSet<Integer> starts(int column, int firstRow, int lastRow)
      throws com.sun.star.uno.Exception {
    TreeSet<Integer> starts = new TreeSet<>();
    starts.add(firstRow);
    XCellRange all = sheet.getCellRangeByPosition(column, firstRow, column, lastRow);
    var formats =
        UnoRuntime.queryInterface(
                XEnumerationAccess.class,
                UnoRuntime.queryInterface(XCellFormatRangesSupplier.class, all)
                    .getCellFormatRanges())
            .createEnumeration();
    while (formats.hasMoreElements()) {
      CellRangeAddress alike =
          UnoRuntime.queryInterface(XCellRangeAddressable.class, formats.nextElement())
              .getRangeAddress();
      starts.add(alike.StartRow);
    }
    var comments =
        UnoRuntime.queryInterface(XSheetAnnotationsSupplier.class, sheet).getAnnotations();
    for (int i = 0; i < comments.getCount(); i++) {
      CellAddress at =
          UnoRuntime.queryInterface(XSheetAnnotation.class, comments.getByIndex(i)).getPosition();
      if (at.Column == column && at.Row >= firstRow && at.Row <= lastRow) {
        starts.add(at.Row);
        if (at.Row < lastRow) {
          starts.add(at.Row + 1);
        }
      }
    }
    return starts;
  }
}
