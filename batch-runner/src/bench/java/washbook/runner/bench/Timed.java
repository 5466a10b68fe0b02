package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * What a command took.
 *
 * @param seconds from start to end, that of Java included; NaN when it was given up
 * @param megabytes the largest resident memory of any process in it
 */
record Timed(double seconds, double megabytes) {
  static Timed run(Path folder, long mostSeconds, List<String> command)
      throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    long peak = 0;
    try {
      while (!process.waitFor(5, TimeUnit.MILLISECONDS)) {
        peak = Math.max(peak, peakKilobytes(process));
        if (System.nanoTime() - start > mostSeconds * 1e9) {
          return new Timed(Double.NaN, peak / 1024.0);
        }
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      if (process.exitValue() != 0) {
        throw new IOException(command + " failed: " + Files.readString(said));
      }
      return new Timed(seconds, peak / 1024.0);
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
  }

  private static long peakKilobytes(Process process) {
    return Stream.concat(Stream.of(process.toHandle()), process.descendants())
        .mapToLong(handle -> peakKilobytes(handle.pid()))
        .max()
        .orElse(0);
  }

  private static long peakKilobytes(long pid) {
    try (Stream<String> lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException | RuntimeException ended) {
      return 0;
    }
  }
}
