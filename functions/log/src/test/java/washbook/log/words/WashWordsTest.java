package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.liquid.WashKind;

/** The kind of wash by its words. */
class WashWordsTest {
  private static Set<WashKind> kind(String word) {
    return word == null ? Set.of() : Set.of(WashKind.of(word));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Sugar wash | SUGAR",
        "Our second sugar wash, barrel 2 | SUGAR",
        "Zuckermaische | SUGAR",
        "molasses wash | MOLASSES",
        "Mead | HONEY",
        "Hydromel | HONEY",
        "Obstwein | FRUIT",
        "beer | MALT",
        "Sugar 4 |",
        "Plum 3 |",
        "honey |",
        "Fermentation log |",
      })
  void aTitleNamesTheKindOutright(String title, String kind) {
    assertEquals(kind(kind), WashWords.inTitle(title));
  }

  @ParameterizedTest
  @CsvSource({
    "sugar, SUGAR",
    "cane sugar, SUGAR",
    "Zucker, SUGAR",
    "honey, HONEY",
    "blackstrap, MOLASSES",
    "plums, FRUIT",
    "barley, MALT",
    "mead, HONEY"
  })
  void afterALabelAPlainWordIsEnough(String value, String kind) {
    assertEquals(kind(kind), WashWords.inValue(value));
  }

  @Test
  void twoKindsAreTwo() {
    assertEquals(
        Set.of(WashKind.of("SUGAR"), WashKind.of("MOLASSES")),
        WashWords.inValue("molasses and sugar"));
  }

  @Test
  void proseNamesNone() {
    String sixty = "sugar wash" + " x".repeat(25);
    assertEquals(60, sixty.length());
    assertEquals(kind("SUGAR"), WashWords.inTitle(sixty));
    assertEquals(Set.of(), WashWords.inTitle(sixty + "y"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"wash", "Wash type", "Maische", "tipo de mosto"})
  void labels(String text) {
    assertTrue(WashWords.isLabel(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"sugar wash", "washed", "", "batch"})
  void noLabels(String text) {
    assertFalse(WashWords.isLabel(text));
  }
}
