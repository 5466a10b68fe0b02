package washbook.office.menu;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSheetCellRangeContainer;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.NumberFormat;
import com.sun.star.util.XMergeable;
import com.sun.star.util.XNumberFormatsSupplier;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import washbook.log.sheet.Grid;
import washbook.office.dialog.StoppedException;

/** What is known of the cells of a used area besides their values; bits run row by row. */
record CellMarks(
    BitSet formulas, BitSet errors, BitSet dates, BitSet logicals, List<Grid.Area> merged) {

  static CellMarks of(OpenSheet sheet, XCellRange used, int columns) {
    CellMarks marks =
        new CellMarks(new BitSet(), new BitSet(), new BitSet(), new BitSet(), new ArrayList<>());
    XCellRangesQuery query = UnoRuntime.queryInterface(XCellRangesQuery.class, used);
    mark(marks.formulas, query.queryContentCells((short) CellFlags.FORMULA), columns);
    mark(marks.errors, query.queryFormulaCells(FormulaResult.ERROR), columns);
    try {
      marks.readFormats(sheet, used, columns);
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.formats", e);
    }
    return marks;
  }

  /** Cells of one format come together, so that each format is asked for once. */
  private void readFormats(OpenSheet sheet, XCellRange used, int columns)
      throws com.sun.star.uno.Exception {
    var formats = sheet.document(XNumberFormatsSupplier.class).getNumberFormats();
    var groups =
        UnoRuntime.queryInterface(XUniqueCellFormatRangesSupplier.class, used)
            .getUniqueCellFormatRanges();
    for (int i = 0; i < groups.getCount(); i++) {
      Object group = groups.getByIndex(i);
      XSheetCellRanges ranges = UnoRuntime.queryInterface(XSheetCellRangeContainer.class, group);
      XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, group);
      Object key = properties.getPropertyValue("NumberFormat");
      if (key instanceof Integer number) {
        int type = (Short) formats.getByKey(number).getPropertyValue("Type");
        if ((type & NumberFormat.DATETIME) != 0) {
          mark(dates, ranges, columns);
        } else if ((type & NumberFormat.LOGICAL) != 0) {
          mark(logicals, ranges, columns);
        }
      }
      readMerged(sheet, ranges);
    }
  }

  /** The first cell of a merged area has a format of its own kind. */
  private void readMerged(OpenSheet sheet, XSheetCellRanges ranges)
      throws com.sun.star.uno.Exception {
    for (CellRangeAddress range : ranges.getRangeAddresses()) {
      if (!isMerged(sheet, range.StartColumn, range.StartRow)) {
        continue;
      }
      for (int row = range.StartRow; row <= range.EndRow; row++) {
        for (int column = range.StartColumn; column <= range.EndColumn; column++) {
          merged.add(area(sheet, column, row));
        }
      }
    }
  }

  private static boolean isMerged(OpenSheet sheet, int column, int row)
      throws com.sun.star.uno.Exception {
    XCellRange cell = sheet.sheet().getCellRangeByPosition(column, row, column, row);
    return UnoRuntime.queryInterface(XMergeable.class, cell).getIsMerged();
  }

  private static Grid.Area area(OpenSheet sheet, int column, int row)
      throws com.sun.star.uno.Exception {
    XCellRange cell = sheet.sheet().getCellRangeByPosition(column, row, column, row);
    var cursor =
        sheet.sheet().createCursorByRange(UnoRuntime.queryInterface(XSheetCellRange.class, cell));
    cursor.collapseToMergedArea();
    CellRangeAddress whole =
        UnoRuntime.queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress();
    return new Grid.Area(whole.StartRow, whole.StartColumn, whole.EndRow, whole.EndColumn);
  }

  private static void mark(BitSet bits, XSheetCellRanges ranges, int columns) {
    for (CellRangeAddress range : ranges.getRangeAddresses()) {
      for (int row = range.StartRow; row <= range.EndRow; row++) {
        bits.set(row * columns + range.StartColumn, row * columns + range.EndColumn + 1);
      }
    }
  }
}
