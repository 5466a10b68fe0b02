package washbook.runner.season;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.sheet.Grid;
import washbook.runner.FileFormats;
import washbook.runner.cli.Cli;
import washbook.runner.report.OverviewColumn;

/** One table of all batches, and its upkeep from run to run. */
class SeasonTest {
  private static final int BATCH = SeasonPage.at(OverviewColumn.BATCH);
  private static final int STATE = SeasonPage.at(OverviewColumn.STATE);
  private static final int FILE = SeasonPage.at(OverviewColumn.FILE);
  private static final int OURS = OverviewColumn.values().length;

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"xlsx", "ods", "csv"})
  void theWinterGoesFromItsFolderToOneTableWithEveryStateRightByConstruction(String kind)
      throws Exception {
    List<WinterBatch> truth = winter();
    Path out = folder.resolve("season." + kind);
    Cli run = season(out);
    assertEquals(0, run.code(), run.out() + run.err());
    assertTrue(run.out().contains(truth.size() + " batches: "), run.out());
    Grid table = table(out);
    int state = kind.equals("csv") ? STATE + 1 : STATE;
    int batch = kind.equals("csv") ? BATCH + 1 : BATCH;
    Map<String, String> found = new TreeMap<>();
    for (int row = 1; row < table.rowCount(); row++) {
      found.put(table.text(row, batch), table.text(row, state));
    }
    Map<String, String> wrong = new TreeMap<>();
    for (WinterBatch one : truth) {
      String wanted = one.state().equals("not falling") ? "stuck" : one.state();
      if (!wanted.equals(found.get(one.name()))) {
        wrong.put(one.toString(), found.get(one.name()));
      }
    }
    assertEquals(Map.of(), wrong);
    assertEquals(List.of("logs", "season." + kind), names(), "nothing else is left behind");
  }

  @Test
  void batchesAreSortedByDateAndLinkedToTheirFiles() throws Exception {
    winter();
    Path out = folder.resolve("season.xlsx");
    season(out);
    try (XSSFWorkbook book = open(out)) {
      XSSFSheet sheet = book.getSheet("Season");
      double before = 0;
      for (int row = 4; row <= sheet.getLastRowNum(); row++) {
        XSSFRow line = sheet.getRow(row);
        double day = line.getCell(SeasonPage.at(OverviewColumn.FIRST)).getNumericCellValue();
        assertTrue(day >= before);
        before = day;
        String link = line.getCell(FILE).getHyperlink().getAddress();
        assertTrue(Files.exists(folder.resolve(URI.create(link).getPath())), link);
      }
      XSSFSheet curves = book.getSheet("Season curves");
      assertEquals(2, curves.getDrawingPatriarch().getCharts().size());
      assertTrue(book.getSheet("Season warnings").getLastRowNum() > 30);
    }
  }

  @Test
  void whatThePersonAddedIsKeptWithItsBatchWhenBatchesComeAndGo() throws Exception {
    Path logs = Files.createDirectory(folder.resolve("logs"));
    log(logs, "Plum 3", "2025-10-10");
    log(logs, "Apple 7", "2025-11-10");
    Path out = folder.resolve("season.xlsx");
    season(out);
    try (XSSFWorkbook book = open(out)) {
      XSSFSheet sheet = book.getSheet("Season");
      assertEquals("Plum 3", sheet.getRow(4).getCell(BATCH).getStringCellValue());
      sheet.getRow(3).createCell(OURS).setCellValue("Taste");
      sheet.getRow(3).createCell(OURS + 1).setCellValue("Twice");
      sheet.getRow(4).createCell(OURS).setCellValue("like almonds");
      sheet.getRow(5).createCell(OURS).setCellValue(7);
      sheet.getRow(5).createCell(OURS + 1).setCellFormula("2*W6+$W$4+Mine!A1");
      book.createSheet("Mine").createRow(0).createCell(0).setCellValue(40);
      save(book, out);
    }
    log(logs, "Sugar 4", "2025-10-20");
    Files.delete(logs.resolve("Plum 3.csv"));
    assertEquals(0, season(out).code());
    try (XSSFWorkbook book = open(out)) {
      XSSFSheet sheet = book.getSheet("Season");
      assertEquals(
          List.of("Sugar 4", "Apple 7", "Plum 3"),
          Stream.of(4, 5, 6)
              .map(i -> sheet.getRow(i).getCell(BATCH).getStringCellValue())
              .toList());
      assertEquals("Taste", sheet.getRow(3).getCell(OURS).getStringCellValue());
      assertEquals(7, sheet.getRow(5).getCell(OURS).getNumericCellValue());
      assertEquals("2*W6+$W$4+Mine!A1", sheet.getRow(5).getCell(OURS + 1).getCellFormula());
      assertEquals("like almonds", sheet.getRow(6).getCell(OURS).getStringCellValue());
      assertEquals("in no log any more", sheet.getRow(6).getCell(STATE).getStringCellValue());
      assertEquals(40, book.getSheet("Mine").getRow(0).getCell(0).getNumericCellValue());
    }
    log(logs, "Molasses 2", "2025-09-20");
    Cli again = season(out);
    assertEquals(0, again.code(), again.out() + again.err());
    try (XSSFWorkbook book = open(out)) {
      XSSFCell moved = book.getSheet("Season").getRow(6).getCell(OURS + 1);
      assertEquals("2*W7+$W$4+Mine!A1", moved.getCellFormula());
    }
  }

  /** Programs have limits for them, and a winter has a hundred days. */
  @Test
  void updatesThatChangeNothingAddNoFontsAndNoFormats() throws Exception {
    Path logs = Files.createDirectory(folder.resolve("logs"));
    log(logs, "Plum 3", "2025-10-10");
    Path out = folder.resolve("season.xlsx");
    season(out);
    List<Integer> first = looks(out);
    for (int i = 0; i < 3; i++) {
      season(out);
      assertEquals(first, looks(out));
    }
  }

  /** How many fonts, formats of numbers, formats of cells, fills and borders there are. */
  private static List<Integer> looks(Path file) throws IOException {
    try (XSSFWorkbook book = open(file)) {
      StylesTable styles = book.getStylesSource();
      return List.of(
          styles.getFonts().size(),
          styles.getNumberFormats().size(),
          styles.getNumCellStyles(),
          styles.getFills().size(),
          styles.getBorders().size());
    }
  }

  @Test
  void aWorkbookBroughtUpToDateManyTimesDoesNotGrow() throws Exception {
    winter();
    Path out = folder.resolve("season.xlsx");
    season(out);
    List<String> first = parts(out);
    season(out);
    season(out);
    assertEquals(first, parts(out));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ods", "csv"})
  void furtherColumnsAreKeptInOtherKindsToo(String kind) throws Exception {
    Path logs = Files.createDirectory(folder.resolve("logs"));
    log(logs, "Plum 3", "2025-10-10");
    Path out = folder.resolve("season." + kind);
    season(out);
    addColumn(out, kind, "Taste", "like almonds & honey");
    log(logs, "Sugar 4", "2025-10-02");
    Cli run = season(out);
    assertEquals(0, run.code(), run.err());
    Grid table = table(out);
    int column = table.columnCount() - 1;
    List<String> last = new ArrayList<>();
    for (int row = 0; row < table.rowCount(); row++) {
      last.add(table.text(row, column));
    }
    last.removeIf(String::isEmpty);
    assertEquals(List.of("Taste", "like almonds & honey"), last);
  }

  @Test
  void aFileThatIsNoSeasonIsNotReplaced() throws Exception {
    Path logs = Files.createDirectory(folder.resolve("logs"));
    Path log = log(logs, "Plum 3", "2025-10-10");
    byte[] before = Files.readAllBytes(log);
    for (String name : List.of("logs/Plum 3.csv", "other.html", "other.xlsx", "notes.txt")) {
      Path out = folder.resolve(name);
      if (!Files.exists(out)) {
        Files.writeString(out, "mine");
      }
      Cli run = season(out);
      assertEquals(2, run.code(), name + run.err());
    }
    assertArrayEquals(before, Files.readAllBytes(log));
    assertEquals("mine", Files.readString(folder.resolve("other.xlsx")));
  }

  @Test
  void aNoteUnderNoHeadOrOfNoBatchIsNeverLost() throws Exception {
    Path logs = Files.createDirectory(folder.resolve("logs"));
    log(logs, "Plum 3", "2025-10-10");
    Path out = folder.resolve("season.xlsx");
    season(out);
    byte[] clean = Files.readAllBytes(out);
    for (int[] place : new int[][] {{4, OURS + 3}, {9, OURS}}) {
      Files.write(out, clean);
      try (XSSFWorkbook book = open(out)) {
        XSSFSheet sheet = book.getSheet("Season");
        XSSFRow row =
            sheet.getRow(place[0]) == null ? sheet.createRow(place[0]) : sheet.getRow(place[0]);
        row.createCell(place[1]).setCellValue("mine");
        save(book, out);
      }
      byte[] before = Files.readAllBytes(out);
      Cli run = season(out);
      assertEquals(3, run.code());
      assertTrue(run.err().contains("Nothing was written"), run.err());
      assertArrayEquals(before, Files.readAllBytes(out));
    }
  }

  @Test
  void theSeasonIsNoLogAndAWatchedFolderMayHoldIt() throws Exception {
    Path logs = Files.createDirectory(folder.resolve("logs"));
    log(logs, "Plum 3", "2025-10-10");
    Path out = logs.resolve("season.xlsx");
    Cli watch =
        Cli.run(
            "watch",
            logs.toString(),
            "--out",
            folder.resolve("computed").toString(),
            "--once",
            "--settle",
            "0",
            "--journal",
            folder.resolve("journal").toString(),
            "--season",
            out.toString());
    assertEquals(0, watch.code(), watch.out() + watch.err());
    assertEquals("Plum 3", table(out).text(4, BATCH));
    byte[] before = Files.readAllBytes(out);
    Cli fill = Cli.run("fill", logs.toString(), "--in-place");
    assertTrue(fill.out().contains("season.xlsx: nothing recognised"), fill.out());
    assertArrayEquals(before, Files.readAllBytes(out));
  }

  @Test
  void pageAndJsonHoldTheBatchesTheWarningsAndTheSafetyNote() throws Exception {
    winter();
    Path page = folder.resolve("season.html");
    Path json = folder.resolve("season.json");
    for (int i = 0; i < 2; i++) {
      assertEquals(0, season(page).code());
      assertEquals(0, season(json).code());
    }
    String text = Files.readString(page);
    assertTrue(text.contains("href=\"./logs/barn/Apple%2021.xlsx\""));
    assertTrue(text.contains("What to look at"));
    assertFalse(
        text.contains("Drawn are the latest 60 batches of each kind.")
            && !text.contains("class=\"over"));
    JsonObject whole = JsonParser.parseString(Files.readString(json)).getAsJsonObject();
    assertEquals(81, whole.getAsJsonArray("season").size());
    assertTrue(whole.get("safety").getAsString().contains("vapour"));
  }

  private List<WinterBatch> winter() throws IOException {
    Path logs = Files.createDirectory(folder.resolve("logs"));
    return new Winter(LocalDate.now().minusDays(1)).write(logs);
  }

  private Cli season(Path out) {
    return Cli.run("season", folder.resolve("logs").toString(), "--out", out.toString());
  }

  private static Path log(Path logs, String name, String day) throws IOException {
    LocalDate begin = LocalDate.parse(day);
    StringBuilder text = new StringBuilder("Date,Gravity SG,Temp C,Remarks\n");
    double[] gravities = {1.070, 1.062, 1.040, 1.015, 1.002, 0.999, 0.998, 0.998};
    for (int i = 0; i < gravities.length; i++) {
      text.append(begin.plusDays(2 * i)).append(',').append(gravities[i]);
      text.append(",20,").append(i == 0 ? "yeast in" : "").append('\n');
    }
    return Files.writeString(logs.resolve(name + ".csv"), text);
  }

  private static Grid table(Path file) throws IOException {
    for (Grid grid : FileFormats.of(file).reader().read(file)) {
      if (SeasonFile.isTable(grid)) {
        return grid;
      }
    }
    throw new AssertionError("no table in " + file);
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  private static void save(XSSFWorkbook book, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
  }

  private static List<String> parts(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      return zip.stream().map(entry -> entry.getName()).sorted().collect(Collectors.toList());
    }
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** As a person's program would: one more head and one more value in the batch's row. */
  private static void addColumn(Path file, String kind, String head, String value)
      throws IOException {
    if (kind.equals("csv")) {
      List<String> lines = new ArrayList<>(Files.readAllLines(file));
      lines.set(0, lines.get(0) + "," + head);
      lines.set(1, lines.get(1) + "," + value);
      Files.write(file, lines);
      return;
    }
    try (FileSystem zip = FileSystems.newFileSystem(file)) {
      Path content = zip.getPath("content.xml");
      String cell =
          "<table:table-cell office:value-type=\"string\"><text:p>%s</text:p></table:table-cell>";
      String text = Files.readString(content);
      text =
          text.replaceFirst(
              "</table:table-row></table:table-header-rows>", cell.formatted(head) + "$0");
      int row = text.indexOf("</table:table-row>", text.indexOf("</table:table-header-rows>"));
      String shown = value.replace("&", "&amp;");
      text = text.substring(0, row) + cell.formatted(shown) + text.substring(row);
      Files.writeString(content, text);
    }
  }
}
