package washbook.functions.ferment;

import java.util.Arrays;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Progress.Place;

/**
 * State, time to finish and doubtful readings of one ferment by a single fit: what {@link
 * Progress#state} and {@link Finish#of} say one by one.
 *
 * @param state in one word
 * @param finish null where the readings do not tell
 * @param offCourse SG of each reading less the fitted course at its time; NaN for readings that the
 *     course does not cover: before sugar was fed, before a restart, or too few for a course
 */
public record Outlook(String state, Finish finish, double[] offCourse) {

  /**
   * Fits the readings.
   *
   * @param times days, not falling
   * @param gravities SG 20/20, as many
   * @param expectedFinal SG
   */
  public static Outlook of(double[] times, double[] gravities, double expectedFinal) {
    Place place = Progress.place(times, gravities, expectedFinal);
    return new Outlook(
        place.state().word(),
        finish(place, expectedFinal),
        offCourse(place.course(), times, gravities));
  }

  private static Finish finish(Place place, double expectedFinal) {
    try {
      return Finish.of(place, expectedFinal);
    } catch (RefusedException doesNotTell) {
      return null;
    }
  }

  private static double[] offCourse(CourseModel course, double[] times, double[] gravities) {
    double[] off = new double[times.length];
    Arrays.setAll(
        off,
        i ->
            course == null || times[i] < course.first()
                ? Double.NaN
                : gravities[i] - course.mean(fit -> fit.gravity(times[i])));
    return off;
  }
}
