package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.office.testing.Book;

/** Every kind of argument that a user of Calc gives, and the blank cell above all. */
class ArgumentsIT {
  private static Book book;

  /** A1 blank, A2 0, A3 text, A4 formula giving "", A5 an error, A6 20.5, A7 1.05, A8 text 20.5. */
  @BeforeAll
  static void open() {
    book = SharedOffice.get().newBook();
    book.number("A2", 0).text("A3", "warm").formula("A4", "=\"\"").formula("A5", "=1/0");
    book.number("A6", 20.5).number("A7", 1.05).text("A8", "20.5");
  }

  @AfterAll
  static void close() {
    book.close();
  }

  private static String shown(String formula) {
    book.formula("H1", "=WASHBOOK." + formula);
    return book.shown("H1");
  }

  private static double value(String formula) {
    String shown = shown(formula);
    assertEquals(0, book.error("H1"), formula + " shows " + shown);
    return book.number("H1");
  }

  private static double java(String name, Object... values) {
    return ((Answer.Number) Catalogue.get(name).call(values)).value();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A1 blank cell | CORRECTEDGRAVITY(1.05;A1) | ''",
        "A1 as a range | CORRECTEDGRAVITY(1.05;A1:A1) | ''",
        "formula giving nothing | CORRECTEDGRAVITY(1.05;A4) | ''",
        "text nothing | CORRECTEDGRAVITY(1.05;\"\") | ''",
        "spirit | TRUESTRENGTH(42;A1) | ''",
        "degrees to degrees | CONVERT(A1;\"C\";\"F\") | ''",
        "Brix reading | CORRECTEDBRIX(A1;20) | ''",
        "gravity | ABV(1.085;A1) | ''",
        "original gravity | ABV(A1;1.010) | ''",
        "nothing at all | ABV(A1;A1) | ''",
        "text for a number | CORRECTEDGRAVITY(1.05;A3) | #VALUE!",
        "text for a gravity | ABV(1.085;A3) | #VALUE!",
        "unknown word | CONVERT(1;\"SG\";\"CUBITS\") | #VALUE!",
        "error | CORRECTEDGRAVITY(1.05;A5) | #DIV/0!",
        "error for a gravity | ABV(1.085;A5) | #DIV/0!",
        "too warm | CORRECTEDGRAVITY(1.05;61) | #NUM!",
        "gravity too high | ABV(1.3;1) | #NUM!",
        "rise | ABV(1.050;1.060) | #NUM!",
        "needed and left out | ABV(1.05) | Err:504",
        "too many | ABV(1.05;1.01;1;1) | Err:504",
        "0 or blank where that matters | ABVPLUSMINUS(1.085;1.01;0.001;A1) | #N/A",
        "0 or blank where that matters | ABVPLUSMINUS(1.085;1.01;0.001;0) | #N/A",
      })
  void shows(String what, String formula, String expected) {
    assertEquals(expected, shown(formula), what);
  }

  @Test
  void aBlankTemperatureNeverCountsAsZero() {
    double atZero = java("CORRECTEDGRAVITY", 1.05, 0.0);
    for (String blank : new String[] {"A1", "A1:A1", "$A$1", "A4", "IF(A1=\"\";\"\";A1)"}) {
      String shown = shown("CORRECTEDGRAVITY(1.05;" + blank + ")");
      assertEquals("", shown, blank);
      assertTrue(book.number("H1") != atZero, blank);
    }
    for (String zero : new String[] {"A2", "0", "A2:A2", "A6-A6", "\"0\"", "-0"}) {
      assertEquals(atZero, value("CORRECTEDGRAVITY(1.05;" + zero + ")"), zero);
    }
  }

  @Test
  void theCellFollowsWhenABlankIsFilledAndEmptiedAgain() {
    book.formula("H2", "=WASHBOOK.CORRECTEDGRAVITY(1.05;G9)");
    assertEquals("", book.shown("H2"));
    book.number("G9", 0);
    assertEquals(java("CORRECTEDGRAVITY", 1.05, 0.0), book.number("H2"));
    book.number("G9", 30);
    assertEquals(java("CORRECTEDGRAVITY", 1.05, 30.0), book.number("H2"));
    book.formula("G9", "");
    assertEquals("", book.shown("H2"));
  }

  @Test
  void zeroIsANumberWhereItCanBeOne() {
    assertEquals(32, value("CONVERT(0;\"C\";\"F\")"));
    assertEquals(32, value("CONVERT(A2;\"C\";\"F\")"));
    assertEquals(java("TRUESTRENGTH", 42.0, 0.0), value("TRUESTRENGTH(42;A2)"));
  }

  @Test
  void numbersComeAsLiteralsExpressionsTextsAndLogicals() {
    double expected = java("CORRECTEDGRAVITY", 1.05, 20.5);
    String[] ways = {"20.5", "A6", "A6:A6", "41/2", "A6+A2", "A8", "\"20.5\"", "SUM(A6)", "{20.5}"};
    for (String way : ways) {
      assertEquals(expected, value("CORRECTEDGRAVITY(A7;" + way + ")"), way);
    }
    assertEquals(java("CORRECTEDGRAVITY", 1.05, 1.0), value("CORRECTEDGRAVITY(A7;TRUE())"));
    assertEquals(java("ABV", 1.05, 1.01), value("ABV(\"1.05\";1.01)"));
    assertEquals(expected, value("correctedgravity(A7;A6)"));
  }

  @Test
  void optionalArgumentsAreLeftOutAtTheEndAndInTheMiddle() {
    double plain = java("CORRECTEDGRAVITY", 1.0, 30.0, null, 1.085);
    assertEquals(plain, value("CORRECTEDGRAVITY(1;30;;1.085)"));
    assertEquals(plain, value("CORRECTEDGRAVITY(1;30;20;1.085)"));
    assertEquals(plain, value("CORRECTEDGRAVITY(1;30;A1;1.085)"), "blank cell for an optional");
    assertEquals(plain, value("CORRECTEDGRAVITY(1;30;;1.085;)"));
    assertEquals(plain, value("CORRECTEDGRAVITY(1;30;;1.085;A1)"));
    assertEquals(
        java("CORRECTEDGRAVITY", 1.0, 30.0, null, null, 0.002),
        value("CORRECTEDGRAVITY(1;30;;;0.002)"));
    assertEquals(java("CORRECTEDGRAVITY", 1.0, 30.0), value("CORRECTEDGRAVITY(1;30;;A1)"));
    assertEquals(java("POTENTIALABV", 1.085), value("POTENTIALABV(1.085;A1)"));
  }

  @Test
  void temperaturesKeepFifteenDigits() {
    book.formula("G1", "=(68.3-32)/1.8");
    double exact = java("CORRECTEDGRAVITY", 1.05, (68.3 - 32) / 1.8);
    assertEquals(exact, value("CORRECTEDGRAVITY(1.05;G1)"), 1e-15);
  }

  @Test
  void reasonsAreGivenInWords() {
    assertEquals("", shown("REASON(\"ABV\";1.085;1.01)"));
    assertTrue(shown("REASON(\"ABV\";1.085;A1)").contains("gravity is blank"), book.shown("H1"));
    assertTrue(shown("REASON(\"WASHBOOK.ABV\";1.3;1)").contains("too high"), book.shown("H1"));
    assertTrue(
        shown("REASON(\"CORRECTEDGRAVITY\";1.05;A3)").contains("'warm' is not a number"),
        book.shown("H1"));
    assertTrue(
        shown("REASON(\"CORRECTEDGRAVITY\";1.05;A1)").contains("temperature is blank"),
        book.shown("H1"));
    assertTrue(
        shown("REASON(\"CORRECTEDGRAVITY\";1.05;A1:A1)").startsWith("temperature is blank"),
        book.shown("H1"));
    assertEquals("", shown("REASON(\"CORRECTEDGRAVITY\";1.05;A2:A2)"));
    assertTrue(
        shown("REASON(\"ABVPLUSMINUS\";1.085;1.01;0.001;A1)").contains("is 0 or a blank cell"),
        book.shown("H1"));
    assertEquals("#VALUE!", shown("REASON(\"NOSUCH\";1)"));
    assertEquals("", shown("REASON(\"CORRECTEDGRAVITY\";1;30;;1.085)"));
  }
}
