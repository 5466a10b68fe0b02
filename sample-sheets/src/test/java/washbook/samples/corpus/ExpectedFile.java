package washbook.samples.corpus;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;

/**
 * The expected understanding as it lies beside a log: one fact a line, tabs between the fields.
 * Rows count from 1 here, as people see them.
 *
 * <pre>
 * about    what the log is
 * verdict  FILL, ASK, CAREFUL or NOTHING
 * cause    a cause that the audit may name
 * table    sheet
 * column   letter, role or ?, unit, header
 * batch    name, stated original gravity or -, row of its first reading, calibration in °C, offset
 * row      number, batch, refused
 * row      number, batch, fill, reading, °C or corrected, true SG, +-, true % vol, +-, apparent, real
 * </pre>
 */
final class ExpectedFile {
  private ExpectedFile() {}

  static void write(Expected expected, Path file) throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add("about\t" + expected.about());
    lines.add("verdict\t" + expected.verdict());
    expected.causes().forEach(c -> lines.add("cause\t" + c));
    for (Expected.Table table : expected.tables()) {
      lines.add("table\t" + table.sheet());
      for (Expected.Column c : table.columns()) {
        lines.add(
            String.join(
                "\t",
                "column",
                CellAddress.letters(c.column()),
                c.role() == null ? "?" : c.role().name(),
                c.unit().isEmpty() ? "-" : c.unit(),
                c.header().replace('\n', ' ')));
      }
      for (Expected.Ferment b : table.batches()) {
        lines.add(
            String.join(
                "\t",
                "batch",
                b.name(),
                show(b.stated(), 9),
                String.valueOf(b.firstRow() + 1),
                show(b.calibrationC(), 10),
                show(b.offset(), 5)));
      }
      table.rows().forEach(r -> lines.add(line(r)));
    }
    Files.write(file, lines);
  }

  private static String line(Expected.Row row) {
    String head = "row\t" + (row.row() + 1) + "\t" + row.batch() + "\t";
    if (row.refused()) {
      return head + "refused";
    }
    return head
        + String.join(
            "\t",
            "fill",
            show(row.reading(), 10),
            Double.isNaN(row.temperatureC()) ? "corrected" : show(row.temperatureC(), 10),
            show(row.gravity(), 6),
            show(row.gravityError(), 6),
            show(row.abv(), 4),
            show(row.abvError(), 3),
            show(row.apparent(), 3),
            show(row.real(), 3));
  }

  private static String show(double value, int digits) {
    if (Double.isNaN(value)) {
      return "-";
    }
    String text = String.format(Locale.ROOT, "%." + digits + "f", value);
    return text.matches("-0\\.0*") ? text.substring(1) : text;
  }

  static Expected read(Path file) throws IOException {
    Map<String, String> words = new HashMap<>();
    List<String> causes = new ArrayList<>();
    List<Expected.Table> tables = new ArrayList<>();
    Expected.Table open = null;
    for (String line : Files.readAllLines(file)) {
      String[] f = line.split("\t", -1);
      switch (f[0]) {
        case "about", "verdict" -> words.put(f[0], f[1]);
        case "cause" -> causes.add(f[1]);
        case "table" -> {
          open = new Expected.Table(f[1], new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
          tables.add(open);
        }
        case "column" -> open.columns().add(column(f));
        case "batch" -> open.batches().add(batch(f));
        case "row" -> open.rows().add(row(f));
        default -> {
          if (!line.isBlank()) {
            throw new IOException(file + " holds an unknown line: " + line);
          }
        }
      }
    }
    return new Expected(
        Expected.Verdict.valueOf(words.get("verdict")), words.get("about"), tables, causes);
  }

  private static Expected.Column column(String[] f) {
    int column = 0;
    for (char letter : f[1].toCharArray()) {
      column = column * 26 + letter - 'A' + 1;
    }
    return new Expected.Column(
        column - 1,
        f[2].equals("?") ? null : Role.valueOf(f[2]),
        f[3].equals("-") ? "" : f[3],
        f[4]);
  }

  private static Expected.Ferment batch(String[] f) {
    return new Expected.Ferment(
        f[1],
        f[2].equals("-") ? Double.NaN : Double.parseDouble(f[2]),
        Integer.parseInt(f[3]) - 1,
        Double.parseDouble(f[4]),
        Double.parseDouble(f[5]));
  }

  private static Expected.Row row(String[] f) {
    double[] v = new double[8];
    for (int i = 0; i < v.length; i++) {
      boolean given = f.length > 4 + i && !f[4 + i].equals("-") && !f[4 + i].equals("corrected");
      v[i] = given ? Double.parseDouble(f[4 + i]) : Double.NaN;
    }
    return new Expected.Row(
        Integer.parseInt(f[1]) - 1,
        f[2],
        f[3].equals("refused"),
        v[0],
        v[1],
        v[2],
        v[3],
        v[4],
        v[5],
        v[6],
        v[7]);
  }
}
