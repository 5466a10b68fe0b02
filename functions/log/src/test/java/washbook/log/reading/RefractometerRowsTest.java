package washbook.log.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.TestGrid;

/** What a cell of a refractometer's column is: degrees Brix, nothing, or refused. */
class RefractometerRowsTest {
  private static RefractometerRows rows(String cell, String unit) {
    TestGrid grid = TestGrid.of("x", "Refractometer\n" + (cell == null ? "" : cell));
    LogColumn column = new LogColumn(0, "Refractometer", Role.REFRACTOMETER, unit, Message.NONE);
    RefractometerRows rows = new RefractometerRows(grid, column);
    rows.read(1);
    return rows;
  }

  private static String outcome(String cell, String unit) {
    RefractometerRows rows = rows(cell, unit);
    return switch (rows.read(1)) {
      case NOTHING -> "nothing";
      case READ -> String.format(Locale.ROOT, "%.2f", rows.brix);
      case REFUSED -> rows.refusal.code() + " " + rows.refusal.cell();
    };
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12.5 | 12.50",
        "12,5 | 12.50",
        "12.5 Brix | 12.50",
        "12.5 °Bx | 12.50",
        "12.5 °P | 12.50",
        "0.1 | 0.10",
        "40 | 40.00",
        "0.09 | TOO_LOW A2",
        "40.1 | TOO_HIGH A2",
        "41 Brix | TOO_HIGH A2",
        " | nothing",
        "0 | nothing",
        "- | nothing",
        "n/a | nothing",
        "12.5 kg | NOT_A_NUMBER A2",
        "12.5 Brix @ 20 C | NOT_A_NUMBER A2",
        "foggy | NOT_A_NUMBER A2",
      })
  void degreesBrix(String cell, String outcome) {
    assertEquals(outcome, outcome(cell, "BRIX"));
  }

  /** ICUMSA SPS-4: SG 1.03998 at 10 °Bx, 1.08292 at 20 °Bx. */
  @ParameterizedTest
  @CsvSource({"1.03998, 10.00", "1.08292, 20.00", "1039.98, 10.00", "1.2, TOO_HIGH A2"})
  void aScaleOfSpecificGravity(String cell, String outcome) {
    assertEquals(outcome, outcome(cell, "SG"));
  }

  /** The range stands in the log's own unit: 40 °Bx is SG 1.1785 by ICUMSA SPS-4. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "BRIX | 41 | refractometer reading 41 is too high; it must be 0.1 to 40 °Bx.",
        "SG | 1.2 | refractometer reading 1.2 is too high; it must be 1.0004 to 1.1786 SG.",
        "SG | foggy | refractometer reading 'foggy' is not a single number; it must be 1.0004 to"
            + " 1.1786 SG.",
      })
  void aRefusalNamesTheRangeInTheLogsUnit(String unit, String cell, String reason) {
    assertEquals(reason, rows(cell, unit).refusal.reason());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "BRIX | 22.5 | 22.5 | 20 | '22.5 does not go with the original reading 20 °Bx; it must be"
            + " below'",
        "BRIX | 1 | 1 | 20 | '1 does not go with the original reading 20 °Bx; it must be above'",
        "SG | 1.09 | 21.5 | 20 | '1.09 does not go with the original reading 1.0829; it must be"
            + " below'",
      })
  void aReadingMustGoWithTheOriginalOne(
      String unit, String cell, double present, double original, String words) {
    String reason = rows(cell, unit).contradiction(1, present, original).reason();
    assertTrue(reason.startsWith("refractometer reading " + words), reason);
  }
}
