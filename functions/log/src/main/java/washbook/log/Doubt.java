package washbook.log;

import java.util.List;
import washbook.log.language.Language;
import washbook.log.language.Message;

/**
 * Something that header and values do not settle.
 *
 * @param cell address of the cell that it is about
 * @param headerRow row of the headers of its table from 0, -1 where it is about no table
 * @param asked what the person has to say
 * @param answers how it is said in a map; none where only the sheet itself can be changed
 */
public record Doubt(String cell, int headerRow, Message asked, List<MapAnswer> answers) {

  public Doubt {
    answers = List.copyOf(answers);
  }

  /** The question with its answers, as it is told in English. */
  public String question() {
    return question(Language.EN);
  }

  /** The question with its answers, as it is told. */
  public String question(Language language) {
    return answers.stream()
        .map(MapAnswer::told)
        .reduce((before, last) -> Message.of("answer.or", before, last))
        .map(all -> Message.of("answer.inMap", asked, all))
        .orElse(asked)
        .in(language);
  }

  /** The same about the table below a header. */
  public Doubt below(int row) {
    return headerRow >= 0 ? this : new Doubt(cell, row, asked, answers);
  }
}
