package washbook.log.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Own columns as people write them, in whole logs. */
class AuditedLogsTest {
  private static final double[] READINGS = {1.085, 1.070, 1.050, 1.030, 1.012, 1.001};
  private static final double[] WARMTH = {22, 29, 31, 30, 28, 27};

  private static List<Audit.Column> audit(
      String line, String header, String form, IntToDoubleFunction own) {
    StringBuilder text = new StringBuilder(line + "Day | SG | Temp C | " + header);
    for (int i = 0; i < READINGS.length; i++) {
      text.append(String.format(Locale.ROOT, "\n%d | %s | %s | ", i, READINGS[i], WARMTH[i]));
      text.append(String.format(Locale.ROOT, form, own.applyAsDouble(i)));
    }
    TestGrid grid = TestGrid.of("Plum 3", text.toString());
    return LogAuditor.audit(grid, SheetUnderstanding.understand(grid, LogMap.none())).columns();
  }

  private static double original() {
    return calc("CORRECTEDGRAVITY", READINGS[0], WARMTH[0]);
  }

  private static double gravity(int i) {
    return i == 0 ? original() : calc("CORRECTEDGRAVITY", READINGS[i], WARMTH[i], 20.0, original());
  }

  private static double alcohol(int i) {
    return calc("ABV", original(), gravity(i));
  }

  @Test
  void aPercentSignAfterTheFigureDoesNotMatter() {
    Audit.Column column = audit("", "ABV", "'%.3f %%", AuditedLogsTest::alcohol).get(0);
    assertEquals(List.of(Audit.Cause.AGREES), column.causes());
    assertEquals(6, column.compared());
    assertEquals("agrees with ours", column.causes().get(0).message().in(Language.EN));
  }

  @Test
  void wordsAreNotCompared() {
    assertEquals(List.of(), audit("", "ABV", "'about %.1f I think", AuditedLogsTest::alcohol));
  }

  @Test
  void correctedGravitiesMayStandInThousandthsAndBlankIsNotZero() {
    Audit.Column column =
        audit("", "Corrected SG", "%.2f", i -> i == 2 ? 0 : 1000 * gravity(i)).get(0);
    assertEquals(List.of(Audit.Cause.AGREES), column.causes());
    assertEquals(5, column.compared());
  }

  @Test
  void twoCausesAreNamedWhereOneLeavesMuchUnexplained() {
    Audit.Column column = audit("", "ABV", "%.4f", i -> 105 * (READINGS[0] - READINGS[i])).get(0);
    assertEquals(
        Set.of(Audit.Cause.RULE_OF_THUMB, Audit.Cause.WARM_READING), Set.copyOf(column.causes()));
    assertEquals(
        "105.00 x (original - current gravity), from the readings as they were",
        column.detail().in(Language.EN));
    assertTrue(column.leftOver() < 0.01, "left over " + column.leftOver());
  }

  /** A stated original gravity was not read at any temperature: only the later readings are. */
  @Test
  void warmReadingsAreFoundBelowAStatedOriginalGravityToo() {
    Audit.Column column =
        audit("OG: 1.086\n|\n", "ABV", "%.4f", i -> calc("ABV", 1.086, READINGS[i])).get(0);
    assertEquals(List.of(Audit.Cause.WARM_READING), column.causes());
    assertTrue(column.leftOver() < 0.01, "left over " + column.leftOver());
  }

  /** What is left over is the root mean square: half a % vol more on every row is half a % vol. */
  @Test
  void whatNothingExplainsIsLeftOver() {
    double[] more = {0.5, -0.5, 0.5, -0.5, 0.5, -0.5};
    Audit.Column column = audit("", "ABV", "%.6f", i -> 20 + alcohol(i) + more[i]).get(0);
    assertEquals(List.of(Audit.Cause.UNKNOWN), column.causes());
    assertEquals(Math.sqrt(20 * 20 + 0.25), column.leftOver(), 1e-3);
    assertEquals("", column.detail().in(Language.EN));
  }

  /** A rule by the degree counts from the temperature that the instrument is calibrated at. */
  @ParameterizedTest
  @CsvSource({"0.0002, 0.00020", "0.0003, 0.00030"})
  void aRuleByTheDegreeCountsFromTheCalibration(double rule, String told) {
    Audit.Column column =
        audit(
                "Hydrometer calibrated at 15 °C\n|\n",
                "Corrected SG",
                "%.6f",
                i -> READINGS[i] + rule * (WARMTH[i] - 15))
            .get(0);
    assertEquals(List.of(Audit.Cause.RULE_OF_THUMB), column.causes());
    assertTrue(column.detail().in(Language.EN).contains(told), column.detail().in(Language.EN));
    assertTrue(column.leftOver() < 1e-6, "left over " + column.leftOver());
  }

  /** Of an instrument for 15 °C that is used as one for 20 °C. */
  @Test
  void anotherCalibrationIsFound() {
    Audit.Column column =
        audit(
                "Hydrometer calibrated at 15 °C\n|\n",
                "Corrected SG",
                "%.6f",
                AuditedLogsTest::gravity)
            .get(0);
    assertEquals(List.of(Audit.Cause.WRONG_REFERENCE), column.causes());
    assertTrue(column.detail().in(Language.EN).contains("20.0"), column.detail().in(Language.EN));
  }
}
