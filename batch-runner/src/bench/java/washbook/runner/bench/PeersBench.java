package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Fills one small log, one large one of each kind and many small ones, beside the floor and the
 * peers, which all do the same job, checks the results, and holds the figures against their limits.
 */
final class PeersBench {
  private static final long MOST_SECONDS = Long.getLong("washbook.bench.seconds", 130);
  private static final int SMALL_ROWS = 60;
  private static final int FILES = 10_000;

  private final Path folder;
  private final PeersPage page = new PeersPage();
  private final Tools tools;

  private PeersBench(Path folder) throws Exception {
    this.folder = folder;
    tools = new Tools(folder, MOST_SECONDS);
  }

  /**
   * The page whose first part is rewritten, and the largest numbers of rows and of files; with
   * smaller ones than the limits are about only target/peers.md is written.
   */
  public static void main(String[] arguments) throws Exception {
    int rows = Math.min(Integer.parseInt(arguments[1]), BigLog.ROWS);
    int files = Math.min(Integer.parseInt(arguments[2]), FILES);
    Path folder = Files.createTempDirectory("peers-bench");
    long start = System.nanoTime();
    try {
      PeersBench bench = new PeersBench(folder);
      bench.small();
      bench.large("xlsx", rows, 1.8);
      bench.large("ods", rows, 2.0);
      bench.many(files);
      double minutes = (System.nanoTime() - start) / 6e10;
      bench.page.write(Path.of("target/peers.md"), MOST_SECONDS, minutes);
      if (rows == BigLog.ROWS && files == FILES) {
        bench.page.write(Path.of(arguments[0]), MOST_SECONDS, minutes);
      }
      System.out.printf("%.1f minutes; written: target/peers.md%n", minutes);
      if (bench.page.isMissed()) {
        System.out.println("A LIMIT IS MISSED OR A RESULT IS WRONG");
      }
    } finally {
      delete(folder);
    }
  }

  private void small() throws Exception {
    Job job = Job.ofOne(folder, "xlsx", SMALL_ROWS);
    Map<String, Runs> took = measure(job, tools.plainCommands());
    double start = took.get("java -version").processor();
    double fill = took.get("Washbook").processor();
    page.atMost(job.name() + ": processor s", fill, 0.45);
    page.atMost(job.name() + ": processor time, times java -version", fill / start, 6);
    page.atMost(
        "calc: processor time, times java -version", took.get("calc").processor() / start, 1.6);
  }

  private void large(String kind, int rows, double mostTimes) throws Exception {
    Job job = Job.ofOne(folder, kind, rows);
    Map<String, Runs> took = measure(job, List.of());
    Runs ours = took.get("Washbook");
    page.atMost(
        job.name() + ": processor time, times the floor",
        ours.processor() / took.get("floor").processor(),
        mostTimes);
    page.atMost(job.name() + ": peak MB", ours.megabytes(), 200);
  }

  private void many(int files) throws Exception {
    Job job = Job.ofMany(folder, files);
    Map<String, Runs> took = measure(job, List.of());
    Runs ours = took.get("Washbook");
    Runs usermodel = took.get("POI usermodel");
    Runs floor = took.get("floor");
    page.atLeast(
        job.name() + ": time of POI's usermodel, times ours",
        usermodel.seconds() / ours.seconds(),
        6);
    page.atLeast(
        job.name() + ": the same in processor time", usermodel.processor() / ours.processor(), 6);
    page.atMost(job.name() + ": times the floor", ours.seconds() / floor.seconds(), 4);
    page.atMost(
        job.name() + ": processor time, times the floor", ours.processor() / floor.processor(), 4);
  }

  /** All tools by name. They take turns, so that whatever else the machine does meets all. */
  private Map<String, Runs> measure(Job job, List<Tool> besides) throws Exception {
    System.out.println(job.name());
    Path kept = folder.resolve("kept");
    List<Runs> all = new ArrayList<>();
    all.add(new Runs(tools.washbook(job), true));
    Runs floor = new Runs(tools.floor(kept), true);
    all.add(floor);
    besides.forEach(tool -> all.add(new Runs(tool, true)));
    for (Tool peer : tools.peers(job)) {
      all.add(new Runs(peer, peer.name().equals("POI usermodel")));
    }
    for (int round = 0; round < Runs.MOST; round++) {
      for (Runs runs : all) {
        if (runs.wants(round)) {
          run(job, runs, round, kept);
        }
      }
    }
    page.table(job.name(), all, floor);
    delete(kept);
    delete(job.logs());
    Map<String, Runs> byName = new LinkedHashMap<>();
    all.forEach(runs -> byName.put(runs.tool.name(), runs));
    return byName;
  }

  /** The results of the very first run, Washbook's, are kept for the floor. */
  private void run(Job job, Runs runs, int round, Path kept) throws Exception {
    Path results = Files.exists(kept) ? folder.resolve("results") : kept;
    Timed took = Timed.attempt(folder, MOST_SECONDS, runs.tool.command().into(results));
    if (took.isFailed()) {
      System.out.println("  once more: " + runs.tool.name());
      delete(results);
      took = Timed.attempt(folder, MOST_SECONDS, runs.tool.command().into(results));
    }
    runs.add(took);
    System.out.printf(
        "  %s: %s s, processor %s s%n",
        runs.tool.name(), PeersPage.number(took.seconds()), PeersPage.number(took.processor()));
    if (round == 0) {
      runs.says(verdict(job, runs.tool, took, results));
    }
    delete(folder.resolve("results"));
  }

  private static String verdict(Job job, Tool tool, Timed took, Path results) {
    if (took.isGivenUp()) {
      return took.isFailed() ? "failed" : "not done in " + MOST_SECONDS + " s: given up";
    }
    try {
      return switch (tool.does()) {
        case FILLS -> {
          job.check(results, false);
          yield "checked";
        }
        case FILLS_BY_PORTABLE_FORMULAS -> {
          job.check(results, true);
          yield "checked, portable formulas";
        }
        case FILLS_NOTHING -> "fills nothing";
      };
    } catch (IOException | AssertionError wrong) {
      return "WRONG: " + wrong.getMessage();
    }
  }

  static void delete(Path folder) throws IOException {
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
