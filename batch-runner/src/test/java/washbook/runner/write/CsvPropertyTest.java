package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.TestColumn;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.CsvDetector;
import washbook.runner.read.CsvDialect;
import washbook.runner.read.CsvReader;
import washbook.runner.read.CsvScanner;

class CsvPropertyTest {
  private static final int FILES = 500;

  @TempDir Path directory;

  /** A text table with its dirt. */
  private record Made(
      String bom, Charset charset, char separator, List<List<String>> rows, List<String> ends) {

    byte[] bytes() {
      StringBuilder text = new StringBuilder(bom);
      for (int i = 0; i < rows.size(); i++) {
        text.append(String.join(String.valueOf(separator), rows.get(i))).append(ends.get(i));
      }
      return text.toString().getBytes(charset);
    }
  }

  private static Made make(Random random) {
    int encoding = random.nextInt(5);
    Charset charset =
        switch (encoding) {
          case 0, 1 -> StandardCharsets.UTF_8;
          case 2 -> StandardCharsets.UTF_16LE;
          case 3 -> StandardCharsets.UTF_16BE;
          default -> Charset.forName("windows-1252");
        };
    char separator = ",;\t".charAt(random.nextInt(3));
    String usual = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
    int columns = 2 + random.nextInt(6);
    List<List<String>> rows = new ArrayList<>();
    List<String> ends = new ArrayList<>();
    int count = 4 + random.nextInt(30);
    for (int i = 0; i < count; i++) {
      List<String> row = new ArrayList<>();
      int width = random.nextInt(6) == 0 ? random.nextInt(columns + 1) : columns;
      for (int j = 0; j < width; j++) {
        row.add(field(random, separator));
      }
      rows.add(row.isEmpty() ? List.of("") : row);
      ends.add(random.nextInt(10) == 0 ? "\r\n" : usual);
    }
    // A byte that is not UTF-8 settles the encoding; a full row settles the width.
    rows.set(0, new ArrayList<>(Collections.nCopies(columns, "12")));
    rows.get(0).set(0, "Gr\u00f6\u00dfe");
    if (random.nextInt(3) == 0) {
      ends.set(count - 1, "");
      rows.set(count - 1, List.of("end"));
    }
    return new Made(encoding >= 1 && encoding <= 3 ? "\ufeff" : "", charset, separator, rows, ends);
  }

  private static String field(Random random, char separator) {
    return switch (random.nextInt(9)) {
      case 0 -> "";
      case 1 -> "\"a" + separator + "b\"";
      case 2 -> "\"two\r\nlines \"\"here\"\"\"";
      case 3 -> "\u00b0 \u20ac";
      case 4 -> "inch\" mark";
      case 5 -> " ";
      default -> String.valueOf(random.nextInt(100));
    };
  }

  @Test
  void removingTheNewFieldsGivesTheOldBytes() throws IOException {
    Random random = new Random(20240901);
    int added = 0;
    for (int i = 0; i < FILES; i++) {
      Made made = make(random);
      byte[] old = made.bytes();
      Path source = Files.write(directory.resolve("source.csv"), old);
      CsvDialect dialect = CsvDetector.detect(source);
      assertEquals(made.separator(), dialect.separator(), () -> "separator of\n" + new String(old));
      assertEquals(made.charset(), dialect.charset());
      int width = made.rows().stream().mapToInt(List::size).max().orElseThrow();
      Map<Integer, Object> cells = new HashMap<>();
      for (int row = 1; row < made.rows().size(); row++) {
        switch (random.nextInt(4)) {
          case 0 -> cells.put(row, "text \"x\"" + made.separator());
          case 1 -> {}
          default -> cells.put(row, random.nextInt(1000) / 10.0);
        }
      }
      ColumnPatch column = TestColumn.of(width, 0, "New", made.rows().size() - 1, 1, cells);
      Path target = directory.resolve("target.csv");
      new CsvWriter().write(source, TestColumn.on("source", column), target);
      byte[] filled = Files.readAllBytes(target);
      added += check(made, dialect, width, cells, filled);
      Path again = directory.resolve("again.csv");
      new CsvWriter().write(target, TestColumn.on("source", column), again);
      assertArrayEquals(filled, Files.readAllBytes(again), "a second fill");
    }
    assertEquals(true, added > 10 * FILES, "fields added: " + added);
  }

  private static int check(
      Made made, CsvDialect dialect, int width, Map<Integer, Object> cells, byte[] filled)
      throws IOException {
    ByteArrayInputStream in = new ByteArrayInputStream(filled);
    ByteArrayOutputStream rest = new ByteArrayOutputStream();
    rest.writeBytes(in.readNBytes(dialect.prefixLength()));
    CsvScanner scanner = new CsvScanner(in, made.charset(), made.separator());
    int added = 0;
    for (int row = 0; scanner.next(); row++) {
      List<String> before = made.rows().get(row);
      boolean wasEmpty = before.equals(List.of(""));
      int cut = wasEmpty ? 0 : scanner.fieldEnd(before.size() - 1);
      rest.write(scanner.record(), 0, cut);
      rest.writeBytes(scanner.lineEnd().getBytes(made.charset()));
      Object expected = row == 0 ? "New" : cells.get(row);
      if (expected != null) {
        assertEquals(width + 1, scanner.fieldCount());
        String got = scanner.text(width);
        boolean number = expected instanceof Double;
        assertEquals(
            number ? expected : (Object) expected, number ? (Object) dialect.number(got) : got);
        added++;
      } else {
        int kept = wasEmpty ? 1 : before.size();
        assertEquals(before.size() == width ? width + 1 : kept, scanner.fieldCount());
      }
      for (int i = before.size(); i < Math.min(width, scanner.fieldCount()); i++) {
        assertEquals("", scanner.text(i));
      }
    }
    assertArrayEquals(made.bytes(), rest.toByteArray());
    return added;
  }

  @Test
  void damageNeverEscapesAsAnythingButARefusal() throws IOException {
    Random random = new Random(7);
    for (int i = 0; i < 700; i++) {
      byte[] bytes = make(random).bytes();
      for (int flips = random.nextInt(4); flips >= 0; flips--) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      byte[] cut = Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
      Path source = Files.write(directory.resolve("broken.csv"), cut);
      ColumnPatch column = TestColumn.of(9, 0, "New", 3, 1, Map.of(1, 1.5));
      try {
        new CsvReader().read(source);
        new CsvWriter().write(source, TestColumn.on("broken", column), directory.resolve("t.csv"));
      } catch (UnusableFileException e) {
        assertEquals('.', e.getMessage().charAt(e.getMessage().length() - 1));
      }
    }
  }
}
