package washbook.functions.quantity;

import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.Sentence;
import washbook.functions.liquid.WashKind;

/** A kind of number that functions take: its unit and the range outside which it is refused. */
public enum Quantity {
  GRAVITY("SG", 0.970, 1.190, true),
  /** A wash or a syrup that is fed to one or blended. */
  SYRUP_GRAVITY("SG", 0.970, 1.400, true),
  ORIGINAL_GRAVITY("SG", 1.001, 1.190, true),
  GRAVITY_OFFSET("SG", -0.05, 0.05, false),
  BRIX("°Bx", -8, 70, false),
  BRIX_OFFSET("°Bx", -10, 10, false),
  SUGAR_TEMPERATURE("°C", 0, 60, false),
  SPIRIT_TEMPERATURE("°C", -20, 40, false),
  CALIBRATION_TEMPERATURE("°C", 10, 30, false),
  /** Strength; 0 is taken for a blank cell. */
  PERCENT_VOL("% vol", 0.01, 100, true),
  /** Strength of one part of a blend, which may be water. */
  PERCENT_VOL_OR_WATER("% vol", 0, 100, false),
  PERCENT_MASS("% mass", 0.01, 100, true),
  /** What a balance can give; yeast stops earlier. */
  FERMENTED_STRENGTH("% vol", 0.01, 35, true),
  /** A wash, low wines or a spirit below the constant-boiling mixture. */
  CHARGE_STRENGTH("% vol", 0.5, 90, true),
  /** Strength of the vapour at which a run is stopped. */
  STOP_STRENGTH("% vol", 1, 95, true),
  HEAD_TEMPERATURE("°C", 65, 101, true),
  PRESSURE("hPa", 600, 1050, true),
  SEA_LEVEL_PRESSURE("hPa", 950, 1050, true),
  ALTITUDE("m", -300, 4000, false),
  /** Temperature of a wash whose gas is weighed. */
  FERMENT_TEMPERATURE("°C", 5, 40, true),
  /** Ethanol from a wash's sugar; below that sugar was lost or left, not fermented. */
  YIELD("% of theory", WashKind.LOWEST_YIELD, WashKind.HIGHEST_YIELD, true),
  /** Apparent strength of a spirit of 40 to 50 % vol whose solids hide some. */
  OBSCURED_STRENGTH("% vol", 38.5, 50, true),
  SOLIDS("g/100 mL", 0.001, 0.6, true),
  SHARE("", 0.01, 1, true),
  REFRACTOMETER_BRIX("°Bx", 0.1, 40, true),
  REFRACTOMETER_FACTOR("", 0.9, 1.1, true),
  READING_ERROR("SG", 0, 0.02, false),
  TEMPERATURE_ERROR("K", 0, 10, false),
  LITRES("L", 0.001, 1e6, true),
  KILOGRAMS("kg", 0.001, 1e6, true),
  /** Mass of one feed, which may be none. */
  KILOGRAMS_OR_NONE("kg", 0, 1e6, false),
  GRAMS("g", 0.001, 1e9, true),
  DAYS("days", -1e6, 1e7, false),
  REFRACTOMETER_TEMPERATURE("°C", 5, 30, false),
  BRIX_TO_40("°Bx", 0.1, 38, true),
  HYDROMETER_IN_WATER("SG", 0.95, 1.05, true),
  /** Sugar or water of a solution to check an instrument with. */
  SAMPLE_GRAMS("g", 1, 600, true),
  NITROGEN("mg N/L", 0, 1000, false),
  NITROGEN_WANTED("mg N/L", 1, 500, true),
  CHARGE_TEMPERATURE("°C", 0, 75, false),
  DISTILLATE_TEMPERATURE("°C", 5, 60, false),
  COOLING_TEMPERATURE("°C", 1, 90, true),
  KILOWATTS("kW", 0.05, 1000, true),
  LIQUEUR_SPIRIT("% vol", 5, 97, true),
  JAR("", 1, 10000, true),
  ANY("", -1e15, 1e15, false);

  private final String unit;
  private final double min;
  private final double max;
  private final boolean zeroIsBlank;

  Quantity(String unit, double min, double max, boolean zeroIsBlank) {
    this.unit = unit;
    this.min = min;
    this.max = max;
    this.zeroIsBlank = zeroIsBlank;
  }

  public String unit() {
    return unit;
  }

  public double min() {
    return min;
  }

  public double max() {
    return max;
  }

  /**
   * True where 0 is impossible, so that a spreadsheet's blank cell (which arrives as 0) is seen.
   */
  public boolean zeroIsBlank() {
    return zeroIsBlank;
  }

  /** True where 0 is a value like any other. */
  public boolean zeroIsPossible() {
    return !zeroIsBlank && min <= 0 && max >= 0;
  }

  /** The range in words, as {@code 0.97 to 1.19 SG}. */
  public String range() {
    return valid().english();
  }

  /** The same in any language. */
  public Sentence valid() {
    return unit.isEmpty()
        ? Sentence.of("range", min, max)
        : Sentence.of("range.unit", min, max, UnitWords.of(unit));
  }

  /** Whether it is refused by no {@link #check}. */
  public boolean accepts(double value) {
    return value >= min && value <= max && !(zeroIsBlank && value == 0);
  }

  /** Returns {@code value} when it is valid; {@code name} says whose value it is in the refusal. */
  public double check(String name, double value) {
    return accepts(value) ? value : refuse(name, value);
  }

  /** The same for what has no name of an argument. */
  public double check(Sentence name, double value) {
    return accepts(value) ? value : refuse(name, value);
  }

  private double refuse(Object name, double value) {
    if (Double.isNaN(value)) {
      throw new RefusedException(Code.NOT_A_NUMBER, "number.none", name, valid());
    }
    if (zeroIsBlank && value == 0) {
      throw new RefusedException(Code.BLANK, "number.blank", name, valid());
    }
    throw value < min
        ? new RefusedException(Code.TOO_LOW, "number.low", name, value, valid())
        : new RefusedException(Code.TOO_HIGH, "number.high", name, value, valid());
  }
}
