package washbook.office.generate;

import java.util.List;
import java.util.stream.Collectors;
import washbook.functions.XmlText;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;

/** Writes the names and help texts that the function wizard shows. */
final class WizardWriter {
  private WizardWriter() {}

  static String textsOf(List<Method> methods) {
    return """
    <?xml version="1.0" encoding="UTF-8"?>
    <oor:component-data xmlns:oor="http://openoffice.org/2001/registry" \
    xmlns:xs="http://www.w3.org/2001/XMLSchema" oor:name="CalcAddIns" \
    oor:package="org.openoffice.Office">
    <node oor:name="AddInInfo"><node oor:name="WASHBOOK" oor:op="replace">\
    <node oor:name="AddInFunctions">
    """
        + methods.stream().map(WizardWriter::function).collect(Collectors.joining())
        + "</node></node></node>\n</oor:component-data>\n";
  }

  private static String function(Method method) {
    CatalogueFunction f = method.function();
    String display = "WASHBOOK." + f.name();
    return "<node oor:name=\"%s\" oor:op=\"replace\">\n".formatted(method.name())
        + text("DisplayName", display)
        + text("Description", WizardText.of(f))
        + "<prop oor:name=\"Category\"><value>Add-In</value></prop>\n"
        + text("CompatibilityName", display)
        + "<node oor:name=\"Parameters\">\n"
        + method.arguments().stream()
            .map(Method.Argument::parameter)
            .map(WizardWriter::parameter)
            .collect(Collectors.joining())
        + "</node>\n</node>\n";
  }

  private static String parameter(Parameter p) {
    return "<node oor:name=\"%s\" oor:op=\"replace\">\n".formatted(p.name())
        + text("DisplayName", p.name())
        + text("Description", WizardText.of(p))
        + "</node>\n";
  }

  private static String text(String property, String text) {
    return "<prop oor:name=\"%s\"><value xml:lang=\"en\">%s</value></prop>\n"
        .formatted(property, XmlText.escaped(text));
  }
}
