package washbook.functions.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Balance;
import washbook.functions.liquid.WashKind;

/** What a gravity promises, and where each promise begins and ends. */
class PotentialAlcoholTest {
  /**
   * ICUMSA SPS-4: 10, 20 and 30 °Bx are SG 1.03998, 1.08292 and 1.12906, 1038.115, 1080.978 and
   * 1127.033 kg/m3. Grams per litre are their product over 100.
   */
  @ParameterizedTest
  @CsvSource({"1.03998, 103.8115", "1.08292, 216.1956", "1.12906, 338.1099"})
  void extractInALitreIsShareTimesDensity(double gravity, double gramsPerLitre) {
    assertEquals(gramsPerLitre, PotentialAlcohol.gramsPerLitre(gravity), 0.02);
    assertEquals(gramsPerLitre / 17, PotentialAlcohol.fixed(gravity, 17), 0.002);
    assertEquals(gravity, SugarScale.GL.toGravity(gramsPerLitre), 1e-5);
    double density = gramsPerLitre / SugarScale.BRIX.fromGravity(gravity) * 100;
    assertEquals(gravity, SugarScale.KGM3.toGravity(density), 1e-4);
    assertEquals(gravity, Conversion.convert(gramsPerLitre, "GL", "SG"), 1e-5);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.001, 1.03, 1.085, 1.15, 1.19})
  void aScaleWithItsZeroAtWaterIsTheBalanceDownToWater(double gravity) {
    assertEquals(Balance.of(gravity, 1.0).percentVolume(), PotentialAlcohol.model(gravity), 1e-9);
    for (WashKind kind : new WashKind[] {WashKind.MALT, WashKind.SUGAR, WashKind.FRUIT}) {
      assertEquals(
          Balance.of(gravity, 1.0, kind).percentVolume(),
          PotentialAlcohol.model(gravity, kind),
          1e-9);
    }
    assertTrue(PotentialAlcohol.dry(gravity, WashKind.MALT) > PotentialAlcohol.model(gravity));
  }

  @Test
  void waterPromisesNothing() {
    assertEquals(0, PotentialAlcohol.model(1));
    assertEquals(0, PotentialAlcohol.model(1, WashKind.SUGAR));
    assertEquals(0, PotentialAlcohol.dry(1, WashKind.SUGAR));
    assertEquals(0, PotentialAlcohol.dry(0.99, WashKind.SUGAR));
    assertTrue(PotentialAlcohol.dry(1.001, WashKind.SUGAR) > 0.1);
  }

  /** A ten-thousandth above water the curve begins, a hundredth of a % vol for each. */
  @ParameterizedTest
  @ValueSource(strings = {"MALT", "SUGAR", "HONEY"})
  void fromThereDownTheScaleIsAStraightLine(String word) {
    WashKind kind = WashKind.of(word);
    double step = PotentialAlcohol.model(1.0001, kind);
    assertEquals(0.0128, step, 0.001);
    assertEquals(step / 2, PotentialAlcohol.model(1.00005, kind), 1e-12);
    assertEquals(-step, PotentialAlcohol.model(0.9999, kind), 1e-12);
    assertEquals(-100 * step, PotentialAlcohol.model(0.99, kind), 1e-9);
    assertEquals(PotentialAlcohol.model(1.0001) / 2, PotentialAlcohol.model(1.00005), 1e-12);
    assertEquals(-100 * PotentialAlcohol.model(1.0001), PotentialAlcohol.model(0.99), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.97, 0.99, 1, 1.00005, 1.02, 1.085, 1.19})
  void aPromiseLeadsBackToItsGravity(double gravity) {
    double promised = PotentialAlcohol.model(gravity);
    assertEquals(gravity, PotentialAlcohol.gravityOfModel(promised), 1e-9);
  }

  /** OIV-MA-AS2-02 table II has 10 to 30 °Bx; its first and last row are 4.88 and 18.94 % vol. */
  @Test
  void theTableOfMustEndsWhereItIsPrinted() {
    assertEquals(1.0409, MustSugar.LOWEST_GRAVITY);
    assertEquals(1.1308, MustSugar.HIGHEST_GRAVITY);
    assertEquals(4.88, MustSugar.potential(1.0409), 0.02);
    assertTrue(MustSugar.potential(1.1308) > 18);
    assertEquals(
        "gravity 1.0408 is outside the table of grape must, SG 1.0409 to 1.1308; the bases MODEL,"
            + " DRY and 17 go on.",
        refused(1.0408, Code.TOO_LOW));
    assertTrue(refused(1.1309, Code.TOO_HIGH).startsWith("gravity 1.1309 is outside"));
  }

  private static String refused(double gravity, Code code) {
    RefusedException refused =
        assertThrows(RefusedException.class, () -> MustSugar.potential(gravity));
    assertEquals(code, refused.refusal().code());
    return refused.getMessage();
  }

  /** The ends of a scale are given in its own figures, to four decimal places. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "401 | POINTS | SG | TOO_HIGH | POINTS 401 is outside the range -30 to 400.",
        "-31 | OECHSLE | SG | TOO_LOW | OECHSLE -31 is outside the range -30 to 400.",
        "1.2 | SG | POTENTIAL | TOO_HIGH | SG 1.2 is outside the range 0.97 to 1.19.",
        "50 | BAUME | SG | TOO_HIGH | BAUME 50 is outside the range -4.4845 to 41.4286.",
        "101 | ABW | ABV | TOO_HIGH | ABW 101 is outside the range 0 to 100.",
        "-1 | ABV | ABW | TOO_LOW | ABV -1 is outside the range 0 to 100.",
      })
  void aValueOutsideItsScaleIsRefusedWithTheRange(
      double value, String from, String to, Code code, String sentence) {
    RefusedException refused =
        assertThrows(RefusedException.class, () -> Conversion.convert(value, from, to));
    assertEquals(code, refused.refusal().code());
    assertEquals(sentence, refused.getMessage());
  }

  /** From pure ethanol, 789.24 kg/m3 by OIML R 22, to SG 1.4, 1.4 x 998.20 kg/m3. */
  @ParameterizedTest
  @CsvSource({"789.2, false", "789.3, true", "998, true", "1397.4, true", "1397.6, false"})
  void aDensityOfSpiritOrOfWashStaysWhatItIs(double value, boolean accepted) {
    if (accepted) {
      assertEquals(value, Conversion.convert(value, "KGM3", "KGM3"));
    } else {
      assertThrows(RefusedException.class, () -> Conversion.convert(value, "KGM3", "KGM3"));
    }
  }
}
