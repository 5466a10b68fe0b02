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
import washbook.functions.Answer;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;
import washbook.functions.catalogue.Catalogue;
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

  /** The vapour of 40 % vol boils 0.9 K lower at 980 hPa: taken for sea level it reads 45 %. */
  @Test
  void headStrengthGoesByTheDaysPressure() {
    for (double pressure : new double[] {980, Calls.value("AIRPRESSURE", 540.0), 700, 600}) {
      double x = VapourLiquid.liquid(Calls.value("BOILINGPOINT", 5.0), 1013.25, 0.85);
      double head = VapourLiquid.boil(x, pressure).temperatureC();
      double vapour = percentVolume(VapourLiquid.boil(x, pressure).vapour());
      assertEquals(vapour, Calls.value("HEADSTRENGTH", head, pressure), 1e-7);
    }
    double head980 = headOf40(980);
    assertEquals(40, Calls.value("HEADSTRENGTH", head980, 980.0), 1e-6);
    assertEquals(45.4, Calls.value("HEADSTRENGTH", head980), 0.1);
    assertEquals(49.8, Calls.value("HEADSTRENGTH", headOf40(950.04)), 0.1);
  }

  /** Head temperature over the charge whose vapour has 40 % vol under that pressure. */
  private static double headOf40(double pressure) {
    double low = 0.001;
    double high = 0.2;
    for (int i = 0; i < 60; i++) {
      double x = (low + high) / 2;
      boolean weak = percentVolume(VapourLiquid.boil(x, pressure).vapour()) < 40;
      low = weak ? x : low;
      high = weak ? high : x;
    }
    return VapourLiquid.boil(low, pressure).temperatureC();
  }

  /** Where temperature tells nothing the reason says so. */
  @ParameterizedTest
  @CsvSource({
    "78.3, 1013.25, constant-boiling",
    "100, 1013.25, water",
    "76, 930, constant-boiling"
  })
  void headStrengthIsRefusedWhereItTellsNothing(double t, double pressure, String why) {
    Answer answer = Catalogue.get("HEADSTRENGTH").call(t, pressure);
    assertTrue(answer instanceof Answer.Refusal r && r.reason().contains(why), "" + answer);
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
