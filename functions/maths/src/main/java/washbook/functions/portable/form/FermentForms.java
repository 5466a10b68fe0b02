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

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import washbook.functions.ferment.Balance;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;
import washbook.functions.portable.form.Form.Check;
import washbook.functions.portable.form.Form.Range;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.MustSugar;
import washbook.functions.scale.PotentialAlcohol;

/** The functions of original gravity and gravity now. */
final class FermentForms {
  private static final String MALT = WashKind.MALT.word();

  /** The named kinds, and one for a yield as a number, which the alcohol alone has forms for. */
  private static final List<String> KINDS =
      Stream.concat(WashKind.words().stream(), Stream.of(Form.NUMBER)).toList();

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
  private static final Expression YIELD = quotient(difference(argument(2), 90), constant(10));
  private static final Expression OG_1 = difference(OG, 1);
  private static final Expression G_1 = difference(G, 1);
  private static final Expression FALL = difference(OG, G);

  static final List<Form> ALL = all();

  private FermentForms() {}

  private static List<Form> all() {
    List<Form> forms = new ArrayList<>();
    for (String kind : KINDS) {
      forms.add(abv(kind));
      forms.add(model(kind));
      forms.add(
          potential("DRY", kind, larger(constant(0), product(OG_1, potentialCurve("DRY", kind)))));
    }
    for (String kind : WashKind.words()) {
      forms.add(share("REALATTENUATION", kind, kind));
      forms.add(share("FERMENTATIONDEGREE", kind, kind));
      forms.add(
          ofTwo(
                  "TRUEEXTRACT",
                  kind,
                  0.004,
                  polynomial("TRUEEXTRACT", kind, OG_1, gravity(kind)),
                  kind)
              .fitCore(key("TRUEEXTRACT", kind), 8, 8));
      forms.add(sugarLeft(kind));
    }
    forms.add(share("APPARENTATTENUATION", MALT));
    forms.add(must());
    forms.add(potential("17", MALT, product(OG_1, potentialCurve("17", MALT))));
    return List.copyOf(forms);
  }

  private static boolean isYield(String kind) {
    return kind.equals(Form.NUMBER);
  }

  private static String key(String what, String kind) {
    return what + "/" + kind;
  }

  /** Of a yield the polynomial has one variable more. */
  private static Expression polynomial(String what, String kind, Expression... variables) {
    if (isYield(kind)) {
      Expression[] all = Arrays.copyOf(variables, variables.length + 1);
      all[variables.length] = YIELD;
      return fitted(key(what, kind), all);
    }
    return fitted(key(what, kind), variables);
  }

  /** What inversion adds goes by the share of the extract that is gone, not by the fall alone. */
  private static Expression fall(String kind) {
    return isInverted(kind) ? quotient(FALL, OG_1) : FALL;
  }

  private static Expression gravity(String kind) {
    return isInverted(kind) ? quotient(FALL, OG_1) : G_1;
  }

  private static boolean isInverted(String kind) {
    return isYield(kind) || WashKind.of(kind).inverted() != 0;
  }

  private static int[] degrees(String kind, int... degrees) {
    if (!isYield(kind)) {
      return degrees;
    }
    int[] all = Arrays.copyOf(degrees, degrees.length + 1);
    all[degrees.length] = 2;
    return all;
  }

  private static WashKind kind(String kind, double yield) {
    return isYield(kind) ? WashKind.ofYield(yield) : WashKind.of(kind);
  }

  private static double yieldAt(double[] unit, int at) {
    return unit.length <= at
        ? Double.NaN
        : between(Quantity.YIELD.min(), Quantity.YIELD.max(), unit[at]);
  }

  /** Every original gravity with every gravity that it can ferment to. */
  private static Domain ferment(String kind) {
    return new Domain(
        isYield(kind) ? 3 : 2,
        unit -> {
          double og = between(LOWEST_OG, HIGHEST_OG, unit[0]);
          double yield = yieldAt(unit, 2);
          double lowest = Math.max(LOWEST_G, lowestGravity(og, kind(kind, yield)) + 1e-9);
          return new double[] {og, between(lowest, og, unit[1]), yield};
        });
  }

  private static Form abv(String kind) {
    Expression perFall = polynomial("ABV", kind, OG_1, fall(kind));
    return notBelowZero("ABV", kind, 0.006, product(FALL, perFall), isInverted(kind) ? 6 : 3, kind);
  }

  /** A share of the original extract: it stays exact where that extract is small. */
  private static Form share(String function, String kind, String... words) {
    Expression perShare = polynomial(function, kind, OG_1, fall(kind));
    return notBelowZero(
        function,
        kind,
        0.02,
        product(quotient(FALL, OG_1), perShare),
        isInverted(kind) ? 6 : 4,
        words);
  }

  /** A result that is 0 while nothing has fermented, also where the gravity is a hair too high. */
  private static Form notBelowZero(
      String function, String kind, double wanted, Expression result, int inFall, String... words) {
    Form form = ofTwo(function, kind, wanted, larger(constant(0), result), words);
    return form.fit(
        new Fit(
            key(function, kind),
            result,
            form::exact,
            ferment(kind),
            wanted / 2,
            degrees(kind, 8, inFall)));
  }

  /** The polynomial goes on below 0, where the result does not. */
  private static Form sugarLeft(String kind) {
    Expression extract = polynomial("SUGARLEFT", kind, OG_1, gravity(kind));
    return ofTwo("SUGARLEFT", kind, 0.04, larger(constant(0), extract), kind)
        .fit(
            new Fit(
                key("SUGARLEFT", kind),
                extract,
                at ->
                    Balance.of(at[0], at[1], kind(kind, at[2])).trueExtract()
                        / 100
                        * FermentingWash.density20(at[1]),
                ferment(kind),
                0.02,
                degrees(kind, 8, 8)));
  }

  private static Form ofTwo(
      String function, String kind, double wanted, Expression core, String... words) {
    Expression lowest = polynomial("LOWESTGRAVITY", kind, OG_1);
    Expression widest = difference(OG, larger(constant(LOWEST_G), lowest));
    return Form.of(function, ferment(kind), wanted, core, words)
        .check(
            // 0 <= FALL <= widest with FALL written once: it may hold another formula.
            Check.ordered(
                absolute(difference(widest, product(constant(2), FALL))),
                sum(widest, constant(2 * EDGE))))
        .impliedRange(1)
        .fit(
            new Fit(
                key("LOWESTGRAVITY", kind),
                lowest,
                at -> lowestGravity(at[0], kind(kind, at[2])),
                new Domain(
                    isYield(kind) ? 2 : 1,
                    unit ->
                        new double[] {
                          between(LOWEST_OG, HIGHEST_OG, unit[0]), Double.NaN, yieldAt(unit, 1)
                        }),
                isInverted(kind) ? 4e-5 : 1e-6,
                degrees(kind, 8)));
  }

  private static Form potential(String basis, String kind, Expression core) {
    String key = key("POTENTIALABV/" + basis, kind);
    return Form.of("POTENTIALABV", gravities(kind), 0.002, core, basis, kind)
        .fitCore(key, degrees(kind, 8));
  }

  private static Domain gravities(String kind) {
    return isYield(kind)
        ? new Domain(
            2,
            unit ->
                new double[] {between(LOWEST_G, HIGHEST_G, unit[0]), Double.NaN, yieldAt(unit, 1)})
        : Domain.box(LOWEST_G, HIGHEST_G);
  }

  private static Expression potentialCurve(String basis, String kind) {
    return polynomial("POTENTIALABV/" + basis, kind, OG_1);
  }

  /** Above water a curve, below it a straight line. */
  private static Form model(String kind) {
    Expression above = product(OG_1, potentialCurve("MODEL", kind));
    if (!isYield(kind)) {
      double slope = Math.round(1e6 * slopeBelowWater(WashKind.of(kind))) / 1e6;
      Expression below = product(OG_1, constant(slope));
      return potential("MODEL", kind, ifLess(OG, constant(1), below, above));
    }
    String key = "POTENTIALABV/BELOW/" + kind;
    Expression slope = fitted(key, YIELD);
    Expression core = ifLess(OG, constant(1), product(OG_1, slope), above);
    Form form = Form.of("POTENTIALABV", gravities(kind), 0.002, core, "MODEL", kind);
    return form.fit(
            new Fit(
                key,
                slope,
                at -> slopeBelowWater(WashKind.ofYield(at[2])),
                new Domain(1, unit -> new double[] {0.99, Double.NaN, yieldAt(unit, 0)}),
                0.02,
                8))
        .fitCore(key("POTENTIALABV/MODEL", kind), degrees(kind, 8));
  }

  private static double slopeBelowWater(WashKind kind) {
    return PotentialAlcohol.model(LOWEST_G, kind) / (LOWEST_G - 1);
  }

  /** The table of must begins and ends inside the range of gravities. */
  private static Form must() {
    Range table = new Range(MustSugar.LOWEST_GRAVITY, MustSugar.HIGHEST_GRAVITY);
    return Form.of(
            "POTENTIALABV",
            Domain.box(table.low(), table.high()),
            0.002,
            potentialCurve("16.83", MALT),
            "16.83",
            MALT)
        .range(0, table)
        .fitCore(key("POTENTIALABV/16.83", MALT), 8);
  }

  private static double lowestGravity(double originalGravity, WashKind kind) {
    return FermentingWash.gravity(
        SucroseSolution.brix(originalGravity), FermentingWash.LOWEST_TRUE_EXTRACT, kind);
  }
}
