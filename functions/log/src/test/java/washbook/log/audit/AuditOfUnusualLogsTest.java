package washbook.log.audit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Logs of several batches, fed ones, refractometers, shares, and what is not compared. */
class AuditOfUnusualLogsTest {
  private static List<Audit.Column> audit(String log) {
    TestGrid grid = TestGrid.of("Plum 3", log);
    return LogAuditor.audit(grid, SheetUnderstanding.understand(grid, LogMap.none())).columns();
  }

  private static double alcohol(double original, double gravity) {
    return calc("ABV", original, gravity);
  }

  /** 0.1 % vol counts, less does not; the batch's worst row is the one that is furthest off. */
  @Test
  void whatDiffersIsCountedBatchByBatch() {
    Audit.Column column =
        audit(
                "Batch|Day|SG|Temp C|ABV\nPlum 3|0|1.085|20|0\nApple 7|0|1.06|20|0\n"
                    + ("Plum 3|3|1.05|20|" + (alcohol(1.085, 1.05) + 0.09) + "\n")
                    + ("Apple 7|3|1.03|20|" + (alcohol(1.06, 1.03) - 0.8) + "\n")
                    + ("Plum 3|6|1.02|20|" + (alcohol(1.085, 1.02) + 0.11) + "\n")
                    + ("Apple 7|6|1.01|20|" + (alcohol(1.06, 1.01) + 0.3)))
            .get(0);
    assertEquals(2, column.batches().size());
    assertEquals(6, column.compared());
    assertEquals(3, column.differing());
    assertEquals(-0.8, column.largest(), 1e-9);
    Audit.Batch plum = column.batches().get(0);
    assertEquals("Plum 3", plum.name());
    assertEquals(1, plum.differing());
    assertEquals(2, plum.worst());
    assertEquals(0.11, plum.largest(), 1e-9);
    assertEquals(0.1, plum.limit());
    assertArrayEquals(new int[] {1, 3, 5}, plum.rows());
    assertArrayEquals(new double[] {0, 3, 6}, plum.days());
    assertEquals(alcohol(1.085, 1.02) + 0.11, plum.own()[2], 1e-9);
    assertEquals(alcohol(1.085, 1.02), plum.ours()[2], 1e-9);
    Audit.Batch apple = column.batches().get(1);
    assertEquals(2, apple.differing());
    assertEquals(1, apple.worst());
  }

  /** The limit is 0.1 % vol in every column's own unit. */
  @ParameterizedTest
  @CsvSource({
    "Corrected SG, 0.00076, 0.0001",
    "ABV, 0.1, 0",
    "Apparent attenuation %, 0.9, 0.2",
    "Real attenuation %, 0.9, 0.2",
  })
  void theLimitIsTheSameInEveryUnit(String header, double limit, double within) {
    double figure = header.startsWith("Corr") ? 1.05 : 5;
    Audit.Column column =
        audit(
                "Day|SG|Temp C|"
                    + header
                    + "\n0|1.085|20|"
                    + (header.startsWith("C") ? 1.085 : 0)
                    + "\n3|1.05|20|"
                    + figure
                    + "\n6|1.02|20|"
                    + figure)
            .get(0);
    assertEquals(limit, column.batches().get(0).limit(), within + 1e-5);
  }

  @Test
  void sharesOfOneAreReadAsPercent() {
    Audit.Column column =
        audit(
                "Day|SG|Temp C|ABV\n0|1.085|20|0\n3|1.05|20|"
                    + (alcohol(1.085, 1.05) / 100 + "\n6|1.01|20|" + alcohol(1.085, 1.01) / 100))
            .get(0);
    assertEquals(List.of(Audit.Cause.AGREES), column.causes());
    Audit.Column young =
        audit(
                "Day|SG|Temp C|ABV\n0|1.085|20|0\n1|1.08|20|"
                    + (alcohol(1.085, 1.08) + "\n2|1.076|20|" + alcohol(1.085, 1.076)))
            .get(0);
    assertEquals(List.of(Audit.Cause.AGREES), young.causes(), "0.7 and 1.2 % vol are percent");
  }

  @Test
  void sugarThatWasFedAndIsLeftOutIsFound() {
    double fed = 1.0924;
    double[] gravities = {1.06, 1.03, 1.05, 1.03, 1.01};
    StringBuilder log = new StringBuilder("Day|SG|Temp C|Volume L|Sugar added kg|ABV");
    for (int i = 0; i < gravities.length; i++) {
      double own =
          i < 2 ? alcohol(1.06, gravities[i]) : alcohol(1.06, Math.min(1.06, gravities[i]));
      log.append("\n" + 3 * i + "|" + gravities[i] + "|20|20|" + (i == 1 ? "2" : "") + "|" + own);
    }
    Audit.Column column = audit(log.toString()).get(0);
    assertEquals(Set.of(Audit.Cause.FED_SUGAR_IGNORED), Set.copyOf(column.causes()));
    assertTrue(column.leftOver() < 0.1, "" + column.leftOver());
    assertTrue(column.batches().get(0).ours()[4] > alcohol(fed, 1.01) - 0.3);
  }

  /** A refractometer's reading is compared, but no rule for hydrometers is tried on it. */
  @Test
  void refractometerReadingsAreComparedWithoutACause() {
    Audit.Column column = audit("Day|Refractometer Brix|ABV\n0|20.5|0\n3|14|3\n6|10|5").get(0);
    assertEquals(3, column.compared());
    assertEquals(2, column.differing());
    assertEquals(List.of(Audit.Cause.UNKNOWN), column.causes());
    assertTrue(Double.isNaN(column.leftOver()));
  }

  @Test
  void rowsWithOneFigureAloneAreNotCompared() {
    Audit.Column column =
        audit(
                "Day|SG|Temp C|ABV\n0|1.085|20|\n3|1.05||4.7\n6|1.02|20|"
                    + (alcohol(1.085, 1.02) + "\n9|1.01|20|?"))
            .get(0);
    assertEquals(1, column.compared());
    assertArrayEquals(new int[] {3}, column.batches().get(0).rows());
    assertEquals(List.of(), audit("Day|SG|Temp C|ABV\n0|1.085|20|\n3|1.05||4.7"));
  }

  @Test
  void aTableThatIsNotUnderstoodIsNotCompared() {
    assertEquals(List.of(), audit("Day|SG|Temp|ABV\n0|1.085|50|0\n4|1.04|49|5\n8|1.01|51|9"));
  }
}
