package washbook.samples.generator;

import java.util.List;

/**
 * What is right for a log, known because the log was made from it.
 *
 * @param verdict what an honest reader does
 * @param rows every row with something in a reading column; empty for what is no ferment
 */
record Truth(Verdict verdict, List<Row> rows) {

  enum Verdict {
    /** Everything is said: fill it, or at worst ask one question. */
    FILL,
    /** Something that decides the figures is not said: ask, whatever the figures would be. */
    MUST_ASK,
    /** No ferment: write nothing. */
    NOTHING
  }

  enum Kind {
    /** The figures are known. */
    COMPUTABLE,
    /** Unclear writing such as {@code 1.001?}: the figures, or a refusal; never silence. */
    DOUBTFUL,
    /** A value from which no honest figure follows: a refusal or a question. */
    NOT_COMPUTABLE,
    /** No value at all, as {@code n/a}: no figure; nothing need be said. */
    NO_VALUE
  }

  /**
   * One row.
   *
   * @param columns the columns whose value is the reading, that of the main instrument first
   * @param gravity SG 20/20; NaN when not computable
   * @param gravityError how far from it a right reader may be
   * @param abv % vol
   * @param abvError how far from it a right reader may be
   */
  record Row(
      int row,
      List<Integer> columns,
      Kind kind,
      double gravity,
      double gravityError,
      double abv,
      double abvError) {

    boolean hasValue() {
      return kind != Kind.NO_VALUE;
    }
  }
}
