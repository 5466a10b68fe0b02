package washbook.log.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.ComputedColumn;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.language.Message;

/** What is counted and which row is named, of figures that stand beside each other. */
class AuditFiguresTest {
  private static Audit.Batch batch(double limit, double... ownAndOurs) {
    int size = ownAndOurs.length / 2;
    int[] rows = new int[size];
    double[] own = new double[size];
    double[] ours = new double[size];
    for (int i = 0; i < size; i++) {
      rows[i] = i + 1;
      own[i] = ownAndOurs[2 * i];
      ours[i] = ownAndOurs[2 * i + 1];
    }
    return new Audit.Batch("Plum 3", rows, new double[size], own, ours, limit);
  }

  private static Audit.Column column(Audit.Batch... batches) {
    return new Audit.Column(
        "A1:D9",
        new LogColumn(3, "ABV", Role.OWN_ABV, "", Message.NONE),
        ComputedColumn.ABV,
        List.of(batches),
        List.of(Audit.Cause.UNKNOWN),
        Message.NONE,
        0);
  }

  @Test
  void aDifferenceOfTheLimitItselfDoesNotCount() {
    Audit.Batch batch = batch(0.25, 1, 1, 2.25, 2, 3, 3.5, 4.5, 4);
    assertEquals(4, batch.compared());
    assertEquals(2, batch.differing());
  }

  @Test
  void theWorstRowIsTheFirstOfTheLargestDifferenceWhicheverItsSign() {
    Audit.Batch batch = batch(0.1, 1, 1, 2, 2.5, 3.5, 3, 4, 3.9);
    assertEquals(1, batch.worst());
    assertEquals(-0.5, batch.largest());
  }

  @Test
  void withoutRowsNothingDiffers() {
    Audit.Batch none = batch(0.1);
    assertEquals(-1, none.worst());
    assertEquals(0, none.largest());
    assertEquals(0, column(none).largest());
    assertEquals(0, column().compared());
  }

  @Test
  void aColumnCountsAllItsBatches() {
    Audit.Column column = column(batch(0.1, 1, 1, 2.5, 2), batch(0.1, 3, 3.75), batch(0.1, 4, 4));
    assertEquals(4, column.compared());
    assertEquals(2, column.differing());
    assertEquals(-0.75, column.largest());
    assertEquals(0.5, column(batch(0.1, 2.5, 2), batch(0.1, 3, 2.5)).largest());
  }
}
