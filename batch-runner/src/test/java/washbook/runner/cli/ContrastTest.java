package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Letters and curves against what they stand on, in all that is written: at least 4.5 to 1 (WCAG
 * 2.2, success criterion 1.4.3; the ratio by its definitions of contrast ratio and relative
 * luminance). Rules, grids and frames carry no meaning and may be lighter. Dialogs take the colours
 * of the office; the columns of a filled log take those of the log, so they are readable where its
 * own are.
 */
class ContrastTest {
  private static final double LEAST = 4.5;
  private static final Path SHEETS = Path.of("../sample-sheets");
  private static final Path CORPUS = SHEETS.resolve("src/test/resources/corpus");

  @TempDir private Path folder;

  /** The recommendation's own ends, and two greys that are well known to lie about the limit. */
  @ParameterizedTest
  @CsvSource({
    "000000, FFFFFF, 21.00",
    "FFFFFF, FFFFFF, 1.00",
    "767676, FFFFFF, 4.54",
    "777777, FFFFFF, 4.48"
  })
  void theRatioIsThatOfTheRecommendation(String letters, String ground, double expected) {
    assertEquals(expected, ratio(letters, ground), 0.005);
  }

  static double ratio(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String hex) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double part = Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16) / 255.0;
      sum += weights[i] * (part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  private static void check(String letters, String ground, String where) {
    double ratio = ratio(letters, ground);
    assertTrue(ratio >= LEAST, where + ": " + letters + " on " + ground + " is " + ratio);
  }

  /** Every colour of the page but that of rules, on each of its grounds. */
  @Test
  void theReportIsReadableOnEachOfItsGrounds() throws IOException {
    String css;
    try (InputStream in =
        ContrastTest.class.getResourceAsStream("/washbook/runner/report/page.css")) {
      css = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    assertTrue(!css.contains("opacity"), "what is seen through is lighter than its colour");
    Map<String, String> named = new HashMap<>();
    Matcher variable = Pattern.compile("--(\\w+): #(\\w{6});").matcher(css);
    while (variable.find()) {
      named.put(variable.group(1), variable.group(2));
    }
    List<String> grounds = List.of("FFFFFF", named.get("paper"), named.get("band"));
    int checked = 0;
    Matcher used = Pattern.compile("[ ;]((?:color|fill|stroke): [^;}]+)").matcher(css);
    while (used.find()) {
      String value = used.group(1).replaceFirst(".*: ", "");
      if (value.equals("none") || value.equals("inherit") || value.equals("var(--line)")) {
        continue;
      }
      String colour =
          value.startsWith("#")
              ? value.substring(1)
              : named.get(value.substring(6, value.length() - 1));
      for (String ground : grounds) {
        check(colour, ground, used.group(1));
      }
      checked++;
    }
    assertTrue(checked >= 20, checked + " colours");
  }

  @Test
  void readySheetsAndTheirChartsAreReadable() throws IOException {
    int cells = 0;
    // The plain form and the other scales look the same.
    for (String name : List.of("ferment-log", "still-run-log", "plan", "class", "making-up")) {
      cells += book(SHEETS.resolve("starters/pack/" + name + ".xlsx"));
    }
    assertTrue(cells > 3_000, cells + " cells");
  }

  @Test
  void cardsSeasonsAndChartsAreReadable() throws IOException {
    for (String kind : List.of("scales", "hydrometer", "alcoholometer")) {
      for (String form : List.of("svg", "xlsx", "html")) {
        Path file = folder.resolve(kind + "." + form);
        List<String> card = new ArrayList<>(List.of("card", kind, "--out", file.toString()));
        if (form.equals("svg")) {
          card.addAll(List.of("--page", "1"));
        }
        run(card.toArray(String[]::new));
        if (form.equals("xlsx")) {
          assertTrue(book(file) > 50, file.toString());
        } else {
          svg(Files.readString(file), file.toString());
        }
      }
    }
    Path samples = SHEETS.resolve("samples");
    Path season = folder.resolve("season.xlsx");
    run("season", samples.toString(), "--out", season.toString());
    assertTrue(book(season) > 50, season.toString());
    run(
        "fill",
        samples.resolve("plum-3.xlsx").toString(),
        "--chart",
        "--out",
        folder.resolve("filled").toString());
    try (XSSFWorkbook filled = open(folder.resolve("filled/plum-3.xlsx"))) {
      assertEquals(3, charts(filled.getSheet("Washbook charts"), "charts"));
    }
  }

  @Test
  void theColumnsOfAFilledLogAreAsReadableAsItsOwn() throws IOException {
    int cells = 0;
    for (Path from : List.of(SHEETS.resolve("samples"), CORPUS)) {
      try (var logs = Files.newDirectoryStream(from, "*.xlsx")) {
        for (Path log : logs) {
          cells += filled(log);
        }
      }
    }
    assertTrue(cells > 2_500, cells + " cells");
  }

  /** Light letters on dark grounds, which differ between head, rows and what is left of them. */
  @Test
  void theColumnsOfADarkLogAreReadable() throws IOException {
    Path log = folder.resolve("dark.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(log)) {
      XSSFCellStyle head = look(book, "FFFFFF", "1F3A4D");
      XSSFCellStyle even = look(book, "F4EFE6", "23201C");
      XSSFCellStyle odd = look(book, "FFE9A8", "3B352D");
      XSSFSheet sheet = book.createSheet("Log");
      String[] heads = {"Day", "SG", "Temp C"};
      double[][] rows = {{0, 1.085, 20}, {3, 1.05, 21}, {6, 1.02, 20}, {9, 1.004, 19}};
      for (int i = 0; i <= rows.length; i++) {
        Row row = sheet.createRow(i);
        for (int column = 0; column < heads.length; column++) {
          Cell cell = row.createCell(column);
          cell.setCellStyle(i == 0 ? head : i % 2 == 0 ? even : odd);
          if (i == 0) {
            cell.setCellValue(heads[column]);
          } else {
            cell.setCellValue(rows[i - 1][column]);
          }
        }
      }
      book.write(out);
    }
    assertEquals(20, filled(log));
  }

  private static XSSFCellStyle look(XSSFWorkbook book, String letters, String ground) {
    XSSFCellStyle look = book.createCellStyle();
    XSSFFont font = book.createFont();
    font.setColor(new XSSFColor(rgb(letters), null));
    look.setFont(font);
    look.setFillForegroundColor(new XSSFColor(rgb(ground), null));
    look.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    return look;
  }

  private static byte[] rgb(String hex) {
    int value = Integer.parseInt(hex, 16);
    return new byte[] {(byte) (value >> 16), (byte) (value >> 8), (byte) value};
  }

  /** The number of cells that were put in, each of which is readable. */
  private int filled(Path log) throws IOException {
    Path done = folder.resolve("looks").resolve(log.getFileName());
    PrintStream none =
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    Main.run(
        new String[] {"fill", log.toString(), "--out", done.getParent().toString()}, none, none);
    if (!Files.exists(done)) {
      return 0;
    }
    int cells = 0;
    try (XSSFWorkbook before = open(log);
        XSSFWorkbook after = open(done)) {
      for (Sheet sheet : after) {
        Sheet old = before.getSheet(sheet.getSheetName());
        for (Row row : sheet) {
          for (Cell cell : row) {
            Row oldRow = old == null ? null : old.getRow(cell.getRowIndex());
            Cell there = oldRow == null ? null : oldRow.getCell(cell.getColumnIndex());
            boolean isNew = there == null || there.getCellType() == CellType.BLANK;
            if (isNew && cell.getCellType() != CellType.BLANK) {
              check(letters(cell), ground(cell), log + " " + cell.getAddress());
              cells++;
            }
          }
        }
      }
    }
    return cells;
  }

  private static String letters(Cell cell) {
    return hex(((XSSFCellStyle) cell.getCellStyle()).getFont().getXSSFColor(), "000000");
  }

  private static String ground(Cell cell) {
    XSSFCellStyle style = (XSSFCellStyle) cell.getCellStyle();
    boolean filled = style.getFillPattern() == FillPatternType.SOLID_FOREGROUND;
    return hex(filled ? style.getFillForegroundColorColor() : null, "FFFFFF");
  }

  private static void run(String... arguments) {
    PrintStream none =
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    int exit = Main.run(arguments, none, none);
    assertTrue(exit == 0 || exit == 1, List.of(arguments) + " " + exit);
  }

  /** Texts on the boxes that are tinted, and on white. */
  private static void svg(String page, String where) {
    List<String> grounds = new ArrayList<>(List.of("FFFFFF"));
    Matcher box = Pattern.compile("<rect[^>]* fill=\"#(\\w{6})\"").matcher(page);
    while (box.find()) {
      grounds.add(box.group(1));
    }
    int texts = 0;
    Matcher text = Pattern.compile("<text[^>]* fill=\"#(\\w{6})\"").matcher(page);
    while (text.find()) {
      for (String ground : grounds.stream().distinct().toList()) {
        check(text.group(1), ground, where);
      }
      texts++;
    }
    assertTrue(texts > 20, where + " " + texts);
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  /** The number of cells with something in them. */
  private static int book(Path file) throws IOException {
    int cells = 0;
    try (XSSFWorkbook book = open(file)) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            String where = file.getFileName() + " " + sheet.getSheetName() + cell.getAddress();
            check(letters(cell), ground(cell), where);
            cells++;
          }
        }
        rules((XSSFSheet) sheet, file.toString());
        charts((XSSFSheet) sheet, file.toString());
      }
    }
    return cells;
  }

  /** Grounds of warnings, under the black letters of a cell. */
  private static void rules(XSSFSheet sheet, String where) {
    var rules = sheet.getSheetConditionalFormatting();
    for (int i = 0; i < rules.getNumConditionalFormattings(); i++) {
      var pattern = rules.getConditionalFormattingAt(i).getRule(0).getPatternFormatting();
      if (pattern != null) {
        check("000000", hex(pattern.getFillBackgroundColorColor(), "FFFFFF"), where);
      }
    }
  }

  /** Gives the number of charts, whose curves must be seen on white. */
  private static int charts(XSSFSheet sheet, String where) {
    int charts = 0;
    if (sheet.getDrawingPatriarch() != null) {
      for (var chart : sheet.getDrawingPatriarch().getCharts()) {
        Matcher series =
            Pattern.compile("(?s)<c:ser>.*?</c:ser>").matcher(chart.getCTChart().xmlText());
        int coloured = 0;
        while (series.find()) {
          Matcher colour = Pattern.compile("srgbClr val=\"(\\w{6})\"").matcher(series.group());
          while (colour.find()) {
            check(colour.group(1), "FFFFFF", where);
            coloured++;
          }
        }
        assertTrue(coloured > 0, where);
        charts++;
      }
    }
    return charts;
  }

  private static String hex(Object colour, String otherwise) {
    String argb = colour instanceof XSSFColor xssf ? xssf.getARGBHex() : null;
    return argb == null ? otherwise : argb.substring(2);
  }
}
