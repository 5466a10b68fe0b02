package washbook.functions.ferment;

import java.util.Arrays;
import washbook.functions.ferment.Readings.Line;

/**
 * What the last readings tell by themselves, so clearly that no fitted course would say otherwise:
 * a fit takes a thousand times as long. Generated courses show that the two agree.
 */
public final class Glance {
  /** Standard deviations of a line's fall that are taken off it. */
  private static final double SURELY = 2;

  /** Readings this far off their line, in reading errors, do not make one. */
  private static final double STRAIGHT = 0.8;

  /** As many readings make the fall of their line sure enough. */
  private static final int MANY = 6;

  /** Of fewer readings the fall must be so many times that of a wash that stands still. */
  private static final double CLEARLY = 3;

  /** The lines of the last readings fall so many times as much as a wash that stands still. */
  private static final double STEADILY = 2;

  /** A wash that has fallen by so many times what tells that it has begun surely has. */
  private static final double SURELY_BEGUN = 2;

  /** Where many readings over these days lie on one line, it may fall less. */
  private static final double LONG_DAYS = 4;

  private static final int LONG_MANY = 12;

  /** Then the lines of the last readings fall as fast as it by this share, and by so many times. */
  private static final double AS_FAST = 0.85;

  private static final double SLOWLY = 1.3;

  /** Those lines are of so many days. */
  private static final double[] LAST_DAYS = {0.5, 1};

  private Glance() {}

  /**
   * Whether a ferment surely does not stand still above its end; false where only a fit can tell.
   *
   * @param times days, not falling
   * @param gravities SG 20/20, as many
   * @param expectedFinal SG
   */
  public static boolean isNotStuck(double[] times, double[] gravities, double expectedFinal) {
    Readings readings = Progress.afterFeed(Readings.of(times, gravities));
    return readings.count() < Progress.FEWEST_READINGS
        || readings.span() < Progress.SHORTEST_SPAN_DAYS
        || isAtEnd(readings, expectedFinal)
        || isFalling(readings);
  }

  /**
   * Whether a ferment surely has begun and falls on, also near its end; false where only a fit can
   * tell.
   *
   * @param times days, not falling
   * @param gravities SG 20/20, as many
   * @param expectedFinal SG
   */
  public static boolean isWorking(double[] times, double[] gravities, double expectedFinal) {
    Readings readings = Progress.afterFeed(Readings.of(times, gravities));
    if (readings.count() < Progress.FEWEST_READINGS
        || readings.span() < Progress.SHORTEST_SPAN_DAYS) {
      return false;
    }
    double last = readings.gravities()[readings.count() - 1];
    return readings.gravities()[0] - last >= SURELY_BEGUN * Progress.BEGUN_FALL
        && (last > end(expectedFinal) + SURELY * CourseFit.READING_ERROR
            ? isFalling(readings)
            : fallsLong(readings));
  }

  /** The last two readings and all of the last hours are at the end by more than an error. */
  private static boolean isAtEnd(Readings readings, double expectedFinal) {
    double end = end(expectedFinal) - CourseFit.READING_ERROR;
    int last = readings.count() - 1;
    int first = last;
    while (first > last - 1
        || first > 0 && readings.days()[last] - readings.days()[first - 1] <= LAST_DAYS[0]) {
      first--;
    }
    return Arrays.stream(readings.gravities(), first, last + 1).allMatch(g -> g <= end);
  }

  /** At this SG or below a wash that stands still is done. */
  private static double end(double expectedFinal) {
    return Math.max(expectedFinal + Progress.DONE_WITHIN, Progress.DRY);
  }

  /** The last readings lie on a line that falls. */
  private static boolean isFalling(Readings readings) {
    Line line = last(readings, Progress.RATE_WINDOW_DAYS);
    int on = onLine(readings, line);
    double most = Progress.STILL_PER_DAY * (on < MANY ? CLEARLY : 1);
    return on > 0
            && line.fallPerDay() - SURELY * line.error() > most
            && fallsStill(readings, STEADILY * Progress.STILL_PER_DAY)
        || fallsLong(readings);
  }

  /** The same over days enough to tell a slower fall, which must not have become slower. */
  private static boolean fallsLong(Readings readings) {
    Line line = last(readings, LONG_DAYS);
    double fall = line.fallPerDay();
    return onLine(readings, line) >= LONG_MANY
        && fall - SURELY * line.error() > Progress.STILL_PER_DAY
        && fallsStill(readings, Math.max(AS_FAST * fall, SLOWLY * Progress.STILL_PER_DAY));
  }

  private static Line last(Readings readings, double window) {
    return readings.line(readings.count() - 1, window, Progress.RATE_READINGS);
  }

  /** The number of readings of a line, 0 where one of them is off it. */
  private static int onLine(Readings readings, Line line) {
    int last = readings.count() - 1;
    int on = 0;
    for (int i = last; i >= 0 && readings.days()[last] - readings.days()[i] <= line.span(); i--) {
      double day = readings.days()[last] - readings.days()[i];
      double off = readings.gravities()[i] - (line.gravity() + day * line.fallPerDay());
      if (Math.abs(off) > STRAIGHT * CourseFit.READING_ERROR) {
        return 0;
      }
      on++;
    }
    return on;
  }

  /** The last of those readings fall by more than that, SG per day. */
  private static boolean fallsStill(Readings readings, double most) {
    for (double window : LAST_DAYS) {
      if (!(last(readings, window).fallPerDay() > most)) {
        return false;
      }
    }
    return true;
  }
}
