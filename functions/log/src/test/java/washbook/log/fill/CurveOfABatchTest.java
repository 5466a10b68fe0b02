package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.ComputedColumn;
import washbook.log.Understanding;
import washbook.log.WrittenScale;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** What of a batch is drawn: which readings, when, and in whose units. */
class CurveOfABatchTest {
  private static final String PLUM =
      """
      Date | SG | Temp C
      #2025-10-01 | 1.085 | 24
      #2025-10-03 | 1.062 | 27
      #2025-10-06 | 1.030 | 25.5
      #2025-10-14 | 0.998 | 19\
      """;

  private static List<BatchCurve> curves(TestGrid grid, FillOptions options) {
    Understanding understanding = SheetUnderstanding.understand(grid, LogMap.none());
    return BatchCurve.of(grid, understanding, LogFiller.fill(grid, understanding, options));
  }

  private static BatchCurve only(String log) {
    List<BatchCurve> curves = curves(TestGrid.of("Plum 3", log), FillOptions.usual());
    assertEquals(1, curves.size());
    return curves.get(0);
  }

  @Test
  void eachReadingIsAPointAtItsDayWithItsFigures() {
    BatchCurve curve = only(PLUM);
    assertEquals("Plum 3", curve.batch());
    assertEquals("Plum 3", curve.sheet());
    assertTrue(curve.timed());
    assertArrayEquals(new double[] {0, 2, 5, 13}, curve.days());
    assertArrayEquals(new double[] {24, 27, 25.5, 19}, curve.temperatureC());
    double first = SimpleLogTest.calc("CORRECTEDGRAVITY", 1.085, 24.0);
    double last = SimpleLogTest.calc("CORRECTEDGRAVITY", 0.998, 19.0, 20.0, first);
    assertEquals(first, curve.gravity()[0]);
    assertEquals(last, curve.gravity()[3]);
    assertEquals(0, curve.abv()[0]);
    assertEquals(SimpleLogTest.calc("ABV", first, last), curve.abv()[3]);
    assertArrayEquals(curve.gravity(), curve.shownGravity());
    assertArrayEquals(curve.temperatureC(), curve.shownTemperature());
    assertEquals(Language.EN, curve.language());
  }

  @Test
  void gravitiesAndTemperaturesAreShownAsTheLogWritesThem() {
    BatchCurve curve =
        only("Datum | Dichte °Oe | Temp °F\n#2025-10-01 | 85 | 68\n#2025-10-04 | 40 | 77");
    assertEquals(1.085, curve.gravity()[0], 1e-3);
    assertEquals(85, curve.shownGravity()[0], 0.5);
    assertEquals(curve.shownGravity()[1], curve.shownGravity(1));
    assertArrayEquals(new double[] {20, 25}, curve.temperatureC(), 1e-12);
    assertArrayEquals(new double[] {68, 77}, curve.shownTemperature(), 1e-12);
    assertEquals(Language.DE, curve.language());
    assertFalse(curve.scale().isPlainGravity());
  }

  /** A point without a gravity, as one of a log that is filled with alcohol only, stays without. */
  @Test
  void whatHasNoFigureStaysWithoutOneOnEveryScale() {
    BatchCurve none =
        new BatchCurve(
            "Plum 3",
            "Log",
            true,
            new double[] {0, 1},
            new double[] {Double.NaN, 1.05},
            new double[] {0, 1},
            new double[] {Double.NaN, 20},
            only("Day | Oechsle | Temp C\n0 | 85 | 20\n3 | 40 | 20").scale(),
            TemperatureUnit.F,
            Language.EN);
    assertTrue(Double.isNaN(none.shownGravity(0)));
    assertEquals(50, none.shownGravity(1), 0.5);
    assertTrue(Double.isNaN(none.shownTemperature()[0]));
    assertEquals(68, none.shownTemperature()[1], 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"ABV, false, true", "CORRECTED_GRAVITY, true, false"})
  void aLogFilledWithOneOfTheTwoIsDrawnWithThatOne(
      ComputedColumn column, boolean gravity, boolean alcohol) {
    FillOptions options = new FillOptions(EnumSet.of(column), FormulaStyle.VALUES);
    BatchCurve curve = curves(TestGrid.of("Plum 3", PLUM), options).get(0);
    assertEquals(gravity, curve.gravity()[3] > 0.9);
    assertEquals(!gravity, Double.isNaN(curve.gravity()[3]));
    assertEquals(alcohol, curve.abv()[3] > 9);
    assertEquals(!alcohol, Double.isNaN(curve.abv()[3]));
    assertEquals(WrittenScale.SG.scale(), curve.scale().scale());
    assertEquals(Language.EN, curve.language());
  }

  @Test
  void withoutGravityAndAlcoholNothingIsDrawn() {
    FillOptions options =
        new FillOptions(EnumSet.of(ComputedColumn.REAL_ATTENUATION), FormulaStyle.VALUES);
    assertEquals(List.of(), curves(TestGrid.of("Plum 3", PLUM), options));
  }

  @Test
  void aRefusedReadingIsNoPointAndOneAloneIsNoCurve() {
    BatchCurve curve = only(PLUM.replace("| 1.062 | 27", "| 1.062 | "));
    assertArrayEquals(new double[] {0, 5, 13}, curve.days());
    String two = "Day | SG | Temp C\n0 | 1.085 | 20\n3 | 1.05 | ";
    assertEquals(List.of(), curves(TestGrid.of("Plum 3", two), FillOptions.usual()));
    assertEquals(2, only(two + "20").days().length);
  }

  @ParameterizedTest
  @CsvSource({
    "#2025-10-01, #2025-10-03, #2025-10-03, true",
    "#2025-10-01, #2025-10-01, #2025-10-01, false",
    ", #2025-10-03, #2025-10-05, false",
  })
  void readingsAreCountedWhereTheirDatesDoNotOrderThem(
      String first, String second, String third, boolean timed) {
    BatchCurve curve =
        only(
            "Date | SG | Temp C\n"
                + ((first == null ? "" : first) + " | 1.085 | 20\n")
                + (second + " | 1.06 | 20\n")
                + (third + " | 1.03 | 20"));
    assertEquals(timed, curve.timed());
    assertArrayEquals(timed ? new double[] {0, 2, 2} : new double[] {1, 2, 3}, curve.days());
  }

  @Test
  void aTemperatureStatedForAllReadingsWasNotMeasuredWithThem() {
    BatchCurve curve = only("All readings at 22 °C\nDay | SG\n0 | 1.085\n3 | 1.05\n6 | 1.02");
    assertEquals(3, curve.days().length);
    for (double temperature : curve.temperatureC()) {
      assertTrue(Double.isNaN(temperature));
    }
  }

  @Test
  void temperaturesBesideReadingsCorrectedAlreadyAreDrawn() {
    BatchCurve curve =
        only("Readings corrected to 20 °C\nDay | SG | Temp C\n0 | 1.085 | 24\n3 | 1.05 | 26");
    assertArrayEquals(new double[] {24, 26}, curve.temperatureC());
  }

  @Test
  void ofALongBatchEvenlySpacedReadingsAreDrawnWithTheFirstAndTheLast() {
    int most = BatchCurve.MOST_POINTS;
    assertEquals(most, only(days(most)).days().length);
    BatchCurve long2 = only(days(2 * most - 1));
    assertEquals(most, long2.days().length);
    for (int i = 0; i < most; i++) {
      assertEquals(2 * i * APART, long2.days()[i], 1e-9);
    }
    BatchCurve oneMore = only(days(most + 1));
    assertEquals(most, oneMore.days().length);
    assertEquals(most * APART, oneMore.days()[most - 1], 1e-9);
  }

  private static final double APART = 0.0625;

  private static String days(int count) {
    StringBuilder log = new StringBuilder("Day | SG | Temp C");
    for (int day = 0; day < count; day++) {
      log.append("\n" + day * APART + " | " + (1.085 - 0.0001 * day) + " | 20");
    }
    return log.toString();
  }
}
