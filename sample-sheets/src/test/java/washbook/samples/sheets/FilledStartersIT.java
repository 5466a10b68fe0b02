package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.office.testing.Office;

/** Ready logs filled in as a person fills them: several batches, and the cuts of a run. */
class FilledStartersIT {
  private static final Path FOLDER = Path.of("starters");
  private static Office office;

  @BeforeAll
  static void start() {
    office = Office.with(Path.of(System.getProperty("washbook.oxt")));
  }

  @AfterAll
  static void end() {
    office.close();
  }

  /** A second batch beside the first: its own figures, and both in the list of all. */
  @ParameterizedTest
  @CsvSource({
    "pack/ferment-log.xlsx", "pack/ferment-log.ods",
    "portable/ferment-log.xlsx", "portable/ferment-log.ods"
  })
  void severalBatchesStandInOneWorkbook(String name) throws Exception {
    try (washbook.office.testing.Book book = office.open(FOLDER.resolve(name))) {
      batch(Starters.sheet(book, 0), "Plum 3", 1.084, 1.040, 1.000);
      batch(Starters.sheet(book, 1), "Apple 7", 1.052, 1.030, 1.010);
      book.recalculate();
      XSpreadsheet all = Starters.sheet(book, 4);
      assertEquals("Plum 3", text(all, "B6"));
      assertEquals("Apple 7", text(all, "B7"));
      assertEquals("", text(all, "B8"));
      for (int i = 0; i < 2; i++) {
        XSpreadsheet log = Starters.sheet(book, i);
        int line = 6 + i;
        assertEquals(2, value(all, "D" + line), 1e-9);
        assertEquals(value(log, "F14"), value(all, "E" + line), 1e-12);
        assertEquals(value(log, "F16"), value(all, "F" + line), 1e-12);
        assertEquals(value(log, "G16"), value(all, "G" + line), 1e-12);
        assertEquals(call("ABV", value(log, "F14"), value(log, "F16")), value(log, "G16"), 0.03);
        // What its chart draws is its own.
        assertEquals(value(log, "F15"), value(log, "AA15"), 1e-12);
        assertEquals("Charts: " + text(all, "B" + line), text(log, "Q13"));
      }
      XSpreadsheet third = Starters.sheet(book, 2);
      assertEquals("Charts", text(third, "Q13"));
      assertEquals("", text(all, "F8"));
    }
  }

  private static void batch(XSpreadsheet log, String name, double... gravities) throws Exception {
    cell(log, "D5").setFormula(name);
    for (int i = 0; i < gravities.length; i++) {
      cell(log, "A" + (14 + i)).setValue(45_000 + i);
      cell(log, "C" + (14 + i)).setValue(gravities[i]);
      cell(log, "D" + (14 + i)).setValue(22);
    }
  }

  /**
   * Each cut's mean is its pure alcohol in its volume at 20 °C; a jar that lacks a figure is said.
   */
  @ParameterizedTest
  @CsvSource({"pack/still-run-log.xlsx, 1e-9", "portable/still-run-log.ods, 0.003"})
  void theCutsOfARunHaveTheirMeansAndTheirTotal(String name, double share) throws Exception {
    try (washbook.office.testing.Book book = office.open(FOLDER.resolve(name))) {
      XSpreadsheet run = Starters.sheet(book, 3);
      double pure = 0;
      double at20 = 0;
      for (int row = 15; row <= 18; row++) {
        double strength = call("TRUESTRENGTH", value(run, "D" + row), value(run, "E" + row));
        double litres = call("VOLUMEAT20", value(run, "F" + row), value(run, "E" + row), strength);
        at20 += litres;
        pure += litres * strength / 100;
      }
      assertEquals(2.0, value(run, "H6"), 1e-9);
      assertEquals(100 * pure / at20, value(run, "I6"), share * 100);
      assertEquals(pure, value(run, "J6"), Math.max(1e-9, share * 2));
      assertEquals("", text(run, "H9"), "no jar without a cut");
      assertEquals(4.15, value(run, "H10"), 1e-9);
      assertEquals(value(run, "I22"), value(run, "J10"), 1e-9, "the sum of all jars");
      double sum = value(run, "J5") + value(run, "J6") + value(run, "J7");
      assertEquals(sum, value(run, "J10"), 1e-9);
      cell(run, "E16").setFormula("");
      book.recalculate();
      assertEquals("", text(run, "J6"));
      assertEquals("", text(run, "I10"));
      assertEquals("a jar has no strength yet", text(run, "L6"));
      assertEquals("", text(run, "L5"));
    }
  }

  private static XCell cell(XSpreadsheet sheet, String address) throws Exception {
    return sheet.getCellRangeByName(address).getCellByPosition(0, 0);
  }

  private static double value(XSpreadsheet sheet, String address) throws Exception {
    XCell cell = cell(sheet, address);
    assertEquals(0, cell.getError(), address);
    return cell.getValue();
  }

  private static String text(XSpreadsheet sheet, String address) throws Exception {
    return UnoRuntime.queryInterface(XText.class, cell(sheet, address)).getString();
  }

  private static double call(String name, Object... arguments) {
    return ((Answer.Number) Catalogue.get(name).call(arguments)).value();
  }
}
