package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.SafetyNote;

/** The ready sheets of the other languages, made of the English ones as a release makes them. */
class ReadySheetLanguagesTest {
  private static final Path TEXTS = MadeReadySheets.TEXTS;
  private static final Path ENGLISH = MadeReadySheets.ENGLISH;

  /** Units, scales, and words that both languages have. */
  private static final Set<String> SAME =
      Set.of(
          "Date",
          "Total",
          "Minutes",
          "Litres",
          "points",
          "Plan",
          "SG",
          "Fruit",
          "Water",
          "Water (L)",
          "water",
          "no",
          "kg alcohol",
          "kg extract");

  private static final Set<String> STATES =
      Set.of("lag", "working", "slowing", "stuck", "done", "restarted");

  @TempDir static Path ready;

  @BeforeAll
  static void make() throws IOException, InterruptedException {
    MadeReadySheets.into(ready);
  }

  private static Map<String, String> texts(String language) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    for (String line : Files.readAllLines(TEXTS.resolve(language + ".properties"))) {
      String[] parts = line.split(" = ", 2);
      assertEquals(null, texts.put(parts[0], parts[1]), line);
    }
    return texts;
  }

  /** Each text has one in the language, and no English one is left in a sheet. */
  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void everyTextIsInTheLanguage(String language) throws IOException {
    Map<String, String> english = texts("en");
    Map<String, String> others = texts(language);
    assertEquals(english.keySet(), others.keySet());
    english.forEach(
        (key, text) ->
            assertTrue(
                !text.equals(others.get(key)) || SAME.contains(text), language + ": " + key));
    Set<String> englishOnly = new TreeSet<>(english.values());
    englishOnly.removeAll(others.values());
    englishOnly.add(SafetyNote.text());
    List<Path> files = new ArrayList<>(books(ready.resolve(language)));
    files.addAll(books(ready.resolve(language), ".ods"));
    assertEquals(40, files.size());
    for (Path file : files) {
      Set<String> left = said(file);
      left.retainAll(englishOnly);
      // Words of functions, in formulas.
      left.removeAll(STATES);
      left.removeIf(word -> word.equals(word.toUpperCase(Locale.ROOT)));
      assertEquals(Set.of(), left, file.toString());
    }
  }

  @Test
  void noTextIsLeftOver() throws IOException {
    Set<String> unused = new TreeSet<>(texts("en").values());
    unused.removeAll(STATES);
    for (Path file : books(ENGLISH)) {
      String all = String.join("\n", said(file));
      unused.removeIf(all::contains);
    }
    assertEquals(Set.of(), unused);
  }

  private static List<Path> books(Path folder) throws IOException {
    return books(folder, ".xlsx");
  }

  private static List<Path> books(Path folder, String kind) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(kind)).sorted().toList();
    }
  }

  /** Everything between tags, in attributes and in formulas that could be a text. */
  private static Set<String> said(Path file) throws IOException {
    Set<String> said = new TreeSet<>();
    for (String part : parts(file)) {
      for (String text : part.split("<[^>]*?(?=\\s\\w+=\"[A-Z])|[<>]|\"|&quot;")) {
        String plain = text.replace("&apos;", "'").replace("&amp;", "&").replace("\n(", " (");
        said.add(plain.strip());
      }
    }
    return said;
  }

  private static List<String> parts(Path file) throws IOException {
    List<String> parts = new ArrayList<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        if (entry
            .getName()
            .matches(
                "(xl|docProps)/.*(sheet\\d+|drawing\\d+|Strings|workbook|comments\\d+|chart\\d+|core).xml"
                    + "|(Object \\d+/)?content.xml|meta.xml|settings.xml")) {
          try (InputStream in = zip.getInputStream(entry)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            parts.add(text.replaceFirst("<[?]xml[^>]*>", ""));
          }
        }
      }
    }
    return parts;
  }

  /** Where the texts are taken out, a sheet of one language is that of another. */
  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void formulasAndFiguresAreTheSame(String language) throws IOException {
    int formulas = 0;
    for (Path file : books(ready.resolve(language))) {
      Path original = ENGLISH.resolve(ready.resolve(language).relativize(file).toString());
      try (XSSFWorkbook english = open(original);
          XSSFWorkbook other = open(file)) {
        assertEquals(english.getNumberOfSheets(), other.getNumberOfSheets());
        List<String> names = names(english);
        for (int i = 0; i < names.size(); i++) {
          Sheet sheet = other.getSheetAt(i);
          for (Row row : english.getSheetAt(i)) {
            for (Cell cell : row) {
              Cell there = sheet.getRow(row.getRowNum()).getCell(cell.getColumnIndex());
              String where = file + " " + names.get(i) + " " + cell.getAddress();
              assertEquals(cell.getCellType(), there.getCellType(), where);
              if (cell.getCellType() == CellType.FORMULA) {
                assertEquals(bare(cell, names), bare(there, names(other)), where);
                formulas++;
              }
              if (isNumber(cell)) {
                assertEquals(cell.getNumericCellValue(), there.getNumericCellValue(), where);
              }
            }
          }
        }
      }
    }
    assertTrue(formulas > 10_000, formulas + " formulas");
  }

  private static List<String> names(XSSFWorkbook workbook) {
    return Stream.iterate(0, i -> i < workbook.getNumberOfSheets(), i -> i + 1)
        .map(workbook::getSheetName)
        .toList();
  }

  private static boolean isNumber(Cell cell) {
    return cell.getCellType() == CellType.NUMERIC
        || cell.getCellType() == CellType.FORMULA
            && cell.getCachedFormulaResultType() == CellType.NUMERIC;
  }

  /** A formula without words: the state in words of the language is the function's again. */
  private static String bare(Cell cell, List<String> names) {
    String formula = cell.getCellFormula();
    for (int i = 0; i < names.size(); i++) {
      formula = formula.replace("'" + names.get(i) + "'!", i + "!");
      formula = formula.replaceAll("\\b" + Pattern.quote(names.get(i)) + "!", i + "!");
    }
    return formula
        .replaceAll("IFERROR\\(CHOOSE\\(MATCH\\((WASHBOOK\\.FERMENTSTATE[^{]*),\\{.*", "$1)")
        .replaceAll(
            "IFERROR\\(CHOOSE\\(MATCH\\((\\$B\\$\\d+),\\{[^}]*\\},0\\)(,\"[A-Z]+\")+\\),\\1\\)",
            "$1")
        .replaceAll("\"(?![A-Z]+\")[^\"]*+(?:\"\"[^\"]*+)*+\"", "\"\"");
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  /** Typed into as they invite to be, all logs are understood without a question. */
  @Test
  void filledInTheyAreUnderstood(@TempDir Path folder) throws Exception {
    Path logs = folder.resolve("logs");
    for (Path file : books(ready)) {
      if (file.getFileName().toString().startsWith("ferment-log")) {
        fillIn(file, logs.resolve(ready.relativize(file).toString()));
      }
    }
    Washbook.Run run = Washbook.run("fill", logs, "--out", folder.resolve("filled"));
    assertEquals(0, run.exitCode(), run.output());
    List<String> lines = run.output().lines().filter(line -> line.contains("batch ")).toList();
    assertEquals(7 * 2 * 4 * 2, lines.size(), run.output());
    assertEquals(
        Set.of("3 rows, 3 filled, 0 refused", "9 rows, 9 filled, 0 refused"),
        lines.stream()
            .map(line -> line.substring(line.lastIndexOf(": original")).split(", ", 2)[1])
            .collect(Collectors.toSet()));
    assertEquals(56, lines.stream().filter(line -> line.contains("batch Apple 7")).count());
  }

  /** The first sheet, with three readings of a wash. */
  private static void fillIn(Path file, Path to) throws IOException {
    String name = file.getFileName().toString();
    double[] readings =
        name.contains("brix")
            ? new double[] {20, 10.5, 2}
            : name.contains("oechsle")
                ? new double[] {83, 42, 8}
                : new double[] {1.083, 1.042, 1.008};
    try (XSSFWorkbook workbook = open(file)) {
      Sheet log = workbook.getSheetAt(0);
      log.getRow(4).getCell(3).setCellValue("Apple 7");
      for (int i = 0; i < readings.length; i++) {
        log.getRow(13 + i).getCell(0).setCellValue(45_600 + 3 * i);
        log.getRow(13 + i).getCell(2).setCellValue(readings[i]);
        log.getRow(13 + i).getCell(3).setCellValue(name.contains("fahrenheit") ? 70 : 21);
      }
      Files.createDirectories(to.getParent());
      try (OutputStream out = Files.newOutputStream(to)) {
        workbook.write(out);
      }
    }
  }

  @Test
  void theExampleOfARunIsUnderstoodInEveryLanguage(@TempDir Path folder) throws Exception {
    Path runs = folder.resolve("runs");
    for (Path file : books(ready)) {
      if (file.endsWith("still-run-log.xlsx")) {
        Path to = runs.resolve(ready.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
    Washbook.Run run = Washbook.run("fill", runs, "--out", folder.resolve("filled"));
    assertEquals(0, run.exitCode(), run.output());
    assertEquals(
        14, run.output().split("9 jars, 9 filled, 0 refused", -1).length - 1, run.output());
    assertFalse(run.output().contains("\n  refused: "), run.output());
  }
}
