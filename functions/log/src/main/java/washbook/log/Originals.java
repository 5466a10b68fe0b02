package washbook.log;

/** The original gravity that holds for a row of a batch. */
public final class Originals {
  private Originals() {}

  /** The step that holds at a position, going on from that of the position before; -1 for none. */
  public static int step(Batch batch, int position, int before) {
    int step = before;
    while (step + 1 < batch.steps().size()
        && batch.steps().get(step + 1).fromPosition() <= position) {
      step++;
    }
    return step;
  }

  public static int stepOfRow(Batch batch, int row) {
    if (batch.steps().isEmpty()) {
      return -1;
    }
    int position = 0;
    while (batch.rows()[position] != row) {
      position++;
    }
    return step(batch, position, -1);
  }

  /** SG 20/20 of everything put in by that step; NaN when it is not known. */
  public static double gravity(Batch batch, int step) {
    return step < 0 || batch.steps().isEmpty()
        ? batch.originalGravity()
        : batch.steps().get(step).originalGravity();
  }

  /** Why it is not known. */
  public static String why(Batch batch, int step) {
    return step < 0 || batch.steps().isEmpty()
        ? batch.originalGravityWhy()
        : batch.steps().get(step).why();
  }
}
