package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.CellAddress;
import com.sun.star.uno.UnoRuntime;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.office.testing.Book;

/** Whole columns and names in the place of cells, as in Calc's own functions. */
class WholeColumnsIT {
  private static final List<Object> TIMES = List.of(0.0, 2.0, 4.0, 6.0);
  private static final List<Object> GRAVITIES = List.of(1.085, 1.06, 1.04, 1.02);

  private Book book;

  @BeforeEach
  void open() {
    book = SharedOffice.get().newBook();
    book.data(
        "A1:C5",
        new Object[][] {
          {"Day", "SG", "OG"},
          {0.0, 1.085, 1.085},
          {2.0, 1.06, 1.086},
          {4.0, 1.04, 1.087},
          {6.0, 1.02, 1.088}
        });
  }

  @AfterEach
  void close() {
    book.close();
  }

  private static double java(String name, Object... values) {
    return ((Answer.Number) Catalogue.get(name).call(values)).value();
  }

  private void name(String name, String content) {
    try {
      UnoRuntime.queryInterface(
              XNamedRanges.class, book.as(XPropertySet.class).getPropertyValue("NamedRanges"))
          .addNewByName(name, content, new CellAddress(), 0);
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aWholeColumnGivesWhatItsFilledRowsGiveAndItsHeadingIsLeftOut() {
    double expected = java("FERMENTRATE", TIMES, GRAVITIES);
    book.formula("E1", "=WASHBOOK.FERMENTRATE(A2:A5;B2:B5)");
    book.formula("E2", "=WASHBOOK.FERMENTRATE(A:A;B:B)");
    book.formula("E3", "=WASHBOOK.FERMENTRATE(A2:A500;B2:B500)");
    for (String cell : List.of("E1", "E2", "E3")) {
      assertEquals(expected, book.number(cell), cell + " " + book.shown(cell));
    }
    book.number("B5", 1.03).number("A6", 8).number("B6", 1.02);
    book.formula("E4", "=WASHBOOK.FERMENTRATE(A2:A6;B2:B6)");
    assertEquals(book.number("E4"), book.number("E2"), "after a reading more");
    assertTrue(book.number("E2") != expected);
  }

  @Test
  void aHeadingInAnOrdinaryRangeAndATextAmongReadingsAreRefused() {
    book.formula("E1", "=WASHBOOK.FERMENTRATE(A1:A5;B1:B5)");
    assertEquals("#VALUE!", book.shown("E1"));
    book.text("B2", "n/a").formula("E2", "=WASHBOOK.FERMENTRATE(A:A;B:B)");
    assertEquals("#VALUE!", book.shown("E2"));
  }

  @Test
  void anErrorInARangeIsTheErrorOfTheCall() {
    book.formula("B4", "=1/0").formula("E1", "=WASHBOOK.FERMENTRATE(A:A;B:B)");
    assertEquals("#DIV/0!", book.shown("E1"));
    book.formula("B4", "=NA()");
    assertEquals("#N/A", book.shown("E1"));
    book.formula("B4", "=WASHBOOK.CORRECTEDGRAVITY(1.05;75)");
    assertEquals("#NUM!", book.shown("E1"));
    book.number("B4", 1.04);
    assertEquals(java("FERMENTRATE", TIMES, GRAVITIES), book.number("E1"));
  }

  @Test
  void anEmptyColumnIsBlank() {
    book.formula("E1", "=WASHBOOK.FERMENTRATE(H:H;I:I)");
    assertEquals("", book.shown("E1"));
  }

  @Test
  void namedColumnsGiveEachRowItsOwnValue() {
    name("og", "$Sheet1.$C$2:$C$5");
    name("grav", "$Sheet1.$B$2:$B$5");
    name("allGrav", "$Sheet1.$B$1:$B$1048576");
    for (int row = 2; row <= 5; row++) {
      book.formula("E" + row, "=WASHBOOK.ABV(og;grav)");
      book.formula("F" + row, "=WASHBOOK.ABV(C:C;allGrav)");
      double expected = java("ABV", book.number("C" + row), book.number("B" + row));
      assertEquals(expected, book.number("E" + row), "row " + row);
      assertEquals(expected, book.number("F" + row), "row " + row);
    }
    book.formula("E9", "=WASHBOOK.ABV(og;grav)");
    assertEquals("#VALUE!", book.shown("E9"), "beside no row of the columns");
  }

  @Test
  void severalCellsForAnOptionalArgumentAreRefused() {
    book.data("D2:D3", new Object[][] {{20.0}, {15.0}});
    book.formula("E2", "=WASHBOOK.CORRECTEDGRAVITY(B2;20;D2:D3)");
    assertEquals("#VALUE!", book.shown("E2"));
    book.formula("E3", "=WASHBOOK.CORRECTEDGRAVITY(B2;20;D2:D2)");
    assertEquals(java("CORRECTEDGRAVITY", 1.085, 20.0, 20.0), book.number("E3"));
    book.select("E2");
    assertEquals(
        "E2, CORRECTEDGRAVITY: calibrationC is given several cells; it takes one. In an array"
            + " formula write WASHBOOK.COLUMN(\"CORRECTEDGRAVITY\"; ...).",
        book.dispatch("washbook.office:explain?ask=no"));
  }

  @Test
  void theReasonIsThatOfTheFormulasOwnRow() {
    book.number("B4", 1.5).formula("E3", "=WASHBOOK.ABV(C2:C5;B2:B5)");
    book.formula("E4", "=WASHBOOK.ABV(C2:C5;B2:B5)");
    assertEquals("#NUM!", book.shown("E4"));
    book.select("E4");
    String said = String.valueOf(book.dispatch("washbook.office:explain?ask=no"));
    assertTrue(said.startsWith("E4, ABV: gravity 1.5 is too high"), said);
    book.select("E3");
    said = String.valueOf(book.dispatch("washbook.office:explain?ask=no"));
    assertTrue(said.contains("refuses anything"), said);
  }

  @Test
  void anErrorInARangeIsNamedWithItsCell() {
    book.formula("B4", "=1/0").formula("E1", "=WASHBOOK.FERMENTRATE(A:A;B:B)").select("E1");
    String said = String.valueOf(book.dispatch("washbook.office:explain?ask=no"));
    assertTrue(said.contains("B4 shows #DIV/0!"), said);
  }
}
