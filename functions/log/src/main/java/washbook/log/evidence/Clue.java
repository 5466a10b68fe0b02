package washbook.log.evidence;

/**
 * What speaks for or against a ferment, and how much. The weights are a matter of judgement, tried
 * on logs and on other tables; common practice, no source.
 */
enum Clue {
  /** A word such as wash, must or yeast in a header, a title, a line above or the sheet's name. */
  TRADE_WORD(5, "its words speak of a ferment"),
  /** A gravity before the ferment is stated, or the log computes alcohol or attenuation. */
  OWN_FIGURES(5, "it states an original gravity or alcohol of its own"),
  SUGAR_ADDED(5, "sugar was added to it"),
  /** A note in a row has a trade word. */
  NOTED_WORD(3, "its notes speak of a ferment"),
  /** The extract falls as in a ferment and nowhere rises. */
  COURSE(4, "its readings fall as those of a ferment"),
  /** The sheet or a line above is called as batches are: a fruit, sugar or grain, and a number. */
  NAMED_BATCH(2, "it is named as a batch is"),
  /** Two or three readings that fall as in a ferment. */
  SHORT_FALL(3, "its readings fall as those of a ferment"),
  /** Another table of the sheet has the same headers and is a ferment. */
  SIBLING(3, "a table above with the same headers is one"),
  /** A log of a few days: a wash's gravity, and it does not rise. */
  BEGUN(2, "its first readings may be those of a wash"),
  /** A header names a scale or an instrument of the trade, more than just a density. */
  NAMED_SCALE(1, "its readings are on a scale for washes"),
  /** The readings themselves are called those of another liquid, as {@code Brine SG}. */
  OTHER_READING(-6, "its readings are those of another liquid"),
  /** A word of another trade in a header, a title or a line above. */
  OTHER_WORD(-5, "its words speak of other things than a ferment"),
  /** A header that both a ferment's log and other tables have, as a battery's voltage. */
  DOUBTFUL_WORD(-1, "a column speaks of other things than a ferment"),
  /** A word of another trade in the sheet's name alone. */
  OTHER_SHEET(-5, "the sheet's name speaks of other things than a ferment"),
  /** The readings rise, stay or go up and down. */
  OTHER_COURSE(-2, "its readings do not fall as those of a ferment"),
  /** Readings or temperatures that no ferment has. */
  OTHER_WORLD(-8, "its values are not those of a ferment"),
  /** All readings are those of a finished wine or beer: nothing ferments any more. */
  FINISHED(-12, "its readings are those of something that has fermented long ago"),
  /** Several names with one reading each: samples, loads or vessels, and no course. */
  ONE_EACH(-4, "each of its rows is another thing");

  final int weight;
  final String says;

  Clue(int weight, String says) {
    this.weight = weight;
    this.says = says;
  }
}
