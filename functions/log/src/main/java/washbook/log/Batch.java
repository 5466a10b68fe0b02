package washbook.log;

import java.util.List;
import java.util.OptionalDouble;
import washbook.log.language.Message;

/**
 * The rows of one ferment inside a table.
 *
 * @param name as the log calls it; the sheet's name where it has none
 * @param rows its rows in the order of time, from 0
 * @param original its gravity before the ferment
 * @param originalBrix what a refractometer showed before the ferment, empty when there is none
 * @param steps for a fed ferment the original gravity of everything put in so far; else empty
 */
public record Batch(
    String name,
    int[] rows,
    OriginalGravity original,
    OptionalDouble originalBrix,
    List<Step> steps) {

  /**
   * One stage of a fed ferment.
   *
   * @param fromPosition index into the rows from which it holds
   * @param originalGravity SG 20/20 of everything put in by then; empty when the amounts are not
   *     known
   * @param originalBrix what a refractometer would have shown of all that, empty without one
   * @param missing what is missing when it is not known, else {@link Message#NONE}
   * @param isSlip whether the reading there is wrong, as {@code missing} says, and no more is known
   */
  public record Step(
      int fromPosition,
      OptionalDouble originalGravity,
      OptionalDouble originalBrix,
      Message missing,
      boolean isSlip) {

    /** One of a wash that is read with a hydrometer. */
    public Step(int fromPosition, OptionalDouble originalGravity, Message missing) {
      this(fromPosition, originalGravity, OptionalDouble.empty(), missing, false);
    }

    /** A reading that is wrong, and why. */
    public static Step slip(int atPosition, Message why) {
      return new Step(atPosition, OptionalDouble.empty(), OptionalDouble.empty(), why, true);
    }
  }

  /** A batch to which nothing was added. */
  public Batch(String name, int[] rows, OriginalGravity original, OptionalDouble originalBrix) {
    this(name, rows, original, originalBrix, List.of());
  }

  /** The same batch with the steps of a fed ferment. */
  public Batch fed(List<Step> steps) {
    return new Batch(name, rows, original, originalBrix, List.copyOf(steps));
  }

  /** The same rows with an original gravity that is not known, and why. */
  public Batch withoutOriginal(String cell, Message why) {
    return unknown(name, rows, cell, why);
  }

  /** A batch whose original gravity is not known, and why. */
  public static Batch unknown(String name, int[] rows, String cell, Message why) {
    return new Batch(name, rows, new OriginalGravity.Unknown(cell, why), OptionalDouble.empty());
  }

  public boolean isFed() {
    return !steps.isEmpty();
  }

  /** SG 20/20 of everything put in; empty when it is not known. */
  public OptionalDouble originalGravity() {
    return originalGravity(steps.size());
  }

  /** Where the original gravity comes from, or why it is not known, as a sentence. */
  public Message originalGravityWhy() {
    return isFed() ? Message.of("from.fed", original.why()) : original.why();
  }

  /** Whether the reading on a row is what the original gravity comes from. */
  public boolean isFirstReading(int row) {
    return original instanceof OriginalGravity.FirstReading first && first.row() == row;
  }

  /**
   * How many steps have begun by a position in the rows, going on from those begun before it; 0
   * where nothing was added.
   */
  public int stepsBegun(int position, int before) {
    int begun = before;
    while (begun < steps.size() && steps.get(begun).fromPosition() <= position) {
      begun++;
    }
    return begun;
  }

  /** How many steps have begun by a row. */
  public int stepsBegunAt(int row) {
    if (!isFed()) {
      return 0;
    }
    int position = 0;
    while (rows[position] != row) {
      position++;
    }
    return stepsBegun(position, 0);
  }

  /** SG 20/20 of everything put in once that many steps have begun; empty when it is not known. */
  public OptionalDouble originalGravity(int stepsBegun) {
    return stepsBegun == 0 ? original.gravity() : steps.get(stepsBegun - 1).originalGravity();
  }

  /** What a refractometer showed or would have shown of everything put in by then. */
  public OptionalDouble originalBrix(int stepsBegun) {
    return stepsBegun == 0 ? originalBrix : steps.get(stepsBegun - 1).originalBrix();
  }

  /** Whether the reading is wrong where that many steps have begun. */
  public boolean isSlip(int stepsBegun) {
    return stepsBegun > 0 && steps.get(stepsBegun - 1).isSlip();
  }

  /** Why it is not known; {@link Message#NONE} where it is. */
  public Message originalGravityMissing(int stepsBegun) {
    if (stepsBegun > 0) {
      return steps.get(stepsBegun - 1).missing();
    }
    return original instanceof OriginalGravity.Unknown unknown ? unknown.missing() : Message.NONE;
  }
}
