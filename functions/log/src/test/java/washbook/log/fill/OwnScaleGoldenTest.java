package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.log.WrittenScale;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.log.words.ReadingScale;

/**
 * A log on every scale with what is written beside it, as it is shown: {@code own-scale/SCALE.txt},
 * the log first. {@code -Dwashbook.write=true} writes what stands below the log again.
 */
class OwnScaleGoldenTest {
  private static final Path FOLDER = Path.of("src/test/resources/washbook/log/fill/own-scale");
  private static final String BELOW = "\n---\n";

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    }
  }

  private static Filling fill(TestGrid grid, FillOptions options) {
    return LogFiller.fill(grid, SheetUnderstanding.understand(grid, LogMap.none()), options);
  }

  private static TestGrid log(Path file) throws IOException {
    return TestGrid.of("Plum 3", Files.readString(file).split(BELOW, 2)[0]);
  }

  @Test
  void everyScaleHasItsFile() throws IOException {
    Set<String> scales = new TreeSet<>(Set.of("THOUSANDTHS.txt"));
    Arrays.stream(ReadingScale.values()).forEach(scale -> scales.add(scale + ".txt"));
    assertEquals(
        scales,
        files().stream()
            .map(file -> file.getFileName().toString())
            .collect(Collectors.toCollection(TreeSet::new)));
  }

  @ParameterizedTest
  @MethodSource("files")
  void whatIsWrittenIsWhatTheFileHolds(Path file) throws IOException {
    TestGrid grid = log(file);
    List<ColumnPatch> columns = fill(grid, FillOptions.usual()).patch().columns();
    StringBuilder written = new StringBuilder(Files.readString(file).split(BELOW, 2)[0] + BELOW);
    line(written, columns.stream().map(ColumnPatch::header));
    for (int row = 1; row < grid.rowCount(); row++) {
      int at = row;
      line(written, columns.stream().map(column -> shown(column, at)));
    }
    if (Boolean.getBoolean("washbook.write")) {
      Files.writeString(file, written);
    }
    assertEquals(Files.readString(file), written.toString());
  }

  private static void line(StringBuilder to, Stream<String> cells) {
    to.append(cells.collect(Collectors.joining(" | "))).append('\n');
  }

  private static String shown(ColumnPatch column, int row) {
    double number = column.cells().number(row);
    return Double.isNaN(number)
        ? String.valueOf(column.cells().text(row))
        : String.format(Locale.ROOT, "%." + column.decimals() + "f", number);
  }

  /** The exact value is that of the same log filled on SG, as the pack's CONVERT converts it. */
  @ParameterizedTest
  @MethodSource("files")
  void whatIsShownIsWithinTheScalesRoundingOfTheExactValue(Path file) throws IOException {
    TestGrid grid = log(file);
    ColumnPatch own = fill(grid, FillOptions.usual()).patch().columns().get(0);
    ColumnPatch sg = fill(grid, FillOptions.usual().on(WrittenScale.SG)).patch().columns().get(0);
    assertEquals("Corrected gravity (SG)", sg.header());
    String scale = file.getFileName().toString().replace(".txt", "");
    double half = 0.5 * Math.pow(10, -own.decimals());
    for (int row = 1; row < grid.rowCount(); row++) {
      double exact = exact(scale, sg.cells().number(row));
      assertEquals(exact, Double.parseDouble(shown(own, row)), half * (1 + 1e-6), scale);
      assertTrue(Math.abs(exact - grid.number(row, 1)) > half, "nothing was corrected: " + scale);
    }
  }

  private static double exact(String scale, double gravity) {
    return switch (scale) {
      case "SG" -> gravity;
      case "THOUSANDTHS" -> 1000 * gravity;
      case "GCM3" -> convert(gravity, "KGM3") / 1000;
      default -> convert(gravity, scale);
    };
  }

  private static double convert(double gravity, String scale) {
    return ((Answer.Number) Catalogue.get("CONVERT").call(gravity, "SG", scale)).value();
  }
}
