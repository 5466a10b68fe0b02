package washbook.log;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Something that header and values do not settle.
 *
 * @param cell address of the cell that it is about
 * @param headerRow row of the headers of its table from 0, -1 where it is about no table
 * @param asked what the person has to say
 * @param answers how it is said in a map; none where only the sheet itself can be changed
 */
public record Doubt(String cell, int headerRow, String asked, List<MapAnswer> answers) {

  public Doubt {
    answers = List.copyOf(answers);
  }

  /** The question with its answers, as it is told. */
  public String question() {
    return answers.isEmpty()
        ? asked
        : asked
            + " In a map: "
            + answers.stream().map(MapAnswer::text).collect(Collectors.joining(", or "));
  }

  /** The same about the table below a header. */
  public Doubt below(int row) {
    return headerRow >= 0 ? this : new Doubt(cell, row, asked, answers);
  }
}
