package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.words.Concept;

/** An original gravity in the brackets of a header. */
class OriginalGravityInHeaderTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "SG (start 1.090) | SG | 1.09",
        "SG [OG: 1.090] | SG | 1.09",
        "SG (OG 1090) | SG | 1090",
        "Dichte (Anfang 1,085) | Dichte | 1.085",
      })
  void isReadAndLeavesTheHeader(String header, String rest, double gravity) {
    KeyLine stated = OriginalGravityInHeader.stated(header, 3, 1);
    assertEquals(gravity, stated.value());
    assertEquals(Set.of(Concept.ORIGINALGRAVITY), stated.meanings());
    assertEquals("B4", stated.cell());
    assertEquals(rest, OriginalGravityInHeader.outside(header));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "SG",
        "SG (20 C)",
        "SG (start)",
        "SG (start 20)",
        "SG (start 1.090 or 1.092)",
        "Temp (start 1.090)",
        "SG (1.090)",
        "SG (start 1.090) twice"
      })
  void otherBracketsStateNone(String header) {
    assertNull(OriginalGravityInHeader.stated(header, 0, 0));
    assertEquals(header, OriginalGravityInHeader.outside(header));
  }
}
