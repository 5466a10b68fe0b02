package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/** Which column holds the remarks where no header of its row says so. */
class RemarksBesideReadingsTest {
  private static Understanding understood(String log) {
    return SheetUnderstanding.understand(TestGrid.of("Cellar", log), LogMap.none());
  }

  private static int column(String log, Role role) {
    return understood(log).tables().get(0).column(role).map(LogColumn::column).orElse(-1);
  }

  @Test
  void readingsWithTheirDegreesAreNoRemarks() {
    String log =
        """
        datum | SG | vat B | wat
        12-8-2026 | 1,086 bij 21 °C | | gist erbij
        13-8-2026 | 1,070 bij 21 °C | 1,071 bij 21 °C |
        14-8-2026 | 1,050 bij 21 °C | 1,052 bij 21 °C | de koek is omlaag
        16-8-2026 | 1,020 bij 21 °C | 1,022 bij 21 °C | hij ruikt goed
        20-8-2026 | 0,998 bij 21 °C | 0,999 bij 21 °C |""";
    assertEquals(3, column(log, Role.NOTE));
  }
}
