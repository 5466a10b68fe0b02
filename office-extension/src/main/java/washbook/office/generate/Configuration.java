package washbook.office.generate;

import java.util.List;
import java.util.function.Function;
import washbook.functions.XmlText;
import washbook.log.language.Language;

/** The office's way to write configuration. */
final class Configuration {
  private Configuration() {}

  static String of(String component, String nodes) {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:component-data xmlns:oor="http://openoffice.org/2001/registry" \
        xmlns:xs="http://www.w3.org/2001/XMLSchema" oor:name="%s" \
        oor:package="org.openoffice.Office">
        %s</oor:component-data>
        """
        .formatted(component, nodes);
  }

  static String node(String name, String content) {
    return "<node oor:name=\"%s\" oor:op=\"replace\">\n%s</node>\n".formatted(name, content);
  }

  static String value(String property, String value) {
    return "<prop oor:name=\"%s\" oor:type=\"xs:string\"><value>%s</value></prop>\n"
        .formatted(property, XmlText.escaped(value));
  }

  static String text(
      String property, List<Language> languages, Function<Language, String> inLanguage) {
    StringBuilder text = new StringBuilder();
    text.append("<prop oor:name=\"%s\" oor:type=\"xs:string\">".formatted(property));
    for (Language language : languages) {
      text.append(
          "<value xml:lang=\"%s\">%s</value>"
              .formatted(language.code(), XmlText.escaped(inLanguage.apply(language))));
    }
    return text.append("</prop>\n").toString();
  }
}
