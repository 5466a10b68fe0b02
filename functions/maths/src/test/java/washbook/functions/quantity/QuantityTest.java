package washbook.functions.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;

/**
 * The promised ranges: what users are told is accepted, and whether 0 is taken for a blank cell.
 */
class QuantityTest {
  /** Quantity, range as it is shown, whether 0 means blank. */
  private static final String[] PROMISES = {
    "GRAVITY | 0.97 to 1.19 SG | blank",
    "SYRUP_GRAVITY | 0.97 to 1.4 SG | blank",
    "ORIGINAL_GRAVITY | 1.001 to 1.19 SG | blank",
    "GRAVITY_OFFSET | -0.05 to 0.05 SG | value",
    "BRIX | -8 to 70 °Bx | value",
    "BRIX_OFFSET | -10 to 10 °Bx | value",
    "SUGAR_TEMPERATURE | 0 to 60 °C | value",
    "SPIRIT_TEMPERATURE | -20 to 40 °C | value",
    "CALIBRATION_TEMPERATURE | 10 to 30 °C | value",
    "PERCENT_VOL | 0.01 to 100 % vol | blank",
    "PERCENT_VOL_OR_WATER | 0 to 100 % vol | value",
    "PERCENT_MASS | 0.01 to 100 % mass | blank",
    "FERMENTED_STRENGTH | 0.01 to 35 % vol | blank",
    "CHARGE_STRENGTH | 0.5 to 90 % vol | blank",
    "STOP_STRENGTH | 1 to 95 % vol | blank",
    "HEAD_TEMPERATURE | 65 to 101 °C | blank",
    "PRESSURE | 600 to 1050 hPa | blank",
    "SEA_LEVEL_PRESSURE | 950 to 1050 hPa | blank",
    "ALTITUDE | -300 to 4000 m | value",
    "FERMENT_TEMPERATURE | 5 to 40 °C | blank",
    "YIELD | 80 to 95 % of theory | blank",
    "OBSCURED_STRENGTH | 38.5 to 50 % vol | blank",
    "SOLIDS | 0.001 to 0.6 g/100 mL | blank",
    "SHARE | 0.01 to 1 | blank",
    "REFRACTOMETER_BRIX | 0.1 to 40 °Bx | blank",
    "REFRACTOMETER_FACTOR | 0.9 to 1.1 | blank",
    "READING_ERROR | 0 to 0.02 SG | value",
    "TEMPERATURE_ERROR | 0 to 10 K | value",
    "LITRES | 0.001 to 1000000 L | blank",
    "KILOGRAMS | 0.001 to 1000000 kg | blank",
    "KILOGRAMS_OR_NONE | 0 to 1000000 kg | value",
    "GRAMS | 0.001 to 1000000000 g | blank",
    "DAYS | -1000000 to 10000000 days | value",
    "REFRACTOMETER_TEMPERATURE | 5 to 30 °C | value",
    "BRIX_TO_40 | 0.1 to 38 °Bx | blank",
    "HYDROMETER_IN_WATER | 0.95 to 1.05 SG | blank",
    "SAMPLE_GRAMS | 1 to 600 g | blank",
    "NITROGEN | 0 to 1000 mg N/L | value",
    "NITROGEN_WANTED | 1 to 500 mg N/L | blank",
    "CHARGE_TEMPERATURE | 0 to 75 °C | value",
    "DISTILLATE_TEMPERATURE | 5 to 60 °C | value",
    "COOLING_TEMPERATURE | 1 to 90 °C | blank",
    "KILOWATTS | 0.05 to 1000 kW | blank",
    "LIQUEUR_SPIRIT | 5 to 97 % vol | blank",
    "JAR | 1 to 10000 | blank",
    "ANY | -1.0E15 to 1.0E15 | value",
  };

  @Test
  void everyRangeIsTheOnePromised() {
    Set<String> actual =
        Arrays.stream(Quantity.values())
            .map(q -> q + " | " + q.range() + " | " + (q.zeroIsBlank() ? "blank" : "value"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(Arrays.asList(PROMISES)), actual);
  }

  @ParameterizedTest
  @EnumSource(value = Quantity.class, names = "ANY", mode = Mode.EXCLUDE)
  void bothEndsAreAcceptedAndWhatLiesBeyondIsRefused(Quantity quantity) {
    double beyond = 1e-6 * Math.max(1, Math.abs(quantity.max()));
    assertEquals(quantity.max(), quantity.check("x", quantity.max()));
    assertEquals(quantity.min(), quantity.check("x", quantity.min()));
    assertEquals(Code.TOO_HIGH, code(quantity, quantity.max() + beyond));
    assertEquals(Code.TOO_LOW, code(quantity, quantity.min() - beyond));
    assertEquals(Code.NOT_A_NUMBER, code(quantity, Double.NaN));
  }

  private static Code code(Quantity quantity, double value) {
    return assertThrows(RefusedException.class, () -> quantity.check("x", value)).refusal().code();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "GRAVITY | 0 | gravity is blank (0 counts as blank here); it must be 0.97 to 1.19 SG.",
        "GRAVITY | 0.5 | gravity 0.5 is too low; it must be 0.97 to 1.19 SG.",
        "GRAVITY | 1.2 | gravity 1.2 is too high; it must be 0.97 to 1.19 SG.",
        "GRAVITY | NaN | gravity is not a number; it must be 0.97 to 1.19 SG.",
      })
  void aRefusalGivesTheValueAndTheRange(Quantity quantity, double value, String sentence) {
    RefusedException refused =
        assertThrows(RefusedException.class, () -> quantity.check("gravity", value));
    assertEquals(sentence, refused.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "SUGAR_TEMPERATURE, true",
    "ALTITUDE, true",
    "GRAVITY_OFFSET, true",
    "GRAVITY, false",
    "CALIBRATION_TEMPERATURE, false",
  })
  void zeroIsPossibleOnlyInsideARange(Quantity quantity, boolean possible) {
    assertEquals(possible, quantity.zeroIsPossible());
  }
}
