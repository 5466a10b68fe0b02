package washbook.runner.sheet;

import java.util.Arrays;
import washbook.log.sheet.Grid.Kind;
import washbook.runner.file.UnusableFileException;

/**
 * The cells of one column in a stretch of rows. While they are put in, a number takes eight bytes
 * and a text four; once {@link #pack packed}, two bytes do for the numbers of most logs, which have
 * few decimals and lie near each other, and one for texts that came soon after each other. Whatever
 * does not come out of that bit for bit stays as it was.
 */
final class CellChunk {
  static final int BITS = 8;
  static final int SIZE = 1 << BITS;
  static final CellChunk EMPTY = new CellChunk();

  /** Bytes of an object with its fields, and of an array without its elements. */
  static final int OBJECT = 64;

  private static final int ARRAY = 16;
  private static final int FORMULA = 0x40;
  private static final Kind[] KINDS = Kind.values();
  private static final double[] POWERS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

  /** Whole numbers up to here are exact in a double, and so is a quotient of one by a power. */
  private static final double EXACT = 1L << 50;

  /** One array for all chunks whose cells are all of one kind. */
  private static final byte[][] ALIKE = new byte[2 * FORMULA][];

  static {
    for (Kind kind : KINDS) {
      for (int formula = 0; formula <= FORMULA; formula += FORMULA) {
        int mark = kind.ordinal() | formula;
        ALIKE[mark] = new byte[SIZE];
        Arrays.fill(ALIKE[mark], (byte) mark);
      }
    }
  }

  private byte[] kinds = new byte[SIZE];
  private double[] numbers;
  private int[] texts;

  private boolean packed;

  /** The packed numbers are the sums of these and the least, divided by a power of ten. */
  private char[] near;

  private int[] far;
  private long least;
  private byte decimals;

  /** The packed texts are the sums of these and the first; null where all are the first. */
  private byte[] followers;

  private int first;

  /** What a chunk takes before numbers or texts are put in. */
  static long bytes() {
    return OBJECT + ARRAY + SIZE;
  }

  void mark(int at, Kind kind, boolean formula) {
    kinds[at] = (byte) (kind.ordinal() | (formula ? FORMULA : 0));
  }

  void putNumber(int at, double number, MemoryLimit limit) throws UnusableFileException {
    if (numbers == null) {
      limit.take(ARRAY + 8L * SIZE);
      numbers = new double[SIZE];
    }
    numbers[at] = number;
  }

  void putText(int at, int number, MemoryLimit limit) throws UnusableFileException {
    if (texts == null) {
      limit.take(ARRAY + 4L * SIZE);
      texts = new int[SIZE];
    }
    texts[at] = number;
  }

  Kind kind(int at) {
    return KINDS[kinds[at] & ~FORMULA];
  }

  boolean isFormula(int at) {
    return (kinds[at] & FORMULA) != 0;
  }

  /** The number of a cell that holds one. */
  double number(int at) {
    if (numbers != null) {
      return numbers[at];
    }
    long digits = least + (near == null ? far[at] : near[at]);
    return decimals == 0 ? digits : digits / POWERS[decimals];
  }

  /** The number of the text of a cell that holds one. */
  int text(int at) {
    if (texts != null) {
      return texts[at];
    }
    return followers == null ? first : first + (followers[at] & 0xFF);
  }

  private boolean holdsNumber(int at) {
    return switch (kind(at)) {
      case NUMBER, DATE, LOGICAL -> true;
      case BLANK, TEXT, ERROR -> false;
    };
  }

  /**
   * Makes the chunk as small as it goes. The limit of memory still counts it in full, so that a
   * file of endless repetitions is refused as soon as before.
   *
   * @param decimalsBefore those of the chunk above, which are tried first
   */
  void pack(int decimalsBefore) {
    if (packed) {
      return;
    }
    packed = true;
    if (Arrays.equals(kinds, ALIKE[kinds[0]])) {
      kinds = ALIKE[kinds[0]];
    }
    if (numbers != null) {
      packNumbers(decimalsBefore);
    }
    if (texts != null) {
      packTexts();
    }
  }

  /** The decimals of its packed numbers. */
  int decimals() {
    return decimals;
  }

  private void packNumbers(int decimalsBefore) {
    if (fits(decimalsBefore)) {
      return;
    }
    for (int tried = 0; tried < POWERS.length; tried++) {
      if (tried != decimalsBefore && fits(tried)) {
        return;
      }
    }
  }

  /** Packs the numbers when all of them have at most so many decimals. */
  private boolean fits(int tried) {
    long lowest = Long.MAX_VALUE;
    long highest = Long.MIN_VALUE;
    for (int i = 0; i < SIZE; i++) {
      if (holdsNumber(i)) {
        long digits = Math.round(numbers[i] * POWERS[tried]);
        boolean same =
            Math.abs(digits) < EXACT
                && Double.doubleToRawLongBits(tried == 0 ? digits : digits / POWERS[tried])
                    == Double.doubleToRawLongBits(numbers[i]);
        if (!same) {
          return false;
        }
        lowest = Math.min(lowest, digits);
        highest = Math.max(highest, digits);
      }
    }
    if (highest - lowest > Integer.MAX_VALUE) {
      return false;
    }
    if (highest - lowest <= Character.MAX_VALUE) {
      near = new char[SIZE];
    } else {
      far = new int[SIZE];
    }
    for (int i = 0; i < SIZE; i++) {
      long above = holdsNumber(i) ? Math.round(numbers[i] * POWERS[tried]) - lowest : 0;
      if (near != null) {
        near[i] = (char) above;
      } else {
        far[i] = (int) above;
      }
    }
    least = lowest;
    decimals = (byte) tried;
    numbers = null;
    return true;
  }

  private void packTexts() {
    int lowest = Integer.MAX_VALUE;
    int highest = Integer.MIN_VALUE;
    for (int i = 0; i < SIZE; i++) {
      if (kind(i) == Kind.TEXT) {
        lowest = Math.min(lowest, texts[i]);
        highest = Math.max(highest, texts[i]);
      }
    }
    if (highest - lowest > 0xFF) {
      return;
    }
    first = lowest;
    if (highest > lowest) {
      followers = new byte[SIZE];
      for (int i = 0; i < SIZE; i++) {
        followers[i] = (byte) (kind(i) == Kind.TEXT ? texts[i] - lowest : 0);
      }
    }
    texts = null;
  }

  /** Makes room for cells that come late. */
  void unpack(MemoryLimit limit) throws UnusableFileException {
    if (!packed) {
      return;
    }
    limit.take(ARRAY + 13L * SIZE);
    double[] allNumbers = new double[SIZE];
    int[] allTexts = new int[SIZE];
    boolean hasNumbers = numbers != null || near != null || far != null;
    for (int i = 0; i < SIZE; i++) {
      if (hasNumbers && holdsNumber(i)) {
        allNumbers[i] = number(i);
      } else if (kind(i) == Kind.TEXT) {
        allTexts[i] = text(i);
      }
    }
    packed = false;
    kinds = kinds.clone();
    numbers = allNumbers;
    texts = allTexts;
    near = null;
    far = null;
    followers = null;
  }
}
