package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Fills logs of several sizes, and many small ones, beside the floor, POI's usermodel and the
 * headless office, checks the answers and writes the table BENCHMARKS.md.
 */
final class BatchBench {
  private static final long MOST_SECONDS = Long.getLong("washbook.bench.seconds", 240);
  private static final int USERMODEL_GIGABYTES = 12;
  private static final int SMALL_ROWS = 100;

  /** The office opens so many files in one run without giving up. */
  private static final int MOST_ARGUMENTS = 250;

  private static final Path OFFICE = Path.of("/usr/bin/soffice");

  private final Path folder;
  private final StringBuilder table = new StringBuilder();
  private final StringBuilder limits = new StringBuilder();
  private boolean missed;

  private BatchBench(Path folder) {
    this.folder = folder;
  }

  /** The file to write, and optionally the largest number of rows and of files. */
  public static void main(String[] arguments) throws Exception {
    int mostRows = arguments.length > 1 ? Integer.parseInt(arguments[1]) : BigLog.ROWS;
    int mostFiles = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 10_000;
    Path folder = Files.createTempDirectory("batch-bench");
    try {
      BatchBench bench = new BatchBench(folder);
      bench.warm();
      for (int rows : new int[] {1_000, 100_000, 1_000_000}) {
        if (rows <= mostRows) {
          bench.oneFile(rows);
        }
      }
      for (int files : new int[] {100, 1_000, 10_000}) {
        if (files <= mostFiles) {
          bench.manyFiles(files);
        }
      }
      Path page = Path.of(arguments[0]);
      Files.writeString(page, bench.page() + otherSections(page));
      System.out.println("written: " + Path.of(arguments[0]).toAbsolutePath());
      if (bench.missed) {
        System.out.println("A LIMIT IS MISSED OR AN ANSWER IS WRONG");
        System.exit(1);
      }
    } finally {
      delete(folder);
    }
  }

  /** What stands below the tables of this class in the page as it is: figures of other runs. */
  private static String otherSections(Path page) throws IOException {
    String old = Files.exists(page) ? Files.readString(page) : "";
    int section = old.indexOf("\n## ");
    return section < 0 ? "" : old.substring(section);
  }

  /** The launcher makes its class archive at the first use, in the background. */
  private void warm() throws Exception {
    Timed.run(folder, 60, List.of("/bin/sh", "bin/washbook", "calc", "ABV", "1.080", "1.010"));
    Thread.sleep(10_000);
  }

  private void limit(String what, double figure, double most) {
    String line =
        String.format(
            Locale.ROOT,
            "| %s | %.2f | %.2f | %s |",
            what,
            figure,
            most,
            figure <= most ? "holds" : "missed");
    missed |= !(figure <= most);
    System.out.println(line);
    limits.append(line).append('\n');
  }

  private void oneFile(int rows) throws Exception {
    Path xlsx = Files.createDirectories(folder.resolve("xlsx-" + rows)).resolve("log.xlsx");
    BigLog.write(xlsx, rows);
    String job = String.format(Locale.ROOT, "%,d rows", rows);
    Path ods = Files.createDirectories(folder.resolve("ods-" + rows));
    boolean converted =
        Files.isExecutable(OFFICE) && !Double.isNaN(office(xlsx.getParent(), ods, "ods").seconds());
    fill(job + ", .xlsx", xlsx.getParent(), rows, true);
    if (converted) {
      fill(job + ", .ods", ods, rows, false);
    }
  }

  private void manyFiles(int files) throws Exception {
    Path logs = Files.createDirectories(folder.resolve("many-" + files));
    for (int i = 0; i < files; i++) {
      BigLog.write(logs.resolve("log " + i + ".xlsx"), SMALL_ROWS - i % 50);
    }
    String job = String.format(Locale.ROOT, "%,d files of 51 to 100 rows, .xlsx", files);
    fill(job, logs, -1, true);
  }

  /** All tools on one folder, one after the other. */
  private void fill(String job, Path logs, int rows, boolean usermodel) throws Exception {
    Path ours = folder.resolve("ours");
    Timed washbook =
        Timed.run(
            folder,
            MOST_SECONDS,
            List.of(
                "/bin/sh",
                "bin/washbook",
                "fill",
                logs.toString(),
                "--out",
                ours.toString(),
                "--threads",
                "2"));
    check(logs, ours, rows);
    Timed floor = java(List.of(), Floor.class, "2", ours.toString(), "6");
    line(job, "Washbook", washbook, floor);
    line(job, "floor: inflate and deflate", floor, floor);
    Timed ourFloor = java(List.of(), Floor.class, "2", ours.toString(), "4");
    line(job, "the same at the level of Washbook", ourFloor, floor);
    delete(ours);
    if (rows == BigLog.ROWS) {
      limit(job + ": times the floor", washbook.seconds() / floor.seconds(), 1.25);
      limit(job + ": peak MB", washbook.megabytes(), 200);
    }
    if (usermodel) {
      Path theirs = folder.resolve("theirs");
      Timed poi =
          java(
              List.of("-Xmx" + USERMODEL_GIGABYTES + "g"),
              UsermodelFill.class,
              "2",
              logs.toString(),
              theirs.toString());
      if (!Double.isNaN(poi.seconds())) {
        check(logs, theirs, rows);
      }
      delete(theirs);
      line(job, "POI usermodel", poi, floor);
      if (rows < 0 && list(logs).size() == 10_000) {
        limit(job + ": Washbook's time per time of POI", washbook.seconds() / poi.seconds(), 0.125);
        limit(
            job + ": peak MB of the last quarter per that of the second",
            washbook.quarter(3) / washbook.quarter(1),
            1.1);
      }
    }
    if (Files.isExecutable(OFFICE)) {
      Path saved = folder.resolve("saved");
      Timed office = office(logs, saved, usermodel ? "xlsx" : "ods");
      delete(saved);
      line(job, "LibreOffice, load and save only", office, floor);
    }
    delete(logs);
  }

  private void check(Path logs, Path results, int rows) throws IOException {
    for (Path log : list(logs)) {
      String digits = log.getFileName().toString().replaceAll("\\D", "");
      int expected = rows > 0 ? rows : SMALL_ROWS - Integer.parseInt(digits) % 50;
      Answers.check(results.resolve(log.getFileName()), expected);
    }
  }

  private Timed java(List<String> options, Class<?> program, String... arguments)
      throws InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
    command.addAll(List.of(arguments));
    return Timed.attempt(folder, MOST_SECONDS, command);
  }

  /** Loads and saves; a run that does not give a result for every log counts as given up. */
  private Timed office(Path logs, Path target, String kind)
      throws IOException, InterruptedException {
    List<Path> all = list(logs);
    double seconds = 0;
    double megabytes = 0;
    for (int from = 0; from < all.size(); from += MOST_ARGUMENTS) {
      List<String> command =
          new ArrayList<>(
              List.of(
                  OFFICE.toString(),
                  "-env:UserInstallation=" + folder.resolve("office").toUri(),
                  "--headless",
                  "--convert-to",
                  kind,
                  "--outdir",
                  target.toString()));
      all.subList(from, Math.min(from + MOST_ARGUMENTS, all.size()))
          .forEach(file -> command.add(file.toString()));
      Timed part = Timed.attempt(folder, MOST_SECONDS, command);
      seconds += part.seconds();
      megabytes = Math.max(megabytes, part.megabytes());
      if (!(seconds <= MOST_SECONDS)) {
        return new Timed(Double.NaN, megabytes, List.of());
      }
    }
    boolean complete = Files.isDirectory(target) && list(target).size() == all.size();
    return new Timed(complete ? seconds : Double.NaN, megabytes, List.of());
  }

  private void line(String job, String tool, Timed took, Timed floor) {
    String line =
        Double.isNaN(took.seconds())
            ? String.format(
                Locale.ROOT,
                "| %s | %s | not done in %d | | %.0f |",
                job,
                tool,
                MOST_SECONDS,
                took.megabytes())
            : String.format(
                Locale.ROOT,
                "| %s | %s | %.2f | %.2f | %.0f |",
                job,
                tool,
                took.seconds(),
                took.seconds() / floor.seconds(),
                took.megabytes());
    System.out.println(line);
    table.append(line).append('\n');
  }

  private String page() {
    return """
    # How fast, and how much memory

    Written by `mvn -Pbench-runner -pl batch-runner -am verify -DskipTests`, all in one run, on %d
    processors with Java %s. Every command is a process of its own, its start included; peak is
    the largest resident memory. Each filled log is read back: every row has to be filled and
    every hundredth has to hold what the single functions give. The floor inflates and deflates
    the same results in as many threads (two) and does nothing else, at zlib's usual level 6;
    Washbook deflates at level 4 (5 %% more bytes), for which the floor is a line of its own. POI's usermodel reads and
    writes, the computing between is the same code. LibreOffice only loads and saves: computing
    would come on top; its results are counted, and it is started for every 250 files.

    %s; options of Java: those of bin/washbook; usermodel -Xmx%dg; two threads each. A tool
    is given up after %d seconds.

    | must hold | figure | most | |
    | --- | ---: | ---: | --- |
    %s
    | job | tool | seconds | times the floor | peak MB |
    | --- | --- | ---: | ---: | ---: |
    %s\
    """
        .formatted(
            Runtime.getRuntime().availableProcessors(),
            System.getProperty("java.version"),
            LocalDate.now(ZoneOffset.UTC),
            USERMODEL_GIGABYTES,
            MOST_SECONDS,
            limits,
            table);
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      Path[] all = files.toArray(Path[]::new);
      Arrays.sort(all);
      return List.of(all);
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
