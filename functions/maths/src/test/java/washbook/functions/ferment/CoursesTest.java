package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Calls;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Ferment.Family;
import washbook.functions.ferment.GeneratedCourse.Gaps;
import washbook.functions.ferment.MadeCourses.Moment;
import washbook.functions.ferment.MadeCourses.Phase;

/**
 * State and days to finish on generated courses with the truth known, read every half to two days
 * (states also daily) with an error of 0.001 SG; they end 0.003 SG (standard deviation) off what
 * was expected. A refusal counts as a miss. LOGISTIC is one of the fitted shapes and EXPONENTIAL
 * near one, the other families are not. The odds and spreads of the fit were chosen on eight of
 * them, with other seeds; five were made afterwards and held out. The figures say what it does on
 * such courses, not on any wash.
 */
class CoursesTest {
  private static final int COURSES = 2000;

  /** What was found for one family. */
  private static final class Tally {
    int cases;
    int answered;
    int right;
    int exactlyRight;
    int nearAnother;
    int held;

    void add(Tally other) {
      cases += other.cases;
      answered += other.answered;
      right += other.right;
      exactlyRight += other.exactlyRight;
      nearAnother += other.nearAnother;
      held += other.held;
    }

    double share(int part) {
      return (double) part / cases;
    }
  }

  /**
   * Where the truth lies so near a threshold that readings of this error cannot tell, either word
   * is right. The very word cannot be had as often as that: see {@link OracleTest}.
   */
  @Test
  void statesAreRight() {
    Tally chosenOn = states(MadeCourses.CHOSEN_ON, COURSES, 20);
    assertTrue(chosenOn.share(chosenOn.right) >= 0.98, "right: " + chosenOn.right);
    assertTrue(chosenOn.share(chosenOn.exactlyRight) >= 0.89, "very: " + chosenOn.exactlyRight);
    Tally heldOut = states(MadeCourses.HELD_OUT, COURSES / 4, 21);
    assertTrue(heldOut.share(heldOut.right) >= 0.97, "held out, right: " + heldOut.right);
    assertTrue(heldOut.share(heldOut.exactlyRight) >= 0.86, "very: " + heldOut.exactlyRight);
  }

  private static Tally states(Collection<Family> families, int courses, int seed) {
    Map<Family, Tally> tallies = new EnumMap<>(Family.class);
    MadeCourses.any(
        families,
        courses,
        1,
        seed,
        moment -> {
          GeneratedCourse course = moment.course();
          TrueState truth = TrueState.of(course);
          String said =
              Calls.text(
                  "FERMENTSTATE", course.times(), course.gravities(), course.expectedFinal());
          Tally tally = tallies.computeIfAbsent(course.family(), family -> new Tally());
          tally.cases++;
          tally.right += truth.near().contains(said) ? 1 : 0;
          tally.exactlyRight += truth.word().equals(said) ? 1 : 0;
          tally.nearAnother += truth.near().size() > 1 ? 1 : 0;
        });
    Tally all = new Tally();
    tallies.forEach((family, tally) -> printState(family.toString(), tally));
    tallies.values().forEach(all::add);
    printState("all", all);
    return all;
  }

  private static void printState(String what, Tally tally) {
    System.out.printf(
        "states, %s: %d courses, right %.3f (the very word %.3f; %.3f lie near another)%n",
        what,
        tally.cases,
        tally.share(tally.right),
        tally.share(tally.exactlyRight),
        tally.share(tally.nearAnother));
  }

  /**
   * Right: within 30 % or one day. The interval is one standard deviation. Four in five are wished
   * for, and each seed has them.
   */
  @ParameterizedTest
  @ValueSource(ints = {30, 50, 51, 52, 53})
  void daysToFinishAreRightAndTheirIntervalHonest(int seed) {
    Tally all =
        finishes(
            MadeCourses.CHOSEN_ON,
            COURSES,
            Phase.FROM_FIRST_FALL_TO_95_PERCENT,
            Gaps.HALF_TO_TWO_DAYS,
            seed);
    assertTrue(all.share(all.right) >= 0.8, "right: " + all.right + " of " + all.cases);
    assertHonest(all);
  }

  /** The early part alone, where a wash has half its fall or more before it. */
  @Test
  void daysToFinishInTheEarlyPartAreRightLessOften() {
    Tally all =
        finishes(
            MadeCourses.CHOSEN_ON, COURSES / 4, Phase.STATE_WORKING, Gaps.HALF_TO_TWO_DAYS, 31);
    assertTrue(all.share(all.right) >= 0.7, "right: " + all.right + " of " + all.cases);
    assertHonest(all);
  }

  @Test
  void daysToFinishOfFamiliesHeldOutAreRightLessOftenAndTheirIntervalHonest() {
    Tally all =
        finishes(
            MadeCourses.HELD_OUT,
            COURSES / 2,
            Phase.FROM_FIRST_FALL_TO_95_PERCENT,
            Gaps.HALF_TO_TWO_DAYS,
            32);
    assertTrue(all.share(all.right) >= 0.78, "right: " + all.right + " of " + all.cases);
    assertHonest(all);
  }

  /** Read every half day or every day instead of at any time from half a day to two. */
  @Test
  void daysToFinishOfDailyReadingsAreRightLessOftenAsTheyAreAskedForEarlier() {
    Tally all =
        finishes(
            MadeCourses.CHOSEN_ON,
            COURSES / 4,
            Phase.FROM_FIRST_FALL_TO_95_PERCENT,
            Gaps.DAILY,
            35);
    assertTrue(all.share(all.right) >= 0.7, "right: " + all.right + " of " + all.cases);
    assertHonest(all);
  }

  private static void assertHonest(Tally all) {
    double held = (double) all.held / all.answered;
    assertTrue(held >= 0.6 && held <= 0.8, "held: " + held);
  }

  private static Tally finishes(
      Collection<Family> families, int courses, Phase phase, Gaps gaps, int seed) {
    Map<Family, Tally> tallies = new EnumMap<>(Family.class);
    MadeCourses.running(
        families,
        courses,
        phase,
        gaps,
        seed,
        moment -> {
          Tally tally = tallies.computeIfAbsent(moment.course().family(), f -> new Tally());
          tally.cases++;
          double left = moment.course().daysLeft();
          Finish finish = finish(moment);
          if (finish != null) {
            double off = Math.abs(finish.days() - left);
            tally.answered++;
            tally.right += off <= Math.max(1, 0.3 * left) ? 1 : 0;
            tally.held += off <= finish.plusMinus() ? 1 : 0;
          }
        });
    Tally all = new Tally();
    tallies.forEach((family, tally) -> printDays(phase, family.toString(), tally));
    tallies.values().forEach(all::add);
    printDays(phase, "all", all);
    return all;
  }

  /** Null when it is refused. */
  private static Finish finish(Moment moment) {
    try {
      return Finish.of(moment.times(), moment.gravities(), moment.course().expectedFinal());
    } catch (RefusedException doesNotTell) {
      return null;
    }
  }

  private static void printDays(Phase phase, String what, Tally tally) {
    System.out.printf(
        "days to finish, %s, %s: %d asked, answered %.3f, right of all %.3f, interval held %.3f%n",
        phase,
        what,
        tally.cases,
        tally.share(tally.answered),
        tally.share(tally.right),
        (double) tally.held / tally.answered);
  }

  /** Three days and three readings after a wash was stopped on its way. */
  @Test
  void aStuckWashIsNotPromisedAnEnd() {
    Tally all = new Tally();
    MadeCourses.any(
        MadeCourses.CHOSEN_ON,
        COURSES / 2,
        0,
        33,
        moment -> {
          GeneratedCourse course = moment.course();
          int read = course.times().size();
          double arrest = course.ferment().arrest();
          if (course.now() > arrest + 3
              && course.times().get(read - 3) > arrest
              && course.ferment().end() > course.expectedFinal() + 0.01) {
            all.cases++;
            all.answered += finish(moment) == null ? 0 : 1;
          }
        });
    System.out.printf(
        "stuck: %d asked, promised an end %.3f%n", all.cases, all.share(all.answered));
    assertTrue(all.cases > 60 && all.share(all.answered) <= 0.1, "promised: " + all.answered);
  }

  @Test
  void theFunctionsGiveWhatTheFitFinds() {
    MadeCourses.running(
        MadeCourses.CHOSEN_ON,
        24,
        Phase.STATE_WORKING,
        Gaps.HALF_TO_TWO_DAYS,
        34,
        moment -> {
          GeneratedCourse course = moment.course();
          Object[] arguments = {course.times(), course.gravities(), course.expectedFinal()};
          Finish finish = finish(moment);
          if (finish == null) {
            Calls.refusal("DAYSTOFINISH", arguments);
          } else {
            assertEquals(finish.days(), Calls.value("DAYSTOFINISH", arguments));
            assertEquals(finish.plusMinus(), Calls.value("DAYSTOFINISHPLUSMINUS", arguments));
          }
        });
  }

  /** A wash that rests at 0.998 is done on every further day, whatever end was expected. */
  @Test
  void aWashThatRestsIsDoneForEver() {
    Random random = new Random(5);
    List<Double> times = new ArrayList<>();
    List<Double> gravities = new ArrayList<>();
    for (double day = 0; day < 25; day += 0.5) {
      double truth = 0.998 + 0.08 * Math.exp(-Math.max(0, day - 0.5) / 1.2);
      times.add(day);
      gravities.add(truth + 0.001 * random.nextGaussian());
      if (day >= 9) {
        for (double expected : new double[] {0.986, 0.992, 0.998, 1.000}) {
          assertEquals(
              "done", Calls.text("FERMENTSTATE", times, gravities, expected), "day " + day);
        }
      }
    }
  }
}
