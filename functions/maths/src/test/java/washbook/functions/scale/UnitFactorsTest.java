package washbook.functions.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;

/**
 * Plain units against their legal definitions. Each row: amount, unit, the same in the other unit.
 *
 * <p>UK gallon: 4.54609 L, Weights and Measures Act 1985, Schedule 1, Part IV. US gallon: 231 cubic
 * inches of 2.54 cm each, NIST Handbook 44, Appendix C, hence 3.785411784 L. Pound: 0.45359237 kg,
 * Weights and Measures Act 1985, section 1(1), and NIST Handbook 44, Appendix C. °F: NIST Special
 * Publication 811, Appendix B.8, t/°C = (t/°F - 32)/1.8.
 */
class UnitFactorsTest {
  @ParameterizedTest
  @CsvSource({
    "1, GALUK, L, 4.54609",
    "5, GALUK, L, 22.73045",
    "4.54609, L, GALUK, 1",
    "1, GALUS, L, 3.785411784",
    "5, GALUS, L, 18.92705892",
    "3.785411784, L, GALUS, 1",
    "1, GALUK, GALUS, 1.200949925504855",
    "1, LB, KG, 0.45359237",
    "14, LB, KG, 6.35029318",
    "0.45359237, KG, LB, 1",
    "3, KG, KG, 3",
    "3, L, L, 3",
    "32, F, C, 0",
    "59, F, C, 15",
    "60, F, C, 15.555555555555556",
    "68, F, C, 20",
    "212, F, C, 100",
    "-40, F, C, -40",
    "0, C, F, 32",
    "20, C, F, 68",
    "20, C, C, 20",
    "68, F, F, 68",
  })
  void aUnitIsWhatTheLawSaysItIs(double amount, String from, String to, double expected) {
    assertEquals(expected, Conversion.convert(amount, from, to), 1e-12 * Math.max(1, expected));
  }

  @Test
  void aUsGallonIs231CubicInchesOf254Millimetres() {
    double litresInCubicInch = 2.54 * 2.54 * 2.54 / 1000;
    assertEquals(231 * litresInCubicInch, Conversion.convert(1, "GALUS", "L"), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"1, KG, L", "1, F, KG", "1, SG, ABV", "1, STONE, KG", "1, KG, STONE"})
  void unitsOfDifferentKindsAreRefused(double amount, String from, String to) {
    RefusedException refused =
        assertThrows(RefusedException.class, () -> Conversion.convert(amount, from, to));
    assertEquals(Code.UNKNOWN_WORD, refused.refusal().code());
    assertTrue(refused.getMessage().contains(from), refused.getMessage());
  }

  /**
   * Scales defined by a formula; the others (Brix, KGM3, strengths) are checked against tables
   * elsewhere.
   */
  @ParameterizedTest
  @CsvSource({
    // Points and Oechsle: thousandths above water, by definition.
    "85, POINTS, 1.085",
    "-2, POINTS, 0.998",
    "85, OECHSLE, 1.085",
    // Baume, modulus 145 at 20 degC for liquids heavier than water: NBS Circular C440 (from
    // memory).
    "0, BAUME, 1",
    "10, BAUME, 1.0740740740740740",
    "29, BAUME, 1.25",
    // Twaddell: 0.005 SG a degree (common practice, no source).
    "1, TWADDELL, 1.005",
    "17, TWADDELL, 1.085",
    // Klosterneuburg: 4.54 + 0.022 KMW degrees Oechsle each, Ambrosi 1994 as quoted.
    "0, KMW, 1",
    "10, KMW, 1.0476",
    "20, KMW, 1.0996",
  })
  void aScaleIsItsFormula(double shown, String scale, double gravity) {
    assertEquals(gravity, Conversion.convert(shown, scale, "SG"), 1e-12);
    assertEquals(shown, Conversion.convert(gravity, "SG", scale), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "0.97, SG, true",
    "0.9699, SG, false",
    "1.4, SG, true",
    "1.4001, SG, false",
    "-30, POINTS, true",
    "-30.1, POINTS, false",
    "400, POINTS, true",
    "400.1, POINTS, false",
    "0, ABW, true",
    "100, ABW, true",
    "100.1, ABW, false",
    "-0.1, ABW, false",
  })
  void aScaleEndsWhereItsModelEnds(double value, String scale, boolean accepted) {
    if (accepted) {
      assertEquals(value, Conversion.convert(value, scale, scale), 1e-12);
    } else {
      RefusedException refused =
          assertThrows(RefusedException.class, () -> Conversion.convert(value, scale, scale));
      assertEquals(value > 1.2 ? Code.TOO_HIGH : Code.TOO_LOW, refused.refusal().code());
      assertTrue(refused.getMessage().contains("is outside the range"), refused.getMessage());
    }
  }

  /**
   * Densities at 20 °C: OIML R 22, table of alcoholic strength by volume (50 % vol from memory). US
   * proof: 27 CFR 30.11, twice the % vol at 60 °F. UK proof: 57.1 % vol is 100 (from memory), by
   * the definition in the Alcoholic Liquor Duties Act 1979, section 2(2).
   */
  @ParameterizedTest
  @CsvSource({
    "100, ABV, KGM3, 789.24, 0.01",
    "50, ABV, KGM3, 930.14, 0.01",
    "930.14, KGM3, ABV, 50, 0.01",
    "100, ABW, ABV, 100, 1e-9",
    "0, ABW, ABV, 0, 1e-9",
    "100, PROOFUS, ABV, 50, 0.1",
    "50, ABV, PROOFUS, 100, 0.15",
    "100, PROOFUK, ABV, 57.1, 0.1",
    "57.1, ABV, PROOFUK, 100, 0.1",
  })
  void aStrengthIsWhatTheTablesSay(
      double value, String from, String to, double expected, double within) {
    assertEquals(expected, Conversion.convert(value, from, to), within);
  }

  @Test
  void everyWordOfEveryKindIsKnown() {
    assertTrue(
        Conversion.words()
            .containsAll(
                List.of("SG", "BRIX", "ABV", "PROOFUK", "C", "F", "L", "GALUS", "GALUK", "LB")));
    assertEquals(Conversion.words().size(), Set.copyOf(Conversion.words()).size());
  }

  @Test
  void potentialAlcoholEndsWhereTheBalanceDoes() {
    assertEquals(1.19, Conversion.HIGHEST_POTENTIAL_GRAVITY);
    double most = Conversion.convert(1.19, "SG", "POTENTIAL");
    assertThrows(RefusedException.class, () -> Conversion.convert(most + 0.01, "POTENTIAL", "SG"));
    assertThrows(RefusedException.class, () -> Conversion.convert(1.1901, "SG", "POTENTIAL"));
  }
}
