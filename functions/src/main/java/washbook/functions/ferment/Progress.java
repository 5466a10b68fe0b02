package washbook.functions.ferment;

import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Readings.Line;

/**
 * How a ferment goes, from its readings in time. The thresholds are common practice, no source;
 * they are wide enough that readings which waver by 0.001 to either side do not change the word.
 */
public final class Progress {
  /** Readings of the last days make the rate. */
  static final double RATE_WINDOW_DAYS = 3;

  /** At least so many readings make the rate, when there are. */
  static final int RATE_READINGS = 3;

  /** Fewer readings, or readings over a shorter time, tell no state. */
  static final int FEWEST_READINGS = 3;

  static final double SHORTEST_SPAN_DAYS = 1;

  /** The ferment has begun when the gravity has fallen by so much. */
  static final double BEGUN_FALL = 0.004;

  /** A wash that has not begun after so many days is stuck, not late. */
  static final double LONGEST_LAG_DAYS = 3;

  /** SG per day below which a wash stands still. */
  static final double STILL_PER_DAY = 0.001;

  /** SG per day that a wash which stood still must reach to count as started again. */
  static final double RESTARTED_PER_DAY = 0.002;

  /** Share of the fastest fall so far below which a ferment is slowing. */
  static final double SLOWING_SHARE = 0.5;

  /** A still wash this near the expected final gravity, or below it, is done. */
  static final double DONE_WITHIN = 0.003;

  /** A rise between two readings that only a feed explains; what came before no longer counts. */
  static final double FEED_RISE = 0.005;

  /** The expected end counts as reached so near it. */
  static final double FINISHED_WITHIN = 0.001;

  private Progress() {}

  /** What {@link #state} says. */
  enum State {
    LAG("lag"),
    WORKING("working"),
    SLOWING("slowing"),
    STUCK("stuck"),
    DONE("done"),
    RESTARTED("restarted"),
    TOO_FEW("too few readings");

    private final String word;

    State(String word) {
      this.word = word;
    }
  }

  /** Points (1000 x SG) per day that the gravity falls now; negative when it rises. */
  public static double rate(double[] times, double[] gravities) {
    return 1000 * lastLine(afterFeed(Readings.of(times, gravities))).fallPerDay();
  }

  /** The state in one word, or that there are too few readings. */
  public static String state(double[] times, double[] gravities, double expectedFinal) {
    Readings readings = afterFeed(Readings.of(times, gravities));
    if (readings.count() < FEWEST_READINGS || readings.span() < SHORTEST_SPAN_DAYS) {
      return State.TOO_FEW.word;
    }
    return state(readings, expectedFinal).word;
  }

  private static State state(Readings readings, double expectedFinal) {
    int last = readings.count() - 1;
    Line now = readings.line(last, RATE_WINDOW_DAYS, RATE_READINGS);
    boolean nearEnd = now.gravity() <= expectedFinal + DONE_WITHIN;
    if (now.fallPerDay() < STILL_PER_DAY) {
      if (nearEnd) {
        return State.DONE;
      }
      boolean begun = readings.gravities()[0] - now.gravity() >= BEGUN_FALL;
      return begun || readings.span() > LONGEST_LAG_DAYS ? State.STUCK : State.LAG;
    }
    return moving(readings, now);
  }

  private static State moving(Readings readings, Line now) {
    int last = readings.count() - 1;
    double start = readings.gravities()[0];
    double fastest = now.fallPerDay();
    boolean stood = false;
    boolean again = false;
    for (int i = FEWEST_READINGS - 1; i <= last; i++) {
      Line line = readings.line(i, RATE_WINDOW_DAYS, RATE_READINGS);
      if (line.span() < SHORTEST_SPAN_DAYS) {
        continue;
      }
      boolean begun = start - line.gravity() >= BEGUN_FALL;
      boolean late = readings.days()[i] - readings.days()[0] > LONGEST_LAG_DAYS;
      if (line.fallPerDay() < STILL_PER_DAY && (begun || late)) {
        stood = true;
        again = false;
        fastest = now.fallPerDay();
      } else if (stood && line.fallPerDay() >= RESTARTED_PER_DAY) {
        again = true;
      }
      fastest = Math.max(fastest, line.fallPerDay());
    }
    if (again) {
      return State.RESTARTED;
    }
    if (start - now.gravity() < BEGUN_FALL && start - readings.gravities()[last] < BEGUN_FALL) {
      return State.LAG;
    }
    return stood || now.fallPerDay() < SLOWING_SHARE * fastest ? State.SLOWING : State.WORKING;
  }

  /**
   * Days from the last reading until the expected final gravity is reached within {@link
   * #FINISHED_WITHIN}, if the fall goes on to be in proportion to what is left.
   */
  public static double daysToFinish(double[] times, double[] gravities, double expectedFinal) {
    Readings readings = afterFeed(Readings.of(times, gravities));
    Line now = lastLine(readings);
    double left = now.gravity() - expectedFinal;
    if (left <= FINISHED_WITHIN) {
      return 0;
    }
    if (now.fallPerDay() < STILL_PER_DAY) {
      throw RefusedException.contradiction(
          "the gravity falls by "
              + Numbers.round(1000 * now.fallPerDay(), 2)
              + " points per day, less than "
              + Numbers.show(1000 * STILL_PER_DAY)
              + ": it is not on its way to "
              + Numbers.show(expectedFinal)
              + ".");
    }
    double leftInMiddle = left + now.fallPerDay() * now.span() / 2;
    return leftInMiddle / now.fallPerDay() * Math.log(left / FINISHED_WITHIN);
  }

  private static Line lastLine(Readings readings) {
    if (readings.count() < 2) {
      throw new RefusedException(
          Code.BLANK, "there are too few readings: " + readings.count() + "; two are needed.");
    }
    Line line = readings.line(readings.count() - 1, RATE_WINDOW_DAYS, RATE_READINGS);
    if (!(line.span() > 0)) {
      throw RefusedException.contradiction("all readings are of the same time.");
    }
    return line;
  }

  private static Readings afterFeed(Readings readings) {
    int first = 0;
    for (int i = 1; i < readings.count(); i++) {
      if (readings.gravities()[i] - readings.gravities()[i - 1] > FEED_RISE) {
        first = i;
      }
    }
    return readings.from(first);
  }
}
