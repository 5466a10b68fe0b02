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
  static final double RATE_WINDOW_DAYS = 2;

  /** Readings of the last days tell whether a wash stands still; longer, so that noise is small. */
  static final double STILL_WINDOW_DAYS = 3;

  /** Readings of the last day tell whether it falls slower than before. */
  static final double SLOWING_WINDOW_DAYS = 1;

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

  /** The rest of a ferment takes so many times what the rate of now would take. */
  static final double SLOWER_TO_THE_END = 2;

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
    Line now = readings.line(readings.count() - 1, STILL_WINDOW_DAYS, RATE_READINGS);
    if (now.fallPerDay() >= STILL_PER_DAY) {
      return moving(readings, now);
    }
    if (now.gravity() <= expectedFinal + DONE_WITHIN) {
      return State.DONE;
    }
    boolean begun = readings.gravities()[0] - now.gravity() >= BEGUN_FALL;
    return begun || readings.span() > LONGEST_LAG_DAYS ? State.STUCK : State.LAG;
  }

  private static State moving(Readings readings, Line now) {
    if (hasRestarted(readings)) {
      return State.RESTARTED;
    }
    int last = readings.count() - 1;
    double start = readings.gravities()[0];
    if (start - now.gravity() < BEGUN_FALL && start - readings.gravities()[last] < BEGUN_FALL) {
      return State.LAG;
    }
    double fastest = 0;
    for (int i = RATE_READINGS - 1; i <= last; i++) {
      Line line = readings.line(i, SLOWING_WINDOW_DAYS, RATE_READINGS);
      if (line.span() >= SLOWING_WINDOW_DAYS / 2) {
        fastest = Math.max(fastest, line.fallPerDay());
      }
    }
    double lately = readings.line(last, SLOWING_WINDOW_DAYS, RATE_READINGS).fallPerDay();
    return lately < SLOWING_SHARE * fastest ? State.SLOWING : State.WORKING;
  }

  /** Whether it stood still after it had begun, or was late to begin, and falls again since. */
  private static boolean hasRestarted(Readings readings) {
    boolean stood = false;
    boolean again = false;
    for (int i = FEWEST_READINGS - 1; i < readings.count(); i++) {
      Line line = readings.line(i, STILL_WINDOW_DAYS, RATE_READINGS);
      if (line.span() < SHORTEST_SPAN_DAYS) {
        continue;
      }
      boolean begun = readings.gravities()[0] - line.gravity() >= BEGUN_FALL;
      boolean late = readings.days()[i] - readings.days()[0] > LONGEST_LAG_DAYS;
      if (line.fallPerDay() < STILL_PER_DAY && (begun || late)) {
        stood = true;
        again = false;
      } else if (stood && line.fallPerDay() >= RESTARTED_PER_DAY) {
        again = true;
      }
    }
    return again;
  }

  /**
   * Days from the last reading until the expected final gravity: {@link #SLOWER_TO_THE_END} times
   * what the rate of now would take, because a ferment slows towards its end.
   */
  public static double daysToFinish(double[] times, double[] gravities, double expectedFinal) {
    Line now = lastLine(afterFeed(Readings.of(times, gravities)));
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
    return SLOWER_TO_THE_END * left / now.fallPerDay();
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
