package washbook.functions.still;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;

class AtmosphereTest {
  private static final double FOOT = 0.3048;
  private static final double PSI = 68.94757;

  @Test
  void pressureMeetsTheTables() {
    for (Row row : ReferenceTable.read("standard-atmosphere.csv", 18).rows()) {
      double metres = row.number("h") * (row.text("h_unit").equals("ft") ? FOOT : 1);
      double published = row.number("p") * (row.text("p_unit").equals("psi") ? PSI : 1);
      // One row prints 12.682 psi where the standard's formula gives 12.692.
      double tolerance = row.text("p").equals("12.682") ? 0.001 : 0.0003;
      assertEquals(1, Atmosphere.pressureHPa(metres, 1013.25) / published, tolerance, "" + row);
    }
    assertEquals(850, Calls.value("AIRPRESSURE", 4780 * FOOT), 0.3);
  }
}
