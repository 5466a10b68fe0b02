package washbook.log;

/** What a map says of one row, as the sheet counts it. */
public final class RowStatement {
  /** How it begins where sugar was added. */
  public static final String SUGAR_AT = "sugar added at row ";

  /** How it begins where another batch begins. */
  public static final String BATCH_FROM = "batch from row ";

  /** Says that the readings before and after tell how much sugar was added. */
  public static final String BY_THE_RISE = "by the rise";

  private static final String KILOGRAMS = " KG";

  private RowStatement() {}

  /**
   * The readings tell how much sugar was added.
   *
   * @param row from 0, here and below
   */
  public static String sugarByTheRise(int row) {
    return sugar(row) + BY_THE_RISE;
  }

  /** That much sugar was added. */
  public static String sugar(int row, String kilograms) {
    return sugar(row) + kilograms + KILOGRAMS;
  }

  /** Another batch begins. */
  public static String batch(int row, String name) {
    return BATCH_FROM + (row + 1) + " = " + name;
  }

  private static String sugar(int row) {
    return SUGAR_AT + (row + 1) + " = ";
  }
}
