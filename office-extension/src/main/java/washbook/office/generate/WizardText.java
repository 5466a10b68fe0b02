package washbook.office.generate;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import washbook.functions.Numbers;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CatalogueTexts;
import washbook.functions.catalogue.Parameter;
import washbook.functions.quantity.Quantity;
import washbook.log.language.Figure;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.office.language.OfficeText;

/** What the function wizard says in one language about a function and about an argument. */
public final class WizardText {
  /** Characters that the wizard shows below an argument, with room for what follows a list. */
  private static final int TWO_LINES = 100;

  private final Language language;
  private final CatalogueTexts texts;
  private final CatalogueFunction columnEntry;

  public WizardText(Language language) {
    this.language = language;
    this.texts = new CatalogueTexts(language.code());
    this.columnEntry = ColumnEntry.in(language);
  }

  /** Summary, unit of the result and caution. */
  public String of(CatalogueFunction function) {
    CatalogueFunction f = own(function);
    boolean hasUnit = !f.givesText() && !f.resultUnit().isEmpty();
    String unit = hasUnit ? say("wizard.gives", texts.of(f.resultUnit())) : "";
    return joined(" ", texts.of(f.summary()), unit, texts.of(f.caution()));
  }

  /**
   * Of an argument the accepted words, the range with its unit and what stands in when it is left
   * out; below that its meaning. The wizard shows two lines and cuts the rest.
   */
  public String of(CatalogueFunction function, int argument) {
    Parameter p = own(function).parameters().get(argument);
    String words = words(p);
    String range = range(p.quantity());
    String accepted =
        words.isEmpty() || range.isEmpty() ? words + range : say("wizard.or", words, range);
    return joined(
        "\n",
        joined(" ", accepted.isEmpty() ? "" : accepted + ".", leftOut(p)),
        texts.of(p.meaning()));
  }

  /** With commas between them where that leaves the whole list within two lines. */
  private static String words(Parameter p) {
    String list = String.join(", ", p.words());
    return list.length() <= TWO_LINES ? list : String.join(" ", p.words());
  }

  private CatalogueFunction own(CatalogueFunction function) {
    return function == ColumnEntry.FUNCTION ? columnEntry : function;
  }

  private String range(Quantity quantity) {
    if (quantity == null || quantity == Quantity.ANY) {
      return "";
    }
    Message range =
        OfficeText.of(
            "wizard.range",
            new Figure(Numbers.show(quantity.min())),
            new Figure(Numbers.show(quantity.max())));
    return joined(" ", range.in(language), texts.of(quantity.unit()));
  }

  private String leftOut(Parameter p) {
    Object fallback = p.fallback();
    if (fallback == null) {
      return "";
    }
    return say(
        "wizard.leftOut",
        fallback instanceof Double number ? new Figure(Numbers.show(number)) : fallback);
  }

  private String say(String key, Object... arguments) {
    return OfficeText.of(key, arguments).in(language);
  }

  private static String joined(String between, String... parts) {
    return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining(between));
  }
}
