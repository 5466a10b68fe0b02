package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.FutureTask;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What forcing to the disk costs: {@code fill --out} over many small logs beside the same with a
 * library of C in between, whose forcing calls do nothing. Both start at the same moment, one
 * thread each, so that whatever else the machine does slows both; medians over some pairs.
 */
final class ForcingBench {
  private static final int PAIRS = Integer.getInteger("washbook.bench.pairs", 5);
  private static final double MOST = 1.10;
  private static final int SMALL_ROWS = 100;
  private static final String UNFORCED =
      "int fsync(int fd) { return 0; }\nint fdatasync(int fd) { return 0; }\n";
  private static final Pattern TIMES = Pattern.compile("(\\d+)m([\\d.]+)s");

  /** Seconds from start to end, and of processor time in the program and in the system. */
  private record Took(double elapsed, double processor) {}

  private final Path folder;

  private ForcingBench(Path folder) {
    this.folder = folder;
  }

  /** The file to write, a number that is not used, and the number of files. */
  public static void main(String[] arguments) throws Exception {
    int files = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 10_000;
    Path folder = Files.createTempDirectory("forcing-bench");
    try {
      String page = new ForcingBench(folder).page(files);
      System.out.println(page);
      Files.writeString(Path.of("target/forcing.txt"), page);
    } finally {
      delete(folder);
    }
  }

  private String page(int files) throws Exception {
    Path logs = Files.createDirectories(folder.resolve("logs"));
    for (int i = 0; i < files; i++) {
      BigLog.write(logs.resolve("log " + i + ".xlsx"), SMALL_ROWS - i % 50);
    }
    Path source = Files.writeString(folder.resolve("unforced.c"), UNFORCED);
    Path library = folder.resolve("unforced.so");
    run("gcc", "-shared", "-fPIC", "-o", library.toString(), source.toString());
    List<Double> elapsed = new ArrayList<>();
    List<Double> processor = new ArrayList<>();
    StringBuilder page = new StringBuilder();
    for (int pair = 0; pair < PAIRS; pair++) {
      run("sync");
      FutureTask<Took> other = new FutureTask<>(() -> fill(logs, library.toString(), "unforced"));
      Thread beside = new Thread(other, "unforced");
      beside.start();
      Took forced = fill(logs, "", "forced");
      Took unforced = other.get();
      elapsed.add(forced.elapsed() / unforced.elapsed());
      processor.add(forced.processor() / unforced.processor());
      page.append(
          String.format(
              Locale.ROOT,
              "forced %.1f s (processor %.1f), unforced %.1f s (processor %.1f)%n",
              forced.elapsed(),
              forced.processor(),
              unforced.elapsed(),
              unforced.processor()));
    }
    double ratio = median(elapsed);
    return page.append(
            String.format(
                Locale.ROOT,
                "%,d files, %d pairs, medians: elapsed %.3f times (at most %.2f: %s), processor %.3f times%n",
                files,
                PAIRS,
                ratio,
                MOST,
                ratio <= MOST ? "holds" : "missed",
                median(processor)))
        .toString();
  }

  private Took fill(Path logs, String library, String name) throws Exception {
    Path out = folder.resolve(name);
    Path said = folder.resolve(name + ".txt");
    ProcessBuilder builder =
        new ProcessBuilder(
            "/bin/sh",
            "-c",
            "\"$@\"; code=$?; times; exit $code",
            "sh",
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            "washbook.runner.cli.Main",
            "fill",
            logs.toString(),
            "--out",
            out.toString(),
            "--threads",
            "1",
            "--journal",
            folder.resolve(name + ".jsonl").toString());
    if (!library.isEmpty()) {
      builder.environment().put("LD_PRELOAD", library);
    }
    long start = System.nanoTime();
    Process process = builder.redirectErrorStream(true).redirectOutput(said.toFile()).start();
    int code = process.waitFor();
    double seconds = (System.nanoTime() - start) / 1e9;
    List<String> lines = Files.readAllLines(said);
    long made;
    try (Stream<Path> results = Files.list(out)) {
      made = results.count();
    }
    long wanted;
    try (Stream<Path> inputs = Files.list(logs)) {
      wanted = inputs.count();
    }
    if (code != 0 || made != wanted) {
      throw new IOException(made + " results, code " + code + ": " + String.join("\n", lines));
    }
    // The last line of times(1) is about what was started.
    Matcher times = TIMES.matcher(lines.get(lines.size() - 1));
    double processor = 0;
    while (times.find()) {
      processor += 60 * Integer.parseInt(times.group(1)) + Double.parseDouble(times.group(2));
    }
    delete(out);
    return new Took(seconds, processor);
  }

  private static void run(String... command) throws IOException, InterruptedException {
    if (new ProcessBuilder(command).inheritIO().start().waitFor() != 0) {
      throw new IOException(String.join(" ", command) + " failed");
    }
  }

  private static double median(List<Double> of) {
    List<Double> sorted = new ArrayList<>(of);
    Collections.sort(sorted);
    int middle = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(middle)
        : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
  }

  private static void delete(Path tree) throws IOException {
    if (!Files.exists(tree)) {
      return;
    }
    try (Stream<Path> files = Files.walk(tree)) {
      for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.delete(file);
      }
    }
  }
}
