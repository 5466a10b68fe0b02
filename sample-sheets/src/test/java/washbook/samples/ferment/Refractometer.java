package washbook.samples.ferment;

/**
 * A hand refractometer with its own temperature compensation, run forwards, by index figures of its
 * own: refraction of sucrose and of ethanol solutions at 20 °C (from memory of a handbook's tables;
 * good to about 0.0002, which the expected figures leave room for).
 */
public final class Refractometer {
  private Refractometer() {}

  /** °Bx shown in a wash, to 0.2. */
  public static double shows(Moment moment) {
    double alcohol = moment.alcoholByMass();
    double seen = sugar(moment.trueExtract()) + alcohol * (5.8e-4 + 7e-6 * alcohol);
    double brix = seen / 1.43e-3;
    for (int i = 0; i < 30; i++) {
      brix += (seen - sugar(brix)) / 1.6e-3;
    }
    return Math.rint(Math.rint(brix * 5) * 2) / 10;
  }

  private static double sugar(double brix) {
    return brix * (1.427e-3 + 5.79e-6 * brix);
  }
}
