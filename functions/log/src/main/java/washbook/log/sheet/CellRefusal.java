package washbook.log.sheet;

import washbook.functions.Answer;
import washbook.log.language.Language;
import washbook.log.language.Message;

/**
 * A row or value that was not computed.
 *
 * @param cell address of the cell at fault, without the sheet
 * @param code for programs
 * @param message a sentence with the value and the range
 */
public record CellRefusal(String cell, Answer.Code code, Message message) {
  /** The sentence in English. */
  public String reason() {
    return reason(Language.EN);
  }

  /** The sentence. */
  public String reason(Language language) {
    return message.in(language);
  }
}
