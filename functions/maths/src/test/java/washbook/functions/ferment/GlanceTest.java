package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.ferment.Ferment.Family;

/** A glance at the last readings says of no generated course what its fit would not. */
class GlanceTest {
  private static final Set<String> AT_WORK = Set.of("working", "slowing", "restarted");

  private int courses;
  private int spared;
  private int stuck;
  private int working;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void noneThatTheFitCallsStuckIsPassedOver(int seed) {
    MadeCourses.any(EnumSet.allOf(Family.class), 2000, 1, seed, this::look);
    assertTrue(courses > 1900, courses + " courses");
    assertTrue(stuck > courses / 5, stuck + " are stuck");
    assertTrue(spared > courses / 3, spared + " need no fit");
    assertTrue(working > courses / 50, working + " surely work");
  }

  private void look(MadeCourses.Moment moment) {
    look(moment.times(), moment.gravities(), moment.course().expectedFinal());
  }

  /** As a sensor does, four to twelve times a day, by a ten thousandth. */
  @ParameterizedTest
  @CsvSource({"0.25, 0.001", "0.25, 0.0005", "0.125, 0.0003", "0.0833, 0.0001"})
  void noneOfThoseReadOften(double everyDays, double noise) {
    Random random = new Random(7);
    MadeCourses.any(
        EnumSet.allOf(Family.class),
        1500,
        1,
        11,
        moment -> {
          double until = moment.course().now();
          int count = (int) Math.min(60, until / everyDays);
          double[] times = new double[count];
          double[] gravities = new double[count];
          for (int i = 0; i < count; i++) {
            times[i] = until + everyDays * (i - count + 1);
            double read =
                moment.course().ferment().truth().applyAsDouble(times[i])
                    + noise * random.nextGaussian();
            gravities[i] = Math.rint(read * 10_000) / 10_000;
          }
          if (count > 4 && times[count - 1] - times[0] > 1) {
            look(times, gravities, moment.course().expectedFinal());
          }
        });
    assertTrue(courses > 1000, courses + " courses");
    assertTrue(stuck > 100, stuck + " are stuck");
    assertTrue(spared > courses / 5, spared + " need no fit");
    assertTrue(working > 0, working + " surely work");
  }

  private void look(double[] times, double[] gravities, double expected) {
    String state = Progress.state(times, gravities, expected);
    boolean isStuck = state.equals("stuck");
    boolean isWorking = Glance.isWorking(times, gravities, expected);
    assertFalse(
        isWorking && !AT_WORK.contains(state),
        () -> state + Arrays.toString(times) + " " + Arrays.toString(gravities));
    working += isWorking ? 1 : 0;
    boolean glance = Glance.isNotStuck(times, gravities, expected);
    assertFalse(
        isStuck && glance,
        () -> Arrays.toString(times) + " " + Arrays.toString(gravities) + " " + expected);
    courses++;
    spared += glance ? 1 : 0;
    stuck += isStuck ? 1 : 0;
  }

  @ParameterizedTest
  @CsvSource({
    "at its end twice, 1.085 1.040 1.012 0.999 0.998, true",
    "at its end once, 1.085 1.040 1.020 1.015 0.998, false",
    "on a line, 1.085 1.075 1.065 1.055, true",
    "off a line, 1.085 1.075 1.068 1.067, false",
    "slowly, 1.085 1.040 1.010 1.009 1.008, false",
    "still, 1.085 1.040 1.030 1.030 1.030, false",
    "two readings, 1.085 1.085, true",
    "fed after two, 1.085 1.085 1.095 1.095, true",
  })
  void whatAGlanceTells(String what, String gravities, boolean notStuck) {
    String[] texts = gravities.split(" ");
    double[] times = new double[texts.length];
    double[] sg = new double[texts.length];
    for (int i = 0; i < texts.length; i++) {
      times[i] = i;
      sg[i] = Double.parseDouble(texts[i]);
    }
    assertEquals(notStuck, Glance.isNotStuck(times, sg, 1.0), what);
  }

  @Test
  void manyReadingsOnALineMayFallMoreSlowly() {
    double[] times = new double[20];
    double[] sg = new double[20];
    for (int i = 0; i < times.length; i++) {
      times[i] = i * 0.25;
      sg[i] = 1.060 - 0.0025 * times[i];
    }
    assertTrue(Glance.isNotStuck(times, sg, 1.0));
    sg[19] += 0.002;
    assertFalse(Glance.isNotStuck(times, sg, 1.0));
  }
}
