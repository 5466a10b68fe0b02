package washbook.log.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;

import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import washbook.log.ComputedColumn;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Own columns made wrong in a known way, and the cause found. */
class AuditTest {
  private static final double[] READINGS = {1.085, 1.070, 1.050, 1.030, 1.012, 1.001};
  private static final double[] WARMTH = {22, 29, 31, 30, 28, 27};

  private static Audit.Column audit(String header, IntToDoubleFunction own) {
    StringBuilder text = new StringBuilder("Day | SG | Temp C | " + header);
    for (int i = 0; i < READINGS.length; i++) {
      text.append(
          String.format(
              Locale.ROOT, "%n%d | %s | %s | %s", i, READINGS[i], WARMTH[i], own.applyAsDouble(i)));
    }
    TestGrid grid = TestGrid.of("Plum 3", text.toString().replace("\r", ""));
    List<Audit.Column> columns =
        LogAuditor.audit(grid, SheetUnderstanding.understand(grid, LogMap.none())).columns();
    assertEquals(1, columns.size());
    return columns.get(0);
  }

  private static double original() {
    return calc("CORRECTEDGRAVITY", READINGS[0], WARMTH[0]);
  }

  private static double gravity(int i) {
    return i == 0 ? original() : calc("CORRECTEDGRAVITY", READINGS[i], WARMTH[i], 20.0, original());
  }

  @Test
  void rightFiguresAgree() {
    Audit.Column column = audit("ABV", i -> calc("ABV", original(), gravity(i)));
    assertEquals(List.of(Audit.Cause.AGREES), column.causes());
    assertEquals(0, column.differing());
    assertEquals(6, column.compared());
  }

  @Test
  void findsWarmReadings() {
    Audit.Column column = audit("ABV", i -> calc("ABV", READINGS[0], READINGS[i]));
    assertEquals(List.of(Audit.Cause.WARM_READING), column.causes());
    assertTrue(column.differing() >= 4);
    int worst = column.batches().get(0).worst();
    double expected =
        calc("ABV", READINGS[0], READINGS[worst]) - calc("ABV", original(), gravity(worst));
    assertEquals(expected, column.largest(), 1e-9);
  }

  @Test
  void findsTheRuleOfThumb() {
    Audit.Column column = audit("Alcohol % vol", i -> 125 * (original() - gravity(i)));
    assertEquals(List.of(Audit.Cause.RULE_OF_THUMB), column.causes());
    assertEquals("125.00 x (original - current gravity)", column.detail().in(Language.EN));
  }

  @Test
  void findsTheDifferenceOfPotentials() {
    Audit.Column column =
        audit(
            "ABV",
            i -> calc("POTENTIALABV", original(), "17") - calc("POTENTIALABV", gravity(i), "17"));
    assertEquals(List.of(Audit.Cause.DIFFERENCE_OF_POTENTIALS), column.causes());
  }

  @Test
  void findsTheApparentTakenAsReal() {
    Audit.Column column =
        audit("Real attenuation", i -> calc("APPARENTATTENUATION", original(), gravity(i)));
    assertEquals(List.of(Audit.Cause.APPARENT_AS_REAL), column.causes());
  }

  @Test
  void findsTheWrongReference() {
    double cal = 25;
    double og = calc("CORRECTEDGRAVITY", READINGS[0], WARMTH[0], cal);
    Audit.Column column =
        audit(
            "Corrected SG",
            i -> i == 0 ? og : calc("CORRECTEDGRAVITY", READINGS[i], WARMTH[i], cal, og));
    assertEquals(ComputedColumn.CORRECTED_GRAVITY, column.ours());
    assertEquals(List.of(Audit.Cause.WRONG_REFERENCE), column.causes());
  }

  @Test
  void sharesCountAsPercentages() {
    Audit.Column column = audit("ABV", i -> calc("ABV", original(), gravity(i)) / 100);
    assertEquals(List.of(Audit.Cause.AGREES), column.causes());
  }

  @Test
  void saysWhenNothingExplainsIt() {
    double[] odd = {3, 1, 4, 1, 5, 9};
    assertEquals(List.of(Audit.Cause.UNKNOWN), audit("ABV", i -> odd[i]).causes());
  }

  @Test
  void findsSugarThatWasNotCounted() {
    TestGrid grid =
        TestGrid.of(
            "Sugar 4",
            """
            Volume: 25 L
            Day | SG | Temp C | Sugar added (kg) | ABV
            0 | 1.065 | 20 | | 0
            2 | 1.030 | 20 | 2 | X2
            4 | 1.045 | 20 | | X4
            8 | 1.002 | 20 | | X8
            9 | 0.999 | 20 | | X9"""
                .replace("X2", own(1.030))
                .replace("X4", own(1.045))
                .replace("X8", own(1.002))
                .replace("X9", own(0.999)));
    Audit.Column column =
        LogAuditor.audit(grid, SheetUnderstanding.understand(grid, LogMap.none())).columns().get(0);
    assertEquals(List.of(Audit.Cause.FED_SUGAR_IGNORED), column.causes());
  }

  private static String own(double gravity) {
    return String.format(Locale.ROOT, "%.2f", calc("ABV", 1.065, gravity));
  }
}
