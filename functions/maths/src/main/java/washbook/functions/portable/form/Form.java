package washbook.functions.portable.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;

/**
 * How one function is written as plain arithmetic. The arguments of its expressions are the
 * function's, by position. The valid ranges come from the catalogue.
 *
 * @param function its name in the catalogue
 * @param words what its word arguments say, in their order; a form serves these words alone
 * @param core the arithmetic, for valid arguments
 * @param checks what must hold beyond the ranges, else the call is refused
 * @param ranges ranges that differ from the catalogue's, by argument
 * @param impliedRanges arguments whose range the checks keep already, unless they hold a text
 * @param domain where the error is measured
 * @param wanted the largest error allowed, in the function's unit
 * @param size what the error is told for, as the litres that it is an error of; 1 for most
 * @param per the same in words after the unit, as "for each litre"; "" for most
 * @param fits the polynomials to fit, in an order in which each needs earlier ones only
 */
public record Form(
    String function,
    List<String> words,
    Expression core,
    List<Check> checks,
    Map<Integer, Range> ranges,
    Set<Integer> impliedRanges,
    Domain domain,
    double wanted,
    ToDoubleFunction<double[]> size,
    String per,
    List<Fit> fits) {

  /** Stands among the words for a number in the place of a word. */
  public static final String NUMBER = "NUMBER";

  /** Valid when {@code low <= high}; of no concern when that optional argument is left out. */
  public record Check(Expression low, Expression high, int onlyWith) {
    public static final int ALWAYS = -1;

    static Check ordered(Expression low, Expression high) {
      return new Check(low, high, ALWAYS);
    }
  }

  /** Valid values of one argument, ends included. */
  public record Range(double low, double high) {}

  /** A form without checks or fits; the other methods add them. */
  static Form of(String function, Domain domain, double wanted, Expression core, String... words) {
    return new Form(
        function,
        List.of(words),
        core,
        List.of(),
        Map.of(),
        Set.of(),
        domain,
        wanted,
        at -> 1,
        "",
        List.of());
  }

  Form check(Check... added) {
    return new Form(
        function,
        words,
        core,
        concat(checks, List.of(added)),
        ranges,
        impliedRanges,
        domain,
        wanted,
        size,
        per,
        fits);
  }

  Form range(int argument, Range range) {
    return new Form(
        function,
        words,
        core,
        checks,
        Map.of(argument, range),
        impliedRanges,
        domain,
        wanted,
        size,
        per,
        fits);
  }

  Form per(String words, ToDoubleFunction<double[]> litres) {
    return new Form(
        function,
        this.words,
        core,
        checks,
        ranges,
        impliedRanges,
        domain,
        wanted,
        litres,
        words,
        fits);
  }

  Form impliedRange(int argument) {
    return new Form(
        function, words, core, checks, ranges, Set.of(argument), domain, wanted, size, per, fits);
  }

  Form fit(Fit... added) {
    return new Form(
        function,
        words,
        core,
        checks,
        ranges,
        impliedRanges,
        domain,
        wanted,
        size,
        per,
        concat(fits, List.of(added)));
  }

  /** The usual fit: the core itself against the catalogue's function, to half the error allowed. */
  Form fitCore(String key, int... mostDegrees) {
    return fit(new Fit(key, core, this::exact, domain, wanted / 2, mostDegrees));
  }

  /** Unit of the result; of a conversion the word that it ends with. */
  public String unit() {
    String unit = Catalogue.get(function).resultUnit();
    return unit.isEmpty() && !words.isEmpty() ? words.get(words.size() - 1) : unit;
  }

  public String key() {
    return key(function, words);
  }

  public static String key(String function, List<String> words) {
    return words.isEmpty() ? function : function + "/" + String.join("/", words);
  }

  /** What the catalogue's function gives; NaN when it refuses. NaN stands for left out. */
  double exact(double[] arguments) {
    return number(Catalogue.get(function).call(raw(arguments)));
  }

  /** The same for a function without words. */
  static double exact(String function, double[] arguments) {
    return number(
        Catalogue.get(function)
            .call(Arrays.stream(arguments).mapToObj(a -> Double.isNaN(a) ? null : a).toArray()));
  }

  private static double number(Answer answer) {
    return answer instanceof Answer.Number n ? n.value() : Double.NaN;
  }

  /** Numbers and words in the places where the function takes them. */
  Object[] raw(double[] arguments) {
    List<Object> raw = new ArrayList<>();
    int number = 0;
    int word = 0;
    for (var parameter : Catalogue.get(function).parameters()) {
      if (!parameter.words().isEmpty()) {
        String said = words.get(word++);
        raw.add(said.equals(NUMBER) ? (Object) arguments[number] : said);
        number++;
      } else {
        raw.add(
            number >= arguments.length || Double.isNaN(arguments[number])
                ? null
                : (Object) arguments[number]);
        number++;
      }
    }
    return raw.toArray();
  }

  private static <T> List<T> concat(List<T> first, List<T> second) {
    List<T> all = new ArrayList<>(first);
    all.addAll(second);
    return List.copyOf(all);
  }
}
