package washbook.functions.spirit;

import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;

/**
 * Spirit, sugar and water mixed by mass. The volume follows from Tabarie's rule (OIV-MA-AS2-03B):
 * the gravity of the whole is that of ethanol-water of its % vol and that of water with its sugar
 * per litre, less one.
 *
 * @param litres at 20 °C
 * @param percentVolume at 20 °C
 */
public record Liqueur(double litres, double percentVolume) {
  private static final double WATER = 0.9982;
  private static final double HIGHEST_BRIX = 80;

  /** Mixes litres of spirit at 20 °C with grams of sugar and litres of water. */
  public static Liqueur of(double litres, double strength, double gramsOfSugar, double water) {
    double p = EthanolWater.massFraction(strength);
    double spirit = litres * EthanolWater.density(p, 20) / 1000;
    double ethanol = spirit * p / (EthanolWater.ETHANOL_DENSITY_20 / 1000);
    double sugar = gramsOfSugar / 1000;
    double mass = spirit + sugar + water * WATER;
    double parts = litres + water + sugar * 0.62;
    double volume =
        Solve.root(
            v -> gravity(ethanol / v, sugar / v) - mass / v / WATER,
            parts,
            0.85 * parts,
            1.1 * parts);
    if (!(volume > 0)) {
      throw RefusedException.contradiction("liqueur.thick");
    }
    double solvent = mass - ethanol * EthanolWater.ETHANOL_DENSITY_20 / 1000;
    if (100 * sugar / solvent > SATURATED) {
      throw RefusedException.contradiction("liqueur.saturated");
    }
    return new Liqueur(volume, 100 * ethanol / volume);
  }

  /** % of sugar in its water beyond which none dissolves at 20 °C: 67 (ICUMSA, from memory). */
  private static final double SATURATED = 67;

  private static double gravity(double shareOfEthanol, double kilogramsPerLitre) {
    double alcohol = EthanolWater.massFraction(Math.min(100, Math.max(0, 100 * shareOfEthanol)));
    return EthanolWater.gravity(alcohol) + SucroseSolution.gravity(brixOf(kilogramsPerLitre)) - 1;
  }

  /** °Bx of a sugar solution that holds so much in a litre. */
  private static double brixOf(double kilogramsPerLitre) {
    return Solve.root(
        b -> b / 100 * SucroseSolution.gravity(b) * WATER - kilogramsPerLitre,
        100 * kilogramsPerLitre / (1 + 0.4 * kilogramsPerLitre),
        0,
        HIGHEST_BRIX);
  }
}
