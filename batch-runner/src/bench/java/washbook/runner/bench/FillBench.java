package washbook.runner.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.log.Grid;
import washbook.runner.read.XlsxReader;

/**
 * Fills a log of a million rows and eight columns and checks the answers, the peak resident memory
 * (below 250 MB) and the time (at most 1.3 times that of inflating and deflating the same parts).
 */
final class FillBench {
  private static final double MOST_MEGABYTES = 250;
  private static final double MOST_TIMES_FLOOR = 1.3;

  /** Small heap, little kept free, one collector thread: what the runner's documentation says. */
  private static final List<String> JAVA_OPTIONS =
      List.of(
          "-Xmx160m",
          "-XX:+UseSerialGC",
          "-XX:MaxNewSize=16m",
          "-XX:TieredStopAtLevel=4",
          "-XX:ReservedCodeCacheSize=32m",
          "-Xss512k");

  private FillBench() {}

  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("fill-bench");
    Path source = folder.resolve("log.xlsx");
    Path target = folder.resolve("filled.xlsx");
    Path said = folder.resolve("said.txt");
    try {
      BigLog.write(source);
      Map<String, Double> figures = run(source, target, said);
      checkAnswers(target);
      double times = figures.get("fillSeconds") / figures.get("floorSeconds");
      figures.forEach((name, value) -> System.out.printf(Locale.ROOT, "%s %.2f%n", name, value));
      System.out.printf(Locale.ROOT, "times the floor %.2f%n", times);
      if (figures.get("peakMegabytes") >= MOST_MEGABYTES || times > MOST_TIMES_FLOOR) {
        System.out.println("TOO MUCH");
        System.exit(1);
      }
    } finally {
      for (Path file : List.of(source, target, said)) {
        Files.deleteIfExists(file);
      }
      Files.delete(folder);
    }
  }

  private static Map<String, Double> run(Path source, Path target, Path said)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(JAVA_OPTIONS);
    command.addAll(
        List.of(
            "-cp",
            System.getProperty("bench.class.path", System.getProperty("java.class.path")),
            FillRun.class.getName(),
            source.toString(),
            target.toString()));
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    if (process.waitFor() != 0) {
      throw new IOException(Files.readString(said));
    }
    Map<String, Double> figures = new HashMap<>();
    for (String line : Files.readAllLines(said, StandardCharsets.UTF_8)) {
      String[] parts = line.split("=", 2);
      figures.put(parts[0], Double.valueOf(parts[1]));
    }
    return figures;
  }

  /** Every row is filled, and every hundredth has what the single functions give. */
  private static void checkAnswers(Path target) throws Exception {
    Grid grid = new XlsxReader().read(target).get(0);
    for (int row = 0; row < BigLog.ROWS; row++) {
      for (int column = 8; column < 12; column++) {
        if (grid.kind(row + 1, column) != Grid.Kind.NUMBER) {
          throw new AssertionError("row " + (row + 2) + " is not filled");
        }
      }
    }
    if (!grid.text(0, 9).equals("ABV to date (Washbook)") || grid.columnCount() != 12) {
      throw new AssertionError("the columns are not where they should be");
    }
    for (int row = 7; row < BigLog.ROWS; row += 100) {
      int firstRow = row - row % BigLog.ROWS_OF_BATCH;
      double original = grid.number(firstRow + 1, 8);
      double gravity = grid.number(row + 1, 8);
      near(
          gravity,
          call("CORRECTEDGRAVITY", BigLog.gravity(row), BigLog.temperatureC(row), null, original));
      near(grid.number(row + 1, 9), call("ABV", original, gravity));
      near(grid.number(row + 1, 10), call("APPARENTATTENUATION", original, gravity));
      near(grid.number(row + 1, 11), call("REALATTENUATION", original, gravity));
    }
  }

  private static double call(String function, Object... arguments) {
    Answer answer = Catalogue.get(function).call(arguments);
    if (answer instanceof Answer.Number number) {
      return number.value();
    }
    throw new AssertionError(function + " gives no number: " + answer);
  }

  private static void near(double filled, double expected) {
    if (!(Math.abs(filled - expected) < 1e-9)) {
      throw new AssertionError(filled + " is filled in, not " + expected);
    }
  }
}
