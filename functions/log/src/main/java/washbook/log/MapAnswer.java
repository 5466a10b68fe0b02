package washbook.log;

import java.util.List;
import washbook.log.language.Message;

/**
 * One answer to a question, as lines of a map.
 *
 * @param lines statements of a map that hold together
 * @param remark what would follow from it, {@link Message#NONE} where that is not known
 * @param isExample whether the figure is only an example: the person's own is wanted
 */
public record MapAnswer(List<String> lines, Message remark, boolean isExample) {

  public MapAnswer {
    lines = List.copyOf(lines);
  }

  /** An answer that can be taken as it stands. */
  public static MapAnswer of(String... lines) {
    return new MapAnswer(List.of(lines), Message.NONE, false);
  }

  /** An answer whose figure only the person knows. */
  public static MapAnswer like(String line) {
    return new MapAnswer(List.of(line), Message.NONE, true);
  }

  /** The same with what would follow from it. */
  public MapAnswer with(Message consequence) {
    return new MapAnswer(lines, consequence, isExample);
  }

  /** The answer in a sentence. */
  public Message told() {
    Message said =
        lines.stream()
            .map(line -> Message.of("plain", line))
            .reduce((before, last) -> Message.of("answer.both", before, last))
            .orElse(Message.NONE);
    Message whole = isExample ? Message.of("answer.example", said) : said;
    return remark.isBlank() ? whole : Message.of("answer.remark", whole, remark);
  }
}
