package washbook.runner.write;

import java.io.IOException;
import java.util.Optional;
import washbook.functions.Answer;

/** The formula of the cell at which a walk over a workbook stands. */
interface ReplaceableFormula {
  /**
   * Puts another formula in.
   *
   * @param text without prefix or "="
   * @param answer what it gives; where that is not told the stored result stays
   */
  void replace(String text, Optional<Answer> answer) throws IOException;
}
