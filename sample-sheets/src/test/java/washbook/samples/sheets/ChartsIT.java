package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XTableChart;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.language.Language;
import washbook.log.understand.ChartsSheet;
import washbook.office.testing.Office;

/**
 * {@code fill --chart} on the samples: nothing else moves, and the real office draws the charts.
 */
class ChartsIT {
  private static final Set<String> LISTS =
      Set.of(
          "[Content_Types].xml",
          "xl/workbook.xml",
          "xl/_rels/workbook.xml.rels",
          "content.xml",
          "META-INF/manifest.xml");

  @TempDir private Path folder;

  @Test
  void onlyTheListsOfPartsDifferAndASecondFillGivesTheSameBytes()
      throws IOException, InterruptedException {
    Map<String, Integer> newParts =
        Map.of("plum-3.xlsx", 7, "molasses-2-messy.xlsx", 7, "apple-7.ods", 3);
    for (Map.Entry<String, Integer> sample : newParts.entrySet()) {
      Path log = GoldenTest.SAMPLES.resolve(sample.getKey());
      Path plain = fill(log, "plain");
      Path charts = fill(log, "charts", "--chart");
      Map<String, byte[]> before = entries(plain);
      Map<String, byte[]> after = entries(charts);
      int same = 0;
      for (Map.Entry<String, byte[]> entry : before.entrySet()) {
        assertNotNull(after.get(entry.getKey()), entry.getKey());
        if (!LISTS.contains(entry.getKey())) {
          assertArrayEquals(entry.getValue(), after.get(entry.getKey()), entry.getKey());
          same++;
        }
      }
      assertTrue(same > 5, sample.getKey() + ": " + same);
      Set<String> added = new TreeSet<>(after.keySet());
      added.removeAll(before.keySet());
      assertEquals(sample.getValue(), added.size(), added.toString());
      Path again = fill(charts, "again", "--chart");
      assertEquals(-1, Files.mismatch(charts, again), sample.getKey() + " filled twice");
      Path without = fill(charts, "without");
      assertEquals(-1, Files.mismatch(charts, without), sample.getKey() + " filled without");
    }
  }

  @Test
  void theOfficeShowsTheChartsAndASheetThatItSavedIsDrawnAnew()
      throws IOException, InterruptedException {
    try (Office office = Office.plain()) {
      for (String name : new String[] {"plum-3.xlsx", "apple-7.ods"}) {
        Path charts = fill(GoldenTest.SAMPLES.resolve(name), "charts", "--chart");
        Path saved = folder.resolve("saved-" + name);
        try (washbook.office.testing.Book book = office.open(charts)) {
          seesThreeCharts(book);
          book.save(saved);
        }
        Path again = fill(saved, "again", "--chart");
        try (washbook.office.testing.Book book = office.open(again)) {
          seesThreeCharts(book);
        }
        assertEquals(-1, Files.mismatch(again, fill(again, "third", "--chart")), name);
      }
    }
  }

  private static void seesThreeCharts(washbook.office.testing.Book book) {
    try {
      Object found =
          book.as(XSpreadsheetDocument.class).getSheets().getByName(ChartsSheet.name(Language.EN));
      XSpreadsheet sheet = UnoRuntime.queryInterface(XSpreadsheet.class, found);
      var charts = UnoRuntime.queryInterface(XTableChartsSupplier.class, sheet).getCharts();
      String[] names = charts.getElementNames();
      assertEquals(3, names.length);
      for (String name : names) {
        XTableChart chart = UnoRuntime.queryInterface(XTableChart.class, charts.getByName(name));
        assertTrue(chart.getRanges().length > 0, name + " has no cells to draw");
      }
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void formatsWithoutChartsAndForeignSheetsOfTheNameAreFilledWithAWord()
      throws IOException, InterruptedException {
    Washbook.Run csv = run(GoldenTest.SAMPLES.resolve("sugar-4.csv"), "refused", "--chart");
    assertEquals(1, csv.exitCode(), csv.output());
    assertTrue(csv.output().contains("cannot hold charts"), csv.output());
    assertTrue(Files.exists(folder.resolve("refused").resolve("sugar-4.csv")));
    Path foreign = folder.resolve("foreign.xlsx");
    try (InputStream in = Files.newInputStream(GoldenTest.SAMPLES.resolve("plum-3.xlsx"));
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        var out = Files.newOutputStream(foreign)) {
      workbook.createSheet("washbook CHARTS").createRow(0).createCell(0).setCellValue("mine");
      workbook.write(out);
    }
    Washbook.Run own = run(foreign, "refused", "--chart");
    assertEquals(1, own.exitCode(), own.output());
    assertTrue(own.output().contains("that is not ours"), own.output());
    Washbook.Run columns = run(foreign, "refused", "--chart", "--columns", "sugar");
    assertEquals(2, columns.exitCode(), columns.output());
  }

  private Path fill(Path log, String into, String... options)
      throws IOException, InterruptedException {
    Washbook.Run run = run(log, into, options);
    assertTrue(run.exitCode() <= 1, run.output());
    return folder.resolve(into).resolve(log.getFileName());
  }

  private Washbook.Run run(Path log, String into, String... options)
      throws IOException, InterruptedException {
    Object[] arguments = new Object[options.length + 4];
    System.arraycopy(options, 0, arguments, 4, options.length);
    arguments[0] = "fill";
    arguments[1] = log;
    arguments[2] = "--out";
    arguments[3] = folder.resolve(into);
    return Washbook.run(arguments);
  }

  private static Map<String, byte[]> entries(Path file) throws IOException {
    Map<String, byte[]> entries = new TreeMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : zip.stream().toList()) {
        try (InputStream in = zip.getInputStream(entry)) {
          entries.put(entry.getName(), in.readAllBytes());
        }
      }
    }
    return entries;
  }
}
