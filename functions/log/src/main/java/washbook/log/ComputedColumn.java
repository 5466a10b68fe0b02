package washbook.log;

/** The columns that can be computed for a log; {@code word} is their name on the command line. */
public enum ComputedColumn {
  /** The corrected reading, on the scale that is wanted: the log's own unless another is named. */
  CORRECTED_GRAVITY("gravity", 4, true),
  ABV("abv", 2, true),
  APPARENT_ATTENUATION("apparent", 1, true),
  REAL_ATTENUATION("real", 1, true),
  TRUE_EXTRACT("extract", 2, false),
  SUGAR_LEFT("sugar", 1, false),
  RATE("rate", 2, false),
  STATE("state", -1, false),
  PLUS_MINUS("plusminus", 2, false),
  ORIGINAL_GRAVITY("original", 4, false),
  /** On the row of a batch's first reading only; comes by itself where formulas need it. */
  FIRST_GRAVITY("first", 4, false),
  /**
   * The corrected reading as SG beside one on another scale; comes by itself where formulas need
   * it.
   */
  SPECIFIC_GRAVITY("sg", 4, false),
  /** Of a still run: strength at 20 °C. */
  TRUE_STRENGTH("strength", 2, true, true),
  VOLUME_AT_20("volume20", 4, false, true),
  PURE_ALCOHOL("pure", 4, true, true),
  /** Sum of the pure alcohol of a run up to a jar. */
  PURE_SUM("puresum", 4, true, true),
  /** Comes by itself where the charge is stated. */
  CHARGE_SHARE("share", 1, true, true),
  /** On the row of a cut's last jar only; comes by itself where the log names cuts. */
  CUT_STRENGTH("cut", 2, true, true),
  /** Comes by itself where the log has a head temperature. */
  HEAD_STRENGTH("head", 1, true, true),
  /** Written wherever at least one row of the table is refused, and kept once it is there. */
  NOTE("note", -1, false);

  private final String word;
  private final int decimals;
  private final boolean byDefault;
  private final boolean ofRun;

  ComputedColumn(String word, int decimals, boolean byDefault) {
    this(word, decimals, byDefault, false);
  }

  ComputedColumn(String word, int decimals, boolean byDefault, boolean ofRun) {
    this.ofRun = ofRun;
    this.word = word;
    this.decimals = decimals;
    this.byDefault = byDefault;
  }

  public String word() {
    return word;
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

  /** Decimal places to show; -1 for text. Those of the corrected reading are its scale's. */
  public int decimals() {
    return decimals;
  }

  /** Whether it is a column of still runs; all others but the note are of ferments. */
  public boolean isOfRun() {
    return ofRun;
  }

  public boolean byDefault() {
    return byDefault;
  }
}
