package washbook.runner.sheet;

import java.util.List;

/**
 * What became of a workbook's calls of the pack.
 *
 * @param formulas how many formulas are portable now
 * @param left each call that stayed, with where and why
 */
public record PortableResult(int formulas, List<Left> left) {

  /** A call that stayed: the cell, as in {@code Log!B7}, and the reason as a sentence. */
  public record Left(String cell, String reason) {}

  public boolean nothingFound() {
    return formulas == 0 && left.isEmpty();
  }
}
