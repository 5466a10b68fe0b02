package washbook.runner.card;

import java.util.function.DoubleUnaryOperator;

/** The scales that stand side by side over the specific gravity of a wash. */
enum GravityScale {
  GRAVITY("SG", "SG", "20/20 °C", 0.001, 0.005, 0.005, 3, "", g -> g),
  SUGAR(
      "°Brix °Plato °Balling",
      "°Brix|°Plato|°Balling",
      "% sugar by mass",
      0.2,
      1,
      1,
      1,
      "WASHBOOK.CONVERT({row},\"SG\",\"BRIX\")",
      g -> CardNumber.of("CONVERT", g, "SG", "BRIX")),
  BAUME(
      "°Baumé",
      "°Baumé",
      "145 − 145/SG",
      0.1,
      0.5,
      1,
      1,
      "WASHBOOK.CONVERT({row},\"SG\",\"BAUME\")",
      g -> CardNumber.of("CONVERT", g, "SG", "BAUME")),
  OECHSLE(
      "°Oechsle",
      "°Oechsle",
      "1000 × (SG − 1)",
      1,
      5,
      5,
      0,
      "WASHBOOK.CONVERT({row},\"SG\",\"OECHSLE\")",
      g -> CardNumber.of("CONVERT", g, "SG", "OECHSLE")),
  BY_RULE(
      "Potential, rule",
      "% vol,|by rule",
      "% vol, g/L over 17",
      0.1,
      0.5,
      1,
      1,
      "WASHBOOK.POTENTIALABV({row},\"17\")",
      g -> CardNumber.of("POTENTIALABV", g, "17")),
  BY_BALANCE(
      "Potential, balance",
      "% vol,|balance",
      "% vol, down to 1.000",
      0.1,
      0.5,
      1,
      1,
      "WASHBOOK.POTENTIALABV({row})",
      g -> CardNumber.of("POTENTIALABV", g));

  /** The lightest and the heaviest liquid on the card. */
  static final double LIGHTEST = 0.990;

  static final double HEAVIEST = 1.160;

  private static final int HALVINGS = 40;

  private final String title;
  private final String narrow;
  private final String unit;
  private final double tick;
  private final double longer;
  private final double labelled;
  private final int decimals;
  private final String formula;
  private final DoubleUnaryOperator value;

  GravityScale(
      String title,
      String narrow,
      String unit,
      double tick,
      double longer,
      double labelled,
      int decimals,
      String formula,
      DoubleUnaryOperator value) {
    this.title = title;
    this.narrow = narrow;
    this.unit = unit;
    this.tick = tick;
    this.longer = longer;
    this.labelled = labelled;
    this.decimals = decimals;
    this.formula = formula;
    this.value = value;
  }

  String title() {
    return title;
  }

  /** The title in short lines with strokes between. */
  String narrow() {
    return narrow;
  }

  String unit() {
    return unit;
  }

  double tick() {
    return tick;
  }

  /** Every such step has a longer mark. */
  double longer() {
    return longer;
  }

  /** Every such step has its number. */
  double labelled() {
    return labelled;
  }

  /** Of the numbers in the table. */
  int decimals() {
    return decimals;
  }

  String formula() {
    return formula;
  }

  double at(double gravity) {
    return value.applyAsDouble(gravity);
  }

  /** The specific gravity where the scale shows a value, by halving, since every scale rises. */
  double gravityAt(double shown) {
    double low = LIGHTEST;
    double high = HEAVIEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (at(middle) < shown) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
