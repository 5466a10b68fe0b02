package washbook.log.words;

import java.util.EnumSet;
import java.util.Set;

/** What a word in a header or key line means; the words themselves stand in header-words.txt. */
public enum Concept {
  GRAVITY,
  EXTRACT,
  READING,
  HYDROMETER,
  REFRACTOMETER,
  TEMPERATURE,
  AMBIENT,
  CALIBRATION,
  CORRECTED,
  UNCORRECTED,
  /** As it was read; in one language the short word stands over notes too. */
  OBSERVED,
  CORRECTION,
  NEGATION,
  ORIGINAL,
  ORIGINALGRAVITY,
  FINALGRAVITY,
  TARGET,
  POTENTIAL,
  ALCOHOL,
  ATTENUATION,
  APPARENT,
  REAL,
  SUGAR,
  WATER,
  ADDED,
  RESIDUAL,
  VOLUME,
  DATE,
  TIME,
  DAY,
  /** Morning, noon or evening: readings of one vessel on one day. */
  TIME_OF_DAY,
  WEEKDAY,
  HOURS,
  BATCH,
  VESSEL,
  NOTE,
  TOTAL,
  FACTOR,
  OFFSET,
  RATE,
  OTHERTHING,
  PERIOD,
  SAMPLE,
  FOREIGN,
  /**
   * Words of other things that stand in ferment logs too: only the course of the readings tells.
   */
  TWO_USES,
  /** Degrees of something: only the values or a word beside it tell of what. */
  DEGREES,
  /** What was done with a batch. */
  DONE,
  /** Spirit was put in. */
  FORTIFIED,
  /** Another wash was put to it. */
  BLENDED,
  /** Brought to another temperature, where one stands beside it: then {@link #CORRECTED}. */
  CONVERTED,
  SG,
  POINTS,
  BRIX,
  PLATO,
  BALLING,
  BAUME,
  OECHSLE,
  KMW,
  TWADDELL,
  KGM3,
  GCM3,
  GL,
  C,
  F,
  /** The letter alone: a unit only beside a word for temperature. */
  BARE_C,
  BARE_F,
  L,
  ML,
  GALUS,
  GALUK,
  GAL,
  KG,
  G,
  LB,
  PERCENT;

  /** Scales on which only sugar is read. */
  public static final Set<Concept> SUGAR_SCALES = EnumSet.range(SG, GCM3);
}
