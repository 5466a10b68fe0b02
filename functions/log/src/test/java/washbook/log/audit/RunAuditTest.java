package washbook.log.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.log.ComputedColumn;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** A still run's own figures; what they should be comes from the catalogue. */
class RunAuditTest {
  private static final double[][] JARS = {
    {100, 78, 25}, {500, 76, 26}, {500, 72, 26}, {500, 60, 27}, {500, 40, 28}
  };

  @Test
  void pureAlcoholAndStrengthsThatAreRightAgree() {
    List<Audit.Column> columns =
        audit(
            "ABV at 20 °C | Pure alcohol (mL) | Pure alcohol so far (L)",
            "%.1f | %.0f | %.2f",
            (jar, sum) -> new Object[] {strength(jar), 1000 * pure(jar), sum});
    assertEquals(
        List.of(ComputedColumn.TRUE_STRENGTH, ComputedColumn.PURE_ALCOHOL, ComputedColumn.PURE_SUM),
        columns.stream().map(Audit.Column::ours).toList());
    for (Audit.Column column : columns) {
      assertEquals(5, column.compared());
      assertEquals(0, column.differing(), column.own().header() + " " + column.largest());
      assertEquals(List.of(Audit.Cause.AGREES), column.causes());
    }
  }

  @Test
  void strengthsAndVolumesThatWereNotCorrectedAreFound() {
    Audit.Column raw =
        audit("LAA (L)", "%.4f", (jar, sum) -> new Object[] {jar[0] * jar[1] / 1e5}).get(0);
    assertEquals(List.of(Audit.Cause.WARM_READING), raw.causes());
    assertEquals("from the readings as they were", raw.detail().in(Language.EN));
    assertEquals(5, raw.differing());
    assertEquals(0.3 - pure(JARS[3]), raw.batches().get(0).own()[3] - pure(JARS[3]), 1e-9);
    assertTrue(raw.leftOver() < 1e-4);
    Audit.Column volumes =
        audit("LAA (L)", "%.4f", (jar, sum) -> new Object[] {jar[0] * strength(jar) / 1e5}).get(0);
    assertEquals(
        "volumes as they were read, not brought to 20 °C", volumes.detail().in(Language.EN));
    Audit.Column warm = audit("ABV at 20 °C", "%.1f", (jar, sum) -> new Object[] {jar[1]}).get(0);
    assertEquals("strengths as they were read", warm.detail().in(Language.EN));
  }

  @ParameterizedTest
  @CsvSource({"0.30, 0.30", "0.4, 0.40", "0.25, 0.25"})
  void aRuleByTheDegreeIsMeasured(double factor, String told) {
    Audit.Column rule =
        audit("ABV at 20 °C", "%.2f", (jar, sum) -> new Object[] {jar[1] - factor * (jar[2] - 20)})
            .get(0);
    boolean agrees = rule.differing() == 0;
    assertEquals(false, agrees);
    assertEquals(List.of(Audit.Cause.RULE_OF_THUMB), rule.causes());
    assertEquals(told + " for every °C", rule.detail().in(Language.EN));
  }

  @Test
  void figuresThatNothingExplainsHaveNoCause() {
    Audit.Column odd =
        audit(
                "Pure alcohol (mL)",
                "%.0f",
                (jar, sum) -> new Object[] {1000 * pure(jar) * (jar[1] == 72 ? 0.5 : 1)})
            .get(0);
    assertEquals(List.of(Audit.Cause.UNKNOWN), odd.causes());
    assertEquals(1, odd.differing());
    assertEquals(4, odd.batches().get(0).rows()[odd.batches().get(0).worst()]);
  }

  @Test
  void aColumnWhoseUnitIsNoneOfOursIsNotCompared() {
    assertEquals(
        List.of(), audit("Pure alcohol", "%.2f", (jar, sum) -> new Object[] {3 * pure(jar)}));
  }

  private interface Own {
    Object[] of(double[] jar, double sum);
  }

  private static double strength(double[] jar, double calibration) {
    return call("TRUESTRENGTH", jar[1], jar[2], calibration);
  }

  /** Both alcoholometers are in use: one for 20 °C, others for 15 °C or 60 °F. */
  @ParameterizedTest
  @CsvSource({
    "'', 20, AGREES, ''",
    "'', 15, WRONG_REFERENCE, 15.0",
    "'', 15.5555555555556, WRONG_REFERENCE, 15.6",
    "15, 15, AGREES, ''",
    "15, 20, WRONG_REFERENCE, 20.0",
  })
  void anotherReferenceTemperatureIsFound(
      String stated, double used, Audit.Cause cause, String told) {
    String line = stated.isEmpty() ? "" : "Alcoholometer calibrated at " + stated + " °C\n";
    Audit.Column column =
        audit(line, "ABV at 20 °C", "%.3f", (jar, sum) -> new Object[] {strength(jar, used)})
            .get(0);
    assertEquals(List.of(cause), column.causes());
    assertTrue(column.detail().in(Language.EN).contains(told), column.detail().in(Language.EN));
    assertTrue(column.leftOver() < 0.01, "" + column.leftOver());
  }

  @Test
  void pureAlcoholByTheStrengthAsItWasReadIsFound() {
    Audit.Column column =
        audit(
                "LAA (L)",
                "%.4f",
                (jar, sum) ->
                    new Object[] {
                      call("VOLUMEAT20", jar[0] / 1000, jar[2], strength(jar)) * jar[1] / 100
                    })
            .get(0);
    assertEquals(List.of(Audit.Cause.WARM_READING), column.causes());
    assertEquals("strengths as they were read", column.detail().in(Language.EN));
  }

  @Test
  void whatIsLeftOverIsInTheUnitOfTheColumn() {
    Audit.Column column =
        audit(
                "ABV at 20 °C",
                "%.3f",
                (jar, sum) ->
                    new Object[] {strength(jar) + (jar == JARS[1] || jar == JARS[3] ? 2 : -2)})
            .get(0);
    assertEquals(List.of(Audit.Cause.UNKNOWN), column.causes());
    assertEquals(2, column.leftOver(), 0.001);
    assertTrue(Double.isNaN(column.batches().get(0).days()[0]));
    assertEquals(5, column.batches().get(0).days().length);
  }

  /** 0.1 % vol of a jar, for sums of half of all jars, and half of the last digit that is shown. */
  @Test
  void theLimitGoesWithTheVolumes() {
    List<Audit.Column> columns =
        audit(
            "ABV at 20 °C | Pure alcohol (mL) | Pure alcohol so far (L)",
            "%.1f | %.0f | %.2f",
            (jar, sum) -> new Object[] {strength(jar), 1000 * pure(jar), sum});
    assertEquals(0.15, columns.get(0).batches().get(0).limit(), 1e-9);
    assertEquals(0.00042 + 0.0005, columns.get(1).batches().get(0).limit(), 1e-5);
    assertEquals(0.00105 + 0.005, columns.get(2).batches().get(0).limit(), 2e-5);
  }

  /** A jar that is refused ends the sums; the others are compared. */
  @Test
  void aRefusedJarIsNotCompared() {
    List<Audit.Column> columns =
        audit(
            "Pure alcohol (mL) | Pure alcohol so far (L)",
            "%.1f | %.4f",
            (jar, sum) ->
                jar == JARS[2] ? new Object[] {200.0, sum} : new Object[] {1000 * pure(jar), sum},
            2);
    assertEquals(4, columns.get(0).compared());
    assertEquals(0, columns.get(0).differing());
    assertEquals(2, columns.get(1).compared());
    assertEquals(0, columns.get(1).differing());
  }

  private static List<Audit.Column> audit(String headers, String formats, Own own) {
    return audit("", headers, formats, own, -1);
  }

  private static List<Audit.Column> audit(
      String headers, String formats, Own own, int withoutTemperature) {
    return audit("", headers, formats, own, withoutTemperature);
  }

  private static List<Audit.Column> audit(String above, String headers, String formats, Own own) {
    return audit(above, headers, formats, own, -1);
  }

  private static List<Audit.Column> audit(
      String above, String headers, String formats, Own own, int withoutTemperature) {
    StringBuilder log = new StringBuilder("Plum 3, spirit run\n" + above);
    log.append("Jar | mL | % vol read | Temp C | ").append(headers);
    double sum = 0;
    for (int i = 0; i < JARS.length; i++) {
      sum += pure(JARS[i]);
      log.append(
              String.format(
                  Locale.ROOT,
                  "%n%d | %.0f | %.0f | %s | ",
                  i + 1,
                  JARS[i][0],
                  JARS[i][1],
                  i == withoutTemperature ? "" : String.valueOf(JARS[i][2])))
          .append(String.format(Locale.ROOT, formats, own.of(JARS[i], sum)));
    }
    TestGrid grid = TestGrid.of("Run", log.toString());
    return LogAuditor.audit(grid, SheetUnderstanding.understand(grid, LogMap.none())).columns();
  }

  private static double strength(double[] jar) {
    return call("TRUESTRENGTH", jar[1], jar[2]);
  }

  private static double pure(double[] jar) {
    double strength = strength(jar);
    return call("PUREALCOHOL", call("VOLUMEAT20", jar[0] / 1000, jar[2], strength), strength);
  }

  private static double call(String function, double... arguments) {
    Object[] values = Stream.of(arguments).flatMapToDouble(Arrays::stream).boxed().toArray();
    return ((Answer.Number) Catalogue.get(function).call(values)).value();
  }
}
