package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Role;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/** What a column holds, by its header alone. */
class HeaderRolesTest {
  private static Role role(String header) {
    return HeaderRoles.role(Vocabulary.meanings(header));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Date | DATE",
        "Time | TIME",
        "Day | DAY",
        "Hours | HOURS",
        "Batch | BATCH",
        "Tank | BATCH",
        "SG | GRAVITY",
        "Hydrometer | GRAVITY",
        "Hydrometer reading | GRAVITY",
        "Reading | GRAVITY",
        "Density kg/m3 | GRAVITY",
        "Extract °P | GRAVITY",
        "Final gravity | GRAVITY",
        "Potential alcohol | GRAVITY",
        "Sugar g/L | GRAVITY",
        "Sugar (Brix) | GRAVITY",
        "SG calibrated 20 C | GRAVITY",
        "Refractometer | REFRACTOMETER",
        "Refractometer Brix | REFRACTOMETER",
        "Temp | TEMPERATURE",
        "°C | TEMPERATURE",
        "Temp F | TEMPERATURE",
        "SG temp | TEMPERATURE",
        "Room temperature | OTHER",
        "Cellar °C | OTHER",
        "Volume | VOLUME",
        "Litres | VOLUME",
        "us gal | VOLUME",
        "Litres left | OTHER",
        "Litres added | OTHER",
        "Sugar | SUGAR_ADDED",
        "Sugar added (kg) | SUGAR_ADDED",
        "Residual sugar | OTHER",
        "Water (L) | WATER_ADDED",
        "Calibration temperature | CALIBRATION",
        "Original gravity | ORIGINAL_GRAVITY",
        "Starting SG | ORIGINAL_GRAVITY",
        "Original reading | ORIGINAL_GRAVITY",
        "Note | NOTE",
        "Corrected gravity | OWN_CORRECTED_GRAVITY",
        "Corrected reading | OWN_CORRECTED_GRAVITY",
        "Uncorrected gravity | GRAVITY",
        "ABV | OWN_ABV",
        "Alcohol % vol | OWN_ABV",
        "Attenuation | OWN_APPARENT_ATTENUATION",
        "Apparent attenuation % | OWN_APPARENT_ATTENUATION",
        "Real attenuation % | OWN_REAL_ATTENUATION",
        "Correction | OTHER",
        "Refractometer factor | OTHER",
        "Offset | OTHER",
        "Plus or minus (% vol) | OTHER",
        "Unsicherheit (% vol) | OTHER",
        "Incertitude (% vol) | OTHER",
        "Incertidumbre (% vol) | OTHER",
        "Incertezza (% vol) | OTHER",
        "SG measured by hydrometer | GRAVITY",
        "Incerteza (% vol) | OTHER",
        "Onzekerheid (% vol) | OTHER",
        "Onsekerheid (% vol) | OTHER",
        "Points per day | OTHER",
        "Target gravity | OTHER",
        "Average SG | OTHER",
        "pH | OTHER",
        "Colour | OTHER",
      })
  void aHeaderHasThisRole(String header, Role role) {
    assertEquals(role, role(header));
  }

  /** A header in two rows: the upper one counts where the lower is not clear by itself. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Hydrometer | uncalled | GRAVITY",
        "Corrected | SG | OWN_CORRECTED_GRAVITY",
        "Target | SG | OTHER",
        "Room | Temp | OTHER",
        "Original | SG | ORIGINAL_GRAVITY",
        "Refractometer | Brix | REFRACTOMETER",
        "Date | SG | GRAVITY",
        "Alcohol | Temp | TEMPERATURE",
      })
  void theUpperRowOfAHeaderCarriesOn(String upper, String lower, Role role) {
    Set<Concept> joined =
        HeaderRoles.joined(Vocabulary.meanings(upper), Vocabulary.meanings(lower));
    assertEquals(role, HeaderRoles.role(joined));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Reading", "Value", "measured"})
  void aReadingOfNoNamedQuantityIsGeneric(String header) {
    assertTrue(HeaderRoles.isGeneric(Vocabulary.meanings(header)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"SG reading", "Hydrometer reading", "Date", "Brix"})
  void aNamedQuantityIsNot(String header) {
    assertFalse(HeaderRoles.isGeneric(Vocabulary.meanings(header)));
  }

  @Test
  void gravityExtractAndTheScalesOfSugarAreReadings() {
    for (String header : new String[] {"Gravity", "Extract", "Brix", "kg/m3", "°Oe"}) {
      assertTrue(HeaderRoles.hasScaleOrGravity(Vocabulary.meanings(header)), header);
    }
    for (String header : new String[] {"g/L", "Temp C", "Date", "kg"}) {
      assertFalse(HeaderRoles.hasScaleOrGravity(Vocabulary.meanings(header)), header);
    }
  }
}
