package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.office.testing.Book;
import washbook.office.testing.Office;

/** An office whose locale writes a comma where others write a point. */
class DecimalCommaIT {
  private static final String GERMAN =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry" \
      xmlns:xs="http://www.w3.org/2001/XMLSchema" \
      xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
      <item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" \
      oor:op="fuse"><value>de-DE</value></prop></item>
      </oor:items>
      """;

  @Test
  void temperaturesAreReadWithAComma() throws Exception {
    Path profile = Office.freshProfile();
    Path settings = profile.resolve("user/registrymodifications.xcu");
    Files.createDirectories(settings.getParent());
    Files.writeString(settings, GERMAN);
    try {
      try (Office office = Office.on(profile)) {
        office.extensions().add(SharedOffice.extension());
      }
      try (Office office = Office.on(profile);
          Book book = office.newBook()) {
        book.number("A1", 20.5).formula("B1", "=A1/1000000");
        assertEquals("20,5", book.shown("A1"));
        for (Object[] row :
            new Object[][] {{"A1", 20.5}, {"20.25", 20.25}, {"B1", 2.05e-5}, {"\"20,5\"", 20.5}}) {
          book.formula("C1", "=WASHBOOK.CORRECTEDGRAVITY(1.05;" + row[0] + ")");
          Answer.Number expected =
              (Answer.Number) Catalogue.get("CORRECTEDGRAVITY").call(1.05, row[1]);
          assertEquals(expected.value(), book.number("C1"), row[0] + book.shown("C1"));
        }
        readsTextsAsCalcDoes(book);
        showsWhatItFillsInAsCalcDoes(office);
      }
    } finally {
      Office.delete(profile);
    }
  }

  private static void showsWhatItFillsInAsCalcDoes(Office office) {
    try (Book log = office.newBook()) {
      log.data(
          "A1:C3", new Object[][] {{"Day", "SG", "°C"}, {0.0, 1.085, 20.0}, {3.0, 1.05, 24.0}});
      log.dispatch("washbook.office:fill?ask=no");
      assertEquals("1,0850", log.shown("D2"));
      assertEquals("4,56", log.shown("E3"));
    }
  }

  private static void readsTextsAsCalcDoes(Book book) {
    double expected = ((Answer.Number) Catalogue.get("ABV").call(1.085, 1.01)).value();
    book.text("D1", "1,085").text("D2", "1.085").text("D3", "1.01").text("D4", "1,01");
    book.formula("E1", "=WASHBOOK.ABV(D1;1.01)");
    assertEquals(expected, book.number("E1"), book.shown("E1"));
    book.formula("E1", "=WASHBOOK.ABV(D2;1.01)");
    assertEquals("#NUM!", book.shown("E1"), "a point between thousands");
    book.formula("E1", "=WASHBOOK.ABV(D1;D3)");
    assertEquals("#VALUE!", book.shown("E1"), "a point that cannot be one between thousands");
    book.formula("E1", "=WASHBOOK.REASON(\"ABV\";D1;D3)");
    assertEquals(
        "gravity '1.01' is a text that is not a number here: the decimal sign is ','.",
        book.shown("E1"));
    book.data("F1:F2", new Object[][] {{10.0}, {"5,5"}})
        .data("G1:G2", new Object[][] {{1.06}, {"1,1"}});
    book.formula("E1", "=WASHBOOK.BLENDGRAVITY(F1:F2;G1:G2)");
    assertEquals(
        ((Answer.Number) Catalogue.get("BLENDGRAVITY").call(List.of(10.0, 5.5), List.of(1.06, 1.1)))
            .value(),
        book.number("E1"));
  }
}
