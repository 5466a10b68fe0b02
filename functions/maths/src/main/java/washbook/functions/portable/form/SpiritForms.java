package washbook.functions.portable.form;

import static washbook.functions.portable.form.Domain.between;
import static washbook.functions.portable.form.Expressions.ONE;
import static washbook.functions.portable.form.Expressions.ZERO;
import static washbook.functions.portable.form.Expressions.argument;
import static washbook.functions.portable.form.Expressions.constant;
import static washbook.functions.portable.form.Expressions.difference;
import static washbook.functions.portable.form.Expressions.fitted;
import static washbook.functions.portable.form.Expressions.ifLess;
import static washbook.functions.portable.form.Expressions.product;
import static washbook.functions.portable.form.Expressions.quotient;
import static washbook.functions.portable.form.Expressions.sum;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.portable.form.Form.Check;
import washbook.functions.quantity.Quantity;

/** The functions of spirit. */
final class SpiritForms {
  private static final double WEAKEST = Quantity.PERCENT_VOL.min();
  private static final double STRONGEST = Quantity.PERCENT_VOL.max();
  private static final double COLD = Quantity.SPIRIT_TEMPERATURE.min();
  private static final double HOT = Quantity.SPIRIT_TEMPERATURE.max();
  private static final double WATER = EthanolWater.density(0, 20);

  static final List<Form> ALL = all();

  private SpiritForms() {}

  private static List<Form> all() {
    List<Form> forms = new ArrayList<>(StrengthForm.all());
    forms.add(dilutionWater());
    forms.add(pureAlcohol());
    return List.copyOf(forms);
  }

  /** {@code litres x (strength / target x d(target) - d(strength))}, d the density over water's. */
  private static Form dilutionWater() {
    Expression strength = argument(1);
    Expression target = argument(2);
    String key = "DILUTIONWATER";
    Domain domain =
        new Domain(
            2,
            u -> {
              double from = between(WEAKEST, STRONGEST, u[0]);
              return new double[] {1, from, between(WEAKEST, from, u[1])};
            });
    return Form.of(
            key,
            domain,
            4e-5,
            product(
                argument(0),
                difference(
                    product(quotient(strength, target), density(target)), density(strength))))
        .per("for each litre after dilution", at -> at[0] * at[1] / at[2])
        .check(Check.ordered(target, strength))
        .fit(
            new Fit(
                key,
                density(strength),
                at -> EthanolWater.density(EthanolWater.massFraction(at[1]), 20) / WATER,
                Domain.box(1, 1, WEAKEST, STRONGEST),
                1.5e-5,
                16));
  }

  private static Expression density(Expression strength) {
    return fitted("DILUTIONWATER", quotient(difference(strength, 50), constant(50)));
  }

  /** The expansion between the measured temperature and 20 °C; exact at 20 °C. */
  private static Form pureAlcohol() {
    Expression temperature = argument(2);
    Expression warmer = difference(temperature, 20);
    Expression strength = argument(1);
    String key = "PUREALCOHOL";
    Domain domain =
        new Domain(
            2,
            u -> {
              double t = between(COLD, HOT, u[1]);
              double weakest = Math.max(WEAKEST, weakestLiquid(t));
              return new double[] {1, between(weakest, STRONGEST, u[0]), t};
            });
    Expression growth =
        sum(
            ONE,
            product(warmer, fitted(key, quotient(difference(strength, 50), constant(50)), warmer)));
    return Form.of(
            key,
            domain,
            4e-5,
            product(quotient(product(argument(0), strength), constant(100)), growth))
        .per("for each litre", at -> at[0])
        .check(
            Check.ordered(
                ifLess(temperature, ZERO, fitted(key + "/ICE", temperature), ZERO), strength))
        .fitCore(key, 14, 6)
        .fit(
            new Fit(
                key + "/ICE",
                fitted(key + "/ICE", temperature),
                at -> weakestLiquid(at[2]),
                new Domain(1, u -> new double[] {1, 50, between(COLD, 0, u[0])}),
                0.1,
                10));
  }

  private static double weakestLiquid(double temperatureC) {
    return EthanolWater.percentVolume(Ice.weakestLiquid(temperatureC)) + 1e-9;
  }
}
