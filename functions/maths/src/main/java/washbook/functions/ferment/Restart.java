package washbook.functions.ferment;

import washbook.functions.ferment.Readings.Line;

/** Finds a ferment that stood still and goes on. */
final class Restart {
  private Restart() {}

  /**
   * The reading from which a ferment falls again that stood still after it had begun or was late to
   * begin; 0 when none does. It must have fallen by more than readings waver since.
   */
  static int reading(Readings readings) {
    int since = 0;
    double level = Double.NaN;
    int stood = 0;
    for (int i = Progress.FEWEST_READINGS - 1; i < readings.count(); i++) {
      Line line = readings.line(i, Progress.STILL_WINDOW_DAYS, Progress.RATE_READINGS);
      if (line.span() < Progress.SHORTEST_SPAN_DAYS) {
        continue;
      }
      boolean begun = readings.gravities()[0] - line.gravity() >= Progress.BEGUN_FALL;
      boolean late = readings.days()[i] - readings.days()[0] > Progress.LONGEST_LAG_DAYS;
      if (line.fallPerDay() + line.error() < Progress.STILL_PER_DAY && (begun || late)) {
        stood = i;
        level = line.gravity();
      } else if (level - line.gravity() >= Progress.RESTARTED_FALL
          && line.fallPerDay() - line.error() >= Progress.STILL_PER_DAY) {
        since = stood;
      }
    }
    return since;
  }
}
