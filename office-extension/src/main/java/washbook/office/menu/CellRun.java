package washbook.office.menu;

import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSheetAnnotation;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import washbook.office.dialog.StoppedException;

/**
 * Cells below each other that are written by one call. A run ends where the next cell is not the
 * one below, but for blank ones that stay blank, or is a formula after values or the other way
 * round. Cells with a comment are written alone, because the office throws comments away where it
 * writes a whole range.
 */
final class CellRun {
  private record Place(int row, int column) {}

  private final OpenSheet sheet;
  private final Set<Place> commented = new HashSet<>();
  private final List<Object> cells = new ArrayList<>();
  private int column;
  private int firstRow;

  /** Blank cells behind the run that stay blank: written as such if the run goes on. */
  private int blanks;

  private boolean formulas;
  private boolean wasEmpty;

  CellRun(OpenSheet sheet) {
    this.sheet = sheet;
    var comments = sheet.sheet(XSheetAnnotationsSupplier.class).getAnnotations();
    try {
      for (int i = 0; i < comments.getCount(); i++) {
        CellAddress at =
            UnoRuntime.queryInterface(XSheetAnnotation.class, comments.getByIndex(i)).getPosition();
        commented.add(new Place(at.Row, at.Column));
      }
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.comments", e);
    }
  }

  /** A formula as Calc takes it, with its sign. */
  void formula(int row, int column, String formula, boolean isEmpty)
      throws com.sun.star.uno.Exception {
    add(row, column, formula, true, isEmpty);
  }

  /**
   * A Double, or a String that is taken for text whatever it looks like; "" empties the cell. Takes
   * whether the cell is empty now.
   */
  void value(int row, int column, Object value, boolean isEmpty) throws com.sun.star.uno.Exception {
    add(row, column, value, false, isEmpty);
  }

  /** A blank cell that stays blank; it need not end a run. */
  void blank(int row, int column) {
    if (!cells.isEmpty()
        && column == this.column
        && row == firstRow + cells.size() + blanks
        && !commented.contains(new Place(row, column))) {
      blanks++;
    }
  }

  /** Writes what has been collected. */
  void end() throws com.sun.star.uno.Exception {
    blanks = 0;
    if (cells.isEmpty()) {
      return;
    }
    int lastRow = firstRow + cells.size() - 1;
    XCellRange range = sheet.sheet().getCellRangeByPosition(column, firstRow, column, lastRow);
    if (formulas) {
      writeFormulas();
    } else {
      if (wasEmpty) {
        hold(range);
      }
      Object[][] values = cells.stream().map(c -> new Object[] {c}).toArray(Object[][]::new);
      UnoRuntime.queryInterface(XCellRangeData.class, range).setDataArray(values);
    }
    cells.clear();
  }

  /** In runs of formulas that are the same but for their row. */
  private void writeFormulas() throws com.sun.star.uno.Exception {
    LikeFormulas like = new LikeFormulas(sheet.sheet());
    int column = this.column;
    int start = 0;
    for (int i = 1; i <= cells.size(); i++) {
      if (i < cells.size() && relative(i).equals(relative(start))) {
        continue;
      }
      int last = firstRow + i - 1;
      if (!cells.get(start).equals("")) {
        like.write(column, firstRow + start, last, row -> (String) cells.get(row - firstRow));
      } else if (!wasEmpty) {
        XCellRange blank =
            sheet.sheet().getCellRangeByPosition(column, firstRow + start, column, last);
        UnoRuntime.queryInterface(XCellRangeFormula.class, blank)
            .setFormulaArray(blanks(i - start));
      }
      start = i;
    }
  }

  private static String[][] blanks(int rows) {
    String[][] texts = new String[rows][1];
    for (String[] row : texts) {
      row[0] = "";
    }
    return texts;
  }

  private String relative(int index) {
    return RelativeFormula.of((String) cells.get(index), firstRow + index);
  }

  /**
   * Puts an array formula into empty cells first and takes it out again: undo of data that was put
   * into a range brings back what cells held, but forgets to empty those that held nothing. Undo of
   * an array formula does empty them. Were it left for the data to replace, redo would leave it in
   * the cells whose data are blank.
   */
  private static void hold(XCellRange range) {
    XArrayFormulaRange cells = UnoRuntime.queryInterface(XArrayFormulaRange.class, range);
    cells.setArrayFormula("=0");
    cells.setArrayFormula("");
  }

  private void add(int row, int column, Object content, boolean formula, boolean isEmpty)
      throws com.sun.star.uno.Exception {
    if (commented.contains(new Place(row, column))) {
      end();
      alone(sheet.sheet().getCellByPosition(column, row), content, formula);
      return;
    }
    boolean follows =
        column == this.column
            && row == firstRow + cells.size() + blanks
            && formula == formulas
            && isEmpty == wasEmpty;
    if (!follows) {
      end();
      this.column = column;
      firstRow = row;
      formulas = formula;
      wasEmpty = isEmpty;
    }
    for (; blanks > 0; blanks--) {
      cells.add("");
    }
    cells.add(content);
  }

  private static void alone(XCell cell, Object content, boolean formula) {
    if (content instanceof Double number) {
      cell.setValue(number);
    } else if (formula || content.equals("")) {
      cell.setFormula((String) content);
    } else {
      UnoRuntime.queryInterface(XText.class, cell).setString((String) content);
    }
  }
}
