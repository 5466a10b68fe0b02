package washbook.log.sheet;

/** Cell addresses as people write them. */
public final class CellAddress {
  private CellAddress() {}

  /** The letters of a column counted from 0: 0 is A, 26 is AA. */
  public static String letters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
      letters.insert(0, (char) ('A' + rest % 26));
    }
    return letters.toString();
  }

  /** The column of letters such as AA from 0; -1 when they are none. */
  public static int column(String letters) {
    int column = 0;
    for (int i = 0; i < letters.length(); i++) {
      char c = Character.toUpperCase(letters.charAt(i));
      if (c < 'A' || c > 'Z' || i > 3) {
        return -1;
      }
      column = column * 26 + (c - 'A' + 1);
    }
    return column - 1;
  }

  /** Row and column counted from 0, as B7. */
  public static String of(int row, int column) {
    return letters(column) + (row + 1);
  }

  /** Row and column counted from 0, held in place: $B$7. */
  public static String fixed(int row, int column) {
    return "$" + letters(column) + "$" + (row + 1);
  }

  /** An address such as B7, held in place. */
  public static String fixed(String address) {
    int digits = 0;
    while (Character.isLetter(address.charAt(digits))) {
      digits++;
    }
    return "$" + address.substring(0, digits) + "$" + address.substring(digits);
  }
}
