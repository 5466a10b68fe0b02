package washbook.log;

/** The columns that can be computed for a log; {@code word} is their name on the command line. */
public enum ComputedColumn {
  CORRECTED_GRAVITY("gravity", "Corrected gravity", 4, true),
  ABV("abv", "ABV to date", 2, true),
  APPARENT_ATTENUATION("apparent", "Apparent attenuation", 1, true),
  REAL_ATTENUATION("real", "Real attenuation", 1, true),
  TRUE_EXTRACT("extract", "True extract in % mass", 2, false),
  SUGAR_LEFT("sugar", "Sugar left in g/L", 1, false),
  RATE("rate", "Points per day", 2, false),
  STATE("state", "State", -1, false),
  PLUS_MINUS("plusminus", "Plus or minus in % vol", 2, false),
  ORIGINAL_GRAVITY("original", "Original gravity", 4, false),
  /** On the row of a batch's first reading only; comes by itself where formulas need it. */
  FIRST_GRAVITY("first", "First gravity", 4, false),
  /** Written wherever at least one row of the table is refused, and kept once it is there. */
  NOTE("note", "Washbook note", -1, false);

  /** What follows every header of ours but the note's. */
  public static final String MARK = " (Washbook)";

  private final String word;
  private final String title;
  private final int decimals;
  private final boolean byDefault;

  ComputedColumn(String word, String title, int decimals, boolean byDefault) {
    this.word = word;
    this.title = title;
    this.decimals = decimals;
    this.byDefault = byDefault;
  }

  public String word() {
    return word;
  }

  /** The header as written into the sheet. */
  public String header() {
    return this == NOTE ? title : title + MARK;
  }

  /** The catalogue's function of original gravity and gravity that gives it; null for others. */
  public String function() {
    return switch (this) {
      case ABV -> "ABV";
      case APPARENT_ATTENUATION -> "APPARENTATTENUATION";
      case REAL_ATTENUATION -> "REALATTENUATION";
      case TRUE_EXTRACT -> "TRUEEXTRACT";
      case SUGAR_LEFT -> "SUGARLEFT";
      case PLUS_MINUS -> "ABVPLUSMINUS";
      default -> null;
    };
  }

  /** Decimal places to show; -1 for text. */
  public int decimals() {
    return decimals;
  }

  public boolean byDefault() {
    return byDefault;
  }
}
