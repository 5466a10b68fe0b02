package washbook.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** One published table of the test resources; lines with # hold its citation. */
public record ReferenceTable(List<String> columns, List<Row> rows) {

  /** Reads a file and asserts how many rows it has, so that none is lost unseen. */
  public static ReferenceTable read(String file, int rowCount) {
    List<String> lines = new ArrayList<>();
    try (InputStream in =
        ReferenceTable.class.getResourceAsStream("/washbook/references/" + file)) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .forEach(lines::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    List<String> columns = List.of(lines.get(0).split(",", -1));
    List<Row> rows =
        lines.stream().skip(1).map(line -> new Row(columns, List.of(line.split(",", -1)))).toList();
    assertEquals(rowCount, rows.size(), file);
    rows.forEach(row -> assertEquals(columns.size(), row.cells.size(), file + ": " + row));
    return new ReferenceTable(columns, rows);
  }

  /** One row. */
  public record Row(List<String> columns, List<String> cells) {
    public String text(String column) {
      return cells.get(columns.indexOf(column));
    }

    public double number(String column) {
      return Double.parseDouble(text(column));
    }
  }
}
