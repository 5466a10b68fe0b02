package washbook.samples.ferment;

/** A thermometer: unit C or F, and what a person reads it to. */
public record Thermometer(String unit, double step) {
  public static final Thermometer C = new Thermometer("C", 1);
  public static final Thermometer C_HALF = new Thermometer("C", 0.5);
  public static final Thermometer C_TENTH = new Thermometer("C", 0.1);
  public static final Thermometer F = new Thermometer("F", 1);

  /** What is written down for a temperature in °C. */
  public double shows(double temperatureC) {
    double exact = unit.equals("F") ? temperatureC * 1.8 + 32 : temperatureC;
    return Math.rint(Math.rint(exact / step) * step * 1e6) / 1e6;
  }

  /** °C of what is written down. */
  public double celsius(double shown) {
    return unit.equals("F") ? (shown - 32) / 1.8 : shown;
  }
}
