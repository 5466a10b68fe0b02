package washbook.office.call;

import washbook.functions.Answer;

/**
 * Calc's error values. A NaN whose low 32 bits are an error's number comes out as that error in the
 * cell; a test in the office watches that it stays so.
 */
final class CalcError {
  /** #NUM!: a number outside its range, or values that contradict each other. */
  static final Double NUM = of(503);

  /** #VALUE!: a text where a number is needed, or a word that is not on the list. */
  static final Double VALUE = of(519);

  /** #N/A: something may be missing. */
  static final Double NOT_AVAILABLE = of(32767);

  private CalcError() {}

  /** What a cell shows for a refusal: blank in, blank out; otherwise an error. */
  static Object of(Answer.Code code) {
    return switch (code) {
      case BLANK -> "";
      case NOT_A_NUMBER, UNKNOWN_WORD -> VALUE;
      case TOO_LOW, TOO_HIGH, CONTRADICTION -> NUM;
    };
  }

  /** The error of that number. */
  static Double of(int number) {
    return Double.longBitsToDouble(0x7FF8000000000000L | number);
  }
}
