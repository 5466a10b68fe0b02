package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Logs to be filled.
 *
 * @param rows of the only log; 0 where there are many of 51 to 100 rows
 */
record Job(String name, String kind, Path logs, int rows) {
  private static final int SMALL_ROWS = 100;

  static Job ofOne(Path folder, String kind, int rows) throws IOException {
    Path logs = Files.createDirectories(folder.resolve("logs"));
    if (kind.equals("ods")) {
      BigOds.write(logs.resolve("log.ods"), rows);
    } else {
      BigLog.write(logs.resolve("log.xlsx"), rows);
    }
    return new Job(String.format(Locale.ROOT, "One .%s of %,d rows", kind, rows), kind, logs, rows);
  }

  static Job ofMany(Path folder, int files) throws IOException {
    Path logs = Files.createDirectories(folder.resolve("logs"));
    for (int i = 0; i < files; i++) {
      BigLog.write(logs.resolve("log " + i + ".xlsx"), rowsOfSmall(i));
    }
    String name = String.format(Locale.ROOT, "%,d .xlsx of 51 to 100 rows", files);
    return new Job(name, "xlsx", logs, 0);
  }

  private static int rowsOfSmall(int number) {
    return SMALL_ROWS - number % 50;
  }

  boolean isOne() {
    return rows > 0;
  }

  /** What Washbook is told: a file by name, or the folder. */
  String named() {
    return (isOne() ? logs.resolve("log." + kind) : logs).toString();
  }

  void check(Path results, boolean portable) throws IOException {
    for (Path log : list(logs)) {
      String digits = log.getFileName().toString().replaceAll("\\D", "");
      int expected = isOne() ? rows : rowsOfSmall(Integer.parseInt(digits));
      Answers.check(results.resolve(log.getFileName()), expected, portable);
    }
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }
}
