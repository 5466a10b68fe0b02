package washbook.functions.still;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.VapourLiquid;

/** Ethanol-water data of Perry's Chemical Engineers' Handbook at 101.325 kPa. */
class PotRunTest {
  private static final List<Row> PERRY =
      ReferenceTable.read("perry-ethanol-water-vle.csv", 15).rows();

  @Test
  void boilingPointAndVapourMeetTheData() {
    for (Row row : PERRY) {
      double charge = percentVolume(row.number("x_liquid"));
      if (charge > 90) {
        continue;
      }
      double temperatureC = row.number("temperature_c");
      assertEquals(temperatureC, Calls.value("BOILINGPOINT", charge), 0.6);
      double vapour = percentVolume(row.number("y_vapour"));
      assertEquals(vapour, Calls.value("VAPOURSTRENGTH", charge), 1.6, row.toString());
      if (temperatureC > 80) {
        assertEquals(vapour, Calls.value("HEADSTRENGTH", temperatureC), 2.0, row.toString());
      }
    }
  }

  /** The figure in the help of HEADSTRENGTH, by the model itself at the lower pressure. */
  @Test
  void twentyHectopascalsLessAreThreeAndAHalfPercentAtForty() {
    double temperatureC = 95.55;
    double liquid = VapourLiquid.liquid(temperatureC, VapourLiquid.ATMOSPHERE_HPA - 20, 0.85);
    double there =
        percentVolume(VapourLiquid.boil(liquid, VapourLiquid.ATMOSPHERE_HPA - 20).vapour());
    assertEquals(40, PotRun.headStrength(temperatureC), 0.1);
    assertEquals(3.5, PotRun.headStrength(temperatureC) - there, 0.1);
  }

  /**
   * Rayleigh's equation over a spline through the published data instead of the model, by a
   * general-purpose library. The first row stands at 1.9 mole percent, so the runs stop above it.
   */
  @ParameterizedTest
  @CsvSource({"20, 50", "30, 50", "40, 60", "30, 45"})
  void runMeetsRayleighOverTheData(double charge, double stop) {
    double[] x = new double[PERRY.size() + 1];
    double[] y = new double[x.length];
    for (int i = 1; i < x.length; i++) {
      x[i] = PERRY.get(i - 1).number("x_liquid");
      y[i] = PERRY.get(i - 1).number("y_vapour");
    }
    PolynomialSplineFunction vapour = new SplineInterpolator().interpolate(x, y);
    double x0 = VapourLiquid.moleFraction(EthanolWater.massFraction(charge));
    double yStop = VapourLiquid.moleFraction(EthanolWater.massFraction(stop));
    double x1 = 0;
    while (vapour.value(x1) < yStop) {
      x1 += 1e-5;
    }
    UnivariateFunction integrand = at -> 1 / (vapour.value(at) - at);
    double left =
        Math.exp(
            -new IterativeLegendreGaussIntegrator(10, 1e-8, 1e-8)
                .integrate(100_000, integrand, x1, x0));
    double ethanol = x0 - left * x1;
    double strength = percentVolume(ethanol / (1 - left));
    double recovery = 100 * ethanol / x0;
    assertEquals(strength, Calls.value("RUNSTRENGTH", charge, stop), 1.5);
    assertEquals(recovery, Calls.value("RUNRECOVERY", charge, stop), 4);
    assertEquals(
        charge * recovery / strength / 100,
        Calls.value("RUNVOLUME", 1.0, charge, stop),
        0.04 * charge * recovery / strength / 100);
  }

  /** A stripping run of 10 % wash to a third of its volume: common practice, no source. */
  @Test
  void aThirdOfAWashBringsOverNearlyAll() {
    double volume = Calls.value("RUNVOLUME", 30.0, 10.0, 8.0);
    assertTrue(volume > 7 && volume < 10, "volume " + volume);
    assertTrue(Calls.value("RUNRECOVERY", 10.0, 8.0) > 93);
  }

  @Test
  void alcoholIsKept() {
    for (double charge = 5; charge <= 60; charge += 5) {
      for (double stop = 2; stop < Calls.value("VAPOURSTRENGTH", charge) - 1; stop += 5) {
        assertEquals(
            charge * Calls.value("RUNRECOVERY", charge, stop) / 100,
            Calls.value("RUNVOLUME", 1.0, charge, stop) * Calls.value("RUNSTRENGTH", charge, stop),
            1e-9 * charge);
      }
    }
  }

  /** The quadrature against a finer one of a general-purpose library on the same model. */
  @Test
  void quadratureIsExactEnough() {
    double x0 = VapourLiquid.moleFraction(EthanolWater.massFraction(60));
    double x1 = 0.001;
    UnivariateFunction integrand =
        s -> {
          double x = Math.exp(s);
          return x / (VapourLiquid.boil(x, VapourLiquid.ATMOSPHERE_HPA).vapour() - x);
        };
    double fine =
        new IterativeLegendreGaussIntegrator(20, 1e-12, 1e-12)
            .integrate(1_000_000, integrand, Math.log(x1), Math.log(x0));
    assertEquals(fine, PotRun.integral(x1, x0), 1e-9 * fine);
  }

  private static double percentVolume(double moleFraction) {
    return EthanolWater.percentVolume(VapourLiquid.massFraction(moleFraction));
  }
}
