package washbook.functions.ferment;

import java.util.function.DoubleUnaryOperator;
import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.Sentence;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;

/** A wash that was fed in steps, taken as if all had gone in at once; mixed by mass. */
public final class Feeding {
  private Feeding() {}

  /** Highest SG that the ferment functions take as an original gravity. */
  private static final double HIGHEST_ORIGINAL = 1.190;

  /** Halvings of a range of extracts down to the last digit. */
  private static final int HALVINGS = 60;

  /** SG 20/20 of everything together, fed with dry sugar, as an original gravity. */
  public static double original(double[] litres, double[] gravities, double[] kilograms) {
    return original(litres, gravities, kilograms, 1, HIGHEST_ORIGINAL);
  }

  /**
   * SG 20/20 of everything together. Cells may be blank (NaN); a row with litres needs its gravity.
   *
   * @param kilograms sugar, may be empty
   * @param solids share of dry solids in that sugar
   * @param highest SG above which the whole is refused
   */
  public static double original(
      double[] litres, double[] gravities, double[] kilograms, double solids, double highest) {
    if (litres.length != gravities.length) {
      throw RefusedException.contradiction("cells.gravities", litres.length, gravities.length);
    }
    double mass = 0;
    double extract = 0;
    for (int i = 0; i < litres.length; i++) {
      boolean noLitres = Double.isNaN(litres[i]);
      if (noLitres != Double.isNaN(gravities[i])) {
        throw new RefusedException(
            Code.BLANK,
            "cell.blank",
            Sentence.of(noLitres ? "name.litres" : "name.gravities"),
            i + 1);
      }
      if (!noLitres) {
        double part = mass(litres[i], gravities[i]);
        mass += part;
        extract += part * SucroseSolution.brix(gravities[i]) / 100;
      }
    }
    if (mass == 0) {
      throw new RefusedException(Code.BLANK, "litres.none");
    }
    for (double sugar : kilograms) {
      if (!Double.isNaN(sugar)) {
        mass += sugar;
        extract += sugar * solids;
      }
    }
    double percent = 100 * extract / mass;
    double gravity = percent > 90 ? Double.POSITIVE_INFINITY : SucroseSolution.gravity(percent);
    if (gravity > highest) {
      throw new RefusedException(
          Code.TOO_HIGH, "feed.strong", Numbers.rounded(percent, 1), highest);
    }
    return gravity;
  }

  /** As {@link #byRise(double, double, DoubleUnaryOperator, double, WashKind)}, both SG known. */
  public static double byRise(
      double originalGravity, double before, double after, double solids, WashKind kind) {
    return byRise(originalGravity, before, extract -> after, solids, kind);
  }

  /**
   * SG 20/20 of everything together, told by the wash's gravity before and after it was fed. It is
   * the original gravity for which the alcohol stays what it was: the fed wash holds that of the
   * wash before, in the mass that came in beside it. How much came in follows from the masses: with
   * A % by mass of alcohol, 100 g of wash were 100 + m A g when they were made up, and stand for
   * that in {@link #original}.
   *
   * <p>Source: Balling's balance, of which m is a constant (see {@link WashKind}), and the masses
   * of what is put together, as in {@link #original}. What fermented between the two readings
   * counts as sugar that did not come in, so next to nothing must have. Refused: a gravity that
   * does not rise, a pair that no wash shows, and a sum above SG 1.190.
   *
   * @param originalGravity SG 20/20 of everything before
   * @param before SG 20/20 just before
   * @param after SG 20/20 just after, as a wash of that original extract in % by mass; NaN where no
   *     such wash shows it
   * @param solids share of dry solids in what came in, above 0 to 1; the rest is water
   */
  public static double byRise(
      double originalGravity,
      double before,
      DoubleUnaryOperator after,
      double solids,
      WashKind kind) {
    Balance then = Balance.of(originalGravity, Math.min(before, originalGravity), kind);
    double extract = then.originalExtract();
    double alcohol = kind.alcoholByMass(extract, then.trueExtract());
    double madeUp = 100 + 100 * kind.fall() * alcohol;
    double risen = after.applyAsDouble(extract);
    if (risen <= before) {
      throw RefusedException.contradiction("feed.noRise", before);
    }
    DoubleUnaryOperator tooMuch =
        everything -> {
          double gravity = after.applyAsDouble(everything);
          if (!(gravity < SucroseSolution.gravity(everything))) {
            return -1;
          }
          double cameIn = cameIn(madeUp, extract, everything, solids);
          double trueExtract = FermentingWash.trueExtract(everything, gravity, kind);
          return kind.alcoholByMass(everything, trueExtract) * (100 + cameIn) - 100 * alcohol;
        };
    double low = extract;
    double high = Math.min(SucroseSolution.brix(HIGHEST_ORIGINAL), 99 * solids);
    if (!(tooMuch.applyAsDouble(high) > 0)) {
      throw new RefusedException(Code.TOO_HIGH, "feed.tooMuch", HIGHEST_ORIGINAL);
    }
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      if (tooMuch.applyAsDouble(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return SucroseSolution.gravity(high);
  }

  /** Mass in kg of a volume at 20 °C, L, of that SG 20/20. */
  public static double mass(double litres, double gravity) {
    return litres * FermentingWash.density20(gravity) / 1000;
  }

  /**
   * What everything together would have been when it was made up, L, after a feed that {@link
   * #byRise} told.
   *
   * @param kilograms mass of everything put in before
   * @param originalBefore SG 20/20 of that
   * @param original SG 20/20 of everything
   * @param solids as there
   */
  public static double litresByRise(
      double kilograms, double originalBefore, double original, double solids) {
    double extract = SucroseSolution.brix(original);
    double cameIn = cameIn(kilograms, SucroseSolution.brix(originalBefore), extract, solids);
    return (kilograms + cameIn) / mass(1, original);
  }

  /** What must come into a mass to bring its extract in % by mass to that of everything. */
  private static double cameIn(double mass, double extract, double everything, double solids) {
    return mass * (everything - extract) / (100 * solids - everything);
  }
}
