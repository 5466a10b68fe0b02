package washbook.log;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One table of jars collected from a still.
 *
 * @param table its place and columns; it has no batches
 * @param parts its runs, in the order of the sheet
 * @param settings what holds for all its jars
 */
public record StillRun(LogTable table, List<Part> parts, Settings settings) {

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
