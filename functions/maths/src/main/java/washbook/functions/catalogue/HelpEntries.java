package washbook.functions.catalogue;

import java.util.List;
import washbook.functions.Answer;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.catalogue.CatalogueFunction.Group;

/** The function that explains another one's refusal. */
final class HelpEntries {
  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("REASON", Group.HELP)
              .summary("Why a call is refused, in words; empty when it is not.")
              .details(
                  "Give the name of the function that shows an error, then the same arguments."
                      + " Refuses a name that the pack does not have.")
              .takes(
                  Parameter.anything("function", "Name of a function, with or without WASHBOOK."),
                  Parameter.rest("arguments", "The arguments as that function has them."))
              .source("The functions' own refusals.")
              .example("ABV", "1.050", "1.060")
              .explains(a -> reason(a.anything(0), a.rest(1))));

  private HelpEntries() {}

  private static Object reason(Object name, Object[] arguments) {
    CatalogueFunction function =
        Catalogue.find(name.toString())
            .orElseThrow(
                () -> new RefusedException(Code.UNKNOWN_WORD, "function.unknown", name.toString()));
    return function.call(arguments) instanceof Answer.Refusal refusal ? refusal.told() : "";
  }
}
