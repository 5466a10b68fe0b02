package washbook.functions.makeup;

import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;

/**
 * Making up a wash by mass: masses of water and dry solids add up, volumes do not. Solids of every
 * kind are taken to weigh on the gravity as sucrose does. Litres are at 20 °C.
 */
public final class MakeUp {
  private static final double HIGHEST_GRAVITY = 1.190;

  private MakeUp() {}

  /** Kilograms of a sugar with that share of solids that lift a wash to a gravity. */
  public static double sugarFor(double litres, double gravity, double target, double solids) {
    if (target < gravity) {
      throw RefusedException.contradiction("makeup.sugarLifts", target, gravity);
    }
    double wanted = SucroseSolution.brix(target) / 100;
    refuseThin(solids, wanted, target);
    return mass(litres, gravity)
        * (wanted - SucroseSolution.brix(gravity) / 100)
        / (solids - wanted);
  }

  /** Kilograms of sugar for a full vessel of {@code litres} at a gravity, from water. */
  public static double sugarForVolume(double litres, double target, double solids) {
    double wanted = SucroseSolution.brix(target) / 100;
    if (target < 1) {
      throw RefusedException.contradiction("makeup.belowWater", target);
    }
    refuseThin(solids, wanted, target);
    return mass(litres, target) * wanted / solids;
  }

  /** Litres of water that go with {@link #sugarForVolume}. */
  public static double waterForVolume(double litres, double target, double solids) {
    double kilograms = sugarForVolume(litres, target, solids);
    return (mass(litres, target) - kilograms) * 1000 / FermentingWash.density20(1);
  }

  private static void refuseThin(double solids, double wanted, double target) {
    if (!(solids > wanted)) {
      throw RefusedException.contradiction(
          "makeup.thin",
          Numbers.rounded(100 * solids, 1),
          target,
          Numbers.rounded(100 * wanted, 1));
    }
  }

  /** SG 20/20 after that much sugar has gone in. */
  public static double gravity(double litres, double gravity, double kilograms, double solids) {
    double before = mass(litres, gravity);
    double share =
        (before * SucroseSolution.brix(gravity) / 100 + kilograms * solids) / (before + kilograms);
    return SucroseSolution.gravity(refuseThick(share));
  }

  /** Litres after that much sugar has gone in. */
  public static double volume(double litres, double gravity, double kilograms, double solids) {
    return (mass(litres, gravity) + kilograms)
        * 1000
        / FermentingWash.density20(gravity(litres, gravity, kilograms, solids));
  }

  private static double refuseThick(double share) {
    double percent = 100 * share;
    if (percent > SucroseSolution.brix(HIGHEST_GRAVITY)) {
      throw new RefusedException(
          Code.TOO_HIGH, "makeup.heavy", Numbers.rounded(percent, 1), HIGHEST_GRAVITY);
    }
    return percent;
  }

  /** Litres of water that bring a wash down to a gravity. */
  public static double waterFor(double litres, double gravity, double target) {
    if (target > gravity) {
      throw RefusedException.contradiction("makeup.waterLowers", target, gravity);
    }
    double now = SucroseSolution.brix(gravity);
    double wanted = SucroseSolution.brix(target);
    if (target <= 1 && target < gravity) {
      throw RefusedException.contradiction("makeup.notAboveWater", target);
    }
    return target == gravity
        ? 0
        : mass(litres, gravity) * (now - wanted) / wanted * 1000 / FermentingWash.density20(1);
  }

  /** Kilograms. */
  private static double mass(double litres, double gravity) {
    return litres * FermentingWash.density20(gravity) / 1000;
  }
}
