package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a command took. It finds caches and journals in the folder of the benchmark, not in those of
 * the user.
 *
 * @param seconds from start to end, that of Java included; NaN when it was given up
 * @param processor seconds of processor time, user and system, of it and all that it starts
 * @param megabytes the largest resident memory of all processes in it together: proc(5), VmHWM of
 *     each that runs
 * @param resident megabytes resident in its largest process (proc(5), VmRSS), every 50 ms
 */
record Timed(double seconds, double processor, double megabytes, List<Double> resident) {
  private static final long SAMPLE_MILLISECONDS = 50;

  /** At first more often: a short command would end between two looks. */
  private static final long FIRST_SAMPLE_MILLISECONDS = 10;

  private static final Pattern TIMES = Pattern.compile("(\\d+)m([\\d.]+)s");

  /** The same for a command that may fail: it counts as given up, and its words are shown. */
  static Timed attempt(Path folder, long mostSeconds, List<String> command)
      throws InterruptedException {
    try {
      return run(folder, mostSeconds, command);
    } catch (IOException failed) {
      System.out.println(failed.getMessage());
      return new Timed(Double.NaN, Double.NaN, Double.NaN, List.of());
    }
  }

  static Timed run(Path folder, long mostSeconds, List<String> command)
      throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    Path times = folder.resolve("times.txt");
    List<String> timed =
        new ArrayList<>(
            List.of("bash", "-c", "\"$@\"; code=$?; times > \"$0\"; exit $code", times.toString()));
    timed.addAll(command);
    ProcessBuilder builder = new ProcessBuilder(timed);
    builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
    builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
    builder.environment().put("TMPDIR", temporary(folder).toString());
    builder.redirectErrorStream(true).redirectOutput(said.toFile());
    long start = System.nanoTime();
    Process process = builder.start();
    long peak = 0;
    List<Double> resident = new ArrayList<>();
    try {
      while (!process.waitFor(pause(start), TimeUnit.MILLISECONDS)) {
        List<Long> processes = process.descendants().map(ProcessHandle::pid).toList();
        peak = Math.max(peak, processes.stream().mapToLong(id -> kilobytes(id, "VmHWM:")).sum());
        long largest = processes.stream().mapToLong(id -> kilobytes(id, "VmRSS:")).max().orElse(0);
        resident.add(largest / 1024.0);
        if (System.nanoTime() - start > mostSeconds * 1e9) {
          return new Timed(Double.NaN, Double.NaN, peak / 1024.0, resident);
        }
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      if (process.exitValue() != 0) {
        // Without the class path.
        List<String> end = command.subList(Math.max(0, command.size() - 5), command.size());
        throw new IOException("failed: " + String.join(" ", end) + ": " + Files.readString(said));
      }
      return new Timed(seconds, processor(times), peak / 1024.0, resident);
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
  }

  /** Where a command that is given up leaves what it would have deleted. */
  private static Path temporary(Path folder) throws IOException {
    return Files.createDirectories(folder.resolve("temporary"));
  }

  private static long pause(long start) {
    return System.nanoTime() - start < 2e9 ? FIRST_SAMPLE_MILLISECONDS : SAMPLE_MILLISECONDS;
  }

  /** The second line of times(1) is about what was started. */
  private static double processor(Path times) throws IOException {
    Matcher children = TIMES.matcher(Files.readAllLines(times).get(1));
    double seconds = 0;
    while (children.find()) {
      seconds += 60 * Double.parseDouble(children.group(1)) + Double.parseDouble(children.group(2));
    }
    return seconds;
  }

  boolean isGivenUp() {
    return Double.isNaN(seconds);
  }

  /** Whether it ended by itself without doing its work. */
  boolean isFailed() {
    return Double.isNaN(megabytes);
  }

  /** The highest resident memory in one quarter (0 to 3) of the run. */
  double quarter(int number) {
    int size = resident.size();
    return resident.subList(size * number / 4, size * (number + 1) / 4).stream()
        .mapToDouble(Double::doubleValue)
        .max()
        .orElse(Double.NaN);
  }

  private static long kilobytes(long pid, String wanted) {
    try (Stream<String> lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      return lines
          .filter(line -> line.startsWith(wanted))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException | RuntimeException ended) {
      return 0;
    }
  }
}
