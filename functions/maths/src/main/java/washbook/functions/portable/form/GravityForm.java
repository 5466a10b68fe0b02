package washbook.functions.portable.form;

import static washbook.functions.portable.form.Domain.between;
import static washbook.functions.portable.form.Expressions.ONE;
import static washbook.functions.portable.form.Expressions.ZERO;
import static washbook.functions.portable.form.Expressions.argument;
import static washbook.functions.portable.form.Expressions.constant;
import static washbook.functions.portable.form.Expressions.difference;
import static washbook.functions.portable.form.Expressions.fitted;
import static washbook.functions.portable.form.Expressions.ifGiven;
import static washbook.functions.portable.form.Expressions.product;
import static washbook.functions.portable.form.Expressions.sum;

import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.Water;
import washbook.functions.portable.form.Form.Check;
import washbook.functions.quantity.Quantity;
import washbook.functions.reading.Hydrometer;

/**
 * CORRECTEDGRAVITY. The reading is first brought to that of an instrument for 20 °C, a mere factor;
 * then come the expansion of a sugar solution and, with an original gravity, what alcohol adds.
 */
final class GravityForm {
  private static final String NAME = "CORRECTEDGRAVITY";
  private static final double LOWEST_OG = Quantity.ORIGINAL_GRAVITY.min();
  private static final double HIGHEST_OG = Quantity.ORIGINAL_GRAVITY.max();
  private static final double COLD = Quantity.SUGAR_TEMPERATURE.min();
  private static final double HOT = Quantity.SUGAR_TEMPERATURE.max();
  private static final double LOWEST_CALIBRATION = Quantity.CALIBRATION_TEMPERATURE.min();
  private static final double HIGHEST_CALIBRATION = Quantity.CALIBRATION_TEMPERATURE.max();

  /** Readings less the offset; their limits. */
  private static final double LOWEST = Quantity.GRAVITY.min() - Quantity.GRAVITY_OFFSET.max();

  private static final double HIGHEST = Quantity.GRAVITY.max() - Quantity.GRAVITY_OFFSET.min();

  /** An inner edge, so that rounding does not put a point outside. */
  private static final double INSIDE = 1e-7;

  /** How well the limits of what an original gravity allows are met. */
  private static final double EDGE_ERROR = 2.5e-4;

  private static final double WATER_20 = Water.density(20);

  private static final Expression TEMPERATURE = argument(1);
  private static final Expression WARMER = difference(TEMPERATURE, 20);
  private static final Expression CALIBRATED_WARMER = difference(argument(2), 20);
  private static final Expression OG = argument(3);

  private static final Expression SCALE =
      sum(ONE, product(CALIBRATED_WARMER, fitted(NAME + "/SCALE", CALIBRATED_WARMER)));
  private static final Expression READING_20 = product(difference(argument(0), argument(4)), SCALE);

  /** Grows with the alcohol. */
  private static final Expression FALL = difference(OG, READING_20);

  private static final Expression SUGAR =
      sum(READING_20, product(WARMER, fitted(NAME, READING_20, TEMPERATURE)));
  private static final Expression WITH_ALCOHOL =
      ifGiven(
          3,
          sum(READING_20, product(WARMER, fitted(NAME + "/ALCOHOL", FALL, TEMPERATURE, OG))),
          SUGAR);

  private static final Expression LOWEST_WITHOUT = fitted(NAME + "/LOWEST", TEMPERATURE);
  private static final Expression LOWEST_WITH_AT_20 = fitted(NAME + "/LOWESTWITHAT20", OG);
  private static final Expression LOWEST_WITH =
      sum(LOWEST_WITH_AT_20, product(WARMER, fitted(NAME + "/LOWESTWITH", OG, TEMPERATURE)));
  private static final Expression HIGHEST_WITH = fitted(NAME + "/HIGHESTWITH", OG, TEMPERATURE);

  static final Form FORM =
      Form.of(NAME, domain(), 9e-5, WITH_ALCOHOL)
          .check(
              new Check(LOWEST_WITHOUT, READING_20, 4),
              new Check(ifGiven(3, LOWEST_WITH, ZERO), READING_20, 3),
              new Check(READING_20, ifGiven(3, HIGHEST_WITH, constant(2)), 3))
          .fit(
              new Fit(
                  NAME + "/SCALE",
                  SCALE,
                  at -> Hydrometer.liquidDensity(1, 20, at[2]) / WATER_20,
                  new Domain(
                      1,
                      u ->
                          new double[] {
                            1, 20, between(LOWEST_CALIBRATION, HIGHEST_CALIBRATION, u[0])
                          }),
                  2e-6,
                  5),
              new Fit(NAME, SUGAR, GravityForm::exact, withoutAlcohol(), 8e-6, 5, 8),
              new Fit(
                  NAME + "/ALCOHOL",
                  WITH_ALCOHOL,
                  GravityForm::exact,
                  withAlcohol(),
                  7e-5,
                  7,
                  7,
                  4),
              bound("/LOWEST", LOWEST_WITHOUT, COLD, (og, t) -> SucroseSolution.density(-15, t), 8),
              bound("/LOWESTWITHAT20", LOWEST_WITH_AT_20, 20, GravityForm::driest, 8),
              bound("/LOWESTWITH", LOWEST_WITH, COLD, GravityForm::driest, 7, 7),
              bound("/HIGHESTWITH", HIGHEST_WITH, COLD, GravityForm::sweetest, 7, 7));

  private GravityForm() {}

  private interface Density {
    double at(double originalExtract, double temperatureC);
  }

  private static double driest(double originalExtract, double t) {
    return FermentingWash.density(originalExtract, FermentingWash.LOWEST_TRUE_EXTRACT, t);
  }

  private static double sweetest(double originalExtract, double t) {
    return FermentingWash.density(originalExtract, originalExtract + 1, t);
  }

  /** A limit of the reading on a 20 °C instrument; {@code coldest} 20 makes it one for 20 °C. */
  private static Fit bound(
      String key, Expression bound, double coldest, Density density, int... mostDegrees) {
    double hottest = coldest == 20 ? 20 : HOT;
    return new Fit(
        NAME + key,
        bound,
        at -> reading(density.at(SucroseSolution.brix(at[3]), at[1]), at[1], 20),
        new Domain(
            2,
            u ->
                new double[] {
                  1, between(coldest, hottest, u[0]), 20, between(LOWEST_OG, HIGHEST_OG, u[1]), 0
                }),
        coldest == 20 ? EDGE_ERROR / 2 : EDGE_ERROR,
        mostDegrees);
  }

  private static double exact(double[] at) {
    return FORM.exact(at);
  }

  private static Domain withoutAlcohol() {
    return new Domain(
        2,
        u -> {
          double edge = 0.0025;
          double t = between(COLD, HOT, u[1]);
          return arguments(between(LOWEST - edge, HIGHEST + edge, u[0]), t, 20, Double.NaN);
        });
  }

  private static Domain withAlcohol() {
    return new Domain(3, u -> fermenting(between(LOWEST_OG, HIGHEST_OG, u[0]), u[1], u[2], 20));
  }

  /** All of it; the first original gravity stands for "left out". */
  private static Domain domain() {
    return new Domain(
        4,
        u -> {
          double calibration = between(LOWEST_CALIBRATION, HIGHEST_CALIBRATION, u[0]);
          return u[1] == 0
              ? arguments(
                  between(LOWEST, HIGHEST, u[2]), between(COLD, HOT, u[3]), calibration, Double.NaN)
              : fermenting(between(LOWEST_OG, HIGHEST_OG, u[1]), u[2], u[3], calibration);
        });
  }

  private static double[] fermenting(
      double originalGravity, double warmth, double progress, double calibration) {
    double t = between(COLD, HOT, warmth);
    double extract = SucroseSolution.brix(originalGravity);
    double trueExtract =
        between(FermentingWash.LOWEST_TRUE_EXTRACT + INSIDE, extract + 1 - INSIDE, progress);
    double density = FermentingWash.density(extract, trueExtract, t);
    return arguments(reading(density, t, calibration), t, calibration, originalGravity);
  }

  private static double reading(double density, double t, double calibration) {
    return density / Hydrometer.liquidDensity(1, t, calibration);
  }

  /** Readings outside the scale are brought about by an offset. */
  private static double[] arguments(double reading, double t, double calibration, double og) {
    double shown = Math.max(Quantity.GRAVITY.min(), Math.min(Quantity.GRAVITY.max(), reading));
    double offset =
        Math.max(
            Quantity.GRAVITY_OFFSET.min(),
            Math.min(Quantity.GRAVITY_OFFSET.max(), shown - reading));
    return new double[] {shown, t, calibration, og, offset};
  }
}
