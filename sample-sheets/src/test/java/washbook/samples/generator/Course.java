package washbook.samples.generator;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.WashKind;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Moment;

/** How one wash goes: the moments at which somebody looks at it. */
final class Course {
  enum Kind {
    ORDINARY,
    /** Nothing happens in the first days, and readings wobble. */
    LAG,
    STUCK,
    /** Sugar goes in half-way; how much is known to nobody but the keeper. */
    FED
  }

  /**
   * A visit to the wash.
   *
   * @param afterFeeding whether sugar that the log does not account for is in it
   * @param fedNow whether this is the first visit after the sugar
   */
  record Visit(
      LocalDateTime time,
      double day,
      Moment moment,
      double temperatureC,
      boolean inLag,
      boolean afterFeeding,
      boolean fedNow) {}

  private static final double LITRES = 22;
  private static final double FED_KILOGRAMS = 2;

  private Course() {}

  static Kind choose(Choice choice) {
    return choice.among(
        Kind.ORDINARY,
        Kind.ORDINARY,
        Kind.ORDINARY,
        Kind.ORDINARY,
        Kind.ORDINARY,
        Kind.LAG,
        Kind.LAG,
        Kind.STUCK,
        Kind.FED);
  }

  /**
   * An invented wash.
   *
   * @param trade 0 fruit, 1 apples, 2 molasses, 3 sugar
   */
  static Ferment wash(Choice choice, String name, int trade, Kind kind) {
    double[][] ranges = {
      {1.060, 1.092, 0.994, 1.003},
      {1.044, 1.060, 0.996, 1.004},
      {1.080, 1.104, 1.014, 1.026},
      {1.070, 1.100, 0.987, 0.996}
    };
    double[] range = ranges[trade];
    double original = choice.between(range[0], range[1]);
    double last = choice.between(range[2], range[3]);
    if (kind == Kind.STUCK) {
      last = original - (original - last) * choice.between(0.5, 0.75);
    }
    return new Ferment(
        name,
        original,
        last,
        choice.between(2.5, 6),
        choice.between(13, 27),
        LocalDateTime.of(2024, choice.whole(1, 12), choice.whole(1, 28), choice.whole(7, 20), 0));
  }

  static List<Visit> visits(Choice choice, Ferment wash, Kind kind, boolean sensor) {
    double lag = kind == Kind.LAG ? choice.between(1.2, 2.5) : 0;
    double end = lag + wash.days() * choice.between(1.9, 3.2);
    double fedAt = kind == Kind.FED ? lag + wash.days() * choice.between(0.7, 1.1) : 1e9;
    List<Visit> visits = new ArrayList<>();
    Moment fed = null;
    double day = 0;
    while (day <= end || visits.size() < 4) {
      double age = Math.max(0, day - lag);
      Moment moment = wash.at(age);
      boolean after = day > fedAt;
      boolean fedNow = after && fed == null;
      if (after) {
        fed = fed == null ? fed(wash.at(Math.max(0, fedAt - lag))) : fed;
        moment = later(fed, day - fedAt, wash);
      }
      double temperature = wash.temperatureC(age);
      visits.add(
          new Visit(
              wash.start().plusMinutes(Math.round(day * 1440)),
              day,
              moment,
              temperature,
              day <= lag && kind == Kind.LAG,
              after,
              fedNow));
      day += sensor ? 0.5 : choice.among(0.5, 1.0, 1.0, 1.0, 1.0, 2.0);
    }
    return visits;
  }

  /** All that was put in, once the sugar is stirred in; what has left as gas is left out. */
  private static Moment fed(Moment before) {
    double mass = LITRES * FermentingWash.density20(before.ferment().originalGravity()) / 1000;
    double all = mass + FED_KILOGRAMS;
    double alcohol = before.alcoholByMass() * mass / all;
    double extract = (before.trueExtract() * mass + 100 * FED_KILOGRAMS) / all;
    double original =
        (WashKind.MALT.extractPerEthanol() * alcohol + extract)
            / (1 + WashKind.MALT.fall() * alcohol);
    return new Moment(before.ferment(), before.day(), original, extract);
  }

  private static Moment later(Moment fed, double daysSince, Ferment wash) {
    double last = FermentingWash.trueExtract(fed.originalExtract(), wash.finalGravity());
    double left = Math.exp(-Math.pow(daysSince / wash.days(), 1.6));
    return new Moment(
        wash,
        fed.day() + daysSince,
        fed.originalExtract(),
        last + (fed.trueExtract() - last) * left);
  }
}
