package washbook.functions.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.function.UnaryOperator;
import washbook.functions.Numbers;
import washbook.functions.SafetyNote;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.catalogue.Parameter.Kind;
import washbook.functions.quantity.Quantity;

/** The reference of all functions as Markdown, written from the catalogue. */
public final class ReferencePage {
  static final String PREFIX = "WASHBOOK.";

  private ReferencePage() {}

  /** The call with its arguments, optional ones in brackets with what stands in for them. */
  public static String syntax(CatalogueFunction function) {
    StringJoiner arguments = new StringJoiner("; ", "(", ")");
    for (Parameter p : function.parameters()) {
      if (p.kind() == Kind.REST) {
        arguments.add("...");
      } else if (p.optional()) {
        arguments.add("[" + p.name() + (p.fallback() == null ? "" : "=" + fallback(p)) + "]");
      } else {
        arguments.add(p.name());
      }
    }
    return PREFIX + function.name() + arguments;
  }

  private static String fallback(Parameter p) {
    return p.fallback() instanceof Double d ? Numbers.show(d) : p.fallback().toString();
  }

  /** What an argument accepts, with its unit and range. */
  public static String accepts(Parameter p) {
    return switch (p.kind()) {
      case NUMBER ->
          p.quantity() == Quantity.ANY ? "a number in that scale's range" : p.quantity().range();
      case NUMBERS -> "a range of cells, each " + p.quantity().range();
      case WORD -> "one of " + String.join(", ", p.words());
      case WORD_OR_NUMBER ->
          "one of " + String.join(", ", p.words()) + "; or " + p.quantity().range();
      case ANYTHING -> "a text";
      case REST -> "any";
    };
  }

  private static String resultOf(CatalogueFunction function) {
    return function.resultUnit().isEmpty()
        ? "a number in the unit asked for"
        : function.givesText() ? "a text" : function.resultUnit();
  }

  /**
   * The whole page as Markdown.
   *
   * @param portableNote what is to be said of the portable formula of a function's name, "" if none
   */
  public static String markdown(UnaryOperator<String> portableNote) {
    StringBuilder page = new StringBuilder(16_384);
    page.append("# Functions\n\n");
    for (String paragraph : ReferenceIntroduction.PARAGRAPHS) {
      page.append(paragraph).append("\n\n");
    }
    page.append("**").append(SafetyNote.TITLE).append(".** ");
    page.append(String.join(" ", SafetyNote.LINES)).append("\n\n");
    for (Group group : Group.values()) {
      page.append("- ").append(group.title()).append(": ");
      StringJoiner links = new StringJoiner(", ");
      for (CatalogueFunction f : of(group)) {
        links.add("[" + f.name() + "](#" + f.name().toLowerCase(Locale.ROOT) + ")");
      }
      page.append(links).append('\n');
    }
    for (Group group : Group.values()) {
      page.append("\n## ").append(group.title()).append('\n');
      for (CatalogueFunction function : of(group)) {
        markdown(function, portableNote.apply(function.name()), page);
      }
    }
    return page.toString();
  }

  private static void markdown(
      CatalogueFunction function, String portableNote, StringBuilder page) {
    page.append("\n### ").append(function.name()).append("\n\n");
    page.append(function.summary()).append("\n\n");
    page.append('`').append(syntax(function)).append("` gives ");
    page.append(resultOf(function)).append(".\n\n");
    page.append("| argument | accepts | meaning |\n| --- | --- | --- |\n");
    for (Parameter p : function.parameters()) {
      page.append("| ").append(p.name()).append(p.optional() ? " (optional)" : "");
      page.append(" | ").append(accepts(p)).append(" | ").append(p.meaning()).append(" |\n");
    }
    page.append('\n');
    if (!function.details().isEmpty()) {
      page.append(function.details()).append("\n\n");
    }
    Example example = Example.of(function);
    page.append("Example: `").append(example.formula()).append('`');
    if (!example.cells().isEmpty()) {
      page.append(", with ").append(example.cells()).append(',');
    }
    page.append(" gives **").append(example.answer()).append("**.\n\n");
    if (!function.caution().isEmpty()) {
      page.append("Caution: ").append(function.caution()).append("\n\n");
    }
    page.append("Source: ").append(function.source());
    page.append(portableNote.isEmpty() ? "\n" : "\n\n" + portableNote + "\n");
  }

  /** The same facts for programs. */
  public static String json() {
    return ReferenceJson.write(Catalogue.all());
  }

  private static List<CatalogueFunction> of(Group group) {
    return Catalogue.all().stream().filter(f -> f.group() == group).toList();
  }
}
