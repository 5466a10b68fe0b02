package washbook.log;

/** What a column of a log holds. */
public enum Role {
  DATE,
  TIME,
  /** Day number of the ferment. */
  DAY,
  /** Hours since the start. */
  HOURS,
  BATCH,
  /** Hydrometer reading on any sugar scale. */
  GRAVITY,
  /** Refractometer reading. */
  REFRACTOMETER,
  /** Which instrument a row was read with, where both stand in one column. */
  INSTRUMENT,
  TEMPERATURE,
  VOLUME,
  SUGAR_ADDED,
  WATER_ADDED,
  /** The instrument's calibration temperature. */
  CALIBRATION,
  ORIGINAL_GRAVITY,
  NOTE,
  /** The log's own corrected gravity; never overwritten, compared by the audit. */
  OWN_CORRECTED_GRAVITY,
  OWN_ABV,
  OWN_APPARENT_ATTENUATION,
  OWN_REAL_ATTENUATION,
  /** A jar of a still run: its number or name. */
  JAR,
  /** Volume of all jars of a still run up to the row. */
  VOLUME_SO_FAR,
  /** What an alcoholometer shows. */
  STRENGTH,
  /** Whether the strength of a row is as read or at 20 °C already. */
  STRENGTH_STATE,
  /** Temperature of the vapour at the still's head. */
  HEAD_TEMPERATURE,
  /** Heads, hearts or tails. */
  CUT,
  /** The log's own strength at 20 °C; never overwritten. */
  OWN_TRUE_STRENGTH,
  OWN_PURE_ALCOHOL,
  /** A column that an earlier run of ours has written. */
  COMPUTED,
  OTHER
}
