package washbook.functions.portable.form;

import static washbook.functions.portable.form.Domain.between;
import static washbook.functions.portable.form.Expressions.absolute;
import static washbook.functions.portable.form.Expressions.argument;
import static washbook.functions.portable.form.Expressions.constant;
import static washbook.functions.portable.form.Expressions.difference;
import static washbook.functions.portable.form.Expressions.fitted;
import static washbook.functions.portable.form.Expressions.ifLess;
import static washbook.functions.portable.form.Expressions.larger;
import static washbook.functions.portable.form.Expressions.product;
import static washbook.functions.portable.form.Expressions.quotient;
import static washbook.functions.portable.form.Expressions.sum;

import java.util.List;
import washbook.functions.ferment.Balance;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.portable.form.Form.Check;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.PotentialAlcohol;

/** The functions of original gravity and gravity now. */
final class FermentForms {
  private static final double LOWEST_OG = Quantity.ORIGINAL_GRAVITY.min();
  private static final double HIGHEST_OG = Quantity.ORIGINAL_GRAVITY.max();
  private static final double LOWEST_G = Quantity.GRAVITY.min();
  private static final double HIGHEST_G = Quantity.GRAVITY.max();

  /**
   * A gravity may be so much above the original one, or below the lowest: two corrected readings of
   * the same wash differ by as much as the error of their formulas.
   */
  private static final double EDGE = 0.0001;

  private static final Expression OG = argument(0);
  private static final Expression G = argument(1);
  private static final Expression OG_1 = difference(OG, 1);
  private static final Expression G_1 = difference(G, 1);
  private static final Expression FALL = difference(OG, G);

  /** Every original gravity with every gravity that it can ferment to. */
  private static final Domain FERMENT =
      new Domain(
          2,
          unit -> {
            double og = between(LOWEST_OG, HIGHEST_OG, unit[0]);
            double lowest = Math.max(LOWEST_G, lowestGravity(og) + 1e-9);
            return new double[] {og, between(lowest, og, unit[1])};
          });

  private static final Fit LOWEST =
      new Fit(
          "LOWESTGRAVITY",
          fitted("LOWESTGRAVITY", OG_1),
          at -> lowestGravity(at[0]),
          Domain.box(LOWEST_OG, HIGHEST_OG),
          1e-6,
          8);

  /** From the original gravity down to the lowest that can be. */
  private static final Expression WIDEST =
      difference(OG, larger(constant(LOWEST_G), fitted(LOWEST.key(), OG_1)));

  static final List<Form> ALL =
      List.of(
          notBelowZero("ABV", 0.006, product(FALL, fitted("ABV", OG_1, FALL))),
          share("APPARENTATTENUATION"),
          share("REALATTENUATION"),
          share("FERMENTATIONDEGREE"),
          ofTwo("TRUEEXTRACT", 0.004, fitted("TRUEEXTRACT", OG_1, G_1))
              .fitCore("TRUEEXTRACT", 8, 8),
          sugarLeft(),
          potential(
              "MODEL",
              ifLess(
                  OG,
                  constant(1),
                  product(OG_1, constant(potentialSlope())),
                  product(OG_1, fitted("POTENTIALABV/MODEL", OG_1)))),
          potential("DRY", larger(constant(0), product(OG_1, fitted("POTENTIALABV/DRY", OG_1)))),
          potential("16.83", product(OG_1, fitted("POTENTIALABV/16.83", OG_1))),
          potential("17", product(OG_1, fitted("POTENTIALABV/17", OG_1))));

  private FermentForms() {}

  /** A share of the original extract: it stays exact where that extract is small. */
  private static Form share(String function) {
    return notBelowZero(
        function, 0.02, product(quotient(FALL, OG_1), fitted(function, OG_1, FALL)));
  }

  /** A result that is 0 while nothing has fermented, also where the gravity is a hair too high. */
  private static Form notBelowZero(String function, double wanted, Expression result) {
    Form form = ofTwo(function, wanted, larger(constant(0), result));
    return form.fit(new Fit(function, result, form::exact, FERMENT, wanted / 2, 8, 3));
  }

  /** The polynomial goes on below 0, where the result does not. */
  private static Form sugarLeft() {
    Expression extract = fitted("SUGARLEFT", OG_1, G_1);
    return ofTwo("SUGARLEFT", 0.04, larger(constant(0), extract))
        .fit(
            new Fit(
                "SUGARLEFT",
                extract,
                at ->
                    Balance.of(at[0], at[1]).trueExtract() / 100 * FermentingWash.density20(at[1]),
                FERMENT,
                0.02,
                8,
                8));
  }

  private static Form ofTwo(String function, double wanted, Expression core) {
    return Form.of(function, FERMENT, wanted, core)
        .check(
            // 0 <= FALL <= WIDEST with FALL written once: it may hold another formula.
            Check.ordered(
                absolute(difference(WIDEST, product(constant(2), FALL))),
                sum(WIDEST, constant(2 * EDGE))))
        .impliedRange(1)
        .fit(LOWEST);
  }

  private static Form potential(String basis, Expression core) {
    return Form.of("POTENTIALABV", Domain.box(LOWEST_G, HIGHEST_G), 0.002, core, basis)
        .fitCore("POTENTIALABV/" + basis, 8);
  }

  private static double potentialSlope() {
    double step = LOWEST_G - 1;
    return Math.round(1e6 * PotentialAlcohol.model(LOWEST_G) / step) / 1e6;
  }

  private static double lowestGravity(double originalGravity) {
    return FermentingWash.gravity(
        SucroseSolution.brix(originalGravity), FermentingWash.LOWEST_TRUE_EXTRACT);
  }
}
