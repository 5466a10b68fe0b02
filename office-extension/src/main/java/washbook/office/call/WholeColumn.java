package washbook.office.call;

import com.sun.star.uno.Any;
import java.util.Optional;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;

/**
 * A function of the pack over whole ranges in one call, for array formulas: Calc calls a function
 * of single values once for each row of an array formula, and this one once for all.
 */
final class WholeColumn {
  private WholeColumn() {}

  /** Takes the function's name, then its arguments, void where left out. */
  static Object cells(Object... arguments) {
    Optional<CatalogueFunction> found =
        arguments[0] instanceof String name ? Catalogue.find(name) : Optional.empty();
    int given = arguments.length - 1;
    while (given > 0 && arguments[given] instanceof Any) {
      given--;
    }
    if (found.isEmpty() || Reason.is(found.get()) || given > found.get().parameters().size()) {
      return CalcError.VALUE;
    }
    CatalogueFunction function = found.get();
    Object[] read = new Object[given];
    for (int i = 0; i < given; i++) {
      read[i] = Given.loose(function.parameters().get(i), arguments[i + 1]);
    }
    return Sweep.over(read, values -> Call.cell(function, values));
  }
}
