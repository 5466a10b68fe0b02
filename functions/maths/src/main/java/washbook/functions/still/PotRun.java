package washbook.functions.still;

import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.VapourLiquid;

/**
 * A simple pot run without reflux by Rayleigh's equation: {@code ln(n0/n1) = integral of dx/(y-x)}
 * from the pot's last to its first strength. Sugar in the charge and cooling on the way up are left
 * out, so a real still differs: an estimate for planning.
 *
 * @param litres distillate at 20 °C for each litre of charge
 * @param percentVolume its strength at 20 °C
 * @param recovered share of the charge's alcohol that is in it
 */
public record PotRun(double litres, double percentVolume, double recovered) {
  /** Nodes and weights of Gauss and Legendre on -1 to 1, positive half, 8 points. */
  private static final double[] NODES = {
    0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
  };

  private static final double[] WEIGHTS = {
    0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
  };

  /** Widest panel in ln x. */
  private static final double PANEL = 1;

  /** Runs a charge until its vapour has fallen to {@code stop}; both % vol at 20 °C. */
  public static PotRun of(double charge, double stop) {
    double p0 = EthanolWater.massFraction(charge);
    double x0 = VapourLiquid.moleFraction(p0);
    double yStop = VapourLiquid.moleFraction(EthanolWater.massFraction(stop));
    double yStart = vapour(x0);
    if (yStop >= yStart) {
      throw RefusedException.contradiction(
          "run.stop", stop, Numbers.rounded(percentVolume(yStart), 1));
    }
    double x1 = liquidOf(yStop);
    double left = Math.exp(-integral(x1, x0));
    double moles = 1 - left;
    double ethanol = x0 - left * x1;
    double p = VapourLiquid.massFraction(ethanol / moles);
    double massPerCharge =
        moles * VapourLiquid.molarMass(ethanol / moles) / VapourLiquid.molarMass(x0);
    return new PotRun(
        massPerCharge * EthanolWater.density(p0, 20) / EthanolWater.density(p, 20),
        EthanolWater.percentVolume(p),
        ethanol / x0);
  }

  /** % vol at 20 °C of the condensed vapour over a boiling charge. */
  public static double vapourStrength(double charge) {
    return percentVolume(vapour(VapourLiquid.moleFraction(EthanolWater.massFraction(charge))));
  }

  /** Boiling point of a charge in °C. */
  public static double boilingPoint(double charge, double pressureHPa) {
    return VapourLiquid.boil(
            VapourLiquid.moleFraction(EthanolWater.massFraction(charge)), pressureHPa)
        .temperatureC();
  }

  /**
   * % vol at 20 °C of the condensed vapour that has {@code temperatureC} at the head. Refuses what
   * water at that pressure boils above, and the neighbourhood of the constant-boiling mixture.
   */
  public static double headStrength(double temperatureC, double pressureHPa) {
    double water = VapourLiquid.boil(0, pressureHPa).temperatureC();
    if (temperatureC >= water) {
      throw RefusedException.contradiction(
          "run.water", temperatureC, Numbers.rounded(water, 2), pressureHPa);
    }
    double lowest = VapourLiquid.boil(HIGHEST_SIMPLE, pressureHPa).temperatureC();
    if (temperatureC < lowest + TELLS_NOTHING) {
      throw RefusedException.contradiction(
          "run.constant", temperatureC, Numbers.rounded(lowest, 2), pressureHPa);
    }
    double x = VapourLiquid.liquid(temperatureC, pressureHPa, HIGHEST_SIMPLE);
    return percentVolume(VapourLiquid.boil(x, pressureHPa).vapour());
  }

  /** So near to the constant-boiling mixture a tenth of a degree moves it by 1 % vol and more. */
  private static final double TELLS_NOTHING = 0.14;

  /** Mole fraction up to which the boiling point falls and the vapour gains strength. */
  private static final double HIGHEST_SIMPLE = 0.85;

  private static double vapour(double x) {
    return VapourLiquid.boil(x, VapourLiquid.ATMOSPHERE_HPA).vapour();
  }

  private static double percentVolume(double moleFraction) {
    return EthanolWater.percentVolume(VapourLiquid.massFraction(moleFraction));
  }

  private static double liquidOf(double y) {
    return Math.exp(
        Solve.root(
            s -> Math.log(vapour(Math.exp(s)) / y),
            Math.log(y / (12 - 11 * y)),
            Math.log(1e-6),
            Math.log(HIGHEST_SIMPLE)));
  }

  /** Integral of dx / (y - x), in ln x, where it is smooth. */
  static double integral(double from, double to) {
    double low = Math.log(from);
    double length = Math.log(to) - low;
    int panels = (int) Math.ceil(length / PANEL);
    double half = length / panels / 2;
    double sum = 0;
    for (int panel = 0; panel < panels; panel++) {
      double middle = low + (2 * panel + 1) * half;
      for (int i = 0; i < NODES.length; i++) {
        sum +=
            WEIGHTS[i]
                * (integrand(middle + NODES[i] * half) + integrand(middle - NODES[i] * half));
      }
    }
    return sum * half;
  }

  private static double integrand(double lnX) {
    double x = Math.exp(lnX);
    return x / (vapour(x) - x);
  }
}
