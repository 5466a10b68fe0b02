package washbook.log.evidence;

import washbook.log.language.Message;

/**
 * What speaks for or against a ferment, and how much. The weights are a matter of judgement, tried
 * on logs and on other tables; common practice, no source.
 */
enum Clue {
  /** A word such as wash, must or yeast in a header, a title, a line above or the sheet's name. */
  TRADE_WORD(5),
  /** A gravity before the ferment is stated, or the log computes alcohol or attenuation. */
  OWN_FIGURES(5),
  SUGAR_ADDED(5),
  /** A note in a row has a trade word. */
  NOTED_WORD(3),
  /** The extract falls as in a ferment and nowhere rises. */
  COURSE(4),
  /** The sheet or a line above is called as batches are: a fruit, sugar or grain, and a number. */
  NAMED_BATCH(2),
  /** Two or three readings that fall as in a ferment. */
  SHORT_FALL(3),
  /** Another table of the sheet has the same headers and is a ferment. */
  SIBLING(3),
  /** A log of a few days: a wash's gravity, and it does not rise. */
  BEGUN(2),
  /**
   * A header names a scale or an instrument of the trade; a density or a degree Baume has many
   * trades.
   */
  NAMED_SCALE(1),
  /** The readings themselves are called those of another liquid, as {@code Brine SG}. */
  OTHER_READING(-6),
  /** A word of another trade in a header, a title or a line above. */
  OTHER_WORD(-5),
  /** A header that both a ferment's log and other tables have, as a battery's voltage. */
  DOUBTFUL_WORD(-1),
  /** A word of another trade in the name of the sheet or of the file alone. */
  OTHER_SHEET(-5),
  /** The readings rise, stay or go up and down. */
  OTHER_COURSE(-2),
  /** The readings rise day by day, as those of fruit that ripens: no wash does. */
  RISES(-12),
  /** Readings or temperatures that no ferment has. */
  OTHER_WORLD(-8),
  /** All readings are those of a finished wine or beer: nothing ferments any more. */
  FINISHED(-12),
  /** Several names with one reading each: samples, loads or vessels, and no course. */
  ONE_EACH(-4);

  final int weight;

  Clue(int weight) {
    this.weight = weight;
  }

  /** It as a part of a sentence. */
  Message said() {
    return Message.of("clue." + name());
  }
}
