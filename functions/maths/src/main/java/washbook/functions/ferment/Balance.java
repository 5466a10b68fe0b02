package washbook.functions.ferment;

import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;

/**
 * Where a wash stands: what its original gravity and its gravity now say together. Both are SG
 * 20/20 after correction; the model and its limits are those of {@link FermentingWash}.
 *
 * @param originalExtract % by mass before the ferment
 * @param apparentExtract % by mass that the gravity alone would mean
 * @param trueExtract % by mass really there; down to -0.5 within reading error
 * @param gravity SG 20/20 now
 * @param kind what ferments
 */
public record Balance(
    double originalExtract,
    double apparentExtract,
    double trueExtract,
    double gravity,
    WashKind kind) {

  /** A malt wash; as {@link #of(double, double, WashKind)}. */
  public static Balance of(double originalGravity, double gravity) {
    return of(originalGravity, gravity, WashKind.MALT);
  }

  /** Refuses a gravity above the original one or below what the wash can ferment to. */
  public static Balance of(double originalGravity, double gravity, WashKind kind) {
    refuseRise(originalGravity, gravity);
    double originalExtract = SucroseSolution.brix(originalGravity);
    double apparentExtract = SucroseSolution.brix(gravity);
    double trueExtract =
        gravity == originalGravity
            ? originalExtract
            : FermentingWash.trueExtract(originalExtract, gravity, kind);
    if (!(trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT)) {
      throw new RefusedException(Code.CONTRADICTION, "gravity.below", gravity, originalGravity);
    }
    return new Balance(originalExtract, apparentExtract, trueExtract, gravity, kind);
  }

  /** Refuses a gravity above the original one. */
  public static void refuseRise(double originalGravity, double gravity) {
    if (gravity > originalGravity) {
      throw new RefusedException(Code.CONTRADICTION, "gravity.above", gravity, originalGravity);
    }
  }

  /** Alcohol in % vol at 20 °C. */
  public double percentVolume() {
    return FermentingWash.percentVolume(originalExtract, trueExtract, gravity, kind);
  }

  /** Apparent attenuation in %: (OE - AE) / OE. */
  public double apparentAttenuation() {
    return 100 * (originalExtract - apparentExtract) / originalExtract;
  }

  /** Real attenuation in %: (OE - RE) / OE, inversion's water counted in OE. */
  public double realAttenuation() {
    double counted = kind.countedExtract(originalExtract, trueExtract);
    return 100 * (counted - trueExtract) / counted;
  }

  /** Degree of fermentation in %: real attenuation over (1 - RE m / (100 ke)); malt 0.005161 RE. */
  public double fermentationDegree() {
    return realAttenuation() / (1 - kind.degreePerExtract() * trueExtract);
  }

  /** Extract left in grams per litre at 20 °C; what reading error makes negative is none. */
  public double sugarLeftGramsPerLitre() {
    return Math.max(0, trueExtract) / 100 * FermentingWash.density20(gravity);
  }
}
