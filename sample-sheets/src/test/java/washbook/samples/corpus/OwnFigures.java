package washbook.samples.corpus;

import washbook.functions.scale.SugarScale;
import washbook.samples.ferment.Entry;

/** How people calculate in their own columns. Rules of the trade: common practice, no source. */
final class OwnFigures {
  private OwnFigures() {}

  /** Points times 0.13125: the most common rule of thumb. */
  static double thumb(double originalGravity, double gravity) {
    return Math.round((originalGravity - gravity) * 131.25 * 100) / 100.0;
  }

  /** Points divided by 7.36. */
  static double thumbDivided(double originalGravity, double gravity) {
    return Math.round((originalGravity - gravity) * 1000 / 7.36 * 10) / 10.0;
  }

  /** A correction of 1 point for every 6 °F above 60 °F, whatever the wash. */
  static double linearCorrection(Entry entry) {
    double fahrenheit = entry.temperatureC() * 1.8 + 32;
    return Math.round((entry.shown() + (fahrenheit - 60) / 6 / 1000) * 1e4) / 1e4;
  }

  /** Apparent attenuation, %, as points gone over points at first. */
  static double pointsGone(double originalGravity, double gravity) {
    return Math.round((originalGravity - gravity) / (originalGravity - 1) * 1000) / 10.0;
  }

  /** Properly converted. */
  static double brix(double gravity) {
    return Math.round(SugarScale.BRIX.fromGravity(gravity) * 10) / 10.0;
  }
}
