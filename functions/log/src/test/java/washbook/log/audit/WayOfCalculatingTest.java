package washbook.log.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.ComputedColumn;
import washbook.log.language.Language;

/** Each way in which people come to a figure, by its own rule. */
class WayOfCalculatingTest {
  /** A row whose wash began at 20 °Bx and shows 10 °Bx, read at 25 °C. */
  private static final AuditRow ROW =
      new AuditRow(1.0388, 25, 1.0829, 20, 1.08292, 1.08292, 1.03998, 0);

  private static WayOfCalculating way(ComputedColumn column, String detail) {
    return WayOfCalculating.of(column, 20).stream()
        .filter(way -> way.detail().in(Language.EN).equals(detail))
        .findFirst()
        .orElseThrow();
  }

  /**
   * ICUMSA SPS-4: 20 °Bx is SG 1.08292 and 1080.978 kg/m3, 10 °Bx is 1.03998 and 1038.115, so that
   * 216.196 and 103.812 g/L are in them. Balling (1843): alcohol % mass = (OE - extract)/(2.0665 -
   * 0.010665 OE); ethanol 789.24 kg/m3, OIML R 22. The multipliers are common practice, no source.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "131.25 x (original - current gravity) | RULE_OF_THUMB | 5.6359",
        "131.00 x (original - current gravity) | RULE_OF_THUMB | 5.6251",
        "125.00 x (original - current gravity) | RULE_OF_THUMB | 5.3675",
        "135.87 x (original - current gravity) | RULE_OF_THUMB | 5.8342",
        "133.33 x (original - current gravity) | RULE_OF_THUMB | 5.7253",
        "129.00 x (original - current gravity) | RULE_OF_THUMB | 5.5393",
        "105.00 x (original - current gravity) | RULE_OF_THUMB | 4.5087",
        "grams per litre gone over 16.83 | DIFFERENCE_OF_POTENTIALS | 6.6776",
        "grams per litre gone over 17.00 | DIFFERENCE_OF_POTENTIALS | 6.6108",
        "grams per litre gone over 18.00 | DIFFERENCE_OF_POTENTIALS | 6.2436",
        "the balance with the apparent extract in it | APPARENT_AS_REAL | 7.0978",
      })
  void alcohol(String detail, Audit.Cause cause, double percentVolume) {
    WayOfCalculating way = way(ComputedColumn.ABV, detail);
    assertEquals(Set.of(cause), way.causes());
    assertEquals(percentVolume, way.figure().applyAsDouble(ROW), 0.003);
  }

  /** 82.92 points at first and 39.98 now; 20 °Bx at first and 10 °Bx now. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "APPARENT_ATTENUATION | '' | | 50",
        "APPARENT_ATTENUATION | points gone over points at first | RULE_OF_THUMB | 51.785",
        "REAL_ATTENUATION | by the gravities alone | APPARENT_AS_REAL | 51.785",
        "REAL_ATTENUATION | by the apparent extract | APPARENT_AS_REAL | 50",
        "REAL_ATTENUATION | 0.8192 of the apparent one | RULE_OF_THUMB | 40.96",
      })
  void attenuation(ComputedColumn column, String detail, Audit.Cause cause, double percent) {
    WayOfCalculating way = way(column, detail);
    assertEquals(cause == null ? Set.of() : Set.of(cause), way.causes());
    assertEquals(percent, way.figure().applyAsDouble(ROW), 0.01);
  }

  /** 25 °C is 77 °F, 17 °F above 60 °F and 5 °C above 20 °C. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | | 1.03998",
        "from the readings as they were | WARM_READING | 1.0388",
        "1 point for every 6 °F above 60 °F | RULE_OF_THUMB | 1.041633",
        "0.00020 for every °C | RULE_OF_THUMB | 1.0398",
        "0.00025 for every °C | RULE_OF_THUMB | 1.04005",
        "0.00030 for every °C | RULE_OF_THUMB | 1.0403",
      })
  void correctedGravity(String detail, Audit.Cause cause, double gravity) {
    WayOfCalculating way = way(ComputedColumn.CORRECTED_GRAVITY, detail);
    assertEquals(cause == null ? Set.of() : Set.of(cause), way.causes());
    assertEquals(gravity, way.figure().applyAsDouble(ROW), 1e-6);
  }

  /** The calibrations in use but the instrument's own: 60 °F is 15.6 °C. */
  @ParameterizedTest
  @CsvSource({"20, 15.6 15.0 17.5 25.0", "15, 20.0 15.6 17.5 25.0", "15.56, 20.0 15.0 17.5 25.0"})
  void anotherCalibrationIsOneOfThoseInUse(double own, String others) {
    List<String> found =
        WayOfCalculating.of(ComputedColumn.CORRECTED_GRAVITY, own).stream()
            .filter(way -> way.causes().equals(Set.of(Audit.Cause.WRONG_REFERENCE)))
            .map(way -> way.detail().in(Language.EN).replaceAll("[^0-9.]", ""))
            .toList();
    assertEquals(List.of(others.split(" ")), found);
  }

  /** Water at 20 °C is 0.998234 of that at 4 °C, at 60 °F 0.999042 (Tanaka 2001). */
  @Test
  void aScaleOfSixtyDegreesFahrenheitShowsLessInWarmerLiquid() {
    WayOfCalculating way =
        way(ComputedColumn.CORRECTED_GRAVITY, "corrected as if calibrated at 15.6 °C");
    AuditRow water = new AuditRow(1.0, 20, 1.0829, 20, 1.08292, 1.08292, 1.0, 0);
    double gravity = way.figure().applyAsDouble(water);
    assertEquals(0.999042 / 0.998207, gravity, 2e-4);
    assertTrue(gravity > 1);
  }

  /** What was read at first, not its correction, is what the readings as they were go with. */
  @Test
  void twoCausesMayWorkTogether() {
    WayOfCalculating way =
        way(
            ComputedColumn.ABV,
            "125.00 x (original - current gravity), from the readings as they were");
    assertEquals(
        EnumSet.of(Audit.Cause.RULE_OF_THUMB, Audit.Cause.WARM_READING),
        EnumSet.copyOf(way.causes()));
    assertEquals(125 * (1.0829 - 1.0388), way.figure().applyAsDouble(ROW), 1e-9);
    WayOfCalculating unfed =
        way(
            ComputedColumn.ABV,
            "125.00 x (original - current gravity), from the first original gravity alone");
    AuditRow fed = new AuditRow(1.04, 20, 1.06, 20, 1.09, 1.06, 1.04, 0);
    assertEquals(125 * 0.02, unfed.figure().applyAsDouble(fed), 1e-9);
  }

  @Test
  void theRightWayComesFirstAndSimplerOnesBeforeOthers() {
    for (ComputedColumn column :
        List.of(
            ComputedColumn.ABV,
            ComputedColumn.APPARENT_ATTENUATION,
            ComputedColumn.REAL_ATTENUATION,
            ComputedColumn.CORRECTED_GRAVITY)) {
      List<Integer> causes =
          WayOfCalculating.of(column, 20).stream().map(way -> way.causes().size()).toList();
      assertEquals(0, causes.get(0));
      assertEquals(causes.stream().sorted().toList(), causes);
      assertFalse(causes.subList(1, causes.size()).contains(0));
    }
  }

  @Test
  void whatCannotBeCalculatedIsNoFigure() {
    AuditRow impossible = new AuditRow(0.9, 25, 1.05, 20, 1.05, 1.05, 0.9, 0);
    WayOfCalculating right = WayOfCalculating.of(ComputedColumn.ABV, 20).get(0);
    assertTrue(Double.isNaN(right.figure().applyAsDouble(impossible)));
    WayOfCalculating other =
        way(ComputedColumn.CORRECTED_GRAVITY, "corrected as if calibrated at 25.0 °C");
    assertTrue(Double.isNaN(other.figure().applyAsDouble(impossible)));
    AuditRow water = new AuditRow(1, 20, 1, 20, 1, 1, 1, 0);
    WayOfCalculating points =
        way(ComputedColumn.APPARENT_ATTENUATION, "points gone over points at first");
    assertTrue(Double.isNaN(points.figure().applyAsDouble(water)));
  }

  /** A wash of OG 1.085 at 0.998: Balling's balance with ICUMSA's and OIML's densities. */
  @ParameterizedTest
  @CsvSource({
    "ABV, 11.653, 0.005",
    "APPARENT_ATTENUATION, 102.54, 0.02",
    "REAL_ATTENUATION, 83.37, 0.02"
  })
  void theRightWayIsTheBalance(ComputedColumn column, double figure, double within) {
    AuditRow row = new AuditRow(0.998, 20, 1.085, 20, 1.085, 1.085, 0.998, 0);
    WayOfCalculating right = WayOfCalculating.of(column, 20).get(0);
    assertEquals(figure, right.figure().applyAsDouble(row), within);
  }

  /** A potential-alcohol scale has its zero at water: what water shows now is all of it. */
  @Test
  void aDifferenceOfPotentialsDownToWaterIsThePotential() {
    WayOfCalculating way = way(ComputedColumn.ABV, "potential alcohol at first less now");
    AuditRow down = new AuditRow(1, 20, 1.085, 20, 1.085, 1.085, 1, 0);
    AuditRow half = new AuditRow(1.04, 20, 1.085, 20, 1.085, 1.085, 1.04, 0);
    AuditRow rest = new AuditRow(1, 20, 1.04, 20, 1.04, 1.04, 1, 0);
    double all = way.figure().applyAsDouble(down);
    assertEquals(11.4, all, 0.2);
    assertEquals(all, way.figure().applyAsDouble(half) + way.figure().applyAsDouble(rest), 1e-9);
  }

  /**
   * An original gravity that is stated, not read, stays what it is under any calibration. Read at
   * 30 °C with a scale of 25 °C it is 0.4 °Bx higher: NBS Circular C440 (from memory).
   */
  @Test
  void aStatedOriginalGravityIsNotCorrected() {
    String other = "corrected as if calibrated at 25.0 °C";
    AuditRow stated = new AuditRow(1.04, 25, 1.085, Double.NaN, 1.085, 1.085, 1.04, 0);
    AuditRow read = new AuditRow(1.04, 25, 1.085, 30, 1.085, 1.085, 1.04, 0);
    for (AuditRow row : List.of(stated, read)) {
      double gravity = way(ComputedColumn.CORRECTED_GRAVITY, other).figure().applyAsDouble(row);
      double original =
          way(ComputedColumn.ABV, "125.00 x (original - current gravity), " + other)
                      .figure()
                      .applyAsDouble(row)
                  / 125
              + gravity;
      assertEquals(row == stated ? 1.085 : 1.0868, original, 4e-4);
    }
  }
}
