package washbook.runner.language;

import java.util.List;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.catalogue.CatalogueTexts;
import washbook.functions.catalogue.Example;
import washbook.functions.catalogue.ReferencePage;

/**
 * All functions for the terminal: syntax, summary, unit and an example, by group. Calls and numbers
 * are written as {@code washbook calc} takes and gives them.
 */
public final class FunctionList {
  private FunctionList() {}

  /** The list with the safety note. */
  public static String in(Wording words) {
    CatalogueTexts texts = new CatalogueTexts(words.language().code());
    StringBuilder page = new StringBuilder(16_384);
    for (Group group : Group.values()) {
      page.append(page.isEmpty() ? "" : "\n").append(words.say("functions." + group)).append('\n');
      for (CatalogueFunction function : of(group)) {
        Example example = Example.of(function, words.language().code());
        page.append("  ").append(ReferencePage.syntax(function)).append('\n');
        page.append("      ").append(texts.of(function.summary())).append(' ');
        page.append(words.say("functions.gives", result(function, texts, words))).append('\n');
        page.append("      ").append(example.command());
        page.append("  ->  ").append(example.answer()).append('\n');
      }
    }
    return page.append('\n').append(Caution.text(words)).append('\n').toString();
  }

  private static List<CatalogueFunction> of(Group group) {
    return Catalogue.all().stream().filter(function -> function.group() == group).toList();
  }

  private static String result(CatalogueFunction function, CatalogueTexts texts, Wording words) {
    if (function.resultUnit().isEmpty()) {
      return words.say("functions.number");
    }
    return function.givesText() ? words.say("functions.text") : texts.of(function.resultUnit());
  }
}
