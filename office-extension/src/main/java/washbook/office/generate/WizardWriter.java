package washbook.office.generate;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.log.language.Language;

/** Writes the names and help texts that the function wizard shows. */
final class WizardWriter {
  private static final List<WizardText> TEXTS =
      Arrays.stream(Language.values()).map(WizardText::new).toList();

  private WizardWriter() {}

  static String textsOf(List<Method> methods) {
    return Configuration.of(
        "CalcAddIns",
        "<node oor:name=\"AddInInfo\"><node oor:name=\"WASHBOOK\" oor:op=\"replace\">"
            + "<node oor:name=\"AddInFunctions\">\n"
            + methods.stream().map(WizardWriter::function).collect(Collectors.joining())
            + "</node></node></node>\n");
  }

  private static String function(Method method) {
    CatalogueFunction f = method.function();
    String display = "WASHBOOK." + f.name();
    StringBuilder parameters = new StringBuilder();
    for (int i = 0; i < f.parameters().size(); i++) {
      parameters.append(parameter(f, i));
    }
    return Configuration.node(
        method.name(),
        name("DisplayName", display)
            + inAll("Description", text -> text.of(f))
            + Configuration.value("Category", "Add-In")
            + name("CompatibilityName", display)
            + "<node oor:name=\"Parameters\">\n"
            + parameters
            + "</node>\n");
  }

  private static String parameter(CatalogueFunction f, int index) {
    Parameter p = f.parameters().get(index);
    return Configuration.node(
        p.name(), name("DisplayName", p.name()) + inAll("Description", text -> text.of(f, index)));
  }

  /** Names are the same in every language; the office takes the English one in all others. */
  private static String name(String property, String name) {
    return Configuration.text(property, List.of(Language.EN), language -> name);
  }

  private static String inAll(String property, Function<WizardText, String> text) {
    return Configuration.text(
        property,
        List.of(Language.values()),
        language -> text.apply(TEXTS.get(language.ordinal())));
  }
}
