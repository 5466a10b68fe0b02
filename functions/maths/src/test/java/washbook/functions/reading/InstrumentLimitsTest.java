package washbook.functions.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.Water;
import washbook.functions.quantity.Quantity;

/** Readings that are right as they stand, and those that no liquid shows. */
class InstrumentLimitsTest {
  private static String contradiction(Executable call) {
    RefusedException refused = assertThrows(RefusedException.class, call);
    assertEquals(Code.CONTRADICTION, refused.refusal().code());
    return refused.getMessage();
  }

  @Test
  void atItsOwnTemperatureAnInstrumentIsRight() {
    assertEquals(42.3, Alcoholometer.trueStrength(42.3, 20, 20));
    assertEquals(12.3, RefractometerTemperature.brixAt20(12.3, 20));
    assertEquals(1.062, Hydrometer.correctedGravity(1.062, 20, 20, 0), 1e-12);
    assertEquals(12.5, Hydrometer.correctedBrix(12.5, 20, 20, 0), 1e-9);
    assertEquals(1.060, Hydrometer.correctedGravity(1.062, 20, 20, 0.002), 1e-12);
    assertEquals(12, Hydrometer.correctedBrix(12.5, 20, 20, 0.5), 1e-9);
  }

  /** Its scale is calibrated at 15 °C, where 40 % vol have both volumes at 15 °C: 39.7 at 20 °C. */
  @Test
  void anAlcoholometerOfFifteenDegreesIsRightThere() {
    double at15 = Alcoholometer.trueStrength(40, 15, 15);
    assertEquals(40, at15, 0.3);
    assertTrue(Math.abs(at15 - 40) > 0.01);
    assertTrue(Alcoholometer.trueStrength(40, 20, 15) < at15);
  }

  /** Ethanol at 20 °C is lighter than anything colder; water at 20 °C heavier than any warmer. */
  @ParameterizedTest
  @CsvSource({"100, 10", "0, 30"})
  void whatNoMixtureShowsIsRefused(double reading, double temperatureC) {
    assertEquals(
        "no mixture of ethanol and water shows "
            + (int) reading
            + " % vol at "
            + (int) temperatureC
            + " °C.",
        contradiction(() -> Alcoholometer.massFraction(reading, temperatureC, 20)));
  }

  @Test
  void aReadingThatNoFermentReachesIsRefused() {
    assertEquals(
        "reading 0.97 is lower than a wash of original gravity 1.04 can ferment to.",
        contradiction(() -> Hydrometer.correctedGravity(0.97, 20, 20, 1.04, 0)));
    assertEquals(
        "the current Brix reading 1 is lower than a wash with an original Brix reading of 20 can ferment"
            + " to.",
        contradiction(() -> Refractometer.gravity(20, 1, 1)));
    assertEquals(
        "the current Brix reading 21 is above the original Brix reading 20.",
        contradiction(() -> Refractometer.gravity(20, 21, 1)));
    assertTrue(
        contradiction(() -> Refractometer.percentVolume(20, 1.0, 1))
            .startsWith("no wash shows both 20 °Bx in a refractometer and SG 1"));
  }

  /** Two instruments that say the same of an unfermented wash within their errors. */
  @ParameterizedTest
  @CsvSource({"20, 1.08292, 0", "19.9, 1.08292, 0", "10, 1.03998, 0"})
  void aWashThatHasNotFermentedHasNoAlcohol(double brix, double gravity, double percentVolume) {
    assertEquals(percentVolume, Refractometer.percentVolume(brix, gravity, 1), 0.05);
  }

  /** What is stated of an instrument is taken off its reading, whatever it is read in. */
  @Test
  void offsetAndFactorAreTakenOff() {
    assertEquals(
        Hydrometer.correctedGravity(1.010, 25, 20, 1.06, 0),
        Hydrometer.correctedGravity(1.012, 25, 20, 1.06, 0.002),
        1e-12);
    assertEquals(
        Refractometer.percentVolume(10, 1.01, 1),
        Refractometer.percentVolume(10.4, 1.01, 1.04),
        1e-9);
    assertEquals("SG", Quantity.GRAVITY_OFFSET.unit());
  }

  /** 10 % vol freezes at -4 °C (from memory): ice is no reading. */
  @Test
  void aSpiritThatWouldBeIceIsRefused() {
    assertTrue(contradiction(() -> Alcoholometer.massFraction(10, -15, 20)).contains("ice"));
    assertTrue(Alcoholometer.massFraction(40, -15, 20) > 0.3);
  }

  /** SG 1.19 is 42.5 °Bx: a stronger solution is no check of a hydrometer. */
  @Test
  void aSolutionToCheckWithIsNoSyrup() {
    assertEquals(1.18653, HydrometerCheck.gravity(42, 58), 0.003);
    assertEquals(
        "the solution would have 43.3 °Bx, more than SG 1.19.",
        contradiction(() -> HydrometerCheck.gravity(43.26, 56.74)));
  }

  /** 5 °Bx are 19.65 points (NBS Circular C440, from memory), too near water to tell a slope. */
  @Test
  void aSlopeNeedsASolutionOfTwentyPoints() {
    String refused = contradiction(() -> HydrometerCheck.slope(1, 1.0196, 5, 95, 20, 20));
    assertTrue(
        refused.matches("the solution is only 19\\.[67] points above water; 20 are .*"), refused);
    assertEquals(1, HydrometerCheck.slope(1, 1.03998, 10, 90, 20, 20), 2e-4);
    assertTrue(
        contradiction(() -> HydrometerCheck.slope(1.04, 1.04, 10, 90, 20, 20))
            .startsWith("the instrument shows 1.04 in the solution and 1.04 in water"));
  }

  /** Tanaka and others (2001), glass that grows by 25e-6 per K: NBS Circular C440. */
  @ParameterizedTest
  @ValueSource(doubles = {5, 15, 20, 30})
  void anInstrumentOfSixtyDegreesFahrenheitInWater(double temperatureC) {
    double calibrationC = 140.0 / 9;
    double shown =
        Water.densityCipm(temperatureC)
            / Water.densityCipm(calibrationC)
            * (1 + 25e-6 * (temperatureC - calibrationC));
    assertEquals(0, HydrometerCheck.offset(shown, temperatureC, calibrationC), 2e-5);
    assertEquals(0.001, HydrometerCheck.offset(shown + 0.001, temperatureC, calibrationC), 2e-5);
  }

  /** From then on a Brix scale goes the way of a gravity scale of 20 °C. */
  @ParameterizedTest
  @CsvSource({"10, 20", "10, 17.5", "20, 15"})
  void aBrixScaleIsReadAsAGravityScale(double brix, double calibrationC) {
    double gravity = Hydrometer.gravityOfBrixScale(brix, calibrationC);
    for (double t : new double[] {10, 20, 30}) {
      assertEquals(
          Hydrometer.correctedBrix(brix, t, calibrationC, 0),
          SucroseSolution.brix(Hydrometer.correctedGravity(gravity, t, 20, 0)),
          2e-5);
    }
  }

  /**
   * No temperature is a special one: a correction lies between those a little colder and warmer.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 15.56, 20, 25})
  void aCorrectionHasNoStep(double t) {
    assertEquals(
        (Hydrometer.correctedGravity(1.04, t - 0.1, 20, 0)
                + Hydrometer.correctedGravity(1.04, t + 0.1, 20, 0))
            / 2,
        Hydrometer.correctedGravity(1.04, t, 20, 0),
        1e-6);
    assertEquals(
        (RefractometerTemperature.brixAt20(10, t - 0.1)
                + RefractometerTemperature.brixAt20(10, t + 0.1))
            / 2,
        RefractometerTemperature.brixAt20(10, t),
        1e-4);
  }

  @Test
  void aReadingPastTheTableOfTheRefractometerIsRefused() {
    assertEquals(
        "no sugar solution shows that at this temperature.",
        contradiction(() -> RefractometerTemperature.brixAt20(43, 10)));
    assertEquals(40, RefractometerTemperature.brixAt20(40, 19), 0.2);
  }
}
