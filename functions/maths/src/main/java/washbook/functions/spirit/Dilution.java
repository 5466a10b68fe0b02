package washbook.functions.spirit;

import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.Sentence;
import washbook.functions.liquid.EthanolWater;

/**
 * Diluting and blending by mass: ethanol and water keep their masses, but together they take less
 * room. Litres are at 20 °C, strengths % vol at 20 °C.
 */
public final class Dilution {
  private static final double WATER = EthanolWater.density(0, 20);

  private Dilution() {}

  /** Litres of water that bring a spirit down to a strength. */
  public static double water(double litres, double percentVolume, double target) {
    refuseRise(percentVolume, target);
    double before = density(percentVolume);
    double after = density(target);
    return litres * (percentVolume / target * after - before) / WATER;
  }

  /** Litres after dilution; pure alcohol is kept. */
  public static double volume(double litres, double percentVolume, double target) {
    refuseRise(percentVolume, target);
    return litres * percentVolume / target;
  }

  /** Litres of the stronger spirit that {@code litres} of the target strength take. */
  public static double spiritFor(double litres, double target, double percentVolume) {
    refuseRise(percentVolume, target);
    return litres * target / percentVolume;
  }

  /** % vol after that much water has gone in. */
  public static double strengthAfterWater(
      double litres, double percentVolume, double litresOfWater) {
    double p = EthanolWater.massFraction(percentVolume);
    double mass = litres * EthanolWater.density(p, 20);
    return EthanolWater.percentVolume(p * mass / (mass + litresOfWater * WATER));
  }

  /** % vol of a blend; cells may be blank (NaN) in pairs. */
  public static double blend(double[] litres, double[] strengths) {
    return EthanolWater.percentVolume(Blend.of(litres, strengths).massFraction());
  }

  /** Litres of a blend at 20 °C, contraction counted. */
  public static double blendVolume(double[] litres, double[] strengths) {
    Blend blend = Blend.of(litres, strengths);
    return blend.mass / EthanolWater.density(blend.massFraction(), 20);
  }

  private record Blend(double mass, double ethanol) {
    static Blend of(double[] litres, double[] strengths) {
      if (litres.length != strengths.length) {
        throw RefusedException.contradiction("cells.strengths", litres.length, strengths.length);
      }
      double mass = 0;
      double ethanol = 0;
      for (int i = 0; i < litres.length; i++) {
        boolean noLitres = Double.isNaN(litres[i]);
        if (noLitres != Double.isNaN(strengths[i])) {
          throw new RefusedException(
              Code.BLANK,
              "cell.blank",
              Sentence.of(noLitres ? "name.litres" : "name.strengths"),
              i + 1);
        }
        if (!noLitres) {
          double p = EthanolWater.massFraction(strengths[i]);
          double part = litres[i] * EthanolWater.density(p, 20);
          mass += part;
          ethanol += p * part;
        }
      }
      if (mass == 0) {
        throw new RefusedException(Code.BLANK, "litres.none");
      }
      return new Blend(mass, ethanol);
    }

    double massFraction() {
      return ethanol / mass;
    }
  }

  private static double density(double percentVolume) {
    return EthanolWater.density(EthanolWater.massFraction(percentVolume), 20);
  }

  private static void refuseRise(double percentVolume, double target) {
    if (target > percentVolume) {
      throw RefusedException.contradiction("dilution.above", target, percentVolume);
    }
  }
}
