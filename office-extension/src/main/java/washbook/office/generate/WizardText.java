package washbook.office.generate;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import washbook.functions.Numbers;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;

/** What the function wizard says about a function and about an argument. */
public final class WizardText {
  private WizardText() {}

  /** Summary, unit of the result and caution. */
  public static String of(CatalogueFunction f) {
    String unit = f.givesText() || f.resultUnit().isEmpty() ? "" : "Gives " + f.resultUnit() + ".";
    return joined(f.summary(), unit, f.caution());
  }

  /** Meaning, range or words, and what stands in when it is left out. */
  public static String of(Parameter p) {
    String range = p.quantity() == null ? "" : p.quantity().range() + ".";
    String words = p.words().isEmpty() ? "" : String.join(", ", p.words()) + ".";
    return joined(p.meaning(), words, range, leftOut(p));
  }

  private static String leftOut(Parameter p) {
    Object fallback = p.fallback();
    if (fallback == null) {
      return "";
    }
    return "Left out: "
        + (fallback instanceof Double number ? Numbers.show(number) : fallback)
        + ".";
  }

  private static String joined(String... parts) {
    return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
  }
}
