package washbook.log.run;

import washbook.log.language.Message;

/**
 * What speaks for or against a still run, and how much. The weights are a matter of judgement,
 * tried on logs and on other tables; common practice, no source.
 */
enum RunClue {
  /** Two of heads, hearts and tails in the rows or in lines between them. */
  CUTS(4),
  CHARGE(3),
  /** A word of distilling in a title, a line above or the sheet's name. */
  RUN_WORD(3),
  /** Strengths fall as those of jars one after the other do. */
  FALL(3),
  /** A head temperature that rises while the strength falls. */
  HEAD(3),
  JARS(2),
  NUMBERED(1),
  BOTTLES(1),
  OTHER_WORD(-7),
  OTHER_TITLE(-3),
  /** A run takes a day or two. */
  MONTHS(-7),
  NO_FALL(-4);

  final int weight;

  RunClue(int weight) {
    this.weight = weight;
  }

  /** It as a part of a sentence. */
  Message said() {
    return Message.of("runclue." + name());
  }
}
