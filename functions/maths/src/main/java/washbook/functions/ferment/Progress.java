package washbook.functions.ferment;

import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Readings.Line;

/**
 * How a ferment goes, from its readings in time. State and days to finish come from one fit, {@link
 * CourseModel}. The thresholds are common practice, no source; each is a few reading errors ({@link
 * CourseFit#READING_ERROR}) wide.
 */
public final class Progress {
  /** Readings of the last days make the rate. */
  static final double RATE_WINDOW_DAYS = 2;

  /** Readings of the last days tell whether a wash stood still before it went on. */
  static final double STILL_WINDOW_DAYS = 3;

  /** At least this many readings make the rate, when there are. */
  static final int RATE_READINGS = 3;

  /** Fewer readings, or readings over a shorter time, tell no state. */
  static final int FEWEST_READINGS = 3;

  static final double SHORTEST_SPAN_DAYS = 1;

  /** The ferment has begun when the gravity has fallen by this, SG: four reading errors. */
  static final double BEGUN_FALL = 0.004;

  /** A wash that has not begun after this many days is stuck, not late. */
  static final double LONGEST_LAG_DAYS = 3;

  /** SG per day below which a wash stands still: one reading error a day. */
  static final double STILL_PER_DAY = 0.001;

  /** A wash that stood still has started again when it has fallen by this since, SG. */
  static final double RESTARTED_FALL = 0.004;

  /** Share of the fastest fall so far below which a ferment is slowing. */
  static final double SLOWING_SHARE = 0.5;

  /** A still wash this near the expected final gravity, SG, or below it, is done. */
  static final double DONE_WITHIN = 0.003;

  /** A wash that stands still at this SG or under it is dry, whatever was expected. */
  static final double DRY = 1.000;

  /** A rise between two readings that only a feed explains; what came before no longer counts. */
  static final double FEED_RISE = 0.005;

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

    String word() {
      return word;
    }
  }

  /**
   * Where a ferment is at its last reading.
   *
   * @param course null when there are too few readings
   * @param gravity SG as fitted
   * @param fallPerDay SG per day as fitted
   */
  record Place(State state, CourseModel course, double gravity, double fallPerDay) {}

  /** Points (1000 x SG) per day that the gravity falls now; negative when it rises. */
  public static double rate(double[] times, double[] gravities) {
    return 1000 * lastLine(afterFeed(Readings.of(times, gravities))).fallPerDay();
  }

  /** The state in one word, or that there are too few readings. */
  public static String state(double[] times, double[] gravities, double expectedFinal) {
    return place(times, gravities, expectedFinal).state.word;
  }

  static Place place(double[] times, double[] gravities, double expectedFinal) {
    Readings readings = afterFeed(Readings.of(times, gravities));
    if (readings.count() < FEWEST_READINGS || readings.span() < SHORTEST_SPAN_DAYS) {
      return new Place(State.TOO_FEW, null, Double.NaN, Double.NaN);
    }
    int again = Restart.reading(readings);
    Readings since = readings.from(again);
    CourseModel course = CourseModel.of(since, expectedFinal);
    double standing = Standing.level(since, course);
    double now = course.now();
    boolean stands = !Double.isNaN(standing);
    double gravity = stands ? standing : course.mean(fit -> fit.gravity(now));
    double fall = stands ? 0 : course.mean(fit -> fit.fall(now));
    return new Place(state(readings, again > 0, course, gravity, fall), course, gravity, fall);
  }

  private static State state(
      Readings readings, boolean again, CourseModel course, double gravity, double fall) {
    double first = course.first();
    double start = Math.max(readings.gravities()[0], course.mean(fit -> fit.gravity(first)));
    boolean atEnd = gravity <= Math.max(course.expectedFinal() + DONE_WITHIN, DRY);
    if (start - gravity < BEGUN_FALL && !again && !atEnd) {
      return readings.span() > LONGEST_LAG_DAYS ? State.STUCK : State.LAG;
    }
    if (fall < STILL_PER_DAY) {
      return atEnd ? State.DONE : State.STUCK;
    }
    if (again) {
      return State.RESTARTED;
    }
    double now = course.now();
    double fastest = course.mean(fit -> fit.fastestUntil(now));
    return fall < SLOWING_SHARE * fastest ? State.SLOWING : State.WORKING;
  }

  private static Line lastLine(Readings readings) {
    if (readings.count() < 2) {
      throw new RefusedException(Code.BLANK, "readings.few", readings.count());
    }
    Line line = readings.line(readings.count() - 1, RATE_WINDOW_DAYS, RATE_READINGS);
    if (!(line.span() > 0)) {
      throw RefusedException.contradiction("readings.sameTime");
    }
    return line;
  }

  /** The readings after the last rise that only a feed explains. */
  static Readings afterFeed(Readings readings) {
    int first = 0;
    for (int i = 1; i < readings.count(); i++) {
      if (readings.gravities()[i] - readings.gravities()[i - 1] > FEED_RISE) {
        first = i;
      }
    }
    return readings.from(first);
  }
}
