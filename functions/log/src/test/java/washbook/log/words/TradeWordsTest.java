package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.words.TradeWords.Side;

/** Words that speak of a ferment or of another trade. */
class TradeWordsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Fermentation log | FERMENT",
        "ferment | FERMENT",
        "cider, second pressing | FERMENT",
        "Gärprotokoll | FERMENT",
        "vergisting | FERMENT",
        "druivenwijn | FERMENT",
        "brine tank 2 | OTHER",
        "Batterie 3 | OTHER",
        "Kuhmilch | OTHER",
        "milk wash | FERMENT OTHER",
        "the heat pump in the shed | OTHER",
        "heat, then pump |",
        "fermenting since Monday | FERMENT",
        "Most | FERMENT",
        "Apfelmost | FERMENT",
        "Mostly rain |",
        "Plum 3 |",
        "'' |",
      })
  void aTextSpeaksOf(String text, String sides) {
    Set<Side> expected = EnumSet.noneOf(Side.class);
    if (sides != null) {
      for (String side : sides.split(" ")) {
        expected.add(Side.valueOf(side));
      }
    }
    assertEquals(expected, TradeWords.in(text));
  }

  @Test
  void proseSpeaksOfNothing() {
    String most = "cider".repeat(1) + " x".repeat(57) + "y";
    assertEquals(120, most.length());
    assertEquals(EnumSet.of(Side.FERMENT), TradeWords.in(most));
    assertEquals(Set.of(), TradeWords.in(most + "z"));
  }
}
