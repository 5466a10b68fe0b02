package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The tables of {@link PeersBench} and the figures that must hold. */
final class PeersPage {
  private final StringBuilder limits = new StringBuilder();
  private final StringBuilder tables = new StringBuilder();
  private final Map<String, String> tools = new LinkedHashMap<>();
  private boolean missed;

  boolean isMissed() {
    return missed;
  }

  void atMost(String what, double figure, double most) {
    limit(what, figure, "at most", most, figure <= most);
  }

  void atLeast(String what, double figure, double least) {
    limit(what, figure, "at least", least, figure >= least);
  }

  private void limit(String what, double figure, String bound, double of, boolean holds) {
    missed |= !holds;
    String line =
        String.format(
            Locale.ROOT,
            "| %s | %s | %s %s | %s |%n",
            what,
            number(figure),
            bound,
            Double.toString(of).replaceAll("\\.0$", ""),
            holds ? "holds" : Double.isNaN(figure) ? "missed: not measured" : "missed");
    System.out.print(line);
    limits.append(line);
  }

  void table(String job, List<Runs> all, Runs floor) {
    StringBuilder table = new StringBuilder();
    table.append("\n### ").append(job).append("\n\n");
    table.append("| tool | runs | s | processor s | peak MB | times the floor: s | processor | ");
    table.append("results |\n| --- | ---: | ---: | ---: | ---: | ---: | ---: | --- |\n");
    for (Runs runs : all) {
      missed |= runs.isWrong();
      Tool tool = runs.tool;
      if (!tool.how().isEmpty()) {
        tools.put(tool.name(), tool.how());
      }
      table.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %s | %s | %s | %s | %s |%n",
              tool.name(),
              runs.number() == 0 ? "" : Integer.toString(runs.number()),
              number(runs.seconds()),
              number(runs.processor()),
              number(runs.megabytes()),
              number(runs.seconds() / floor.seconds()),
              number(runs.processor() / floor.processor()),
              runs.verdict()));
    }
    System.out.print(table);
    tables.append(table);
  }

  /** Three digits are enough. */
  static String number(double figure) {
    if (Double.isNaN(figure)) {
      return "";
    }
    int decimals = figure < 1 ? 3 : figure < 10 ? 2 : figure < 100 ? 1 : 0;
    return String.format(Locale.ROOT, "%,." + decimals + "f", figure);
  }

  /** What stands in the page below, figures of other runs, is kept. */
  void write(Path page, long mostSeconds, double minutes) throws IOException {
    String old = Files.exists(page) ? Files.readString(page) : "";
    int section = old.indexOf("\n## ");
    Files.writeString(
        page, text(mostSeconds, minutes) + (section < 0 ? "" : old.substring(section)));
  }

  private String text(long mostSeconds, double minutes) throws IOException {
    StringBuilder how = new StringBuilder();
    tools.forEach((name, what) -> how.append("- ").append(name).append(": ").append(what + ".\n"));
    return """
    # How fast, and how much memory

    Written by `mvn -Pbench-runner -pl batch-runner -am verify -DskipTests`, all in one run of %s
    minutes, %s, on %d processors with Java %s; load average at its end %s. Every command is a process
    of its own, its start included; the tools take turns. Medians: of five runs where one takes less
    than 10 s, of three where it takes longer, and one run where a peer takes longer than 45 s; a tool
    is given up after %d s. Processor time is user and system of a tool and all that it starts; peak is
    the largest resident memory of all its processes together.

    Each tool fills the same four columns of the same logs. Checked means that the results of its first
    run are read back: every row is filled, every thirteenth has kept its date, words and readings, and
    holds what the single functions give, within 1e-9, or within the portable formulas' stated error
    where it uses them.

    %s
    | must hold | figure | | |
    | --- | ---: | ---: | --- |
    %s%s"""
        .formatted(
            number(minutes),
            LocalDate.now(ZoneOffset.UTC),
            Runtime.getRuntime().availableProcessors(),
            System.getProperty("java.version"),
            Files.readString(Path.of("/proc/loadavg")).split(" ")[0],
            mostSeconds,
            how,
            limits,
            tables);
  }
}
