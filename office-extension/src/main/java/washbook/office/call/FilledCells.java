package washbook.office.call;

import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Any;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import washbook.functions.catalogue.Parameter;

/**
 * The cells of all ranges of one call. A range may be a whole column: only the rows down to the
 * last filled one of any range are fetched, and headings above whole columns are left out.
 */
final class FilledCells {
  /** Nobody marks so many rows by hand: such a range is a whole column. */
  private static final int WHOLE_COLUMN = 65_536;

  private static final int FILLED =
      CellFlags.VALUE | CellFlags.DATETIME | CellFlags.STRING | CellFlags.FORMULA;

  private record Column(XCellRange range, CellRangeAddress address, int filledRows) {
    static Column of(XCellRange range) {
      CellRangeAddress address =
          UnoRuntime.queryInterface(XCellRangeAddressable.class, range).getRangeAddress();
      int last = address.StartRow - 1;
      for (CellRangeAddress filled :
          UnoRuntime.queryInterface(XCellRangesQuery.class, range)
              .queryContentCells((short) FILLED)
              .getRangeAddresses()) {
        last = Math.max(last, filled.EndRow);
      }
      return new Column(range, address, last - address.StartRow + 1);
    }

    int rows() {
      return address.EndRow - address.StartRow + 1;
    }

    boolean isWhole() {
      return rows() >= WHOLE_COLUMN;
    }

    Object[][] cells(int most) throws com.sun.star.uno.Exception {
      int lastRow = Math.min(rows(), Math.max(1, most)) - 1;
      int lastColumn = address.EndColumn - address.StartColumn;
      XCellRange cut = range.getCellRangeByPosition(0, 0, lastColumn, lastRow);
      return UnoRuntime.queryInterface(XCellRangeData.class, cut).getDataArray();
    }
  }

  private FilledCells() {}

  /** Takes the ranges by their place among the arguments; gives the values of each in its place. */
  static Map<Integer, List<Object>> of(List<Parameter> parameters, Map<Integer, XCellRange> ranges)
      throws CellErrorException {
    Map<Integer, Column> columns = new TreeMap<>();
    ranges.forEach((place, range) -> columns.put(place, Column.of(range)));
    int most = columns.values().stream().mapToInt(Column::filledRows).max().orElse(0);
    boolean whole = columns.values().stream().allMatch(Column::isWhole);
    Map<Integer, Object[][]> values = new TreeMap<>();
    int heading = whole ? Integer.MAX_VALUE : 0;
    for (Map.Entry<Integer, Column> entry : columns.entrySet()) {
      Object[][] read = read(parameters.get(entry.getKey()), entry.getValue(), most);
      values.put(entry.getKey(), read);
      heading = Math.min(heading, firstNumber(read));
    }
    Map<Integer, List<Object>> results = new TreeMap<>();
    for (Map.Entry<Integer, Object[][]> entry : values.entrySet()) {
      results.put(entry.getKey(), below(heading, entry.getValue()));
    }
    return results;
  }

  private static Object[][] read(Parameter parameter, Column column, int most)
      throws CellErrorException {
    try {
      Object[][] cells = column.cells(most);
      for (Object[] row : cells) {
        for (int i = 0; i < row.length; i++) {
          if (row[i] == null || row[i] instanceof Any) {
            throw new CellErrorException(firstError(column.range()));
          }
          row[i] = Given.inside(parameter, row[i]);
        }
      }
      return cells;
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException("the range cannot be read", e);
    }
  }

  private static int firstError(XCellRange range) throws com.sun.star.uno.Exception {
    var wrong =
        UnoRuntime.queryInterface(XCellRangesQuery.class, range)
            .queryFormulaCells(FormulaResult.ERROR)
            .getCells()
            .createEnumeration();
    return UnoRuntime.queryInterface(XCell.class, wrong.nextElement()).getError();
  }

  private static int firstNumber(Object[]... rows) {
    for (int r = 0; r < rows.length; r++) {
      for (Object cell : rows[r]) {
        if (cell instanceof Double) {
          return r;
        }
      }
    }
    return rows.length;
  }

  private static List<Object> below(int heading, Object[]... rows) {
    List<Object> values = new ArrayList<>();
    for (int r = heading; r < rows.length; r++) {
      values.addAll(Arrays.asList(rows[r]));
    }
    return values;
  }
}
