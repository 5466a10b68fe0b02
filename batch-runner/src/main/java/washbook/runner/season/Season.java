package washbook.runner.season;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import washbook.log.WarningLimits;
import washbook.log.overview.BatchOverview;
import washbook.log.understand.SeasonSheet;
import washbook.runner.language.Wording;
import washbook.runner.report.BatchSeries;
import washbook.runner.report.FileReport;
import washbook.runner.report.OverviewLine;
import washbook.runner.report.RefusalGroup;

/**
 * All batches of all logs.
 *
 * @param rows by the date of their first reading; those without dates come last
 * @param left what was not understood or refused, by file
 * @param words of whom it is for
 */
public record Season(List<SeasonRow> rows, List<LeftOut> left, Wording words) {

  /** What every sheet and file of ours begins with; the understanding of logs passes over them. */
  String title() {
    return SeasonSheet.title(words.language());
  }

  /** A refusal of one file. */
  record LeftOut(String file, RefusalGroup refusal) {}

  /**
   * Puts files together.
   *
   * @param folder the season's folder, from which files are named
   * @param today the day on which readings may be overdue
   */
  public static Season of(
      Collection<FileReport> files,
      Path folder,
      LocalDate today,
      WarningLimits limits,
      Wording words) {
    List<SeasonRow> rows = new ArrayList<>();
    List<LeftOut> left = new ArrayList<>();
    for (FileReport file : files) {
      String name = SeasonRow.seenFrom(folder, Path.of(file.path()));
      List<BatchSeries> curves = new ArrayList<>(file.curves());
      for (BatchOverview batch : file.overview()) {
        OverviewLine line = new OverviewLine(name, batch.asOf(today, limits, words.language()));
        rows.add(new SeasonRow(line, take(curves, batch.batch())));
      }
      RefusalGroup.of(file.refusals()).forEach(group -> left.add(new LeftOut(name, group)));
    }
    rows.sort(
        Comparator.comparing((SeasonRow row) -> date(row.line().batch()))
            .thenComparing(row -> row.line().file())
            .thenComparing(row -> row.line().batch().sheet()));
    left.sort(Comparator.comparing(LeftOut::file));
    return new Season(List.copyOf(rows), List.copyOf(left), words);
  }

  private static String date(BatchOverview batch) {
    return batch.firstDate() == null ? "9999" : batch.firstDate();
  }

  /** The first curve of that name; the next batch of the same name gets the next one. */
  private static BatchSeries take(List<BatchSeries> curves, String batch) {
    for (BatchSeries curve : curves) {
      if (curve.batch().equals(batch)) {
        curves.remove(curve);
        return curve;
      }
    }
    return null;
  }

  /** Batches with a curve over days, by the kind of their wash; the latest when they are many. */
  Map<String, List<SeasonRow>> byWash(int most) {
    Map<String, List<SeasonRow>> drawn = new LinkedHashMap<>();
    for (SeasonRow row : rows) {
      if (row.curve() != null && row.curve().isOverDays()) {
        drawn.computeIfAbsent(row.line().batch().wash(), wash -> new ArrayList<>()).add(row);
      }
    }
    drawn.replaceAll((wash, all) -> all.subList(Math.max(0, all.size() - most), all.size()));
    return drawn;
  }

  /** How many curves of a kind are not drawn when at most {@code most} are; "" for none. */
  String notDrawn(int most) {
    Map<String, List<SeasonRow>> all = byWash(Integer.MAX_VALUE);
    return all.values().stream().anyMatch(curves -> curves.size() > most)
        ? words.say("season.notDrawn", most)
        : "";
  }

  /** As {@code 81 batches: 44 done, 12 stuck; 27 warnings.} */
  public String sentence() {
    Map<String, List<BatchOverview>> states =
        rows.stream()
            .map(row -> row.line().batch())
            .collect(
                Collectors.groupingBy(
                    batch -> batch.state().isEmpty() ? "without dates" : batch.state(),
                    TreeMap::new,
                    Collectors.toList()));
    String each =
        states.values().stream()
            .map(alike -> words.say("totals.each", alike.size(), state(alike.get(0))))
            .collect(Collectors.joining(", "));
    String batches = words.count("season.batches", rows.size());
    return words.say(
        "season.sentence",
        each.isEmpty() ? batches : words.say("totals.list", batches, each),
        words.count(
            "season.count",
            rows.stream().mapToLong(row -> row.line().batch().warnings().size()).sum()));
  }

  private String state(BatchOverview batch) {
    return batch.state().isEmpty() ? words.say("season.undated") : words.say(batch.stateMessage());
  }
}
