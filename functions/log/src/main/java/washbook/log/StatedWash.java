package washbook.log;

import java.util.OptionalDouble;
import washbook.functions.Numbers;
import washbook.functions.ferment.Balance;
import washbook.functions.liquid.WashKind;

/**
 * The kind of wash that a log is filled by.
 *
 * @param kind what ferments
 * @param why where it is stated, "" when it is not: then the kind is malt
 */
public record StatedWash(WashKind kind, String why) {
  /** When the log does not tell how strong its wash is. */
  private static final double USUAL_ORIGINAL = 1.080;

  private static final double USUAL_END = 1.000;

  /** Nothing stated. */
  public static StatedWash none() {
    return new StatedWash(WashKind.MALT, "");
  }

  public boolean isStated() {
    return !why.isEmpty();
  }

  /** The sentence for a person; where nothing is stated, what each kind would make of the wash. */
  public String remark(OptionalDouble originalGravity) {
    if (isStated()) {
      return "kind of wash " + kind.word() + ": " + why;
    }
    double original =
        originalGravity.stream().filter(g -> g > USUAL_END).findFirst().orElse(USUAL_ORIGINAL);
    StringBuilder worth = new StringBuilder();
    for (String word : WashKind.words()) {
      double alcohol = Balance.of(original, USUAL_END, WashKind.of(word)).percentVolume();
      worth.append(worth.isEmpty() ? " " : ", ").append(word);
      worth.append(' ').append(Numbers.fixed(alcohol, 1));
    }
    return "kind of wash not stated, taken as MALT; from "
        + Numbers.round(original, 4)
        + " to "
        + Numbers.show(USUAL_END)
        + " % vol are"
        + worth
        + ". If it is another, say in a map: wash = SUGAR";
  }

  /** The kind as an argument of a formula. */
  public String argument() {
    return Numbers.parse(kind.word()) == null ? '"' + kind.word() + '"' : kind.word();
  }
}
