package washbook.runner.season;

import java.time.LocalDate;
import washbook.functions.reading.Hydrometer;

/**
 * An invented batch whose state is known because it was made so: its gravity falls by a logistic
 * law from {@code original} towards {@code end}, fastest on the fifth day.
 *
 * @param state what the readings must tell
 * @param lastDay of its readings, from 0
 * @param warning what must be warned of; "" for nothing
 */
record WinterBatch(
    String name,
    LocalDate begin,
    double original,
    double end,
    int lastDay,
    String state,
    String warning) {
  private static final double FASTEST_DAY = 4;
  private static final double SLOWNESS_DAYS = 1.1;

  /** SG 20/20 on a day. */
  double gravity(double day) {
    double share = share(day) / share(0);
    return end + (original - end) * share;
  }

  /** What the keeper reads, once 30 points too low where that is the warning. */
  private double read(int day) {
    return gravity(day);
  }

  private static double share(double day) {
    return 1 / (1 + Math.exp((day - FASTEST_DAY) / SLOWNESS_DAYS));
  }

  /** The wash is warm while it works. */
  double temperatureC(int day) {
    return (warning.equals("too warm") ? 31 : 18)
        + Math.round(40 * (share(day) * (1 - share(day)))) / 2.0;
  }

  /** What a hydrometer shows that is calibrated at that temperature. */
  double shown(int day, double calibrationC) {
    double wanted = read(day);
    double shown = wanted;
    for (int i = 0; i < 20; i++) {
      shown += wanted - Hydrometer.correctedGravity(shown, temperatureC(day), calibrationC, 0);
    }
    return shown;
  }

  LocalDate date(int day) {
    return begin.plusDays(day);
  }
}
