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
  void aColumnNamedOverTheHeaderHoldsRemarksAlsoBehindABlankRow() {
    String log =
        """
        | Cuve A | | Cuve B | | Divers
        Date | D | T° | D | T° |
        1/9/2025 | 1.089 | 20 | 1.084 | 20 |
        2/9/2025 | 1.080 | 20 | 1.078 | 20 |
        3/9/2025 | 1.060 | 20 | 1.061 | 20 | sonde changée
        | | | | |
        4/9/2025 | 1.040 | 20 | 1.042 | 20 | après relevé : 3 hL de B passés dans A
        6/9/2025 | 1.020 | 20 | 1.021 | 20 |
        8/9/2025 | 0.998 | 20 | 0.999 | 20 |""";
    assertEquals(5, column(log, Role.NOTE));
    assertEquals("F7", understood(log).doubts().get(0).cell());
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
