package washbook.log.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** One reading among good ones: filled, passed over, or refused with this code. */
class ReadingRangeTest {
  private static String outcome(String header, String reading, String temperature) {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            "OG: 1.190\nDay | "
                + header
                + "\n0 | 1.085 | 20\n1 | 1.080 | 20\n2 | 1.070 | 20\n3 | "
                + reading
                + " | "
                + temperature
                + "\n4 | 1.050 | 20\n5 | 1.030 | 20");
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    List<CellRefusal> refusals = filling.refusals();
    if (!refusals.isEmpty()) {
      return refusals.get(0).code() + " " + refusals.get(0).cell();
    }
    TestGrid filled = grid.with(filling.patch());
    return filled.kind(5, 3) == Grid.Kind.NUMBER ? "FILLED" : "PASSED";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.060 | 20 | FILLED",
        "1060 | 20 | FILLED",
        "1,060 | 20 | FILLED",
        "~1.060 | 20 | NOT_A_NUMBER B6",
        "1.060 SG | 20 | FILLED",
        "1.060 @ 68F | | FILLED",
        "60 points | 20 | FILLED",
        "0.9699 | 20 | TOO_LOW B6",
        "1.1901 | 20 | TOO_HIGH B6",
        "969.9 | 20 | TOO_LOW B6",
        "1190.1 | 20 | TOO_HIGH B6",
        " | 20 | PASSED",
        "0 | 20 | PASSED",
        "- | 20 | PASSED",
        "n/a | 20 | PASSED",
        "n/a,na | 20 | NOT_A_NUMBER B6",
        "foam | 20 | NOT_A_NUMBER B6",
        "1.060 xyz | 20 | UNKNOWN_WORD B6",
        "1.060 kg | 20 | UNKNOWN_WORD B6",
        "#2025-01-01 | 20 | NOT_A_NUMBER B6",
        "1.060 | | BLANK C6",
        "1.060 | - | NOT_A_NUMBER C6",
        "1.060 | 0 | FILLED",
        "1.040 | 60 | FILLED",
        "1.060 | -0.1 | TOO_LOW C6",
        "1.060 | 60.1 | TOO_HIGH C6",
        "1.060 | 68 °F | FILLED",
        "1.060 | 31 °F | TOO_LOW C6",
        "1.060 | 141 °F | TOO_HIGH C6",
        "1.060 | warm | NOT_A_NUMBER C6",
        "1.060 | 20 kg | NOT_A_NUMBER C6",
        "1.060 | corrected | FILLED",
        "1.060 | #2025-01-01 | NOT_A_NUMBER C6",
      })
  void aRowIs(String reading, String temperature, String outcome) {
    String read = reading == null ? "" : reading;
    String warm = temperature == null ? "" : temperature;
    assertEquals(outcome, outcome("SG | Temp C", read, warm));
  }
}
