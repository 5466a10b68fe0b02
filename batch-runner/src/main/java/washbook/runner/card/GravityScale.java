package washbook.runner.card;

import java.util.function.DoubleUnaryOperator;
import washbook.runner.language.Wording;

/** The scales that stand side by side over the specific gravity of a wash. */
enum GravityScale {
  GRAVITY(0.001, 0.005, 0.005, 3, "", g -> g),
  SUGAR(
      0.2,
      1,
      1,
      1,
      "WASHBOOK.CONVERT({row},\"SG\",\"BRIX\")",
      g -> CardNumber.of("CONVERT", g, "SG", "BRIX")),
  BAUME(
      0.1,
      0.5,
      1,
      1,
      "WASHBOOK.CONVERT({row},\"SG\",\"BAUME\")",
      g -> CardNumber.of("CONVERT", g, "SG", "BAUME")),
  OECHSLE(
      1,
      5,
      5,
      0,
      "WASHBOOK.CONVERT({row},\"SG\",\"OECHSLE\")",
      g -> CardNumber.of("CONVERT", g, "SG", "OECHSLE")),
  BY_RULE(
      0.1,
      0.5,
      1,
      1,
      "WASHBOOK.POTENTIALABV({row},\"17\")",
      g -> CardNumber.of("POTENTIALABV", g, "17")),
  BY_BALANCE(0.1, 0.5, 1, 1, "WASHBOOK.POTENTIALABV({row})", g -> CardNumber.of("POTENTIALABV", g));

  /** The lightest and the heaviest liquid on the card. */
  static final double LIGHTEST = 0.990;

  static final double HEAVIEST = 1.160;

  private static final int HALVINGS = 40;

  private final double tick;
  private final double longer;
  private final double labelled;
  private final int decimals;
  private final String formula;
  private final DoubleUnaryOperator value;

  GravityScale(
      double tick,
      double longer,
      double labelled,
      int decimals,
      String formula,
      DoubleUnaryOperator value) {
    this.tick = tick;
    this.longer = longer;
    this.labelled = labelled;
    this.decimals = decimals;
    this.formula = formula;
    this.value = value;
  }

  String title(Wording words) {
    return words.say("card.scale." + this);
  }

  /** The title in short lines with strokes between. */
  String narrow(Wording words) {
    return words.say("card.scale." + this + ".narrow");
  }

  String unit(Wording words) {
    return words.say("card.scale." + this + ".unit");
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
