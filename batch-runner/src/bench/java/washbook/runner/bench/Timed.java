package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * What a command took.
 *
 * @param seconds from start to end, that of Java included; NaN when it was given up
 * @param megabytes the largest resident memory of any process in it (proc(5), VmHWM)
 * @param resident megabytes resident in its largest process (proc(5), VmRSS), every 50 ms
 */
record Timed(double seconds, double megabytes, List<Double> resident) {
  private static final long SAMPLE_MILLISECONDS = 50;

  /** The same for a command that may fail: it counts as given up, and its words are shown. */
  static Timed attempt(Path folder, long mostSeconds, List<String> command)
      throws InterruptedException {
    try {
      return run(folder, mostSeconds, command);
    } catch (IOException failed) {
      System.out.println(failed.getMessage());
      return new Timed(Double.NaN, Double.NaN, List.of());
    }
  }

  static Timed run(Path folder, long mostSeconds, List<String> command)
      throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    long peak = 0;
    List<Double> resident = new ArrayList<>();
    try {
      while (!process.waitFor(SAMPLE_MILLISECONDS, TimeUnit.MILLISECONDS)) {
        peak = Math.max(peak, kilobytes(process, "VmHWM:"));
        resident.add(kilobytes(process, "VmRSS:") / 1024.0);
        if (System.nanoTime() - start > mostSeconds * 1e9) {
          return new Timed(Double.NaN, peak / 1024.0, resident);
        }
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      if (process.exitValue() != 0) {
        throw new IOException(command + " failed: " + Files.readString(said));
      }
      return new Timed(seconds, peak / 1024.0, resident);
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
  }

  /** The highest resident memory in one quarter (0 to 3) of the run. */
  double quarter(int number) {
    int size = resident.size();
    return resident.subList(size * number / 4, size * (number + 1) / 4).stream()
        .mapToDouble(Double::doubleValue)
        .max()
        .orElse(Double.NaN);
  }

  private static long kilobytes(Process process, String line) {
    return Stream.concat(Stream.of(process.toHandle()), process.descendants())
        .mapToLong(handle -> kilobytes(handle.pid(), line))
        .max()
        .orElse(0);
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
