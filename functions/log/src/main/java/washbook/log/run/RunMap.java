package washbook.log.run;

import java.util.Map;
import washbook.log.Role;
import washbook.log.WritingWish;

/**
 * What a person says about a table of jars.
 *
 * @param isRun whether it is one, null when not said
 * @param columns what columns hold, by column number from 0
 * @param temperatureC one temperature for all jars, NaN when not said
 * @param corrected whether strengths are true strengths at 20 °C, null when not said
 * @param calibrationC of the alcoholometer, NaN when not said
 * @param volumesAt20 whether volumes are those at 20 °C, null when not said
 * @param chargeLitres what was put into the still, NaN when not said
 * @param chargePercentVolume its strength, NaN when not said
 * @param pressureHPa at the still, NaN when not said
 * @param name of the run, "" when not said
 * @param begins names of runs that begin at rows of the table, by the row from 0
 * @param writing how it is to be written into
 */
public record RunMap(
    Boolean isRun,
    Map<Integer, Use> columns,
    double temperatureC,
    Boolean corrected,
    double calibrationC,
    Boolean volumesAt20,
    double chargeLitres,
    double chargePercentVolume,
    double pressureHPa,
    String name,
    Map<Integer, String> begins,
    WritingWish writing) {

  /** Whether a column is said to hold something. */
  boolean uses(int column, Role role) {
    Use use = columns.get(column);
    return use != null && use.role() == role;
  }

  /** What one column holds; the unit is "" when header or values tell it. */
  public record Use(Role role, String unit) {}

  /** Says nothing. */
  public static RunMap none() {
    return new RunMap(
        null,
        Map.of(),
        Double.NaN,
        null,
        Double.NaN,
        null,
        Double.NaN,
        Double.NaN,
        Double.NaN,
        "",
        Map.of(),
        WritingWish.NONE);
  }

  /** Finds what a map says about the table of a header. */
  @FunctionalInterface
  public interface Finder {
    /** All numbers from 0, ends included. */
    RunMap about(int topRow, int bottomRow, int firstColumn, int lastColumn);
  }
}
