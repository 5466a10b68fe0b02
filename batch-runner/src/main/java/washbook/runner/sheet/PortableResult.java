package washbook.runner.sheet;

import java.util.List;
import washbook.log.language.Message;

/**
 * What became of a workbook's calls of the pack.
 *
 * @param formulas how many formulas are portable now
 * @param left each call that stayed, with where and why
 */
public record PortableResult(int formulas, List<Left> left) {

  /**
   * A call that stayed.
   *
   * @param cell as in {@code Log!B7}, or another place with the word for it
   * @param told the reason as a sentence
   */
  public record Left(Message cell, Message told) {}

  public boolean nothingFound() {
    return formulas == 0 && left.isEmpty();
  }
}
