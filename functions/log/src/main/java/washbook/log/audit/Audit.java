package washbook.log.audit;

import java.util.List;
import washbook.log.ComputedColumn;
import washbook.log.LogColumn;
import washbook.log.language.Message;

/**
 * How a log's own figures compare with ours.
 *
 * @param sheet the sheet's name
 * @param columns one entry for each of the log's own columns that could be compared
 */
public record Audit(String sheet, List<Column> columns) {

  /** Why a column differs. */
  public enum Cause {
    /** It does not differ by more than the limit. */
    AGREES,
    WARM_READING,
    RULE_OF_THUMB,
    APPARENT_AS_REAL,
    WRONG_REFERENCE,
    FED_SUGAR_IGNORED,
    DIFFERENCE_OF_POTENTIALS,
    /** None of the above explains it. */
    UNKNOWN;

    /** In words, to stand after a colon. */
    public Message message() {
      return Message.of("audit.cause." + name());
    }
  }

  /**
   * One of the log's own columns.
   *
   * @param tableRange the table it stands in
   * @param own the column
   * @param ours what it is compared with
   * @param batches by batch
   * @param causes the likely causes, most telling first; one of them unless two work together
   * @param detail which figure of the cause fits best, as "131.25 x (original - present)"; blank
   *     for none
   * @param leftOver root mean square of what the causes leave unexplained, in the column's unit
   */
  public record Column(
      String tableRange,
      LogColumn own,
      ComputedColumn ours,
      List<Batch> batches,
      List<Cause> causes,
      Message detail,
      double leftOver) {

    /** Rows with both figures. */
    public int compared() {
      return batches.stream().mapToInt(Batch::compared).sum();
    }

    /** Rows that differ by more than the limit. */
    public int differing() {
      return batches.stream().mapToInt(Batch::differing).sum();
    }

    /** The largest difference, own less ours, with its sign; 0 without rows. */
    public double largest() {
      return batches.stream()
          .mapToDouble(Batch::largest)
          .reduce(0, (a, b) -> Math.abs(b) > Math.abs(a) ? b : a);
    }
  }

  /**
   * One batch in such a column; all arrays go together, in the order of time.
   *
   * @param name the batch
   * @param rows the compared rows, from 0
   * @param days time of each in days, NaN where the log has none
   * @param own the log's figures
   * @param ours our figures
   * @param limit difference that counts: what 0.1 % vol of alcohol means in the column's unit
   */
  public record Batch(
      String name, int[] rows, double[] days, double[] own, double[] ours, double limit) {

    public int compared() {
      return rows.length;
    }

    /** Rows that differ by more than the limit. */
    public int differing() {
      int count = 0;
      for (int i = 0; i < rows.length; i++) {
        if (Math.abs(own[i] - ours[i]) > limit) {
          count++;
        }
      }
      return count;
    }

    /** Index of the row with the largest difference, -1 without rows. */
    public int worst() {
      int worst = -1;
      for (int i = 0; i < rows.length; i++) {
        if (worst < 0 || Math.abs(own[i] - ours[i]) > Math.abs(own[worst] - ours[worst])) {
          worst = i;
        }
      }
      return worst;
    }

    /** The largest difference, own less ours, with its sign. */
    public double largest() {
      int worst = worst();
      return worst < 0 ? 0 : own[worst] - ours[worst];
    }
  }
}
