package washbook.functions.still;

/**
 * Air pressure by altitude in the standard atmosphere (ICAO; US Standard Atmosphere 1976): 288.15 K
 * at sea level, 6.5 K less for each km. Valid below 11 km; weather moves it by some 30 hPa.
 */
public final class Atmosphere {
  private static final double SEA_LEVEL_K = 288.15;
  private static final double FALL_K_PER_M = 0.0065;

  /** g M / (R L) with 9.80665 m/s2, 28.9644 g/mol and 8.31432 J/(mol K). */
  private static final double EXPONENT = 9.80665 * 0.0289644 / (8.31432 * FALL_K_PER_M);

  private Atmosphere() {}

  /** Pressure in hPa at an altitude in m, where it is that much at sea level. */
  public static double pressureHPa(double altitudeM, double seaLevelHPa) {
    return seaLevelHPa * Math.pow(1 - FALL_K_PER_M * altitudeM / SEA_LEVEL_K, EXPONENT);
  }
}
