package washbook.samples.generator;

import java.util.List;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.reading.Hydrometer;
import washbook.functions.reading.Refractometer;
import washbook.functions.scale.SugarScale;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Moment;
import washbook.samples.ferment.Thermometer;

/**
 * The instruments of one log.
 *
 * @param thousand whether 1.085 is written as 1085
 */
record Gauge(Kind kind, Instrument hydrometer, Thermometer thermometer, boolean thousand) {

  enum Kind {
    HYDROMETER,
    /** Written down as corrected to 20 °C; the wash's temperature may stand beside it. */
    CORRECTED,
    REFRACTOMETER,
    BOTH
  }

  static final double FIFTEEN = 15;

  static Gauge choose(Choice choice, String language, Layout layout) {
    Kind kind =
        choice.among(
            Kind.HYDROMETER,
            Kind.HYDROMETER,
            Kind.HYDROMETER,
            Kind.HYDROMETER,
            Kind.HYDROMETER,
            Kind.CORRECTED,
            Kind.REFRACTOMETER,
            Kind.BOTH);
    Thermometer thermometer =
        choice.chance(language.equals("en") ? 0.35 : 0.03)
            ? Thermometer.F
            : choice.among(Thermometer.C, Thermometer.C_HALF, Thermometer.C_TENTH);
    if (layout == Layout.SENSOR_EXPORT) {
      Instrument fine = Instrument.reading(SugarScale.SG, 0.0001);
      return new Gauge(Kind.HYDROMETER, fine, Thermometer.C_TENTH, false);
    }
    SugarScale scale = choice.chance(0.5) ? SugarScale.SG : choice.of(scales(language));
    double step =
        switch (scale) {
          case SG -> choice.among(0.001, 0.001, 0.001, 0.0005, 0.002);
          case OECHSLE, POINTS -> 1;
          case KMW -> choice.among(0.5, 0.2);
          case BAUME -> choice.among(0.1, 0.1, 0.2);
          default -> choice.among(0.1, 0.2, 0.5);
        };
    boolean thousand = scale == SugarScale.SG && step >= 0.001 && choice.chance(0.2);
    double calibrationC = 20;
    if (scale == SugarScale.SG && kind != Kind.CORRECTED && choice.chance(0.25)) {
      calibrationC = language.equals("en") && choice.chance(0.6) ? Instrument.SIXTY_F : FIFTEEN;
    }
    Instrument hydrometer = Instrument.reading(scale, step).calibratedAt(calibrationC);
    return new Gauge(kind, hydrometer, thermometer, thousand && kind != Kind.REFRACTOMETER);
  }

  private static List<SugarScale> scales(String language) {
    return switch (language) {
      case "de" ->
          List.of(SugarScale.OECHSLE, SugarScale.OECHSLE, SugarScale.KMW, SugarScale.PLATO);
      case "fr", "es", "pt" -> List.of(SugarScale.BAUME, SugarScale.BRIX);
      case "it" -> List.of(SugarScale.KMW, SugarScale.BRIX, SugarScale.PLATO);
      case "nl" -> List.of(SugarScale.OECHSLE, SugarScale.BRIX, SugarScale.PLATO);
      case "af" -> List.of(SugarScale.BALLING, SugarScale.BRIX);
      default -> List.of(SugarScale.BRIX, SugarScale.PLATO, SugarScale.POINTS, SugarScale.BALLING);
    };
  }

  SugarScale scale() {
    return kind == Kind.REFRACTOMETER ? SugarScale.BRIX : hydrometer.scale();
  }

  boolean needsTemperature() {
    return kind == Kind.HYDROMETER || kind == Kind.BOTH;
  }

  /** What is written down of the main instrument; {@code temperatureC} is the sample's. */
  double shows(Moment moment, double temperatureC) {
    return switch (kind) {
      case REFRACTOMETER -> washbook.samples.ferment.Refractometer.shows(moment);
      case CORRECTED -> hydrometer.shows(moment, 20);
      default -> hydrometer.shows(moment, temperatureC);
    };
  }

  /** SG 20/20 that a right reader gets from the first reading of a wash. */
  double originalOf(double shown, double temperatureC) {
    return switch (kind) {
      case REFRACTOMETER -> SucroseSolution.gravity(shown);
      case CORRECTED -> hydrometer.scale().toGravity(shown);
      default ->
          Hydrometer.correctedGravity(
              hydrometer.scale().toGravity(shown), temperatureC, hydrometer.calibrationC(), 0);
    };
  }

  /** SG 20/20 that a right reader gets from a later one. */
  double gravityOf(double shown, double temperatureC, double original, double firstShown) {
    return switch (kind) {
      case REFRACTOMETER -> Refractometer.gravity(firstShown, Math.min(shown, firstShown), 1);
      case CORRECTED -> hydrometer.scale().toGravity(shown);
      default ->
          Hydrometer.correctedGravity(
              hydrometer.scale().toGravity(shown),
              temperatureC,
              hydrometer.calibrationC(),
              original,
              0);
    };
  }

  /** % vol from two gravities, by the same balance as the truth. */
  static double abv(double original, double gravity) {
    double extract = SucroseSolution.brix(original);
    double left = FermentingWash.trueExtract(extract, gravity);
    return new Moment(null, 0, extract, left).abv();
  }

  /** A step of the scale as SG, near a wash's beginning. */
  double stepGravity() {
    return kind == Kind.REFRACTOMETER ? 0.001 : 2 * hydrometer.halfStepGravity(1.06);
  }
}
