package washbook.log;

/** Why a row inside a table's range is neither filled nor refused. */
public enum PassedOver {
  /** Nothing stands where its reading would. */
  BLANK,
  /** A heading, units below it, the name of a batch or of a cut. */
  HEADING,
  /** It sums up readings: a mean, a total, a highest or lowest value. */
  AVERAGE,
  /** Words, or something said of the log. */
  NOTE,
  /** It belongs to another table. */
  OTHER_TABLE
}
