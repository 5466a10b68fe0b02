package washbook.functions.ferment;

import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;

/**
 * Where a wash stands: what its original gravity and its gravity now say together. Both are SG
 * 20/20 after correction; the model and its limits are those of {@link FermentingWash}.
 *
 * @param originalExtract % by mass before the ferment
 * @param apparentExtract % by mass that the gravity alone would mean
 * @param trueExtract % by mass really there; down to -0.5 within reading error
 * @param gravity SG 20/20 now
 */
public record Balance(
    double originalExtract, double apparentExtract, double trueExtract, double gravity) {

  /** Refuses a gravity above the original one or below what the wash can ferment to. */
  public static Balance of(double originalGravity, double gravity) {
    refuseRise(originalGravity, gravity);
    double originalExtract = SucroseSolution.brix(originalGravity);
    double apparentExtract = SucroseSolution.brix(gravity);
    double trueExtract =
        gravity == originalGravity
            ? originalExtract
            : FermentingWash.trueExtract(originalExtract, gravity);
    if (!(trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT)) {
      throw new RefusedException(
          Code.CONTRADICTION,
          "gravity "
              + Numbers.show(gravity)
              + " is lower than a wash of original gravity "
              + Numbers.show(originalGravity)
              + " can ferment to.");
    }
    return new Balance(originalExtract, apparentExtract, trueExtract, gravity);
  }

  /** Refuses a gravity above the original one. */
  public static void refuseRise(double originalGravity, double gravity) {
    if (gravity > originalGravity) {
      throw new RefusedException(
          Code.CONTRADICTION,
          "gravity "
              + Numbers.show(gravity)
              + " is above the original gravity "
              + Numbers.show(originalGravity)
              + ".");
    }
  }

  /** Alcohol in % vol at 20 °C. */
  public double percentVolume() {
    return FermentingWash.alcoholByMass(originalExtract, trueExtract)
        * FermentingWash.density20(gravity)
        / EthanolWater.ETHANOL_DENSITY_20;
  }

  /** Apparent attenuation in %: (OE - AE) / OE. */
  public double apparentAttenuation() {
    return 100 * (originalExtract - apparentExtract) / originalExtract;
  }

  /** Real attenuation in %: (OE - RE) / OE. */
  public double realAttenuation() {
    return 100 * (originalExtract - trueExtract) / originalExtract;
  }

  /** Degree of fermentation in %: real attenuation over (1 - 0.005161 RE). */
  public double fermentationDegree() {
    return realAttenuation() / (1 - 0.005161 * trueExtract);
  }

  /** Extract left in grams per litre at 20 °C; what reading error makes negative is none. */
  public double sugarLeftGramsPerLitre() {
    return Math.max(0, trueExtract) / 100 * FermentingWash.density20(gravity);
  }
}
