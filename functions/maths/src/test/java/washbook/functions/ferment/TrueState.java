package washbook.functions.ferment;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The state that a generated course is in, from its truth and {@link Progress}'s thresholds.
 *
 * @param word the state without any error
 * @param near that word, and those of a truth near enough that readings cannot tell the difference
 */
record TrueState(String word, Set<String> near) {
  /** Two reading errors. */
  private static final double FALL = 0.002;

  /** What readings of some days leave open of a fall per day. */
  private static final double PER_DAY = 0.0006;

  private static final double SHARE_OF_FASTEST = 0.15;
  private static final double LEVEL = 0.001;

  /** It takes three readings over this many days to see that a wash stands. */
  private static final double STANDING_DAYS = 1.5;

  /** The word for a ferment on a day. */
  static String word(Ferment ferment, double day, double expectedFinal) {
    double end = end(expectedFinal);
    double perDay = ferment.fall(day);
    return word(
        ferment.fallen(day),
        perDay,
        perDay / ferment.fastestUntil(day),
        ferment.truth().applyAsDouble(day) - end,
        day);
  }

  private static double end(double expectedFinal) {
    return Math.max(expectedFinal + Progress.DONE_WITHIN, Progress.DRY);
  }

  static TrueState of(GeneratedCourse course) {
    double now = course.now();
    Ferment ferment = course.ferment();
    double fastest = ferment.fastestUntil(now);
    double fall = ferment.fallen(now);
    double level = ferment.truth().applyAsDouble(now);
    double perDay = ferment.fall(now);
    double end = end(course.expectedFinal());
    String word = word(ferment, now, course.expectedFinal());
    Set<String> near = new LinkedHashSet<>(Set.of(word));
    for (int i = 0; i < 81; i++) {
      near.add(
          word(
              fall + FALL * (i % 3 - 1),
              perDay + PER_DAY * (i / 3 % 3 - 1),
              perDay / fastest + SHARE_OF_FASTEST * (i / 9 % 3 - 1),
              level - end + LEVEL * (i / 27 - 1),
              now));
    }
    addWhatReadingsShow(course, fall, level - end, near);
    List<Double> times = course.times();
    boolean arrestedJustNow =
        now > course.ferment().arrest()
            && (now - course.ferment().arrest() < STANDING_DAYS
                || course.ferment().arrest() > times.get(times.size() - 3));
    if (arrestedJustNow) {
      double before = course.ferment().arrest() - 0.05;
      double then = course.ferment().fall(before);
      double above = course.ferment().truth().applyAsDouble(before) - end;
      near.add(
          word(
              course.ferment().fallen(before),
              then,
              then / course.ferment().fastestUntil(before),
              above,
              before));
      near.add("slowing");
    }
    return new TrueState(word, near);
  }

  /** Between two readings nobody can see: the rates of the straight lines from one to the next. */
  private static void addWhatReadingsShow(
      GeneratedCourse course, double fall, double aboveEnd, Set<String> near) {
    double fastest = 0;
    double last = 0;
    for (int i = 1; i < course.times().size(); i++) {
      double from = course.times().get(i - 1);
      double to = course.times().get(i);
      last = (course.ferment().fallen(to) - course.ferment().fallen(from)) / (to - from);
      fastest = Math.max(fastest, last);
    }
    near.add(word(fall, last, last / fastest, aboveEnd, course.now()));
  }

  private static String word(
      double fall, double perDay, double shareOfFastest, double aboveEnd, double day) {
    if (fall < Progress.BEGUN_FALL && aboveEnd > 0) {
      return day > Progress.LONGEST_LAG_DAYS ? "stuck" : "lag";
    }
    if (perDay >= Progress.STILL_PER_DAY) {
      return shareOfFastest < Progress.SLOWING_SHARE ? "slowing" : "working";
    }
    return aboveEnd <= 0 ? "done" : "stuck";
  }
}
