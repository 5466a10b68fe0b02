package washbook.log.run;

/** What a word in a still run's log means; the words themselves stand in run-words.txt. */
enum RunWord {
  /** What is collected into, one a row. */
  JAR,
  /** The same, but lists of other kinds have it as well. */
  BOTTLE,
  /** A running number. */
  NUMBER,
  VOLUME,
  ML,
  CL,
  DL,
  L,
  GALLON,
  /** A unit that isn't converted. */
  ODD_UNIT,
  STRENGTH,
  PROOF,
  US_PROOF,
  UK_PROOF,
  /** Of units that are called alike. */
  US,
  UK,
  /** Degrees of strength or of temperature: the values tell. */
  DEGREE,
  READ,
  /** What strengths are read with. */
  INSTRUMENT,
  CORRECTED,
  /** At 20 °C, in a column's own name. */
  AT20,
  NOT,
  /** Answers in the cells of a column that asks. */
  YES,
  NO,
  ALSO,
  CUMULATIVE,
  PURE,
  TEMPERATURE,
  C,
  F,
  SPIRIT,
  /** The still's head or its vapour. */
  HEAD,
  /** Something else that has a temperature: room, cooling water, pot. */
  ELSEWHERE,
  HEADS,
  HEARTS,
  TAILS,
  CHARGE,
  RUN,
  /** Purchases, casks, dilution, stock. */
  OTHER,
  TOTAL,
  /** What is said holds but for some. */
  EXCEPT,
  /** Each of them; only asked for where a figure stands beside it. */
  ALL,
  /** A mean below a table; it can be short for another word, so the figure tells too. */
  AVERAGE,
  CALIBRATED,
  PRESSURE,
  DATE,
  TIME
}
