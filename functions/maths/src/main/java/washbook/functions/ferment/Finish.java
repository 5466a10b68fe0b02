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

  /** An estimate is right within a day or this share of the truth, whichever is more. */
  private static final double RIGHT_DAYS = 1;

  private static final double RIGHT_SHARE = 0.3;

  /** An estimate is given when it is this sure, in days or as a share of itself. */
  static final double MOST_PLUS_MINUS_DAYS = 4;

  static final double MOST_PLUS_MINUS_SHARE = 0.8;

  /**
   * The chance by the fits that the truth lies within the plus-or-minus. The model error is wide,
   * so that on generated courses it holds the truth in about seven of ten.
   */
  private static final double HELD = 0.65;

  /** Days below which all fits mean "now". */
  private static final double SHORTEST_DAYS = 0.1;

  private static final double LONGEST_DAYS = 1000;
  private static final int TRIED = 40;
  private static final int HALVINGS = 25;

  /** The estimate, or a refusal when the readings do not tell. */
  public static Finish of(double[] times, double[] gravities, double expectedFinal) {
    return of(Progress.place(times, gravities, expectedFinal), expectedFinal);
  }

  /** The same of a place that is worked out already. */
  static Finish of(Place place, double expectedFinal) {
    if (place.state() == State.TOO_FEW) {
      throw new RefusedException(
          Code.BLANK, "finish.few", Progress.FEWEST_READINGS, Progress.SHORTEST_SPAN_DAYS);
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
    Mixture law = course.law(logOfDays);
    double days = likeliest(law);
    double plusMinus = plusMinus(law, days);
    if (!(plusMinus <= Math.max(MOST_PLUS_MINUS_DAYS, MOST_PLUS_MINUS_SHARE * days))) {
      throw RefusedException.contradiction(
          "finish.unsure", Numbers.rounded(days, 1), Numbers.rounded(plusMinus, 1));
    }
    return new Finish(days, plusMinus);
  }

  /**
   * The days that are most likely right within {@link #RIGHT_DAYS} or {@link #RIGHT_SHARE}.
   *
   * @param logOfDays law of their natural log
   */
  private static double likeliest(Mixture logOfDays) {
    double low = logOfDays.quantile(0.1);
    double high = logOfDays.quantile(0.9);
    double best = Math.exp(low);
    double most = 0;
    for (int i = 0; i <= TRIED; i++) {
      double days = Math.exp(low + (high - low) * i / TRIED);
      double chance =
          between(
              logOfDays,
              Math.min(days - RIGHT_DAYS, days / (1 + RIGHT_SHARE)),
              Math.max(days + RIGHT_DAYS, days / (1 - RIGHT_SHARE)));
      if (chance > most) {
        most = chance;
        best = days;
      }
    }
    return best;
  }

  /** Days to either side that hold the truth with the chance {@link #HELD}. */
  private static double plusMinus(Mixture logOfDays, double days) {
    double low = 0;
    double high = LONGEST_DAYS;
    for (int i = 0; i < HALVINGS; i++) {
      double width = (low + high) / 2;
      if (between(logOfDays, days - width, days + width) < HELD) {
        low = width;
      } else {
        high = width;
      }
    }
    return high;
  }

  private static double between(Mixture logOfDays, double from, double to) {
    return logOfDays.below(Math.log(to)) - (from > 0 ? logOfDays.below(Math.log(from)) : 0);
  }

  private static void refuseWhatDoesNotFall(Place place, double expectedFinal) {
    if (place.state() == State.LAG) {
      throw RefusedException.contradiction("finish.notBegun", 1000 * Progress.BEGUN_FALL);
    }
    if (place.state() == State.STUCK) {
      throw RefusedException.contradiction(
          "finish.still",
          Numbers.rounded(1000 * place.fallPerDay(), 2),
          1000 * Progress.STILL_PER_DAY,
          expectedFinal);
    }
  }
}
