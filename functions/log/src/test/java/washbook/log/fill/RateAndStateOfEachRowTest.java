package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Progress;
import washbook.log.ComputedColumn;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/**
 * Rate and state stand on each row as the readings up to it tell, all of them: however few of them
 * are looked at, the figure is that of the whole course so far.
 */
class RateAndStateOfEachRowTest {
  private static final EnumSet<ComputedColumn> BOTH =
      EnumSet.of(ComputedColumn.RATE, ComputedColumn.STATE);

  /** Days apart of readings: several a day, one a day, long pauses. */
  private static double[] days(String kind, int count) {
    double[] days = new double[count];
    for (int i = 1; i < count; i++) {
      days[i] =
          days[i - 1]
              + switch (kind) {
                case "often" -> 0.125;
                case "seldom" -> 3;
                default -> i % 5 == 0 ? 2.5 : 0.25;
              };
    }
    return days;
  }

  private static double[] gravities(double[] days) {
    return Arrays.stream(days).map(d -> 0.998 + 0.087 * Math.exp(-d / 5)).toArray();
  }

  private static String log(double[] days, double[] gravities) {
    StringBuilder log = new StringBuilder("Days | SG | Temp C");
    for (int i = 0; i < days.length; i++) {
      log.append("\n" + days[i] + " | " + gravities[i] + " | 20");
    }
    return log.toString();
  }

  private static ColumnPatch column(String log, EnumSet<ComputedColumn> columns, int index) {
    TestGrid grid = TestGrid.of("Sugar 4", log);
    return LogFiller.fill(
            grid,
            SheetUnderstanding.understand(grid, LogMap.none()),
            new FillOptions(columns, FormulaStyle.VALUES))
        .patch()
        .columns()
        .get(index);
  }

  private static double rate(double[] days, double[] gravities) {
    try {
      return Progress.rate(days, gravities);
    } catch (RefusedException tooFew) {
      return Double.NaN;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"often", "seldom", "mixed"})
  void theRateIsThatOfAllReadingsSoFar(String kind) {
    double[] days = days(kind, 90);
    ColumnPatch rates = column(log(days, gravities(days)), EnumSet.of(ComputedColumn.RATE), 0);
    ColumnPatch gravity =
        column(log(days, gravities(days)), EnumSet.of(ComputedColumn.CORRECTED_GRAVITY), 0);
    double[] corrected = new double[90];
    for (int i = 0; i < 90; i++) {
      corrected[i] = gravity.cells().number(i + 1);
      assertEquals(
          rate(Arrays.copyOf(days, i + 1), Arrays.copyOf(corrected, i + 1)),
          rates.cells().number(i + 1),
          1e-6,
          kind + " " + i);
    }
    assertTrue(rates.cells().number(5) > 0);
  }

  @Test
  void theStateIsThatOfAllReadingsSoFar() {
    double[] days = days("mixed", 70);
    String log = log(days, gravities(days));
    ColumnPatch gravity = column(log, EnumSet.of(ComputedColumn.CORRECTED_GRAVITY), 0);
    ColumnPatch states = column(log, BOTH, 1);
    double[] corrected = new double[70];
    for (int i = 0; i < 70; i++) {
      corrected[i] = gravity.cells().number(i + 1);
      String expected =
          i == 0
              ? null
              : Progress.state(Arrays.copyOf(days, i + 1), Arrays.copyOf(corrected, i + 1), 1);
      if (expected != null) {
        assertEquals(expected, states.cells().text(i + 1), "row " + i);
      }
      assertTrue(Double.isNaN(states.cells().number(i + 1)));
    }
  }

  @Test
  void readingsBeforeTheFirstDateHaveNoPartInThem() {
    String dated = "#2025-10-01 | 1.084 | 20\n#2025-10-02 | 1.07 | 20\n#2025-10-03 | 1.055 | 20\n";
    ColumnPatch with = column("Date | SG | Temp C\n | 1.085 | 20\n" + dated, BOTH, 0);
    ColumnPatch without = column("Date | SG | Temp C\n" + dated, BOTH, 0);
    assertTrue(without.cells().number(3) > 10);
    assertEquals(without.cells().number(3), with.cells().number(4), 0.05);
  }

  @Test
  void aRowOfWhichNothingIsWrittenHasNoState() {
    ColumnPatch states =
        column(
            "Date | SG | Temp C\n#2025-10-01 | 1.085 | 20\n#2025-10-02 | 1.07 | \n"
                + "#2025-10-03 | 1.055 | 20\n#2025-10-05 | 1.03 | 20",
            BOTH,
            1);
    assertNull(states.cells().text(2));
    assertEquals("working", states.cells().text(4));
  }
}
