package washbook.log.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Alcohol that a person has multiplied out of a stated original gravity and the readings. */
class MeasuredFactorTest {
  private static final double[] READ = {1.080, 1.062, 1.040, 1.021, 1.008, 1.002};

  /** A usual factor is named as it is usual; the columns hold three decimals. */
  @ParameterizedTest
  @CsvSource({"131.25, 131.25", "127.43, 127.43", "120.08, 120.08", "136.7, 136.70", "131, 131.00"})
  void itsFactorIsToldToTwoDecimals(double factor, String told) {
    StringBuilder log = new StringBuilder("Sugar 4\nOriginal gravity: 1.085\n");
    log.append("Date | SG | Temp (°C) | ABV %");
    for (int i = 0; i < READ.length; i++) {
      log.append(
          String.format(
              Locale.ROOT,
              "%n#2026-10-%02d | %.3f | 24 | %.3f",
              2 * i + 1,
              READ[i],
              factor * (1.085 - READ[i])));
    }
    TestGrid grid = TestGrid.of("Sugar 4", log.toString());
    Audit.Column column =
        LogAuditor.audit(grid, SheetUnderstanding.understand(grid, LogMap.none())).columns().get(0);
    assertEquals(List.of(Audit.Cause.WARM_READING, Audit.Cause.RULE_OF_THUMB), column.causes());
    assertEquals(
        told + " x (original - current gravity), from the readings as they were",
        column.detail().in(Language.EN));
  }
}
