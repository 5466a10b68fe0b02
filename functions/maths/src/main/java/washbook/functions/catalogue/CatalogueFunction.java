package washbook.functions.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import washbook.functions.Answer;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.Sentence;

/**
 * One function of the pack: everything that is said about it anywhere is said here.
 *
 * @param name upper case letters and digits; frozen once released
 * @param group the question it belongs to
 * @param parameters its arguments in order; optional ones last
 * @param resultUnit unit of the number it gives; "text" when it gives text
 * @param summary one sentence for the function wizard
 * @param details meaning, limits of the model and what is refused beyond the arguments' ranges
 * @param source where the figures come from, to the page, table or equation
 * @param caution a safety sentence, or ""
 * @param example arguments of a worked example, as the command line takes them
 * @param mixedUp two arguments that people take for each other, or none
 * @param portable whether a plain-arithmetic formula can stand in for it
 * @param body the calculation: gives a Double, a String or a Sentence, or throws {@link
 *     RefusedException}
 */
public record CatalogueFunction(
    String name,
    Group group,
    List<Parameter> parameters,
    String resultUnit,
    String summary,
    String details,
    String source,
    String caution,
    List<String> example,
    List<String> mixedUp,
    boolean portable,
    Function<Arguments, Object> body) {

  /** The question of the trade that a function answers, in the order of the work. */
  public enum Group {
    SCALES("Scales and units"),
    MAKEUP("Making up a wash"),
    READINGS("Readings"),
    FERMENT("The ferment"),
    STILL("The still charge"),
    SPIRIT("Spirit"),
    HELP("Help");

    private final String title;

    Group(String title) {
      this.title = title;
    }

    public String title() {
      return title;
    }
  }

  /** Calls the function with raw values: Double, String, double[], List; null or "" is blank. */
  public Answer call(Object... raw) {
    try {
      Object result = body.apply(ArgumentReader.read(parameters, raw));
      if (result instanceof String text) {
        return new Answer.Text(text);
      }
      if (result instanceof Sentence told) {
        return new Answer.Told(told);
      }
      if (result instanceof Double number && Double.isFinite(number)) {
        return new Answer.Number(number == 0 ? 0.0 : number);
      }
      return new Answer.Refusal(Code.CONTRADICTION, Sentence.of("answer.none", name));
    } catch (RefusedException refused) {
      return Swap.named(this, raw, refused.refusal());
    }
  }

  public boolean givesText() {
    return resultUnit.equals("text");
  }

  /** The name in Java and in the add-in's interface. */
  public String methodName() {
    return name.toLowerCase(Locale.ROOT);
  }

  public static Builder named(String name, Group group) {
    return new Builder(name, group);
  }

  /** Collects a declaration piece by piece. */
  public static final class Builder {
    private final String name;
    private final Group group;
    private List<Parameter> parameters = List.of();
    private String summary = "";
    private String details = "";
    private String source = "";
    private String caution = "";
    private List<String> example = List.of();
    private List<String> mixedUp = List.of();
    private boolean portable;

    private Builder(String name, Group group) {
      this.name = name;
      this.group = group;
    }

    public Builder takes(Parameter... given) {
      parameters = List.of(given);
      return this;
    }

    public Builder summary(String text) {
      summary = text;
      return this;
    }

    public Builder details(String text) {
      details = text;
      return this;
    }

    public Builder source(String text) {
      source = text;
      return this;
    }

    public Builder caution(String text) {
      caution = text;
      return this;
    }

    public Builder example(String... arguments) {
      example = List.of(arguments);
      return this;
    }

    /**
     * Names two arguments that stand in another order elsewhere: where a call is refused that would
     * be answered the other way round, the reason says so.
     */
    public Builder takenForEachOther(String one, String other) {
      mixedUp = List.of(one, other);
      return this;
    }

    /** Marks it as one that a plain-arithmetic formula can stand in for. */
    public Builder portable() {
      portable = true;
      return this;
    }

    /** Ends the declaration of a function that gives a number in {@code unit}. */
    public CatalogueFunction gives(String unit, ToDoubleFunction<Arguments> body) {
      return build(unit, body::applyAsDouble);
    }

    /** Ends the declaration of a function that gives text. */
    public CatalogueFunction givesText(Function<Arguments, String> body) {
      return build("text", body::apply);
    }

    /** Ends the declaration of a function that says something: a sentence, or "" for nothing. */
    public CatalogueFunction explains(Function<Arguments, Object> body) {
      return build("text", body);
    }

    private CatalogueFunction build(String unit, Function<Arguments, Object> body) {
      return new CatalogueFunction(
          name,
          group,
          parameters,
          unit,
          summary,
          details,
          source,
          caution,
          example,
          mixedUp,
          portable,
          body);
    }
  }
}
