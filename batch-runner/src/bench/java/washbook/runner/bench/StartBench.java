package washbook.runner.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a person waits for: a sum and one small log by the starter, in processor time beside that of
 * {@code java -version}. The commands take turns, so that whatever else the machine does meets all
 * of them; medians.
 */
final class StartBench {
  private static final int ROUNDS = Integer.getInteger("washbook.bench.rounds", 9);
  private static final int ROWS = 60;
  private static final double MOST_SECONDS = 0.45;
  private static final double MOST_FILL = 6;
  private static final double MOST_SUM = 1.6;
  private static final Pattern TIMES = Pattern.compile("(\\d+)m([\\d.]+)s");

  private StartBench() {}

  /** The arguments are not used. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("start-bench");
    try {
      String page = page(folder);
      System.out.println(page);
      Files.writeString(Path.of("target/start.txt"), page);
    } finally {
      try (Stream<Path> files = Files.walk(folder)) {
        List<Path> all = new ArrayList<>(files.toList());
        for (int i = all.size() - 1; i >= 0; i--) {
          Files.delete(all.get(i));
        }
      }
    }
  }

  private static String page(Path folder) throws Exception {
    Path log = folder.resolve("log.xlsx");
    BigLog.write(log, ROWS);
    String out = folder.resolve("out").toString();
    Map<String, List<String>> commands = new LinkedHashMap<>();
    commands.put("java -version", List.of("java", "-version"));
    commands.put("calc", List.of("bin/washbook", "calc", "ABV", "1.080", "1.010"));
    commands.put("explain", List.of("bin/washbook", "explain", log.toString()));
    commands.put("fill", List.of("bin/washbook", "fill", log.toString(), "--out", out));
    processor(commands.get("calc"));
    Thread.sleep(20_000); // The starter makes its archive in the background.
    Map<String, double[]> seconds = new LinkedHashMap<>();
    commands.keySet().forEach(name -> seconds.put(name, new double[ROUNDS]));
    for (int round = -1; round < ROUNDS; round++) {
      for (Map.Entry<String, List<String>> command : commands.entrySet()) {
        double took = processor(command.getValue());
        if (round >= 0) {
          seconds.get(command.getKey())[round] = took;
        }
      }
    }
    double start = median(seconds.get("java -version"));
    StringBuilder page = new StringBuilder();
    seconds.forEach(
        (name, took) ->
            page.append(
                String.format(
                    Locale.ROOT,
                    "| %s | %.3f | %.1f |%n",
                    name,
                    median(took),
                    median(took) / start)));
    double fill = median(seconds.get("fill"));
    boolean holds =
        fill <= MOST_SECONDS
            && fill / start <= MOST_FILL
            && median(seconds.get("calc")) / start <= MOST_SUM;
    return page.append(holds ? "all hold" : "MISSED").append(System.lineSeparator()).toString();
  }

  /** Seconds of processor time of a command and all that it starts. */
  private static double processor(List<String> command) throws IOException, InterruptedException {
    List<String> timed =
        new ArrayList<>(List.of("bash", "-c", "\"$@\" > /dev/null 2>&1 || exit 1; times", "bash"));
    timed.addAll(command);
    Process process = new ProcessBuilder(timed).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
    if (process.waitFor() != 0) {
      throw new IOException(command + " failed");
    }
    double seconds = 0;
    Matcher children = TIMES.matcher(said.strip().lines().skip(1).findFirst().orElseThrow());
    while (children.find()) {
      seconds += 60 * Double.parseDouble(children.group(1)) + Double.parseDouble(children.group(2));
    }
    return seconds;
  }

  private static double median(double[] figures) {
    double[] sorted = figures.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
