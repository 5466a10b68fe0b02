package washbook.log;

import java.util.OptionalDouble;
import washbook.functions.Numbers;
import washbook.functions.ferment.Balance;
import washbook.functions.liquid.WashKind;
import washbook.log.language.Figure;
import washbook.log.language.Message;

/**
 * The kind of wash that a log is filled by.
 *
 * @param kind what ferments
 * @param why where it is stated, {@link Message#NONE} when it is not: then the kind is malt
 */
public record StatedWash(WashKind kind, Message why) {
  /** When the log does not tell how strong its wash is. */
  private static final double USUAL_ORIGINAL = 1.080;

  private static final double USUAL_END = 1.000;

  /** Nothing stated. */
  public static StatedWash none() {
    return new StatedWash(WashKind.MALT, Message.NONE);
  }

  public boolean isStated() {
    return !why.isBlank();
  }

  /** The sentence for a person; where nothing is stated, what each kind would make of the wash. */
  public Message remark(OptionalDouble originalGravity) {
    if (isStated()) {
      return Message.of("remark.wash", kind.word(), why);
    }
    double original =
        originalGravity.stream().filter(g -> g > USUAL_END).findFirst().orElse(USUAL_ORIGINAL);
    Message worth = Message.NONE;
    for (String word : WashKind.words()) {
      double alcohol = Balance.of(original, USUAL_END, WashKind.of(word)).percentVolume();
      Message one = Message.of("each", word, new Figure(Numbers.fixed(alcohol, 1)));
      worth = worth.isBlank() ? one : Message.of("list", worth, one);
    }
    return Message.of(
        "remark.washOpen",
        new Figure(Numbers.round(original, 4)),
        new Figure(Numbers.show(USUAL_END)),
        worth,
        "wash = SUGAR");
  }

  /** The kind as an argument of a formula. */
  public String argument() {
    return Numbers.parse(kind.word()) == null ? '"' + kind.word() + '"' : kind.word();
  }
}
