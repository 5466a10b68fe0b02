package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellContentType;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.office.testing.Office;

/** Cards in the real office: what it calculates of them, and the .pdf that it makes. */
class CardsIT {
  private static final String[] CARDS = {
    "scales", "hydrometer --original 1.085 --offset 0.001", "alcoholometer --degrees F"
  };
  private static final int ROWS = 110;
  private static final int COLUMNS = 11;

  @TempDir private Path folder;

  private Washbook.Run card(String words, Path file) throws IOException, InterruptedException {
    return Washbook.run(
        Stream.concat(Stream.of(("card " + words).split(" ")), Stream.of("--out", file.toString()))
            .toArray());
  }

  @Test
  void theOfficeCalculatesTheNumbersThatAreOnTheCard() throws Exception {
    int formulas = 0;
    try (Office office = Office.with(Path.of(System.getProperty("washbook.oxt")))) {
      for (String form : List.of("pack", "portable")) {
        for (String kind : List.of("xlsx", "ods")) {
          for (int i = 0; i < CARDS.length; i++) {
            Path file = folder.resolve(form + i + "." + kind);
            Washbook.Run run = card(CARDS[i] + " --as " + form, file);
            assertEquals(0, run.exitCode(), run.output());
            try (washbook.office.testing.Book book = office.open(file)) {
              List<String> stored = texts(book);
              book.recalculate();
              formulas += same(file, stored, texts(book), form.equals("pack") ? 0 : 0.11);
            }
          }
        }
      }
    }
    assertTrue(formulas > 5000, formulas + " formulas");
  }

  /** What each formula shows, as the reader of the card sees it. */
  private static List<String> texts(washbook.office.testing.Book book) {
    XSpreadsheet sheet = Starters.sheet(book, 0);
    List<String> texts = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        XCell cell = Starters.cell(sheet, row, column);
        if (cell.getType() == CellContentType.FORMULA) {
          assertEquals(0, cell.getError(), row + " " + column);
          texts.add(UnoRuntime.queryInterface(XText.class, cell).getString());
        }
      }
    }
    return texts;
  }

  /** A plain formula may be another one in its last digit. */
  private static int same(Path file, List<String> stored, List<String> now, double error) {
    assertEquals(stored.size(), now.size());
    for (int i = 0; i < now.size(); i++) {
      if (error == 0 || now.get(i).isEmpty() || now.get(i).equals("–")) {
        assertEquals(stored.get(i), now.get(i), file + " " + i);
      } else {
        double allowed = now.get(i).matches(".*\\.\\d{4}") ? error / 1000 : error;
        assertEquals(
            Double.parseDouble(stored.get(i)),
            Double.parseDouble(now.get(i)),
            allowed,
            file + " " + i);
      }
    }
    return now.size();
  }

  @Test
  void aPdfHasAPageOfThePaperForEachPageAndIsKnownAgainAsOurs() throws Exception {
    Path file = folder.resolve("mine.pdf");
    assertEquals(0, card("hydrometer --original 1.085 --paper letter", file).exitCode());
    String pdf = Files.readString(file, StandardCharsets.ISO_8859_1);
    assertTrue(pdf.startsWith("%PDF-"), pdf.substring(0, 9));
    assertTrue(pdf.contains("/Count 2"), "two pages");
    assertTrue(
        pdf.contains("/MediaBox[ 0 0 612 792 ]") || pdf.contains("/MediaBox[0 0 612 792]"),
        "letter");
    Washbook.Run again = card("alcoholometer", file);
    assertEquals(0, again.exitCode(), again.output());
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(1, left.count());
    }
  }
}
