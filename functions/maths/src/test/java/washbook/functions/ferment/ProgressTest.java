package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer.Code;
import washbook.functions.Calls;

/** Invented curves; what each should be called is common practice, no source. */
class ProgressTest {
  private static final double OG = 1.085;

  /** An S-shaped ferment: a day and a half of lag, half done on day 4, 0.998 in the end. */
  private static double ferment(double day) {
    return 0.998 + (OG - 0.998) / (1 + Math.exp((day - 4) / 0.7));
  }

  /** Stops at 1.040 for want of warmth from day 4 on. */
  private static double stuck(double day) {
    return Math.max(1.040, ferment(day));
  }

  /** As {@link #stuck}, and starts again on day 9. */
  private static double restarted(double day) {
    return day < 9 ? stuck(day) : Math.max(0.998, 1.040 - 0.006 * (day - 9));
  }

  private static String state(DoubleUnaryOperator curve, double until, double step, Random noise) {
    List<Object> times = new ArrayList<>();
    List<Object> gravities = new ArrayList<>();
    for (double day = 0; day <= until + 1e-9; day += step) {
      times.add(day + 46_000);
      gravities.add(curve.applyAsDouble(day) + (noise.nextDouble() * 2 - 1) * 0.001);
    }
    return Calls.text("FERMENTSTATE", times, gravities, 0.998);
  }

  private static final Random NONE =
      new Random() {
        private static final long serialVersionUID = 1L;

        @Override
        public double nextDouble() {
          return 0.5;
        }
      };

  @ParameterizedTest
  @CsvSource({
    "ferment, 1, lag",
    "ferment, 4, working",
    "ferment, 5, working",
    "ferment, 6.5, slowing",
    "ferment, 12, done",
    "ferment, 20, done",
    "stuck, 9, stuck",
    "stuck, 20, stuck",
    "restarted, 8.5, stuck",
    "restarted, 12, restarted",
    "restarted, 20, done",
    "never, 2, lag",
    "never, 5, stuck",
  })
  void curvesAreNamedAndNoiseDoesNotChangeTheName(String curve, double until, String word) {
    DoubleUnaryOperator gravity =
        switch (curve) {
          case "ferment" -> ProgressTest::ferment;
          case "stuck" -> ProgressTest::stuck;
          case "restarted" -> ProgressTest::restarted;
          default -> day -> OG;
        };
    assertEquals(word, state(gravity, until, 0.5, NONE));
    Random noise = new Random(11);
    for (int i = 0; i < 500; i++) {
      assertEquals(word, state(gravity, until, 0.5, noise), "trial " + i);
    }
  }

  @Test
  void tooFewReadingsSaySo() {
    assertEquals("too few readings", Calls.text("FERMENTSTATE", List.of(), List.of()));
    assertEquals("too few readings", Calls.text("FERMENTSTATE", 0.0, 1.085));
    assertEquals(
        "too few readings", Calls.text("FERMENTSTATE", List.of(0.0, 3.0), List.of(1.085, 1.05)));
    assertEquals(
        "too few readings",
        Calls.text("FERMENTSTATE", List.of(0.0, 0.2, 0.4), List.of(1.085, 1.084, 1.083)));
    assertEquals(
        "too few readings",
        Calls.text(
            "FERMENTSTATE", List.of(0.0, 1.0, 2.0, 3.0), Arrays.asList(1.085, null, "", 1.06)));
    assertEquals(Code.BLANK, Calls.refusal("FERMENTRATE", 1.0, 1.085).code());
    assertEquals(Code.BLANK, Calls.refusal("DAYSTOFINISH", 1.0, 1.085).code());
  }

  @Test
  void aFeedStartsTheCountAnew() {
    List<Double> times = List.of(0.0, 1.0, 2.0, 3.0, 3.1, 4.0, 5.0, 6.0);
    List<Double> gravities = List.of(1.06, 1.05, 1.03, 1.01, 1.05, 1.04, 1.03, 1.02);
    assertEquals(10.0, Calls.value("FERMENTRATE", times, gravities), 0.4);
    assertEquals("working", Calls.text("FERMENTSTATE", times, gravities));
  }

  @Test
  void timesThatRunBackwardsAreRefusedByTheirCell() {
    String reason =
        Calls.refusal("FERMENTRATE", List.of(0.0, 2.0, 1.0), List.of(1.08, 1.07, 1.06)).reason();
    assertTrue(reason.contains("cell 3") && reason.contains("1"), reason);
  }

  /** The slope of a general-purpose library's simple regression. */
  @Test
  void rateIsTheSlopeOfTheLastTwoDays() {
    Random random = new Random(3);
    for (int trial = 0; trial < 1000; trial++) {
      List<Double> times = new ArrayList<>();
      List<Double> gravities = new ArrayList<>();
      double day = 0;
      for (int i = 0; i < 12; i++) {
        times.add(day);
        gravities.add(1.08 - 0.004 * day + 0.001 * random.nextDouble());
        day += 0.2 + random.nextDouble();
      }
      double last = times.get(11);
      SimpleRegression line = new SimpleRegression();
      int used = 0;
      for (int i = 11; i >= 0 && (used < 3 || last - times.get(i) <= 2); i--) {
        line.addData(times.get(i), gravities.get(i));
        used++;
      }
      assertEquals(-1000 * line.getSlope(), Calls.value("FERMENTRATE", times, gravities), 1e-8);
    }
  }

  /** An invented ferment that falls ever slower ends near the estimate. */
  @Test
  void daysToFinishCountDownOnAnSCurve() {
    double before = Double.POSITIVE_INFINITY;
    for (double today : new double[] {5, 5.5, 6, 6.5, 7}) {
      List<Double> times = new ArrayList<>();
      List<Double> gravities = new ArrayList<>();
      for (double day = 0; day <= today; day += 0.5) {
        times.add(day);
        gravities.add(ferment(day));
      }
      double left = Calls.value("DAYSTOFINISH", times, gravities, 0.998);
      double end = today;
      while (ferment(end) > 0.998 + Finish.WITHIN) {
        end += 0.01;
      }
      assertEquals(end - today, left, 1, "on day " + today);
      assertTrue(left < before, "on day " + today);
      before = left;
    }
  }

  @Test
  void finishedAndStuckWashesHaveNoDaysToGo() {
    List<Double> times = List.of(0.0, 4.0, 8.0, 9.0, 10.0);
    assertEquals(
        0, Calls.value("DAYSTOFINISH", times, List.of(1.08, 1.02, 0.999, 0.998, 0.998), 0.998));
    String reason =
        Calls.refusal("DAYSTOFINISH", times, List.of(1.08, 1.05, 1.04, 1.04, 1.04)).reason();
    assertTrue(reason.contains("0 points per day") && reason.contains("1"), reason);
  }

  /** Some of the ends that are possible lie above where it began. */
  @Test
  void aSmallFallGivesDaysAndNotNothing() {
    List<Double> times = List.of(0.0, 1.0, 2.0, 3.0);
    List<Double> gravities = List.of(1.016, 1.014, 1.011, 1.0085);
    double days = Calls.value("DAYSTOFINISH", times, gravities, 1.004);
    double plusMinus = Calls.value("DAYSTOFINISHPLUSMINUS", times, gravities, 1.004);
    assertTrue(days > 0.3 && days < 4, "days: " + days);
    assertTrue(plusMinus > 0.2 && plusMinus < 3, "plus or minus: " + plusMinus);
  }
}
