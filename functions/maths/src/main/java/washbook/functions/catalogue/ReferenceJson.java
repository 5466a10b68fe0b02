package washbook.functions.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import washbook.functions.Numbers;

/** The catalogue as JSON; written by hand because this module depends on nothing. */
final class ReferenceJson {
  private ReferenceJson() {}

  static String write(List<CatalogueFunction> functions) {
    return functions.stream()
        .map(ReferenceJson::function)
        .collect(Collectors.joining(",\n", "{\"functions\":[\n", "\n]}\n"));
  }

  private static String function(CatalogueFunction f) {
    Example example = Example.of(f);
    return "{"
        + text("name", f.name())
        + text("group", f.group().title())
        + text("syntax", ReferencePage.syntax(f))
        + text("gives", f.givesText() ? "text" : "number")
        + text("unit", f.givesText() ? "" : f.resultUnit())
        + text("summary", f.summary())
        + text("details", f.details())
        + text("source", f.source())
        + text("caution", f.caution())
        + "\"portable\":"
        + f.portable()
        + ",\"example\":{"
        + text("formula", example.formula())
        + text("cells", example.cells())
        + text("command", example.command())
        + last("answer", example.answer())
        + "},\"parameters\":"
        + f.parameters().stream()
            .map(ReferenceJson::parameter)
            .collect(Collectors.joining(",", "[", "]}"));
  }

  private static String parameter(Parameter p) {
    StringBuilder json = new StringBuilder("{").append(text("name", p.name()));
    json.append(text("kind", p.kind().name().toLowerCase(Locale.ROOT)));
    if (p.quantity() != null) {
      json.append(text("unit", p.quantity().unit()));
      json.append("\"min\":").append(Numbers.show(p.quantity().min()));
      json.append(",\"max\":").append(Numbers.show(p.quantity().max())).append(',');
    }
    if (!p.words().isEmpty()) {
      json.append("\"words\":");
      json.append(
          p.words().stream().map(ReferenceJson::quote).collect(Collectors.joining(",", "[", "]")));
      json.append(',');
    }
    json.append("\"optional\":").append(p.optional()).append(',');
    if (p.fallback() != null) {
      json.append("\"fallback\":");
      json.append(
          p.fallback() instanceof Double d ? Numbers.show(d) : quote(p.fallback().toString()));
      json.append(',');
    }
    return json.append(last("meaning", p.meaning())).append('}').toString();
  }

  private static String text(String name, String value) {
    return last(name, value) + ",";
  }

  private static String last(String name, String value) {
    return quote(name) + ":" + quote(value);
  }

  private static String quote(String value) {
    StringBuilder quoted = new StringBuilder("\"");
    for (char c : value.toCharArray()) {
      if (c == '"' || c == '\\') {
        quoted.append('\\').append(c);
      } else if (c < ' ') {
        quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      } else {
        quoted.append(c);
      }
    }
    return quoted.append('"').toString();
  }
}
