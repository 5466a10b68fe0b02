package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Amounts of sugar and water as people write them, in kilograms and litres.
 *
 * <p>UK gallon 4.54609 L and pound 0.45359237 kg: Weights and Measures Act 1985, Schedule 1 and
 * section 1(1). US gallon, 231 cubic inches, 3.785411784 L: NIST Handbook 44, Appendix C.
 */
class AmountUnitTest {
  @ParameterizedTest
  @CsvSource({
    "1, kg, 1",
    "2.5, kilo, 2.5",
    "1, lb, 0.45359237",
    "10, lbs, 4.5359237",
    "3, pounds, 1.36077711",
    "1, g, 0.001",
    "500, g, 0.5",
    "750, grams, 0.75",
  })
  void sugarIsWeighed(double amount, String unit, double kilograms) {
    AmountUnit found = AmountUnit.in(Vocabulary.meanings(unit), true).orElseThrow();
    assertEquals(kilograms, found.toBase(amount), 1e-12);
    assertTrue(found.isMass());
    assertEquals(Optional.empty(), AmountUnit.in(Vocabulary.meanings(unit), false));
  }

  @ParameterizedTest
  @CsvSource({
    "1, l, 1",
    "25, litres, 25",
    "1, ml, 0.001",
    "750, ml, 0.75",
    "1, gal uk, 4.54609",
    "5, imp gal, 22.73045",
    "5, uk gallons, 22.73045",
    "1, us gal, 3.785411784",
    "5, gal us, 18.92705892",
    "6, us gallons, 22.712470704",
  })
  void waterIsMeasured(double amount, String unit, double litres) {
    AmountUnit found = AmountUnit.in(Vocabulary.meanings(unit), false).orElseThrow();
    assertEquals(litres, found.toBase(amount), 1e-12);
    assertFalse(found.isMass());
    assertEquals(Optional.empty(), AmountUnit.in(Vocabulary.meanings(unit), true));
  }

  /** A gallon is one of two, and a stone or an ounce is none of the log's units. */
  @ParameterizedTest
  @ValueSource(strings = {"gal", "gallons", "stone", "oz", "spoons", "bottles", ""})
  void aUnitThatIsNotSettledOrNotKnownIsNone(String unit) {
    assertEquals(Optional.empty(), AmountUnit.in(Vocabulary.meanings(unit), true));
    assertEquals(Optional.empty(), AmountUnit.in(Vocabulary.meanings(unit), false));
    assertFalse(AmountUnit.isOne(unit));
  }

  @Test
  void theWordsOfAMapAreItsNames() {
    assertEquals(Optional.of(AmountUnit.GALUK), AmountUnit.of("GALUK"));
    assertEquals(Optional.of(AmountUnit.LB), AmountUnit.of("LB"));
    assertEquals(Optional.empty(), AmountUnit.of("lb"));
    assertEquals(Optional.empty(), AmountUnit.of("STONE"));
    assertTrue(AmountUnit.isOne("kg"));
    assertTrue(AmountUnit.isOne("gal uk"));
  }
}
