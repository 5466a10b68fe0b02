package washbook.functions.ferment;

import java.util.function.ToDoubleFunction;
import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Progress.Place;
import washbook.functions.ferment.Progress.State;

/**
 * When a ferment will be at its end, by the fit of {@link CourseModel} that gives its state too.
 *
 * @param days from the last reading until it is there
 * @param plusMinus one standard deviation of that, days
 */
public record Finish(double days, double plusMinus) {
  /** The end counts as reached this near it, SG: two reading errors; a hydrometer tells no more. */
  static final double WITHIN = 0.002;

  /** An estimate is given when it is this sure, in days or as a share of itself. */
  static final double MOST_PLUS_MINUS_DAYS = 1.3;

  static final double MOST_PLUS_MINUS_SHARE = 0.33;

  /**
   * Share of the fits' spread that is given as plus-or-minus: on generated courses the whole spread
   * held the truth in four of five cases, this share in seven of ten.
   */
  private static final double SPREAD_SHARE = 0.85;

  /** Days below which all fits mean "now". */
  private static final double SHORTEST_DAYS = 0.1;

  /** One standard deviation of a normal law below and above its middle. */
  private static final double LOW = 0.1587;

  private static final double HIGH = 0.8413;

  /** The estimate, or a refusal when the readings do not tell. */
  public static Finish of(double[] times, double[] gravities, double expectedFinal) {
    return of(Progress.place(times, gravities, expectedFinal), expectedFinal);
  }

  /** The same of a place that is worked out already. */
  static Finish of(Place place, double expectedFinal) {
    if (place.state() == State.TOO_FEW) {
      throw new RefusedException(
          Code.BLANK,
          "there are too few readings; "
              + Progress.FEWEST_READINGS
              + " over "
              + Numbers.show(Progress.SHORTEST_SPAN_DAYS)
              + " day are needed.");
    }
    if (place.state() == State.DONE || place.gravity() <= expectedFinal + WITHIN) {
      return new Finish(0, 0);
    }
    refuseWhatDoesNotFall(place, expectedFinal);
    CourseModel course = place.course();
    double now = course.now();
    ToDoubleFunction<CourseFit> logOfDays =
        fit ->
            Math.log(
                Math.max(
                    SHORTEST_DAYS, fit.dayOf(Math.max(expectedFinal, fit.end()) + WITHIN) - now));
    double days = Math.exp(course.mean(logOfDays));
    double spread =
        Math.exp(course.quantile(logOfDays, HIGH)) - Math.exp(course.quantile(logOfDays, LOW));
    double plusMinus = SPREAD_SHARE * spread / 2;
    if (!(plusMinus <= Math.max(MOST_PLUS_MINUS_DAYS, MOST_PLUS_MINUS_SHARE * days))) {
      throw RefusedException.contradiction(
          "the readings do not tell yet: "
              + Numbers.round(days, 1)
              + " days give or take "
              + Numbers.round(plusMinus, 1)
              + "; a further reading in half a day or more will tell more.");
    }
    return new Finish(days, plusMinus);
  }

  private static void refuseWhatDoesNotFall(Place place, double expectedFinal) {
    if (place.state() == State.LAG) {
      throw RefusedException.contradiction(
          "the ferment has not begun: it has fallen by less than "
              + Numbers.show(1000 * Progress.BEGUN_FALL)
              + " points.");
    }
    if (place.state() == State.STUCK) {
      throw RefusedException.contradiction(
          "the gravity falls by "
              + Numbers.round(1000 * place.fallPerDay(), 2)
              + " points per day, less than "
              + Numbers.show(1000 * Progress.STILL_PER_DAY)
              + ": it is not on its way to "
              + Numbers.show(expectedFinal)
              + ".");
    }
  }
}
