package washbook.runner.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Whether the memory stays flat over very many small logs, whose results are all checked. */
final class FlatMemoryBench {
  private static final double MOST = 1.1;

  /** The benchmark's usual number of files, times this. */
  private static final int TIMES = 10;

  private static final long MOST_SECONDS = TIMES * Long.getLong("washbook.bench.seconds", 130);

  private FlatMemoryBench() {}

  /** A page and a number that are not used, and a tenth of the number of files. */
  public static void main(String[] arguments) throws Exception {
    int number = TIMES * Integer.parseInt(arguments[2]);
    Path folder = Files.createTempDirectory("flat-memory-bench");
    try {
      Job job = Job.ofMany(folder, number);
      Tools.makeArchive(folder);
      Path results = folder.resolve("results");
      Timed took =
          Timed.run(
              folder,
              MOST_SECONDS,
              List.of(
                  "bin/washbook",
                  "fill",
                  job.named(),
                  "--out",
                  results.toString(),
                  "--threads",
                  "2"));
      if (took.isGivenUp()) {
        throw new IllegalStateException("given up after " + MOST_SECONDS + " s");
      }
      job.check(results, false);
      double times = took.quarter(3) / took.quarter(1);
      String said =
          String.format(
              Locale.ROOT,
              "%s: %.1f s, processor %.1f s, peak %.0f MB; by quarters %.1f, %.1f, %.1f, %.1f MB;"
                  + " the last per the second %.3f (at most %.1f: %s); results checked%n",
              job.name(),
              took.seconds(),
              took.processor(),
              took.megabytes(),
              took.quarter(0),
              took.quarter(1),
              took.quarter(2),
              took.quarter(3),
              times,
              MOST,
              times <= MOST ? "holds" : "missed");
      System.out.print(said);
      Files.writeString(Path.of("target/flat-memory.txt"), said);
    } finally {
      PeersBench.delete(folder);
    }
  }
}
