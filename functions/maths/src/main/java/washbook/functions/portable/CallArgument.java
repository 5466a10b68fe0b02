package washbook.functions.portable;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction;

/** One argument of a call that is to be written as plain arithmetic. */
sealed interface CallArgument {
  /** Left out. */
  record Omitted() implements CallArgument {}

  /** A number in the formula itself. */
  record Literal(double number) implements CallArgument {}

  /** A text in the formula itself. */
  record Word(String word) implements CallArgument {}

  /** A cell or any other formula text, fit to stand as part of a product. */
  record Cell(String text) implements CallArgument {}

  /** A cell times or over a number: the cell is what may be blank. */
  record Scaled(Cell cell, char sign, double number) implements CallArgument {}

  /** Another call of ours. */
  record Call(CatalogueFunction function, List<CallArgument> arguments) implements CallArgument {}
}
