package washbook.log;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One table of jars collected from a still.
 *
 * @param table its place and columns; it has no batches
 * @param parts its runs, in the order of the sheet
 * @param settings what holds for all its jars
 * @param jars what holds for single ones, by row
 */
public record StillRun(
    LogTable table, List<Part> parts, Settings settings, Map<Integer, Jar> jars) {

  /** One whose jars are all alike. */
  public StillRun(LogTable table, List<Part> parts, Settings settings) {
    this(table, parts, settings, Map.of());
  }

  /** What holds for the jar of a row. */
  public Jar jar(int row) {
    return jars.getOrDefault(row, Jar.LIKE_ALL);
  }

  /** Which column the strength of a row stands in. */
  public Role strengthRole(int row) {
    return jar(row).strength() == Jar.Strength.OWN_TRUE ? Role.OWN_TRUE_STRENGTH : Role.STRENGTH;
  }

  /** Whether the strength of a row is a true one at 20 °C already. */
  public boolean isCorrected(int row) {
    return switch (jar(row).strength()) {
      case TRUE, OWN_TRUE -> true;
      case READ -> false;
      default -> settings.corrected();
    };
  }

  /**
   * What holds for one jar.
   *
   * @param temperatureC of its spirit, NaN where the table tells it
   * @param before row with the running total that its own is to be lessened by
   */
  public record Jar(Strength strength, double temperatureC, Volume volume, int before) {
    /** As the table says of all of them. */
    public static final Jar LIKE_ALL = new Jar(Strength.LIKE_ALL, Double.NaN, Volume.ITS_OWN, -1);

    /** What the strength of a jar is. */
    public enum Strength {
      LIKE_ALL,
      READ,
      TRUE,
      /** Only the log's own strength at 20 \u00b0C stands there. */
      OWN_TRUE,
      /** Nothing tells whether it is as read. */
      UNTOLD,
      /** It cannot stand between the two beside it. */
      UNFIT
    }

    /** What the volume in a row is. */
    public enum Volume {
      ITS_OWN,
      /** A running total, to be lessened by the one before. */
      TOTAL,
      /** A running total which does not tell the volume of the jar. */
      UNTOLD
    }
  }

  /**
   * One run: what one charge gave.
   *
   * @param rows its jars from the first collected to the last, from 0
   * @param cuts the cut that each jar belongs to as the log calls it, "" where it does not say
   */
  public record Part(String name, int[] rows, List<String> cuts, Charge charge) {}

  /**
   * What was put into the still.
   *
   * @param litres NaN when not stated
   * @param percentVolume its strength, NaN when not stated
   * @param litresCell address of a cell that holds just the litres, "" when there is none
   * @param strengthCell the same for the strength in % vol
   * @param cell address of the first cell that states it, "" when nothing does
   */
  public record Charge(
      double litres, double percentVolume, String litresCell, String strengthCell, String cell) {
    /** Nothing stated. */
    public static Charge none() {
      return new Charge(Double.NaN, Double.NaN, "", "", "");
    }

    /** Litres of pure alcohol in it; empty when that does not follow from what is stated. */
    public OptionalDouble pureAlcohol() {
      double alcohol = litres * percentVolume / 100;
      return Double.isNaN(alcohol) ? OptionalDouble.empty() : OptionalDouble.of(alcohol);
    }
  }

  /**
   * What holds for all jars.
   *
   * @param temperatureC one temperature of the spirit for all jars, NaN when not stated
   * @param corrected whether the strengths are true strengths at 20 °C already
   * @param volumesAt20 whether the volumes are those at 20 °C already
   * @param calibrationC temperature at which the alcoholometer is calibrated
   * @param pressureHPa air pressure at the still, NaN when not stated
   */
  public record Settings(
      double temperatureC,
      boolean corrected,
      boolean volumesAt20,
      double calibrationC,
      double pressureHPa) {}
}
