package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.samples.Office;

/** The filled samples: made again, filled again, and every figure calculated again. */
class GoldenTest {
  static final Path SAMPLES = Path.of("samples");
  static final Path GOLDEN = Path.of("golden");
  private static final double SIXTY_F = 140.0 / 9;

  /** Where a sample keeps what; columns from 0. */
  private record Log(
      String file,
      String sheet,
      int header,
      int batch,
      int reading,
      String scale,
      int temperature,
      boolean fahrenheit,
      double calibrationC,
      double stated,
      Set<Integer> refused,
      int computed) {}

  private static final List<Log> LOGS =
      List.of(
          log("plum-3.xlsx", "Plum 3", 0, -1, 2, "SG", 3, false, 20, Set.of(), 5),
          log(
              "molasses-2-messy.xlsx",
              "winter",
              5,
              -1,
              2,
              "SG",
              3,
              true,
              SIXTY_F,
              Set.of(10, 15, 17),
              6),
          log("cellar-book-brix.xlsx", "Cellar book", 3, 0, 2, "BRIX", 3, false, 20, Set.of(), 5),
          new Log("apple-7.ods", "Apple 7", 4, -1, 1, "SG", 2, false, 15, 1.052, Set.of(), 4),
          log("sugar-4.csv", "", 0, -1, 2, "SG", 3, false, 20, Set.of(), 5));

  private static Log log(
      String file,
      String sheet,
      int header,
      int batch,
      int reading,
      String scale,
      int temperature,
      boolean fahrenheit,
      double calibrationC,
      Set<Integer> refused,
      int computed) {
    return new Log(
        file,
        sheet,
        header,
        batch,
        reading,
        scale,
        temperature,
        fahrenheit,
        calibrationC,
        Double.NaN,
        refused,
        computed);
  }

  @Test
  void everySampleHasAGoldenResult() throws IOException {
    try (Stream<Path> samples = Files.list(SAMPLES);
        Stream<Path> golden = Files.list(GOLDEN)) {
      List<String> names = files();
      assertEquals(names, samples.map(f -> f.getFileName().toString()).sorted().toList());
      assertEquals(names, golden.map(f -> f.getFileName().toString()).sorted().toList());
    }
  }

  private static List<String> files() {
    return Stream.concat(LOGS.stream().map(Log::file), Stream.of(SampleRun.FILE)).sorted().toList();
  }

  /** Strength, alcohol and head strength by the catalogue; from the refused jar on no sum. */
  @Test
  void everyFigureOfTheRunIsWhatTheCatalogueGivesForTheRawJar() throws IOException {
    List<String> lines = Files.readAllLines(GOLDEN.resolve(SampleRun.FILE));
    double sum = 0;
    for (int jar = 1; jar <= 11; jar++) {
      String[] cells = lines.get(jar + 4).split(",", -1);
      assertEquals(figure("HEADSTRENGTH", cells[4]), Double.parseDouble(cells[12]), 0.05);
      if (cells[3].isEmpty()) {
        assertEquals(",,,,", String.join(",", List.of(cells).subList(7, 12)), lines.get(jar + 4));
        sum = Double.NaN;
        continue;
      }
      double strength = figure("TRUESTRENGTH", cells[2], cells[3]);
      double litres = Double.parseDouble(cells[1]) / 1000;
      double pure = figure("PUREALCOHOL", "" + litres, "" + strength, cells[3]);
      sum += pure;
      assertEquals(strength, Double.parseDouble(cells[7]), 0.005);
      assertEquals(pure, Double.parseDouble(cells[8]), 0.00005);
      assertEquals(Double.isNaN(sum), cells[9].isEmpty(), lines.get(jar + 4));
      if (!Double.isNaN(sum)) {
        assertEquals(sum, Double.parseDouble(cells[9]), 0.00005);
        assertEquals(sum / (11.5 * 0.28) * 100, Double.parseDouble(cells[10]), 0.05);
      }
    }
  }

  private static double figure(String function, String... arguments) {
    Object[] numbers = Stream.of(arguments).map(Double::valueOf).toArray();
    return ((Answer.Number) Catalogue.get(function).call(numbers)).value();
  }

  /** Packed files are compared part by part: another deflater may pack the same part otherwise. */
  @Test
  void fillGivesTheGoldenContentAndASecondFillTheSameBytes(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path once = folder.resolve("once");
    Washbook.Run run = Washbook.run("fill", "--out", once, SAMPLES);
    assertEquals(1, run.exitCode(), run.output());
    Path twice = folder.resolve("twice");
    Washbook.Run again = Washbook.run("fill", "--out", twice, once);
    assertEquals(1, again.exitCode(), again.output());
    for (String file : files()) {
      Path filled = once.resolve(file);
      Path refilled = twice.resolve(file);
      if (file.endsWith(".csv")) {
        assertArrayEquals(
            Files.readAllBytes(GOLDEN.resolve(file)), Files.readAllBytes(filled), file);
      } else {
        Map<String, String> golden = parts(GOLDEN.resolve(file));
        Map<String, String> made = parts(filled);
        assertEquals(List.copyOf(golden.keySet()), List.copyOf(made.keySet()), file);
        assertEquals(golden, made, file);
      }
      // A file in which nothing is to be changed may be left out of the folder.
      if (Files.exists(refilled)) {
        assertArrayEquals(Files.readAllBytes(filled), Files.readAllBytes(refilled), file);
      }
    }
  }

  private static Map<String, String> parts(Path file) throws IOException {
    Map<String, String> parts = new LinkedHashMap<>();
    try (InputStream in = Files.newInputStream(file);
        ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.ISO_8859_1));
      }
    }
    return parts;
  }

  @Test
  void everyFigureIsWhatTheCatalogueGivesForTheRawReading(@TempDir Path folder)
      throws IOException, InterruptedException {
    int rows = 0;
    for (Log log : LOGS) {
      boolean text = log.file().endsWith(".csv");
      Cellwise raw = read(SAMPLES.resolve(log.file()), log.sheet(), folder.resolve("raw"));
      Cellwise filled = read(GOLDEN.resolve(log.file()), log.sheet(), folder.resolve("filled"));
      Map<String, Double> originals = new HashMap<>();
      for (int row = log.header() + 1; row < raw.rowCount(); row++) {
        double reading =
            raw.at(row, log.reading()) == null ? Double.NaN : raw.number(row, log.reading());
        if (Double.isNaN(reading)) {
          continue;
        }
        String where = log.file() + " row " + (row + 1);
        if (log.refused().contains(row)) {
          assertEquals("", filled.string(row, log.computed()), where);
          assertTrue(filled.string(row, log.computed() + 4).length() > 10, where);
          continue;
        }
        check(log, raw, filled, row, reading, originals, where, text);
        rows++;
      }
    }
    assertEquals(58, rows);
  }

  private static void check(
      Log log,
      Cellwise raw,
      Cellwise filled,
      int row,
      double reading,
      Map<String, Double> originals,
      String where,
      boolean rounded) {
    double shown = raw.number(row, log.temperature());
    double celsius = log.fahrenheit() ? call("CONVERT", shown, "F", "C") : shown;
    double sg = call("CONVERT", reading, log.scale(), "SG");
    String batch = log.batch() < 0 ? "" : raw.string(row, log.batch());
    Double original = log.stated();
    if (Double.isNaN(log.stated())) {
      original = originals.get(batch);
    }
    double corrected =
        original == null
            ? call("CORRECTEDGRAVITY", sg, celsius, log.calibrationC())
            : call("CORRECTEDGRAVITY", sg, celsius, log.calibrationC(), original);
    double og = original == null ? corrected : original;
    originals.putIfAbsent(batch, og);
    double[] expected = {
      log.scale().equals("SG") ? corrected : call("CONVERT", corrected, "SG", log.scale()),
      call("ABV", og, corrected),
      call("APPARENTATTENUATION", og, corrected),
      call("REALATTENUATION", og, corrected)
    };
    double[] steps = {1e-4, 1e-2, 1e-1, 1e-1};
    for (int i = 0; i < expected.length; i++) {
      double error = rounded ? steps[i] * 0.5000001 : 1e-9 * Math.max(1, expected[i]);
      assertEquals(expected[i], filled.number(row, log.computed() + i), error, where);
    }
  }

  private static double call(String name, Object... arguments) {
    Answer answer = Catalogue.get(name).call(arguments);
    assertTrue(answer instanceof Answer.Number, name + " " + answer);
    return ((Answer.Number) answer).value();
  }

  private static Cellwise read(Path file, String sheet, Path folder)
      throws IOException, InterruptedException {
    String name = file.getFileName().toString();
    if (name.endsWith(".csv")) {
      return Cellwise.text(file);
    }
    if (name.endsWith(".ods")) {
      Office.convert(List.of(file), "xlsx", folder);
      return Cellwise.workbook(folder.resolve(name.replace(".ods", ".xlsx")), sheet);
    }
    return Cellwise.workbook(file, sheet);
  }
}
