package washbook.office;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.awt.FontWeight;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.table.BorderLine2;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellContentType;
import com.sun.star.table.XCell;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XMergeable;
import com.sun.star.util.XModifiable;
import com.sun.star.util.XProtectable;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.office.testing.Book;

/** The commands of the menu, by dispatch as a macro does it. */
class MenuIT {
  private static final String FILL = "washbook.office:fill?ask=no";
  private static final String EXPLAIN = "washbook.office:explain?ask=no";

  @TempDir Path directory;
  private Book book;

  @BeforeEach
  void open() {
    book = SharedOffice.get().newBook();
  }

  @AfterEach
  void close() {
    book.close();
  }

  private void plum() {
    book.data(
        "A1:C5",
        new Object[][] {
          {"Day", "SG", "Temp °C"},
          {0.0, 1.085, 20.0},
          {3.0, 1.05, 24.0},
          {6.0, 1.02, ""},
          {9.0, 1.0, 21.0}
        });
  }

  private static double java(String name, Object... values) {
    return ((Answer.Number) Catalogue.get(name).call(values)).value();
  }

  @Test
  void fillsALogInOneStepOfUndo() throws Exception {
    plum();
    XUndoManager undo = book.as(XUndoManagerSupplier.class).getUndoManager();
    String said = String.valueOf(book.dispatch(FILL));
    assertTrue(said.contains("table A1:C5"), said);
    assertTrue(said.contains("B: SG, gravity in SG"), said);
    assertTrue(said.contains("filled: 3; refused: 1"), said);
    assertEquals("Corrected gravity (SG)", book.shown("D1"));
    assertEquals("Alcohol to date (% vol)", book.shown("E1"));
    double first = java("CORRECTEDGRAVITY", 1.085, 20.0);
    double corrected = java("CORRECTEDGRAVITY", 1.05, 24.0, null, first);
    assertEquals(corrected, book.number("D3"), 1e-12);
    assertEquals(java("ABV", first, corrected), book.number("E3"), 1e-9);
    assertEquals("", book.shown("D4"));
    assertTrue(book.shown("H4").startsWith("C4: "), book.shown("H4"));
    assertEquals("Fill this log", undo.getCurrentUndoActionTitle());
    undo.undo();
    assertEquals("", book.shown("D1"));
    assertEquals("", book.shown("E3"));
    assertEquals(1.05, book.number("B3"));
  }

  @Test
  void newHeadersLookLikeTheirNeighboursAndCanBeRead() throws Exception {
    plum();
    book.look("A1:C1").setPropertyValue("CellStyle", "Accent 1");
    book.look("A1:C1").setPropertyValue("CharWeight", FontWeight.BOLD);
    book.look("A1:C1").setPropertyValue("CellBackColor", 0xE8D8F0);
    book.dispatch(FILL);
    for (String property : List.of("CellStyle", "CharWeight", "CellBackColor", "CharColor")) {
      Object neighbour = book.look("C1").getPropertyValue(property);
      assertEquals(neighbour, book.look("D1").getPropertyValue(property), property);
      assertEquals(neighbour, book.look("H1").getPropertyValue(property), property);
    }
    assertEquals(true, book.look("D1").getPropertyValue("IsTextWrapped"));
    assertEquals(true, book.look("H1").getPropertyValue("IsTextWrapped"));
    assertEquals(false, book.look("C1").getPropertyValue("IsTextWrapped"));
    int usual = width("C1");
    assertTrue(width("D1") > usual, "width " + width("D1"));
    book.as(XUndoManagerSupplier.class).getUndoManager().undo();
    assertEquals("Default", book.look("D1").getPropertyValue("CellStyle"));
    assertEquals(false, book.look("D1").getPropertyValue("IsTextWrapped"));
    assertEquals(usual, width("D1"));
  }

  /** Offices from 24.2 on have colours of borders that read as nothing and refuse nothing. */
  @Test
  void headersWithBordersGetNeighboursWithBorders() throws Exception {
    plum();
    BorderLine2 line = new BorderLine2();
    line.OuterLineWidth = 35;
    line.LineWidth = 35;
    for (String side : List.of("LeftBorder", "RightBorder", "BottomBorder")) {
      book.look("A1:C1").setPropertyValue(side, line);
    }
    String said = String.valueOf(book.dispatch(FILL));
    assertTrue(said.contains("filled: 3; refused: 1"), said);
    assertEquals("Washbook note", book.shown("H1"));
    for (String cell : List.of("D1", "H1")) {
      BorderLine2 own = (BorderLine2) book.look(cell).getPropertyValue("BottomBorder2");
      assertEquals(35, own.OuterLineWidth, cell);
    }
  }

  private int width(String cell) throws Exception {
    var columns =
        UnoRuntime.queryInterface(XColumnRowRange.class, book.sheet().getCellRangeByName(cell))
            .getColumns();
    return (Integer)
        UnoRuntime.queryInterface(XPropertySet.class, columns.getByIndex(0))
            .getPropertyValue("Width");
  }

  @Test
  void fillsAgainWithoutAnyChange() {
    plum();
    book.dispatch(FILL);
    Object[][] before = book.data("A1:L9");
    book.dispatch(FILL);
    Object[][] after = book.data("A1:L9");
    for (int row = 0; row < before.length; row++) {
      for (int column = 0; column < before[row].length; column++) {
        assertEquals(before[row][column], after[row][column], row + " " + column);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"values", "pack", "portable"})
  void whatIsTakenBackCanBePutBack(String style) throws Exception {
    plum();
    book.dispatch(FILL + "&as=" + style);
    Object[][] filled = book.data("D1:L9");
    assertEquals("", filled[3][1]);
    XUndoManager undo = book.as(XUndoManagerSupplier.class).getUndoManager();
    undo.undo();
    assertEquals(CellContentType.EMPTY, book.cell("D4").getType());
    undo.redo();
    assertTrue(Arrays.deepEquals(filled, book.data("D1:L9")), Arrays.deepToString(filled));
    undo.undo();
    assertEquals(CellContentType.EMPTY, book.cell("D2").getType());
  }

  @Test
  void keepsCommentsAndFormulasBesideOursAndUndoesFormulas() throws Exception {
    plum();
    book.dispatch(FILL);
    book.formula("J3", "=B3*2");
    var comments =
        UnoRuntime.queryInterface(XSheetAnnotationsSupplier.class, book.sheet()).getAnnotations();
    comments.insertNew(new CellAddress((short) 0, 4, 2), "strong already");
    comments.insertNew(new CellAddress((short) 0, 7, 3), "ask for it");
    double before = book.number("E3");
    book.number("B3", 1.04);
    book.dispatch(FILL + "&as=pack");
    assertEquals(2, comments.getCount());
    assertTrue(book.cell("E3").getFormula().startsWith("=WASHBOOK.ABV("));
    assertTrue(book.cell("E5").getFormula().startsWith("=WASHBOOK.ABV("));
    assertEquals("=B3*2", book.cell("J3").getFormula());
    XUndoManager undo = book.as(XUndoManagerSupplier.class).getUndoManager();
    undo.undo();
    assertEquals(before, book.number("E3"), 1e-12);
    undo.redo();
    assertTrue(book.cell("E3").getFormula().startsWith("=WASHBOOK.ABV("));
    assertEquals(2, comments.getCount());
  }

  @Test
  void fillsALongLogAndFillsItAgain() throws Exception {
    int rows = 5000;
    Object[][] readings = new Object[rows][3];
    for (int i = 0; i < rows; i++) {
      readings[i] = new Object[] {i / 100.0, 1.085 - i * 1e-5, i % 7 == 3 ? "" : 20.0};
    }
    book.data("A1:C1", new Object[][] {{"Day", "SG", "Temp °C"}});
    book.data("A2:C" + (rows + 1), readings);
    book.dispatch(FILL);
    double first = java("CORRECTEDGRAVITY", 1.085, 20.0);
    Object[][] filled = book.data("D2:H" + (rows + 1));
    for (int i = 0; i < rows; i++) {
      if (i % 7 == 3) {
        assertEquals("", filled[i][1]);
        assertTrue(filled[i][4].toString().startsWith("C" + (i + 2) + ": "), "row " + (i + 2));
      } else {
        assertEquals(java("ABV", first, (Double) filled[i][0]), filled[i][1]);
        assertEquals("", filled[i][4]);
      }
    }
    book.dispatch(FILL + "&as=pack");
    Object[][] computed = book.data("D2:H" + (rows + 1));
    for (int i = 0; i < rows; i++) {
      if (i % 7 != 3) {
        assertEquals((Double) filled[i][1], (Double) computed[i][1], 1e-9);
      }
    }
    XUndoManager undo = book.as(XUndoManagerSupplier.class).getUndoManager();
    undo.undo();
    undo.undo();
    assertEquals("", book.shown("D1"));
    assertEquals("", book.shown("H" + (rows + 1)));
  }

  @ParameterizedTest
  @ValueSource(ints = {7, 5000})
  void putsAFormulaIntoEveryRowAndTakesAllBack(int blankEvery) throws Exception {
    int rows = 1000;
    Object[][] readings = new Object[rows][3];
    for (int i = 0; i < rows; i++) {
      readings[i] =
          new Object[] {i / 100.0, 1.085 - i * 8e-5, i % blankEvery == blankEvery - 1 ? "" : 20.0};
    }
    book.data("A1:C1", new Object[][] {{"Day", "SG", "Temp °C"}});
    book.data("A2:C" + (rows + 1), readings);
    book.dispatch(FILL + "&as=pack");
    double first = java("CORRECTEDGRAVITY", 1.085, 20.0);
    for (int i = 0; i < rows; i++) {
      XCell abv = book.cell("E" + (i + 2));
      if (readings[i][2].equals("")) {
        assertEquals(CellContentType.EMPTY, abv.getType(), "row " + (i + 2));
      } else {
        assertTrue(abv.getFormula().startsWith("=WASHBOOK.ABV("), "row " + (i + 2));
        double corrected = java("CORRECTEDGRAVITY", (Double) readings[i][1], 20.0, 20.0, first);
        assertEquals(java("ABV", first, corrected), abv.getValue(), 1e-9, "row " + (i + 2));
      }
    }
    book.as(XUndoManagerSupplier.class).getUndoManager().undo();
    for (int i = -1; i < rows; i++) {
      for (String column : List.of("D", "E", "F", "G", "H")) {
        String place = column + (i + 2);
        assertEquals(CellContentType.EMPTY, book.cell(place).getType(), place);
      }
    }
  }

  @Test
  void fillsWithFormulasThatFollowTheReadings() {
    plum();
    book.dispatch(FILL + "&as=pack");
    assertTrue(book.cell("E3").getFormula().startsWith("=WASHBOOK.ABV("));
    double first = java("CORRECTEDGRAVITY", 1.085, 20.0);
    book.number("B3", 1.04);
    double corrected = java("CORRECTEDGRAVITY", 1.04, 24.0, 20.0, first);
    assertEquals(java("ABV", first, corrected), book.number("E3"), 1e-9);
  }

  @Test
  void neverWritesFormulasIntoTheOldFormat() {
    plum();
    Path file = directory.resolve("plum.xls");
    book.save(file);
    try (Book old = SharedOffice.get().open(file)) {
      old.dispatch(FILL + "&as=pack");
      assertTrue(old.number("E3") > 1, old.shown("E3"));
      assertFalse(old.cell("E3").getFormula().contains("WASHBOOK"), old.cell("E3").getFormula());
    }
  }

  @Test
  void datesMergedCellsAndErrorsAreSeen() throws Exception {
    book.data(
        "A1:C6",
        new Object[][] {
          {"Plum 3", "", ""},
          {"Date", "SG", "Temp °C"},
          {"", 1.085, 20.0},
          {"", 1.05, 24.0},
          {"", 1.02, 22.0},
          {"", "", ""}
        });
    UnoRuntime.queryInterface(XMergeable.class, book.sheet().getCellRangeByName("A1:C1"))
        .merge(true);
    book.formula("A3", "=DATE(2025;10;1)").formula("A4", "=DATE(2025;10;4)");
    book.formula("A5", "=A4+3").formula("C5", "=1/0");
    String said = String.valueOf(book.dispatch(FILL));
    assertTrue(said.contains("table A2:C5"), said);
    assertTrue(said.contains("Refused, C5: "), said);
    assertTrue(book.number("E4") > 1, said);
  }

  @Test
  void saysWhenThereIsNothingToFill() {
    book.text("A1", "Shopping");
    String said = String.valueOf(book.dispatch(FILL));
    assertTrue(said.startsWith("No table of readings was recognised"), said);
  }

  @Test
  void leavesAProtectedSheetAlone() throws Exception {
    plum();
    UnoRuntime.queryInterface(XProtectable.class, book.sheet()).protect("");
    String said = String.valueOf(book.dispatch(FILL));
    assertTrue(said.contains("is protected"), said);
    assertEquals("", book.shown("D1"));
  }

  @Test
  void explainsTheSelectedCell() throws Exception {
    book.number("A1", 1.05).number("B1", 75);
    book.formula("C1", "=ROUND(WASHBOOK.ABV(1.085;WASHBOOK.CORRECTEDGRAVITY(A1;B1));1)");
    book.as(XModifiable.class).setModified(false);
    book.select("C1");
    XUndoManager undo = book.as(XUndoManagerSupplier.class).getUndoManager();
    String[] steps = undo.getAllUndoActionTitles();
    assertEquals(
        "C1, CORRECTEDGRAVITY: temperature 75 is too high; it must be 0 to 60 °C.",
        book.dispatch(EXPLAIN));
    assertFalse(book.as(XModifiable.class).isModified());
    assertArrayEquals(steps, undo.getAllUndoActionTitles());
    assertEquals(CellContentType.EMPTY, book.cell("AMJ1").getType());
    book.number("B1", 20);
    assertTrue(String.valueOf(book.dispatch(EXPLAIN)).contains("refuses anything"));
    book.select("A1");
    assertEquals("A1 holds no call of a Washbook function.", book.dispatch(EXPLAIN));
  }

  @Test
  void explainsAnElementOfAnArrayFormula() {
    book.data("A1:B3", new Object[][] {{1.05, 20.0}, {1.04, ""}, {1.03, 75.0}});
    book.array("C1:C3", "=WASHBOOK.CORRECTEDGRAVITY(A1:A3;B1:B3)");
    book.select("C2");
    assertEquals(
        "C2, CORRECTEDGRAVITY: temperature is blank; it must be 0 to 60 °C.",
        book.dispatch(EXPLAIN));
    book.select("C3");
    assertEquals(
        "C3, CORRECTEDGRAVITY: temperature 75 is too high; it must be 0 to 60 °C.",
        book.dispatch(EXPLAIN));
  }

  @Test
  void recalculatesEverything() {
    book.number("A1", 1.085).number("A2", 1.01).formula("B1", "=WASHBOOK.ABV(A1;A2)");
    assertEquals(java("ABV", 1.085, 1.01), book.number("B1"));
    book.as(XCalculatable.class).enableAutomaticCalculation(false);
    book.number("A2", 1.0);
    assertEquals(java("ABV", 1.085, 1.01), book.number("B1"));
    book.dispatch("washbook.office:recalculate?ask=no");
    assertEquals(java("ABV", 1.085, 1.0), book.number("B1"));
    assertFalse(book.as(XCalculatable.class).isAutomaticCalculationEnabled());
  }
}
