package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Refusals quote the cell as it stands, in the unit of the log. */
class RefusalTextTest {
  private static String reason(String header, String first, String row) {
    TestGrid grid = TestGrid.of("Plum 3", header + ("\n0 | " + first).repeat(4) + "\n3 | " + row);
    Filling filling =
        LogFiller.fill(
            grid, SheetUnderstanding.understand(grid, LogMap.none()), FillOptions.usual());
    assertEquals(1, filling.refusals().size(), filling.refusals().toString());
    return filling.refusals().get(0).reason();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Temp F; 70; 700; temperature 700 \u00b0F is too high; it must be 32 to 140 \u00b0F.",
        "Temp F; 70; 20; temperature 20 \u00b0F is too low; it must be 32 to 140 \u00b0F.",
        "Temp F; 70; '300 F; temperature '300 F' is too high; it must be 32 to 140 \u00b0F.",
        "Temp C; 20; 200; temperature 200 \u00b0C is too high; it must be 0 to 60 \u00b0C.",
        "Temp C; 20; '65,5; temperature '65,5' \u00b0C is too high; it must be 0 to 60 \u00b0C.",
        "Temp C; 20; hot; temperature 'hot' is not a temperature; it must be 0 to 60 \u00b0C.",
      },
      quoteCharacter = '"')
  void aTemperatureIsQuotedInItsOwnUnit(
      String header, String first, String wrong, String beginning, String end) {
    assertEquals(
        beginning + "; " + end,
        reason("Day | SG | " + header, "1.085 | " + first, "1.040 | " + wrong));
  }

  @ParameterizedTest
  @CsvSource({"n/a", "-", "?", "none"})
  void aWordForNothingIsNotCalledBlank(String word) {
    String reason = reason("Day | SG | Temp F", "1.085 | 70", "1.040 | " + word);
    assertTrue(
        reason.startsWith("temperature '" + word + "' is no number; it must be 32 to 140"), reason);
    assertTrue(
        reason("Day | SG | Temp F", "1.085 | 70", "1.040 |").startsWith("temperature is blank"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "SG; 1.085; 1.5; reading 1.5 is too high, it must be 0.97 to 1.19 SG.",
        "SG; 1.085; '1,5; reading '1,5' is too high, it must be 0.97 to 1.19 SG.",
        "SG; 1085; 1500; reading 1500 is too high, it must be 970 to 1190.",
        "Oechsle; 85; 300; reading 300 is too high, it must be -30 to 190 \u00b0Oe.",
        "Points; 85; 300; reading 300 is too high, it must be -30 to 190 points.",
      },
      quoteCharacter = '"')
  void aReadingIsQuotedWithTheRangeOfItsScale(
      String header, String first, String wrong, String expected) {
    assertEquals(
        expected.replace(", it", "; it"),
        reason("Day | " + header + " | Temp C", first + " | 20", wrong + " | 20"));
  }
}
