package washbook.runner.sheet;

/** Reads addresses such as B7 from bytes. Rows and columns count from 0. */
public final class CellReference {
  /** Rows of a sheet (ECMA-376-1:2016, 18.3.1.73). */
  public static final int ROWS = 1 << 20;

  public static final int COLUMNS = 1 << 14;

  private CellReference() {}

  /** Row and column in one number, or -1 when the bytes are no address inside a sheet. */
  public static long parse(byte[] bytes, int start, int end) {
    int i = start;
    int column = 0;
    while (i < end && column <= COLUMNS) {
      int letter = bytes[i] & ~0x20;
      if (letter < 'A' || letter > 'Z') {
        break;
      }
      column = 26 * column + letter - 'A' + 1;
      i++;
    }
    int row = number(bytes, i, end);
    if (column < 1 || column > COLUMNS || row < 1 || row > ROWS) {
      return -1;
    }
    return ((long) (row - 1) << 32) | (column - 1);
  }

  public static int row(long reference) {
    return (int) (reference >> 32);
  }

  public static int column(long reference) {
    return (int) reference;
  }

  /** Digits as a number; -1 when there is anything else or more than nine of them. */
  public static int number(byte[] bytes, int start, int end) {
    if (start >= end || end - start > 9) {
      return -1;
    }
    int number = 0;
    for (int i = start; i < end; i++) {
      int digit = bytes[i] - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = 10 * number + digit;
    }
    return number;
  }
}
