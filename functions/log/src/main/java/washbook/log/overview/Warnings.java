package washbook.log.overview;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import washbook.functions.ferment.Glance;
import washbook.functions.ferment.Outlook;
import washbook.log.WarningLimits;
import washbook.log.WarningLimits.Limit;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.overview.Warning.Kind;

/** Finds what a person should look at in one batch. */
final class Warnings {
  /** A fall that tells that the ferment has begun, SG: four reading errors. */
  private static final double BEGUN = 0.004;

  /** A wash may stop at once: that bends its readings, but not by twice what a slip does. */
  private static final double BEND = 2;

  /** Two readings of one wash differ by this, SG. */
  private static final double SAME = 0.002;

  /** The state of a wash that works, and those that are as much as that to who waits for it. */
  static final String WORKING = "working";

  private static final Set<String> AT_WORK = Set.of(WORKING, "slowing", "restarted");

  private static final String LAG = "lag";

  private final WarningLimits limits;

  Warnings(WarningLimits limits) {
    this.limits = limits;
  }

  /**
   * All but those that depend on today.
   *
   * @param outlook null where there is none
   */
  List<FoundWarning> of(BatchOverview batch, BatchReadings readings, Outlook outlook) {
    List<FoundWarning> warnings = new ArrayList<>();
    standing(batch, readings).ifPresent(warnings::add);
    temperature(readings, true).ifPresent(warnings::add);
    temperature(readings, false).ifPresent(warnings::add);
    abovePlan(batch, readings).ifPresent(warnings::add);
    suspicious(readings, outlook, warnings);
    return warnings;
  }

  private Optional<FoundWarning> standing(BatchOverview batch, BatchReadings readings) {
    if (batch.days() != null && !batch.state().equals("done") && readings.count() > 1) {
      double fall = readings.gravities()[0] - readings.gravities()[readings.count() - 1];
      if (fall < BEGUN && batch.days() > limits.of(Limit.LAG)) {
        return Optional.of(
            warning(
                Kind.NOT_FALLING,
                readings.lastRow(),
                "",
                Limit.LAG,
                Message.of(
                    "warning.notFalling",
                    figure("%.1f", batch.days()),
                    figure("%.1f", 1000 * Math.max(0, fall) + 0.0),
                    limits.shown(Limit.LAG))));
      }
    }
    if (!batch.state().equals("stuck")) {
      return Optional.empty();
    }
    Message reason =
        batch.extractLeft() == null
            ? Message.of(
                "warning.stuck.only",
                figure("%.4f", batch.latestGravity()),
                figure("%.3f", limits.of(Limit.FINAL)))
            : Message.of(
                "warning.stuck",
                figure("%.4f", batch.latestGravity()),
                figure("%.1f", batch.extractLeft()),
                figure("%.3f", limits.of(Limit.FINAL)));
    return Optional.of(
        new FoundWarning(
            Kind.STUCK, readings.lastRow(), "", reason, reason, limits.source(Limit.FINAL)));
  }

  private Optional<FoundWarning> temperature(BatchReadings readings, boolean warm) {
    Limit limit = warm ? Limit.WARMEST : Limit.COLDEST;
    double most = limits.of(limit);
    int worst = -1;
    double[] values = readings.temperaturesC();
    for (int i = 0; i < values.length; i++) {
      boolean beyond = warm ? values[i] > most : values[i] < most;
      boolean worse = worst < 0 || (warm ? values[i] > values[worst] : values[i] < values[worst]);
      worst = beyond && worse ? i : worst;
    }
    if (worst < 0) {
      return Optional.empty();
    }
    return Optional.of(
        warning(
            warm ? Kind.TOO_WARM : Kind.TOO_COLD,
            readings.temperatureRows()[worst],
            readings.temperatureCell(worst),
            limit,
            Message.of(
                warm ? "warning.tooWarm" : "warning.tooCold",
                figure("%.1f", values[worst]),
                limits.shown(limit))));
  }

  private Optional<FoundWarning> abovePlan(BatchOverview batch, BatchReadings readings) {
    return batch.alcohol() != null && batch.alcohol() > limits.of(Limit.PLANNED)
        ? Optional.of(
            warning(
                Kind.ABOVE_PLAN,
                readings.lastRow(),
                "",
                Limit.PLANNED,
                Message.of(
                    "warning.abovePlan",
                    figure("%.2f", batch.alcohol()),
                    limits.shown(Limit.PLANNED))))
        : Optional.empty();
  }

  /** A reading far off its neighbours, else one that the fitted course fits worse than those. */
  private void suspicious(BatchReadings readings, Outlook outlook, List<FoundWarning> warnings) {
    double most = limits.of(Limit.OFF_COURSE) / 1000;
    double[] gravities = readings.gravities();
    double[] offCourse = outlook == null ? new double[0] : outlook.offCourse();
    int blamed = -1;
    for (int i = 1; i < gravities.length - 1; i++) {
      if (blamed == i - 1) {
        // Beside a wrong reading the next one looks wrong too.
        continue;
      }
      double off = offNeighbours(gravities, i);
      boolean byNeighbours = Math.abs(off) > most;
      off =
          byNeighbours || outlook == null ? off : bends(readings, i) ? worstHere(offCourse, i) : 0;
      if (Math.abs(off) > most) {
        blamed = i;
        warnings.add(
            warning(
                Kind.SUSPICIOUS,
                readings.rows()[i],
                readings.cell(i),
                Limit.OFF_COURSE,
                Message.of(
                    (off > 0 ? "warning.above." : "warning.below.")
                        + (byNeighbours ? "neighbours" : "course"),
                    figure("%.4f", gravities[i]),
                    figure("%.1f", 1000 * Math.abs(off)),
                    limits.shown(Limit.OFF_COURSE))));
      }
    }
  }

  /** Whether a reading is off the middle of those beside it, and off their line in time too. */
  private boolean bends(BatchReadings readings, int i) {
    double most = BEND * limits.of(Limit.OFF_COURSE) / 1000;
    double[] gravities = readings.gravities();
    if (!(Math.abs(offBeside(gravities, i)) > most)) {
      return false;
    }
    double[] days = readings.days();
    double between = days[i + 1] - days[i - 1];
    double share = between > 0 ? (days[i] - days[i - 1]) / between : 0.5;
    double line = gravities[i - 1] + share * (gravities[i + 1] - gravities[i - 1]);
    return Math.abs(gravities[i] - line) > most;
  }

  /**
   * How much further off the course a reading is than the mean of those beside it, so that a course
   * that fits the whole beginning badly blames no single reading; 0 where one beside it is further
   * off.
   */
  private static double worstHere(double[] off, int i) {
    double here = offBeside(off, i);
    return Math.abs(here) >= Math.abs(offBeside(off, i - 1))
            && Math.abs(here) >= Math.abs(offBeside(off, i + 1))
        ? here
        : 0;
  }

  private static double offBeside(double[] values, int i) {
    double beyond =
        i < 1 || i > values.length - 2 ? 0 : values[i] - (values[i - 1] + values[i + 1]) / 2;
    return Double.isNaN(beyond) ? 0 : beyond;
  }

  /** SG outside the two readings beside it, which fall as they should; 0 between them. */
  private static double offNeighbours(double[] gravities, int i) {
    if (gravities[i + 1] > gravities[i - 1] + SAME) {
      return 0;
    }
    return gravities[i] > gravities[i - 1]
        ? gravities[i] - gravities[i - 1]
        : Math.min(0, gravities[i] - gravities[i + 1]);
  }

  /**
   * Whether a wash that works was not read for days; an old log is no longer waited for.
   *
   * @param row of the last reading
   */
  Optional<FoundWarning> overdue(BatchOverview batch, LocalDate today, int row) {
    LocalDate last = batch.lastDate() == null ? null : LocalDate.parse(batch.lastDate());
    boolean isWorking = AT_WORK.contains(batch.state());
    if (!(isWorking || batch.state().equals(LAG)) || !isLongAgo(last, today)) {
      return Optional.empty();
    }
    Message state = Message.of(isWorking ? "warning.was.working" : "warning.was.lag");
    Message most = limits.shown(Limit.OVERDUE);
    long since = ChronoUnit.DAYS.between(last, today);
    return Optional.of(
        new FoundWarning(
            Kind.OVERDUE,
            row,
            "",
            Message.of("warning.overdue", last, since, state, most),
            Message.of("warning.overdue.note", last, state, most),
            limits.source(Limit.OVERDUE)));
  }

  /** Whether somebody should have read it since. */
  boolean isLongAgo(LocalDate last, LocalDate today) {
    long since = last == null ? 0 : ChronoUnit.DAYS.between(last, today);
    return since > limits.of(Limit.OVERDUE) && since <= limits.of(Limit.CLOSED);
  }

  /**
   * Whether a fitted course would add no warning: the last readings show that the ferment is not
   * stuck, none bends, and that it works where somebody waits for the next.
   *
   * @param readings those that would be fitted, each with a time
   * @param days from the first reading of all to the last
   * @param last on which it was read last, null where no date tells
   */
  boolean needNoCourse(BatchReadings readings, double days, LocalDate last, LocalDate today) {
    double[] gravities = readings.gravities();
    int count = gravities.length;
    double end = limits.of(Limit.FINAL);
    if (isLongAgo(last, today) && !Glance.isWorking(readings.days(), gravities, end)
        || count > 1
            && gravities[0] - gravities[count - 1] < BEGUN
            && days > limits.of(Limit.LAG)) {
      return false;
    }
    for (int i = 1; i < count - 1; i++) {
      if (bends(readings, i)) {
        return false;
      }
    }
    return Glance.isNotStuck(readings.days(), gravities, end);
  }

  private FoundWarning warning(Kind kind, int row, String cell, Limit limit, Message reason) {
    return new FoundWarning(kind, row, cell, reason, reason, limits.source(limit));
  }

  private static Figure figure(String format, double value) {
    return new Figure(String.format(Locale.ROOT, format, value));
  }
}
