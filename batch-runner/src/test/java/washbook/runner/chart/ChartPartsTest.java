package washbook.runner.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.WrittenScale;
import washbook.log.fill.BatchCurve;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;
import washbook.runner.OdsSamples;
import washbook.runner.TestLogs;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.OdsReader;

/** The sheet with charts goes into packages that other programs have put together otherwise. */
class ChartPartsTest {
  private static final String TYPES = "[Content_Types].xml";
  private static final String LISTS = "xl/_rels/workbook.xml.rels";
  private static final String MANIFEST = "META-INF/manifest.xml";
  private static final String RELATIONS_TYPE =
      "application/vnd.openxmlformats-package.relationships+xml";
  private static final List<BatchCurve> CURVES =
      List.of(
          new BatchCurve(
              "Plum 3",
              "Log",
              true,
              new double[] {0, 3, 6},
              new double[] {1.085, 1.05, 1.02},
              new double[] {0, 4.6, 8.7},
              new double[] {20, 22, 21}));

  @TempDir private Path folder;

  @Test
  void aPackageThatTypesEachRelationshipPartByItselfStaysWhole() throws IOException {
    Path log = TestLogs.plain(folder.resolve("log.xlsx"), 1.085, 4);
    String override = "<Override PartName=\"%s\" ContentType=\"" + RELATIONS_TYPE + "\"/>";
    change(
        log,
        TYPES,
        types ->
            types
                .replaceAll("<Default [^>]*Extension=\"rels\"[^>]*/>", "")
                .replace(
                    "</Types>",
                    override.formatted("/_rels/.rels")
                        + override.formatted("/xl/_rels/workbook.xml.rels")
                        + "</Types>"));
    Path charts = charts(log, Optional.empty());
    everyPartHasAType(charts);
    assertEquals(3, charts(charts));
    Path again = folder.resolve("again.xlsx");
    new XlsxChartWriter().write(charts, CURVES, Optional.of("Washbook charts"), again);
    assertEquals(-1, Files.mismatch(charts, again));
  }

  @Test
  void aPackageWithNoTypeForXmlOrRelationshipsGetsOneForEachNewPart() throws IOException {
    Path log = TestLogs.plain(folder.resolve("log.xlsx"), 1.085, 4);
    change(log, TYPES, types -> types.replaceAll("<Default [^>]*/>", ""));
    Map<String, byte[]> before = entries(log);
    Path charts = charts(log, Optional.empty());
    String types = text(charts, TYPES);
    for (String part : entries(charts).keySet()) {
      assertTrue(before.containsKey(part) || types.contains("PartName=\"/" + part + "\""), part);
    }
  }

  @Test
  void listsWithEndTagsAndCommentsAreDrawnAnewWithoutALeftover() throws IOException {
    Path log = TestLogs.plain(folder.resolve("log.xlsx"), 1.085, 4);
    Path charts = charts(log, Optional.empty());
    UnaryOperator<String> withEndTags =
        list ->
            list.replaceAll(
                    "<((?:Override|Relationship) [^>]*[^/>])/>", "\n <!-- one --> <$1></$1>")
                .replaceAll("</(Override|Relationship) [^>]*>", "</$1>");
    change(charts, TYPES, withEndTags);
    change(charts, LISTS, withEndTags);
    Path again = folder.resolve("again.xlsx");
    new XlsxChartWriter().write(charts, CURVES, Optional.of("Washbook charts"), again);
    everyPartHasAType(again);
    assertEquals(3, charts(again));
    assertEquals(
        1,
        count(
            text(again, TYPES),
            "washbook-charts.xml\""
                + " ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml"));
  }

  @Test
  void aRelationshipWithARoundaboutTargetLeadsToTheNewSheet() throws IOException {
    Path charts = charts(TestLogs.plain(folder.resolve("log.xlsx"), 1.085, 4), Optional.empty());
    change(
        charts,
        LISTS,
        list ->
            list.replace(
                "\"/xl/worksheets/washbook-charts.xml\"",
                "\"../xl/./worksheets/washbook-charts.xml\""));
    Path again = folder.resolve("again.xlsx");
    new XlsxChartWriter().write(charts, CURVES, Optional.of("Washbook charts"), again);
    assertEquals(3, charts(again));
    assertTrue(text(again, LISTS).contains("\"/xl/worksheets/washbook-charts.xml\""));
  }

  @Test
  void aChartsSheetThatItsUserRenamedStaysAndANewOneStandsBesideIt() throws IOException {
    Path charts = charts(TestLogs.plain(folder.resolve("log.xlsx"), 1.085, 4), Optional.empty());
    change(charts, "xl/workbook.xml", list -> list.replace("Washbook charts", "Autumn"));
    Path both = folder.resolve("both.xlsx");
    new XlsxChartWriter().write(charts, CURVES, Optional.empty(), both);
    everyPartHasAType(both);
    assertEquals(6, charts(both));
    Path again = folder.resolve("again.xlsx");
    new XlsxChartWriter().write(both, CURVES, Optional.of("Washbook charts"), again);
    assertEquals(-1, Files.mismatch(both, again));
  }

  @Test
  void numbersAreFoldedAwayAndEachBatchHasAPageAndItsOwnUnit() throws IOException {
    BatchCurve first = CURVES.get(0);
    BatchCurve warm =
        new BatchCurve(
            "Molasses 2",
            "Log",
            true,
            first.days(),
            first.gravity(),
            first.abv(),
            first.temperatureC(),
            WrittenScale.SG,
            TemperatureUnit.F,
            Language.EN);
    Path log = TestLogs.plain(folder.resolve("log.xlsx"), 1.085, 4);
    Path charts = folder.resolve("charts.xlsx");
    new XlsxChartWriter().write(log, List.of(first, warm), Optional.empty(), charts);
    try (InputStream in = Files.newInputStream(charts);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFSheet sheet = workbook.getSheet("Washbook charts");
      assertEquals(1, sheet.getRowBreaks().length);
      int numbers = 0;
      for (var row : sheet) {
        for (var cell : row) {
          boolean number = cell.getCellType() == CellType.NUMERIC;
          numbers += number ? 1 : 0;
          assertTrue(!number || row.getZeroHeight() && row.getOutlineLevel() == 1);
        }
      }
      assertEquals(24, numbers);
      int last = sheet.getLastRowNum();
      assertEquals(69.8, sheet.getRow(last).getCell(3).getNumericCellValue(), 1e-9);
      assertEquals("Molasses 2", sheet.getRow(last).getCell(5).getStringCellValue());
    }
    String chart = text(charts, "xl/charts/washbook-chart6.xml");
    assertTrue(chart.contains("Temperature of the wash (°F)"), chart);
    assertTrue(chart.contains("<c:plotVisOnly val=\"0\"/>"), chart);
  }

  @Test
  void anOdsWithIndentedOrCommentedContentTakesCharts() throws Exception {
    Path log = OdsSamples.log(folder);
    change(
        log,
        "content.xml",
        content ->
            content
                .replace("<table:table ", "\n  <!-- a sheet -->\n  <table:table ")
                .replace("</table:table>", "</table:table>\n  <?pi of another?>\n")
                .replace("<office:body>", "\n<office:body>\n")
                .replace("</office:spreadsheet>", "\n </office:spreadsheet>\n"));
    Path charts = folder.resolve("charts.ods");
    new OdsChartWriter().write(log, CURVES, Optional.empty(), charts);
    List<String> before = new OdsReader().read(log).stream().map(Grid::name).toList();
    List<String> after = new OdsReader().read(charts).stream().map(Grid::name).toList();
    assertEquals(before, after.subList(0, before.size()));
    assertEquals("Washbook charts", after.get(before.size()));
    Path again = folder.resolve("again.ods");
    new OdsChartWriter().write(charts, CURVES, Optional.of("Washbook charts"), again);
    assertEquals(-1, Files.mismatch(charts, again));
  }

  @Test
  void aManifestWithAnotherPrefixWithEndTagsOrMissingListsTheCharts() throws Exception {
    Path log = OdsSamples.log(folder);
    String with = "WashbookChart1/content.xml";
    change(
        log, MANIFEST, list -> list.replace("manifest:", "m:").replace(":m:1.0", ":manifest:1.0"));
    Path other = folder.resolve("other.ods");
    new OdsChartWriter().write(log, CURVES, Optional.empty(), other);
    assertTrue(text(other, MANIFEST).contains("<m:file-entry m:full-path=\"" + with));
    change(
        other,
        MANIFEST,
        list ->
            list.replace(
                    "xmlns:m=",
                    "xmlns=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\" xmlns:m=")
                .replaceAll("<m:file-entry([^>]*)/>", "<file-entry$1></file-entry>")
                .replaceAll("(</?)m:", "$1"));
    Path again = folder.resolve("again.ods");
    new OdsChartWriter().write(other, CURVES, Optional.of("Washbook charts"), again);
    assertEquals(1, count(text(again, MANIFEST), "<file-entry m:full-path=\"" + with));
    change(log, MANIFEST, list -> null);
    Path made = folder.resolve("made.ods");
    new OdsChartWriter().write(log, CURVES, Optional.empty(), made);
    assertTrue(text(made, MANIFEST).contains("full-path=\"styles.xml\""));
    assertTrue(text(made, MANIFEST).contains("full-path=\"" + with));
  }

  @Test
  void anOdsWhosePrefixesAreOthersIsRefusedWithAWordAndNotReadAsBlank() throws Exception {
    Path log = OdsSamples.log(folder);
    change(
        log,
        "content.xml",
        content ->
            content
                .replace("xmlns:table=", "xmlns:t=")
                .replace("table:", "t:")
                .replace(":t:1.0", ":table:1.0"));
    UnusableFileException refused =
        assertThrows(UnusableFileException.class, () -> new OdsReader().read(log));
    assertTrue(refused.getMessage().contains("prefixes"), refused.getMessage());
  }

  private Path charts(Path log, Optional<String> older) throws IOException {
    Path charts = folder.resolve("charts.xlsx");
    new XlsxChartWriter().write(log, CURVES, older, charts);
    return charts;
  }

  /** How many charts a strict reader of the package finds. */
  private static int charts(Path file) throws IOException {
    int charts = 0;
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      for (var sheet : workbook) {
        var drawing = ((XSSFSheet) sheet).getDrawingPatriarch();
        charts += drawing == null ? 0 : drawing.getCharts().size();
      }
    }
    return charts;
  }

  private static void everyPartHasAType(Path file) throws IOException {
    String types = text(file, TYPES);
    for (String part : entries(file).keySet()) {
      String extension = part.substring(part.lastIndexOf('.') + 1);
      boolean typed =
          types.contains("PartName=\"/" + part + "\"")
              || types.matches("(?s).*<Default [^>]*Extension=\"" + extension + "\".*");
      assertTrue(typed || part.equals(TYPES), part + " has no type");
    }
    assertFalse(types.isEmpty());
  }

  private static int count(String text, String sought) {
    return text.split(Pattern.quote(sought), -1).length - 1;
  }

  private static String text(Path file, String part) throws IOException {
    return new String(entries(file).get(part), StandardCharsets.UTF_8);
  }

  /** Gives a part another text, or takes it out where that is null. */
  private static void change(Path file, String part, UnaryOperator<String> by) throws IOException {
    Map<String, byte[]> entries = entries(file);
    String changed = by.apply(new String(entries.get(part), StandardCharsets.UTF_8));
    if (changed == null) {
      entries.remove(part);
    } else {
      entries.put(part, changed.getBytes(StandardCharsets.UTF_8));
    }
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        zip.putNextEntry(new ZipEntry(entry.getKey()));
        zip.write(entry.getValue());
        zip.closeEntry();
      }
    }
  }

  private static Map<String, byte[]> entries(Path file) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        zip.transferTo(bytes);
        entries.put(entry.getName(), bytes.toByteArray());
      }
    }
    return entries;
  }
}
