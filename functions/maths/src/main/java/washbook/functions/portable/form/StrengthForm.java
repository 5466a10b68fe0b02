package washbook.functions.portable.form;

import static washbook.functions.portable.form.Domain.between;
import static washbook.functions.portable.form.Expressions.ZERO;
import static washbook.functions.portable.form.Expressions.absolute;
import static washbook.functions.portable.form.Expressions.argument;
import static washbook.functions.portable.form.Expressions.constant;
import static washbook.functions.portable.form.Expressions.difference;
import static washbook.functions.portable.form.Expressions.fitted;
import static washbook.functions.portable.form.Expressions.ifLess;
import static washbook.functions.portable.form.Expressions.product;
import static washbook.functions.portable.form.Expressions.quotient;
import static washbook.functions.portable.form.Expressions.sum;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.portable.form.Form.Check;
import washbook.functions.quantity.Quantity;
import washbook.functions.reading.Hydrometer;

/**
 * TRUESTRENGTH at one calibration temperature: the reading and a correction. Weak and cold spirit
 * behaves too differently for one polynomial, so there are parts.
 */
public final class StrengthForm {
  static final String NAME = "TRUESTRENGTH";

  /** Stands for a calibration that is not a number in the formula. */
  public static final String IN_A_CELL = "CELL";

  /** A calibration in a cell may be off by as much. */
  private static final Expression SAME = constant(0.01);

  /** The calibrations in use: forms are made for these. */
  static final Map<String, Double> CALIBRATIONS = calibrations();

  private static final double COLD = Quantity.SPIRIT_TEMPERATURE.min();
  private static final double HOT = Quantity.SPIRIT_TEMPERATURE.max();

  /** % vol between the parts. */
  private static final double STRONG = 25;

  private static final double WEAK = 13;

  private static final double WANTED = 0.02;
  private static final double FIT = 0.018;

  /** How well the limits of what is liquid and what can be shown are met, % vol. */
  private static final double EDGE = 0.15;

  private static final Expression READING = argument(0);
  private static final Expression WARMER = difference(argument(1), 20);
  private static final Expression TEMPERATURE = argument(1);
  private static final Expression FIFTIES = quotient(difference(READING, 50), constant(50));
  private static final Expression ABOVE_10 = difference(READING, 10);
  private static final Expression ABOVE_20 = difference(READING, 20);

  private final double calibration;
  private final String key;

  /** The scale's temperature, and what it is called in a formula's key. */
  private StrengthForm(double calibration, String name) {
    this.calibration = calibration;
    this.key = NAME + "/" + name;
  }

  private static Map<String, Double> calibrations() {
    Map<String, Double> calibrations = new LinkedHashMap<>();
    calibrations.put("20", 20.0);
    calibrations.put("15", 15.0);
    calibrations.put("60F", 140.0 / 9);
    return calibrations;
  }

  private static Form at(double calibration, String name) {
    return new StrengthForm(calibration, name).form(name);
  }

  private Form form(String name) {
    Part strong = new Part("/STRONG", FIFTIES, WARMER, STRONG, 100, COLD, HOT);
    Part warm = new Part("/WARM", ABOVE_10, WARMER, 0, STRONG, 0, HOT);
    Part cold = new Part("/COLD", ABOVE_20, TEMPERATURE, WEAK, STRONG, COLD, 0);
    Part weakCold = new Part("/WEAKCOLD", ABOVE_10, TEMPERATURE, 0, WEAK, COLD, 0);
    Expression correction =
        ifLess(
            READING,
            constant(STRONG),
            ifLess(
                argument(1),
                ZERO,
                ifLess(READING, constant(WEAK), weakCold.polynomial(), cold.polynomial()),
                warm.polynomial()),
            strong.polynomial());
    Part whole = new Part("", FIFTIES, WARMER, 0, 100, COLD, HOT);
    return Form.of(NAME, whole.domain(), WANTED, corrected(correction), name)
        .fit(strong.fit(), warm.fit(), cold.fit(), weakCold.fit())
        .check(Check.ordered(lowest(), READING), Check.ordered(READING, highest()))
        .fit(
            edge("/ICE", 0, t -> reading(Ice.weakestLiquid(t), t), COLD, 0),
            edge("/WATER", 0, t -> reading(0, t), calibration, HOT),
            edge("/ETHANOL", 100, t -> reading(1, t), COLD, calibration));
  }

  /** At 20 °C a 20 °C instrument is right; others mean a somewhat different % vol. */
  private Expression corrected(Expression correction) {
    return sum(READING, calibration == 20 ? product(WARMER, correction) : correction);
  }

  private Expression lowest() {
    Expression warm =
        ifLess(argument(1), constant(calibration), ZERO, fitted(key + "/WATER", WARMER));
    return ifLess(argument(1), ZERO, fitted(key + "/ICE", WARMER), warm);
  }

  private Expression highest() {
    return ifLess(
        argument(1), constant(calibration), fitted(key + "/ETHANOL", WARMER), constant(100));
  }

  private Fit edge(
      String name, double otherwise, DoubleUnaryOperator limit, double from, double to) {
    return new Fit(
        key + name,
        fitted(key + name, WARMER),
        at -> limit.applyAsDouble(at[1]),
        new Domain(1, u -> new double[] {otherwise, between(from, to, u[0]), calibration}),
        EDGE,
        10);
  }

  /** A rectangle of readings and temperatures, as far as it is possible. */
  private final class Part {
    private final String partKey;
    private final Expression variable;
    private final Expression temperature;
    private final double[] limits;

    Part(String name, Expression variable, Expression temperature, double... limits) {
      this.partKey = key + name;
      this.variable = variable;
      this.temperature = temperature;
      this.limits = limits;
    }

    Expression polynomial() {
      return fitted(partKey, variable, temperature);
    }

    Domain domain() {
      return new Domain(
          2,
          u -> {
            double t = between(limits[2], limits[3], u[1]);
            double lowest = reading(Ice.weakestLiquid(t) + 1e-9, t);
            double highest = reading(1 - 1e-9, t);
            double low = Math.max(limits[0], Double.isNaN(lowest) ? 0 : lowest);
            double high = Math.min(limits[1], Double.isNaN(highest) ? 100 : highest);
            return new double[] {between(low, Math.max(low, high), u[0]), t, calibration};
          });
    }

    Fit fit() {
      return new Fit(
          partKey,
          corrected(polynomial()),
          at -> at[0] > limits[1] ? Double.NaN : exact(at),
          domain(),
          FIT,
          14,
          8);
    }
  }

  private static double exact(double[] at) {
    return Form.exact(NAME, at);
  }

  /** What an instrument shows in a mixture; NaN when it is off the scale. */
  private double reading(double massFraction, double t) {
    double density =
        EthanolWater.density(massFraction, t)
            * (1 + Hydrometer.GLASS_EXPANSION * (t - calibration));
    return EthanolWater.percentVolumeAt(
        EthanolWater.massFractionOfDensity(density, calibration), calibration);
  }

  static List<Form> all() {
    List<Form> forms = new ArrayList<>();
    CALIBRATIONS.forEach((name, calibration) -> forms.add(at(calibration, name)));
    forms.add(inACell(forms.get(0), forms.get(1)));
    return List.copyOf(forms);
  }

  /** Both of the usual scales in one, chosen by a cell; any other number there is refused. */
  private static Form inACell(Form at20, Form at15) {
    Expression calibration = argument(2);
    Expression from20 = absolute(difference(calibration, 20));
    Expression fromBoth = absolute(difference(product(constant(2), calibration), 35));
    Domain domain =
        new Domain(
            3,
            u -> (u[2] < 0.5 ? at20 : at15).domain().arguments().apply(new double[] {u[0], u[1]}));
    Form form =
        Form.of(NAME, domain, WANTED, ifLess(from20, SAME, at20.core(), at15.core()), IN_A_CELL)
            .check(Check.ordered(absolute(difference(fromBoth, 5)), product(constant(2), SAME)));
    for (int i = 0; i < at20.checks().size(); i++) {
      Check a = at20.checks().get(i);
      Check b = at15.checks().get(i);
      form =
          form.check(
              Check.ordered(
                  ifLess(from20, SAME, a.low(), b.low()),
                  ifLess(from20, SAME, a.high(), b.high())));
    }
    return form;
  }
}
