package washbook.functions.ferment;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import washbook.functions.ferment.Ferment.Family;
import washbook.functions.ferment.GeneratedCourse.Gaps;

/** Moments in generated courses at which they are asked after. */
final class MadeCourses {
  /** Families on which the odds of the shapes and the spreads of the fit were chosen. */
  static final Set<Family> CHOSEN_ON =
      EnumSet.of(
          Family.LOGISTIC,
          Family.GOMPERTZ,
          Family.EXPONENTIAL,
          Family.TWO_PHASE,
          Family.DELAYED,
          Family.MONOD,
          Family.COLD_NIGHTS,
          Family.POOR_IN_NITROGEN);

  /** Families that were made when the fit was finished, and changed nothing in it. */
  static final Set<Family> HELD_OUT = EnumSet.complementOf(EnumSet.copyOf(CHOSEN_ON));

  /** Two ways to say when a ferment works; both need three readings over a day. */
  enum Phase {
    /** From four points of fall to 95 % of the whole fall. */
    FROM_FIRST_FALL_TO_95_PERCENT {
      @Override
      boolean holds(GeneratedCourse course) {
        Ferment ferment = course.ferment();
        double fallen = ferment.fallen(course.now());
        double whole = ferment.truth().applyAsDouble(0) - ferment.end();
        return fallen >= Progress.BEGUN_FALL && fallen <= 0.95 * whole;
      }
    },
    /** The state "working": begun, and falling at half its fastest or more. */
    STATE_WORKING {
      @Override
      boolean holds(GeneratedCourse course) {
        return word(course).equals("working");
      }
    };

    abstract boolean holds(GeneratedCourse course);
  }

  /**
   * A course as read so far.
   *
   * @param constants of which the ferment was made
   */
  record Moment(GeneratedCourse course, double[] constants) {
    double[] times() {
      return array(course.times());
    }

    double[] gravities() {
      return array(course.gravities());
    }

    private static double[] array(List<Double> values) {
      return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
  }

  private MadeCourses() {}

  static String word(GeneratedCourse course) {
    return TrueState.word(course.ferment(), course.now(), course.expectedFinal());
  }

  /** One moment in the phase of each of as many courses that run through. */
  static void running(
      Collection<Family> families,
      int courses,
      Phase phase,
      Gaps gaps,
      int seed,
      Consumer<Moment> ask) {
    for (Family family : families) {
      Random random = new Random(1000L * seed + family.ordinal());
      for (int i = 0; i < courses / families.size(); i++) {
        double[] constants = constants(random);
        Ferment ferment = Ferment.make(family, false, new Oracle.Constants(constants));
        GeneratedCourse whole = GeneratedCourse.read(family, ferment, gaps, random);
        List<GeneratedCourse> working = new ArrayList<>();
        for (int read = 1; read <= whole.times().size(); read++) {
          GeneratedCourse course = whole.upTo(read);
          if (course.readEnough() && course.daysLeft() > 0 && phase.holds(course)) {
            working.add(course);
          }
        }
        if (!working.isEmpty()) {
          ask.accept(new Moment(working.get(random.nextInt(working.size())), constants));
        }
      }
    }
  }

  /**
   * A moment anywhere in each of as many courses; one in four is stopped on its way.
   *
   * @param dead how many in ten never begin
   */
  static void any(
      Collection<Family> families, int courses, int dead, int seed, Consumer<Moment> ask) {
    for (Family family : families) {
      Random random = new Random(1000L * seed + family.ordinal());
      for (int i = 0; i < courses / families.size(); i++) {
        double[] constants = constants(random);
        Ferment ferment = Oracle.ferment(family, true, constants);
        Gaps gaps = Gaps.values()[i % 2];
        GeneratedCourse whole =
            GeneratedCourse.read(
                family, i % 10 < dead ? ferment.neverBegun() : ferment, gaps, random);
        int fewest = 1;
        while (!whole.upTo(fewest).readEnough()) {
          fewest++;
        }
        int read = fewest + random.nextInt(whole.times().size() - fewest + 1);
        ask.accept(new Moment(whole.upTo(read), constants));
      }
    }
  }

  private static double[] constants(Random random) {
    return random.doubles(Oracle.MOST_CONSTANTS).toArray();
  }
}
