package washbook.log.run;

import java.util.Arrays;
import java.util.Optional;
import washbook.functions.scale.Conversion;

/** The units of jars' volumes. */
public enum RunVolumeUnit {
  ML(RunWord.ML, "L", 1000),
  CL(RunWord.CL, "L", 100),
  DL(RunWord.DL, "L", 10),
  L(RunWord.L, "L", 1),
  GALUS(RunWord.GALLON, "GALUS", 1),
  GALUK(RunWord.GALLON, "GALUK", 1);

  private final RunWord word;
  private final String base;
  private final double parts;

  /**
   * @param base word of CONVERT that this unit is a part of
   * @param parts how many of it make one of {@code base}
   */
  RunVolumeUnit(RunWord word, String base, double parts) {
    this.word = word;
    this.base = base;
    this.parts = parts;
  }

  RunWord word() {
    return word;
  }

  /** Litres of a volume in this unit. */
  public double toLitres(double volume) {
    return base.equals("L") ? volume / parts : Conversion.convert(volume, base, "L") / parts;
  }

  /** The same as plain arithmetic over a cell. */
  public String formula(String cell) {
    return base.equals("L")
        ? (parts == 1 ? cell : cell + "/" + (int) parts)
        : cell + "*" + Conversion.convert(1, base, "L");
  }

  /** The unit that a column's unit names. */
  public static Optional<RunVolumeUnit> of(String unit) {
    return Arrays.stream(values()).filter(u -> u.name().equals(unit)).findFirst();
  }
}
