package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.office.testing.Book;

/** Whole columns in one array formula. */
class ArraysIT {
  private Book book;

  @BeforeEach
  void open() {
    book = SharedOffice.get().newBook();
    book.data(
        "A1:B7",
        new Object[][] {
          {1.085, 30.0},
          {1.07, ""},
          {"", ""},
          {1.06, 0.0},
          {1.05, 75.0},
          {1.04, "warm"},
          {0.998, 22.0}
        });
  }

  @AfterEach
  void close() {
    book.close();
  }

  private static double java(String name, Object... values) {
    return ((Answer.Number) Catalogue.get(name).call(values)).value();
  }

  @Test
  void aColumnGivesNumbersBlanksAndErrors() {
    book.array("C1:C8", "=WASHBOOK.CORRECTEDGRAVITY(A1:A7;B1:B7)");
    assertEquals(java("CORRECTEDGRAVITY", 1.085, 30.0), book.number("C1"));
    assertEquals("", book.shown("C2"));
    assertEquals("", book.shown("C3"));
    assertEquals(java("CORRECTEDGRAVITY", 1.06, 0.0), book.number("C4"));
    assertEquals("#NUM!", book.shown("C5"));
    assertEquals("#VALUE!", book.shown("C6"));
    assertEquals(java("CORRECTEDGRAVITY", 0.998, 22.0), book.number("C7"));
    assertEquals("#N/A", book.shown("C8"));
  }

  @Test
  void aSingleValueServesForTheWholeColumn() {
    book.array("C1:C7", "=WASHBOOK.ABV(1.09;A1:A7)");
    assertEquals(java("ABV", 1.09, 1.085), book.number("C1"));
    assertEquals("", book.shown("C3"));
    assertEquals(java("ABV", 1.09, 0.998), book.number("C7"));
  }

  @Test
  void aColumnAndARowGiveATable() {
    book.data("E1:F1", new Object[][] {{10.0, 25.0}});
    book.array("H1:I2", "=WASHBOOK.CORRECTEDGRAVITY(A1:A2;E1:F1)");
    assertEquals(java("CORRECTEDGRAVITY", 1.085, 10.0), book.number("H1"));
    assertEquals(java("CORRECTEDGRAVITY", 1.085, 25.0), book.number("I1"));
    assertEquals(java("CORRECTEDGRAVITY", 1.07, 10.0), book.number("H2"));
    assertEquals(java("CORRECTEDGRAVITY", 1.07, 25.0), book.number("I2"));
  }

  @Test
  void aPlaceThatOneColumnDoesNotReachIsNotAvailable() {
    book.array("C1:C4", "=WASHBOOK.COLUMN(\"CORRECTEDGRAVITY\";A1:A4;{20|20})");
    assertEquals(java("CORRECTEDGRAVITY", 1.07, 20.0), book.number("C2"));
    assertEquals("#N/A", book.shown("C3"));
    assertEquals("#N/A", book.shown("C4"));
  }

  @Test
  void columnGivesAWholeColumnInOneCall() {
    book.array("C1:C8", "=WASHBOOK.COLUMN(\"CORRECTEDGRAVITY\";A1:A7;B1:B7)");
    book.array("D1:D7", "=WASHBOOK.CORRECTEDGRAVITY(A1:A7;B1:B7)");
    for (int row = 1; row <= 7; row++) {
      assertEquals(book.shown("D" + row), book.shown("C" + row), "row " + row);
      assertEquals(book.number("D" + row), book.number("C" + row), "row " + row);
    }
    assertEquals("#N/A", book.shown("C8"));
    book.array("E1:E2", "=WASHBOOK.COLUMN(\"NOSUCH\";A1:A2)");
    assertEquals("#VALUE!", book.shown("E1"));
    book.select("C5");
    assertEquals(
        "C5, COLUMN: temperature 75 is too high; it must be 0 to 60 °C.",
        book.dispatch("washbook.office:explain?ask=no"));
  }

  @Test
  void optionalArgumentsAndWordsMayBeColumnsToo() {
    book.data("D1:D2", new Object[][] {{"DRY"}, {""}});
    book.array("E1:E2", "=WASHBOOK.COLUMN(\"POTENTIALABV\";A1:A2;D1:D2)");
    assertEquals(java("POTENTIALABV", 1.085, "DRY"), book.number("E1"));
    assertEquals(java("POTENTIALABV", 1.07), book.number("E2"));
    book.data("F1:F2", new Object[][] {{0.0}, {2.0}});
    book.array("G1:G2", "=WASHBOOK.COLUMN(\"ABVPLUSMINUS\";1.085;1.01;;F1:F2)");
    assertEquals(java("ABVPLUSMINUS", 1.085, 1.01, null, 0.0), book.number("G1"));
    assertEquals(java("ABVPLUSMINUS", 1.085, 1.01, null, 2.0), book.number("G2"));
  }

  @Test
  void reasonsComeForAWholeColumn() {
    book.array("C1:C6", "=WASHBOOK.REASON(\"CORRECTEDGRAVITY\";A1:A6;B1:B6)");
    assertEquals("", book.shown("C1"));
    assertEquals("temperature is blank; it must be 0 to 60 °C.", book.shown("C2"));
    assertEquals("", book.shown("C4"));
    assertEquals("temperature 75 is too high; it must be 0 to 60 °C.", book.shown("C5"));
  }

  /** Calc itself refuses a range with an error in it where one call takes the whole range. */
  @Test
  void aColumnWithRefusalsGoesOn() {
    book.array("C1:C7", "=WASHBOOK.CORRECTEDGRAVITY(A1:A7;B1:B7)");
    book.array("D1:D7", "=WASHBOOK.COLUMN(\"ABV\";1.09;C1:C7)");
    assertEquals("Err:504", book.shown("D1"));
    book.array("E1:E7", "=WASHBOOK.COLUMN(\"ABV\";1.09;IFERROR(C1:C7;\"\"))");
    book.array("F1:F7", "=WASHBOOK.ABV(1.09;C1:C7)");
    assertEquals("", book.shown("E5"));
    assertEquals("#NUM!", book.shown("F5"));
    for (String column : new String[] {"E", "F"}) {
      assertEquals(java("ABV", 1.09, book.number("C1")), book.number(column + 1), 1e-12);
      assertEquals(java("ABV", 1.09, book.number("C7")), book.number(column + 7), 1e-12);
    }
  }

  @Test
  void aRangeArgumentTakesAllItsCells() {
    book.data("K1:L3", new Object[][] {{20.0, 1.06}, {"", ""}, {5.0, 1.2 - 0.1}});
    book.formula("M1", "=WASHBOOK.BLENDGRAVITY(K1:K3;L1:L3)");
    Answer expected =
        Catalogue.get("BLENDGRAVITY")
            .call(Arrays.asList(20.0, null, 5.0), Arrays.asList(1.06, null, 1.2 - 0.1));
    assertEquals(((Answer.Number) expected).value(), book.number("M1"));
  }
}
