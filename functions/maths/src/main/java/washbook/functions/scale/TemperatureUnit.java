package washbook.functions.scale;

/** The two scales of a thermometer. */
public enum TemperatureUnit {
  /** Degrees Celsius. */
  C,
  /** Degrees Fahrenheit: 32 where water freezes, 180 degrees from there to where it boils. */
  F;

  /** °C of what a thermometer on this scale shows. */
  public double toCelsius(double shown) {
    return this == F ? (shown - 32) / 1.8 : shown;
  }

  /** What a thermometer on this scale shows at °C. */
  public double fromCelsius(double celsius) {
    return this == F ? celsius * 1.8 + 32 : celsius;
  }
}
