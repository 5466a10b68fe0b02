package washbook.log.run;

import java.util.Arrays;

/** The scales that jars' strengths are read on. */
public enum RunStrengthUnit {
  ABV("", 1),
  /** Parts of one, as a cell holds that is shown with a per cent sign. */
  SHARE("*100", 100),
  PROOFUS("/2", 1 / 2.0),
  /** Pure alcohol is 175 of these, so 7 of them are 4 % vol. */
  PROOFUK("*4/7", 4 / 7.0);

  private final String arithmetic;
  private final double percent;

  /**
   * @param arithmetic what makes % vol of a cell
   * @param percent what one of the scale is in % vol
   */
  RunStrengthUnit(String arithmetic, double percent) {
    this.arithmetic = arithmetic;
    this.percent = percent;
  }

  /** % vol of a strength on this scale. */
  public double toPercent(double shown) {
    return shown * percent;
  }

  /** What a strength in % vol is on this scale. */
  public double ofPercent(double strength) {
    return strength / percent;
  }

  /** % vol of a cell as plain arithmetic. */
  public String formula(String cell) {
    return cell + arithmetic;
  }

  boolean isProof() {
    return this == PROOFUS || this == PROOFUK;
  }

  /** Whether a unit of a map is one of these. */
  public static boolean isName(String unit) {
    return Arrays.stream(values()).anyMatch(u -> u.name().equals(unit));
  }

  /** The scale that a column's unit names, % vol where it names none. */
  public static RunStrengthUnit of(String unit) {
    return Arrays.stream(values()).filter(u -> u.name().equals(unit)).findFirst().orElse(ABV);
  }
}
