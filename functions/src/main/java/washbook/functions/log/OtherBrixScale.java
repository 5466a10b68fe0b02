package washbook.functions.log;

import java.util.List;
import washbook.functions.Numbers;
import washbook.functions.scale.SugarScale;

/** A Brix scale that is not right at 20 °C: it shows other degrees than those of CONVERT. */
final class OtherBrixScale {
  private OtherBrixScale() {}

  static boolean is(SugarScale scale, Settings settings) {
    boolean brix =
        scale == SugarScale.BRIX || scale == SugarScale.PLATO || scale == SugarScale.BALLING;
    return brix && settings.calibrationC() != Settings.USUAL_CALIBRATION;
  }

  /** The reading in a cell as SG, a formula; of such a scale what a 20 °C glass would show. */
  static String gravityFormula(
      String cell, SugarScale scale, Settings settings, FormulaSource source) {
    String calibration = Numbers.show(settings.calibrationC());
    String degrees =
        is(scale, settings)
            ? source.formula("CORRECTEDBRIX", List.of(cell, "20", calibration))
            : cell;
    return degrees == null
        ? null
        : source.formula("CONVERT", List.of(degrees, '"' + scale.name() + '"', "\"SG\""));
  }
}
