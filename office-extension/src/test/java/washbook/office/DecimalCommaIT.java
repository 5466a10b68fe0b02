package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
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
      }
    } finally {
      Office.delete(profile);
    }
  }
}
