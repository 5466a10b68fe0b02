package washbook.log;

import java.util.List;

/**
 * The rows of one ferment inside a table.
 *
 * @param name as the log calls it; the sheet's name where it has none
 * @param rows its rows in the order of time, from 0
 * @param originalGravity SG 20/20, of everything put in; NaN when it is not known
 * @param originalGravityCell address of the cell it comes from, "" when not known
 * @param originalGravityWhy whether it is stated, the first reading or fed, as a sentence
 * @param originalGravityUnit scale of that cell when a formula can refer to it (SG1000 for 1085),
 *     else ""
 * @param origin where the original gravity comes from
 * @param originRow the row whose reading is the original gravity, -1 when there is none
 * @param originalBrix what a refractometer showed before the ferment, NaN when there is none
 * @param steps for a fed ferment the original gravity of everything put in so far; else empty
 */
public record Batch(
    String name,
    int[] rows,
    double originalGravity,
    String originalGravityCell,
    String originalGravityWhy,
    String originalGravityUnit,
    Origin origin,
    int originRow,
    double originalBrix,
    List<Step> steps) {

  /** Where an original gravity comes from. */
  public enum Origin {
    UNKNOWN,
    STATED,
    FIRST_READING
  }

  /**
   * One stage of a fed ferment.
   *
   * @param fromPosition index into the rows from which it holds
   * @param originalGravity SG 20/20 of everything put in by then; NaN when the amounts are not
   *     known
   * @param why what is missing when it is not known, else ""
   */
  public record Step(int fromPosition, double originalGravity, String why) {}

  /** The same batch with the steps of a fed ferment; the last one's gravity is the batch's. */
  public Batch fed(List<Step> steps, String why) {
    return new Batch(
        name,
        rows,
        steps.get(steps.size() - 1).originalGravity(),
        originalGravityCell,
        originalGravityWhy + "; " + why,
        originalGravityUnit,
        origin,
        originRow,
        originalBrix,
        steps);
  }
}
