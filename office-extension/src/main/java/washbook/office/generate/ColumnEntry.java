package washbook.office.generate;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.catalogue.Parameter;

/**
 * The one function that Calc alone has: any other over whole ranges in one call. It is about how
 * Calc hands ranges over, so the catalogue does not know it.
 */
public final class ColumnEntry {
  /** More than any function of the catalogue takes. */
  private static final int MOST_ARGUMENTS = 8;

  public static final CatalogueFunction FUNCTION =
      CatalogueFunction.named("COLUMN", Group.HELP)
          .summary(
              "Another function over whole ranges at once, in an array formula: fast for long"
                  + " columns.")
          .takes(parameters())
          .givesText(
              a -> {
                throw new RefusedException(Code.UNKNOWN_WORD, "COLUMN is for array formulas.");
              });

  private ColumnEntry() {}

  private static Parameter[] parameters() {
    List<Parameter> all = new ArrayList<>();
    all.add(Parameter.word("function", List.of(), "Name of a function, such as ABV."));
    for (int i = 1; i <= MOST_ARGUMENTS; i++) {
      String meaning = "Argument " + i + " of that function: a range or one value.";
      all.add(Parameter.anything("argument" + i, meaning).orNothing());
    }
    return all.toArray(new Parameter[0]);
  }
}
