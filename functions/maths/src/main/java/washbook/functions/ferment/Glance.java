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

  /** The last two readings and all of the last hours are at the end by more than an error. */
  private static boolean isAtEnd(Readings readings, double expectedFinal) {
    double end =
        Math.max(expectedFinal + Progress.DONE_WITHIN, Progress.DRY) - CourseFit.READING_ERROR;
    int last = readings.count() - 1;
    int first = last;
    while (first > last - 1
        || first > 0 && readings.days()[last] - readings.days()[first - 1] <= LAST_DAYS[0]) {
      first--;
    }
    return Arrays.stream(readings.gravities(), first, last + 1).allMatch(g -> g <= end);
  }

  /** The last readings lie on a line that falls. */
  private static boolean isFalling(Readings readings) {
    int last = readings.count() - 1;
    Line line = readings.line(last, Progress.RATE_WINDOW_DAYS, Progress.RATE_READINGS);
    int on = 0;
    for (int i = last; i >= 0 && readings.days()[last] - readings.days()[i] <= line.span(); i--) {
      double day = readings.days()[last] - readings.days()[i];
      double off = readings.gravities()[i] - (line.gravity() + day * line.fallPerDay());
      if (Math.abs(off) > STRAIGHT * CourseFit.READING_ERROR) {
        return false;
      }
      on++;
    }
    double most = Progress.STILL_PER_DAY * (on < MANY ? CLEARLY : 1);
    return line.fallPerDay() - SURELY * line.error() > most && fallsStill(readings);
  }

  /** The last of those readings do not fall more slowly than a wash may that goes on. */
  private static boolean fallsStill(Readings readings) {
    for (double window : LAST_DAYS) {
      Line line = readings.line(readings.count() - 1, window, Progress.RATE_READINGS);
      if (!(line.fallPerDay() > STEADILY * Progress.STILL_PER_DAY)) {
        return false;
      }
    }
    return true;
  }
}
