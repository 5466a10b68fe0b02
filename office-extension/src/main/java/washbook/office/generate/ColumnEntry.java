package washbook.office.generate;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.catalogue.Parameter;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;

/**
 * The one function that Calc alone has: any other over whole ranges in one call. It is about how
 * Calc hands ranges over, so the catalogue does not know it.
 */
public final class ColumnEntry {
  /** More than any function of the catalogue takes. */
  private static final int MOST_ARGUMENTS = 8;

  public static final CatalogueFunction FUNCTION = in(Language.EN);

  private ColumnEntry() {}

  /** The function with its texts in that language. */
  static CatalogueFunction in(Language language) {
    return CatalogueFunction.named("COLUMN", Group.HELP)
        .summary(OfficeText.of("COLUMN.summary").in(language))
        .takes(parameters(language))
        .givesText(
            a -> {
              throw new RefusedException(Code.UNKNOWN_WORD, "function.column");
            });
  }

  private static Parameter[] parameters(Language language) {
    List<Parameter> all = new ArrayList<>();
    String function = OfficeText.of("COLUMN.function").in(language);
    all.add(Parameter.word("function", List.of(), function));
    for (int i = 1; i <= MOST_ARGUMENTS; i++) {
      String meaning = OfficeText.of("COLUMN.argument", i).in(language);
      all.add(Parameter.anything("argument" + i, meaning).orNothing());
    }
    return all.toArray(new Parameter[0]);
  }
}
