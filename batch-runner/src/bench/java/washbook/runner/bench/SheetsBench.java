package washbook.runner.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The memory that a workbook of several large sheets takes, its answers checked. */
final class SheetsBench {
  private static final int SHEETS = 5;
  private static final double MOST_MEGABYTES = 300;
  private static final long MOST_SECONDS = Long.getLong("washbook.bench.seconds", 240);

  private SheetsBench() {}

  /** A page that is not used, and the number of rows of a sheet. */
  public static void main(String[] arguments) throws Exception {
    int rows = Integer.parseInt(arguments[1]);
    Path folder = Files.createTempDirectory("sheets-bench");
    try {
      Path log = folder.resolve("log.xlsx");
      Path out = folder.resolve("out");
      BigLog.write(log, rows, SHEETS);
      Tools.makeArchive(folder);
      Timed took =
          Timed.run(
              folder,
              SHEETS * MOST_SECONDS,
              List.of("bin/washbook", "fill", log.toString(), "--out", out.toString()));
      Answers.check(out.resolve("log.xlsx"), rows);
      String said =
          String.format(
              Locale.ROOT,
              "%d sheets of %,d rows: %.1f s, peak %.0f MB (at most %.0f: %s)%n",
              SHEETS,
              rows,
              took.seconds(),
              took.megabytes(),
              MOST_MEGABYTES,
              took.megabytes() <= MOST_MEGABYTES ? "holds" : "missed");
      System.out.print(said);
      Files.writeString(Path.of("target/sheets.txt"), said);
    } finally {
      PeersBench.delete(folder);
    }
  }
}
