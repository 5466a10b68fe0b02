package washbook.log.run;

/**
 * What speaks for or against a still run, and how much. The weights are a matter of judgement,
 * tried on logs and on other tables; common practice, no source.
 */
enum RunClue {
  /** Two of heads, hearts and tails in the rows or in lines between them. */
  CUTS(4, "its rows name heads, hearts or tails"),
  CHARGE(3, "a charge is stated above it"),
  /** A word of distilling in a title, a line above or the sheet's name. */
  RUN_WORD(3, "its words speak of a still"),
  /** Strengths fall as those of jars one after the other do. */
  FALL(3, "its strengths fall as those of a run"),
  /** A head temperature that rises while the strength falls. */
  HEAD(3, "a head's temperature rises in it"),
  JARS(2, "its header names jars or fractions"),
  NUMBERED(1, "its rows are numbered"),
  BOTTLES(1, "its header names bottles"),
  OTHER_WORD(-7, "its headers speak of purchases, casks, dilution or stock"),
  OTHER_TITLE(-3, "the words above it speak of purchases, casks, dilution or stock"),
  /** A run takes a day or two. */
  MONTHS(-7, "its dates reach over more days than a run takes"),
  NO_FALL(-4, "its strengths do not fall as those of a run");

  final int weight;
  final String says;

  RunClue(int weight, String says) {
    this.weight = weight;
    this.says = says;
  }
}
