package washbook.samples.ferment;

import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.Water;
import washbook.functions.reading.Hydrometer;
import washbook.functions.scale.SugarScale;

/**
 * A hydrometer, run forwards: what it shows in a wash of known state.
 *
 * @param scale what is engraved
 * @param step what a person reads it to
 * @param calibrationC where the scale is right
 * @param offset what it shows too much, on its scale
 */
public record Instrument(SugarScale scale, double step, double calibrationC, double offset) {
  public static final double SIXTY_F = 140.0 / 9;

  public static Instrument reading(SugarScale scale, double step) {
    return new Instrument(scale, step, 20, 0);
  }

  public Instrument calibratedAt(double temperatureC) {
    return new Instrument(scale, step, temperatureC, offset);
  }

  public Instrument offBy(double tooMuch) {
    return new Instrument(scale, step, calibrationC, tooMuch);
  }

  /** The value a person writes down, rounded to the step. */
  public double shows(Moment moment, double temperatureC) {
    double glass = 1 + Hydrometer.GLASS_EXPANSION * (temperatureC - calibrationC);
    double seen = moment.density(temperatureC) * glass;
    double exact =
        switch (scale) {
          case BRIX, PLATO, BALLING -> SucroseSolution.brixOfDensity(seen, calibrationC);
          default -> scale.fromGravity(seen / Water.density(calibrationC));
        };
    double steps = Math.rint((exact + offset) / step);
    return Math.rint(steps * step * 1e6) / 1e6;
  }

  /** The value of an unfermented wash at the calibration temperature. */
  public double showsOriginal(Moment moment) {
    return shows(
        new Moment(moment.ferment(), 0, moment.originalExtract(), moment.originalExtract()),
        calibrationC);
  }

  /** Half a step near a gravity, in SG. */
  public double halfStepGravity(double gravity) {
    double at = scale.fromGravity(gravity);
    return Math.abs(scale.toGravity(at + step / 2) - scale.toGravity(at));
  }
}
