package washbook.log;

import java.util.List;

/**
 * One answer to a question, as lines of a map.
 *
 * @param lines statements of a map that hold together
 * @param remark what would follow from it, "" where that is not known
 * @param isExample whether the figure is only an example: the person's own is wanted
 */
public record MapAnswer(List<String> lines, String remark, boolean isExample) {

  public MapAnswer {
    lines = List.copyOf(lines);
  }

  /** An answer that can be taken as it stands. */
  public static MapAnswer of(String... lines) {
    return new MapAnswer(List.of(lines), "", false);
  }

  /** An answer whose figure only the person knows. */
  public static MapAnswer like(String line) {
    return new MapAnswer(List.of(line), "", true);
  }

  /** The same with what would follow from it. */
  public MapAnswer with(String consequence) {
    return new MapAnswer(lines, consequence, isExample);
  }

  /** The answer in a sentence. */
  public String text() {
    return (isExample ? "for example " : "")
        + String.join(" with ", lines)
        + (remark.isEmpty() ? "" : " (" + remark + ")");
  }
}
