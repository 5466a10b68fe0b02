package washbook.samples.generator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the program made of one log, measured against its truth.
 *
 * @param wrong the false figures, as sentences
 * @param unaccounted rows with a reading that were neither filled nor refused nor asked about
 */
record Judgement(Result result, List<String> wrong, List<String> unaccounted) {

  enum Result {
    RIGHT,
    ASKED,
    /** Some or all readings refused that can be computed. */
    REFUSED,
    /** Not recognised, and nothing said. */
    MISSED,
    /** Right by luck: the log does not say what the figures rest on. */
    GUESSED,
    WRONG,
    /** No ferment, nothing written, nothing said. */
    LEFT_ALONE,
    ONE_LINE,
    /** No ferment, and more than one line about it. */
    LOUD,
    /** Something was written into what is no ferment. */
    WRITTEN_INTO
  }

  /** Room where only the second instrument was used: it shows less well. */
  private static final double GRAVITY_BY_SECOND = 0.004;

  private static final double ABV_BY_SECOND = 0.6;

  static Judgement of(GeneratedLog log, Seen seen) {
    if (log.truth().verdict() == Truth.Verdict.NOTHING) {
      return other(seen);
    }
    List<String> wrong = new ArrayList<>();
    for (Seen.Table table : seen.tables()) {
      table.filled().forEach((row, f) -> check(log, table, row, f).ifPresent(wrong::add));
    }
    List<String> unaccounted = unaccounted(log, seen);
    return new Judgement(result(log, seen, wrong), wrong, unaccounted);
  }

  private static Judgement other(Seen seen) {
    if (seen.writtenColumns() > 0) {
      String what = seen.wroteFigures() ? "figures" : "notes to no effect";
      return new Judgement(Result.WRITTEN_INTO, List.of(what), List.of());
    }
    Result result =
        switch (seen.questions().size()) {
          case 0 -> Result.LEFT_ALONE;
          case 1 -> Result.ONE_LINE;
          default -> Result.LOUD;
        };
    return new Judgement(result, List.of(), List.of());
  }

  private static Optional<String> check(
      GeneratedLog log, Seen.Table table, int row, Seen.Figures figures) {
    String what =
        String.format(
            Locale.ROOT,
            "row %d: SG %.4f, %.2f %% vol where ",
            row + 1,
            figures.gravity(),
            figures.abv());
    Truth.Row truth =
        log.truth().rows().stream()
            .filter(r -> r.row() == row && isRead(r, table))
            .findFirst()
            .orElse(null);
    if (truth == null) {
      return Optional.of(what + "no reading stands");
    }
    if (Double.isNaN(truth.abv())) {
      return Optional.of(what + "nothing can be computed (" + truth.kind() + ")");
    }
    boolean second = !table.readingColumns().contains(truth.columns().get(0));
    double gravityError = second ? GRAVITY_BY_SECOND : truth.gravityError();
    double abvError = second ? ABV_BY_SECOND : truth.abvError();
    boolean right =
        Math.abs(figures.gravity() - truth.gravity()) <= gravityError
            && Math.abs(figures.abv() - truth.abv()) <= abvError;
    return right
        ? Optional.empty()
        : Optional.of(
            what + String.format(Locale.ROOT, "%.4f, %.2f is right", truth.gravity(), truth.abv()));
  }

  private static boolean isRead(Truth.Row row, Seen.Table table) {
    return row.columns().stream().anyMatch(table.readingColumns()::contains);
  }

  private static Result result(GeneratedLog log, Seen seen, List<String> wrong) {
    if (!wrong.isEmpty()) {
      return Result.WRONG;
    }
    if (log.truth().verdict() == Truth.Verdict.MUST_ASK && seen.wroteFigures()) {
      return Result.GUESSED;
    }
    boolean all =
        log.truth().rows().stream()
            .filter(r -> r.kind() == Truth.Kind.COMPUTABLE)
            .allMatch(r -> isFilled(r, seen));
    if (all) {
      return Result.RIGHT;
    }
    if (!seen.questions().isEmpty()) {
      return Result.ASKED;
    }
    return seen.tables().stream().anyMatch(t -> !t.refused().isEmpty())
        ? Result.REFUSED
        : Result.MISSED;
  }

  private static boolean isFilled(Truth.Row row, Seen seen) {
    return seen.tables().stream()
        .anyMatch(t -> isRead(row, t) && t.filled().containsKey(row.row()));
  }

  /** Readings under the header of a table that is filled, of which nothing is said. */
  private static List<String> unaccounted(GeneratedLog log, Seen seen) {
    List<String> rows = new ArrayList<>();
    for (Truth.Row row : log.truth().rows()) {
      boolean under = false;
      boolean settled = false;
      for (Seen.Table table : seen.tables()) {
        boolean here = isRead(row, table) && table.headerRow() < row.row();
        boolean open = !table.settled() && row.row() <= table.lastRow();
        under |= here && table.settled();
        settled |=
            here
                && (open
                    || table.filled().containsKey(row.row())
                    || table.refused().containsKey(row.row()));
      }
      if (row.hasValue() && under && !settled) {
        rows.add("row " + (row.row() + 1));
      }
    }
    return rows;
  }
}
