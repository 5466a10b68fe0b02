package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.runner.Office;
import washbook.runner.TestColumn;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.CsvDetector;
import washbook.runner.read.CsvDialect;
import washbook.runner.read.CsvReader;

class CsvTest {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  @TempDir Path directory;

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(directory.resolve(name), bytes);
  }

  private Path file(String text) throws IOException {
    return file("Plum 3.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private String patched(Path file, ColumnPatch... columns) throws IOException {
    Path target = directory.resolve("filled.csv");
    new CsvWriter().write(file, TestColumn.on("Plum 3", columns), target);
    byte[] once = Files.readAllBytes(target);
    Path again = directory.resolve("again.csv");
    new CsvWriter().write(target, TestColumn.on("Plum 3", columns), again);
    assertArrayEquals(once, Files.readAllBytes(again), "a second fill");
    return new String(once, CsvDetector.detect(file).charset());
  }

  private Grid read(String text) throws IOException {
    return new CsvReader().read(file(text)).get(0);
  }

  @Test
  void aColumnGoesRightOfTheTableAndAllElseStays() throws IOException {
    String log =
        "Plum 3\r\n\r\nDate,Gravity,Note\r\n2024-09-01,1.085,\"a\r\nb\"\n2024-09-03,1.060\r\n";
    ColumnPatch abv = TestColumn.of(3, 2, "ABV", 4, 2, Map.of(3, 0.0, 4, 3.456));
    assertEquals(
        "Plum 3\r\n\r\nDate,Gravity,Note,ABV\r\n2024-09-01,1.085,\"a\r\nb\",0.00\n2024-09-03,1.060,,3.46\r\n",
        patched(file(log), abv));
  }

  @Test
  void aRectangularTableStaysOneAndShortRowsStayShort() throws IOException {
    ColumnPatch one = TestColumn.of(2, 0, "A", 4, 1, Map.of(1, 1.0));
    ColumnPatch two = TestColumn.of(3, 0, "B", 4, -1, Map.of(1, "x"));
    assertEquals(
        "d,g,A,B\n1,2,1.0,x\n1,2,,\n\nend,1,,", patched(file("d,g\n1,2\n1,2\n\nend,1"), two, one));
    assertEquals("d,g,A\n1\n", patched(file("d,g\n1\n"), TestColumn.of(2, 0, "A", 1, 1, Map.of())));
  }

  @Test
  void anOldColumnIsRewrittenOnlyWhereItDiffers() throws IOException {
    String log = "d,\"A\",z\n1,\"1.0\",q\n2,9,q\n3,8,q\n";
    ColumnPatch column = TestColumn.of(1, 0, "A", 3, 1, Map.of(1, 1.0, 2, 2.0));
    assertEquals("d,\"A\",z\n1,\"1.0\",q\n2,2.0,q\n3,,q\n", patched(file(log), column));
  }

  @Test
  void whatIsNotOursIsNotReplaced() throws IOException {
    ColumnPatch column = TestColumn.of(1, 0, "A", 1, 1, Map.of(1, 1.0));
    for (String log : List.of("d,B\n1,\n", "d,\n1,9\n")) {
      UnusableFileException refusal =
          assertThrows(UnusableFileException.class, () -> patched(file(log), column));
      assertTrue(refusal.getMessage().startsWith("Cell B"), refusal.getMessage());
    }
  }

  @Test
  void rowsBehindTheEndAreAdded() throws IOException {
    ColumnPatch column = TestColumn.of(1, 0, "A", 3, 0, Map.of(3, 7.0));
    assertEquals("a,A\r\n\r\n\r\n,7\r\n", patched(file("a\r\n"), column));
    assertEquals("a,A\n\n\n,7", patched(file("a"), column));
    assertEquals(",A\n\n\n,7\n", patched(file(""), column));
  }

  @Test
  void numbersTakeTheDecimalMarkOfTheFile() throws IOException {
    ColumnPatch column = TestColumn.of(2, 0, "A", 1, 4, Map.of(1, 1.08456));
    assertEquals("d;g;A\n1;1,085;1,0846\n", patched(file("d;g\n1;1,085\n"), column));
    assertEquals("d;g;A\n1;20.5;1.0846\n", patched(file("d;g\n1;20.5\n"), column));
    assertEquals("d\tg\tA\n1\t20,5\t1,0846\n", patched(file("d\tg\n1\t20,5\n"), column));
    assertEquals("d,g,A\n1,20.5,1.0846\n", patched(file("d,g\n1,20.5\n"), column));
    assertEquals("d,g,A\n1,\"20,5\",\"1,0846\"\n", patched(file("d,g\n1,\"20,5\"\n"), column));
  }

  @Test
  void quotingFollowsTheFile() throws IOException {
    ColumnPatch numbers = TestColumn.of(2, 0, "A", 1, 1, Map.of(1, 2.0));
    ColumnPatch texts = TestColumn.of(3, 0, "B", 1, -1, Map.of(1, "say \"x\", y"));
    assertEquals(
        "\"d\",\"g\",\"A\",\"B\"\n1,2,2.0,\"say \"\"x\"\", y\"\n",
        patched(file("\"d\",\"g\"\n1,2\n"), numbers, texts));
    assertEquals(
        "\"d\",\"g\",\"A\",\"B\"\n\"1\",\"2\",\"2.0\",\"say \"\"x\"\", y\"\n",
        patched(file("\"d\",\"g\"\n\"1\",\"2\"\n"), numbers, texts));
  }

  @Test
  void everyEncodingIsKept() throws IOException {
    String log = "\u00b0C;Gr\u00f6\u00dfe\n20,5;\u20ac\n";
    ColumnPatch column = TestColumn.of(2, 0, "\u00dcber", 1, 1, Map.of(1, 2.0));
    String expected = "\u00b0C;Gr\u00f6\u00dfe;\u00dcber\n20,5;\u20ac;2,0\n";
    String bom = "\ufeff";
    assertEquals(expected, patched(file("a.csv", log.getBytes(WINDOWS_1252)), column));
    assertEquals(expected, patched(file("a.csv", log.getBytes(StandardCharsets.UTF_8)), column));
    for (Charset charset :
        List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      assertEquals(bom + expected, patched(file("a.csv", (bom + log).getBytes(charset)), column));
      Grid grid = new CsvReader().read(directory.resolve("a.csv")).get(0);
      assertEquals("\u00b0C", grid.text(0, 0));
      assertEquals(20.5, grid.number(1, 0));
    }
  }

  @Test
  void aLineThatStatesTheSeparatorIsNoRow() throws IOException {
    Grid grid = read("sep=;\r\nd;g\r\n1;2\r\n");
    assertEquals("d", grid.text(0, 0));
    assertEquals(2, grid.rowCount());
    ColumnPatch column = TestColumn.of(2, 0, "A", 1, 1, Map.of(1, 2.0));
    assertEquals("sep=;\nd;g;A\n1;2;2,0\n", patched(file("sep=;\nd;g\n1;2\n"), column));
  }

  @Test
  void cellsAreNumbersOrTextsAndNeverFormulas() throws IOException {
    Grid grid =
        read(
            "date;gravity;temp;note\n01.09.2024;1,085;20;=1+1\n2024-09-03;1.085;-3,5e1; x \n;;;\n");
    assertEquals("Plum 3", grid.name());
    assertEquals(3, grid.rowCount());
    assertEquals(4, grid.columnCount());
    assertEquals(Kind.TEXT, grid.kind(1, 0));
    assertEquals(1.085, grid.number(1, 1));
    assertEquals(20, grid.number(1, 2));
    assertEquals(Kind.TEXT, grid.kind(1, 3));
    assertFalse(grid.isFormula(1, 3));
    assertEquals(Kind.TEXT, grid.kind(2, 1), "1.085 may be 1085 where commas are decimal");
    assertEquals(-35, grid.number(2, 2));
    assertEquals(" x ", grid.text(2, 3));
    Grid english = read("a,b,c\n1.085,\"1,085\",20.5\n1e400,0x1p3,NaN\n.5,5.,+1\n");
    assertEquals(1.085, english.number(1, 0));
    assertEquals("1,085", english.text(1, 1));
    for (int column = 0; column < 3; column++) {
      assertEquals(Kind.TEXT, english.kind(2, column));
      assertEquals(Kind.NUMBER, english.kind(3, column));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ",|a,b\\n1;2,x\\n3,y",
        ";|a;b\\n1,5;2,5\\n1,6;2,6",
        ";|Date;Gravity;Note\\n01.09.2024;1,085;warm, then cold, then warm",
        ",|Date,Gravity,Note\\n2024-09-01,1.085,warm; then cold; then warm\\n2024-09-02,1.08,x; y; z",
        "tab|a\\tb\\n1,5\\t2",
        ",|Plum 3\\nOrchard co-operative; plums\\nDay,SG\\n1,1.085\\n2,1.080",
      })
  void theSeparatorIsFound(String expected, String text) throws IOException {
    String log = text.replace("\\n", "\n").replace("\\t", "\t");
    CsvDialect dialect = CsvDetector.detect(file(log));
    assertEquals(expected.equals("tab") ? '\t' : expected.charAt(0), dialect.separator());
  }

  @ParameterizedTest
  @ValueSource(strings = {"a,b\n\"1,2\n3,4\n", "a\u0000b,c", "\u0000\u0001\u0002"})
  void whatIsNoTextTableIsRefused(String text) throws IOException {
    Path file = file(text);
    UnusableFileException refusal =
        assertThrows(UnusableFileException.class, () -> new CsvReader().read(file));
    assertTrue(refusal.getMessage().endsWith("."), refusal.getMessage());
  }

  @Test
  void brokenEncodingsAreRefused() throws IOException {
    for (byte[] bytes :
        List.of(
            new byte[] {(byte) 0xff, (byte) 0xfe, 0, 0, 'a', 0, 0, 0},
            new byte[] {(byte) 0xff, (byte) 0xfe, 'a', 0, 'b'},
            new byte[] {(byte) 0xef, (byte) 0xbb, (byte) 0xbf, 'a', (byte) 0xff})) {
      Path file = file("a.csv", bytes);
      assertThrows(UnusableFileException.class, () -> new CsvReader().read(file));
    }
  }

  @Test
  void ourTextsAreNoFormulasInTheOffice() throws Exception {
    List<String> texts = List.of("=1+1", "+2", "-2+3", "@SUM(1)", " =4+4", "\t=5+5", "plain");
    StringBuilder log = new StringBuilder("a,b\n");
    Map<Integer, Object> cells = new HashMap<>();
    for (int i = 0; i < texts.size(); i++) {
      log.append(i).append(",x\n");
      cells.put(i + 1, texts.get(i));
    }
    Path file = file(log.toString());
    Path target = directory.resolve("filled.csv");
    ColumnPatch column = TestColumn.of(2, 0, "=0", texts.size(), -1, cells);
    new CsvWriter().write(file, TestColumn.on("Plum 3", column), target);
    List<String> formulas = new Office(directory).formulas(target).values().iterator().next();
    assertEquals("a,b,'=0", formulas.get(0));
    for (int i = 0; i < texts.size(); i++) {
      String expected = texts.get(i).equals("plain") ? "plain" : "'" + texts.get(i);
      assertEquals(i + ",x," + expected, formulas.get(i + 1));
    }
  }
}
