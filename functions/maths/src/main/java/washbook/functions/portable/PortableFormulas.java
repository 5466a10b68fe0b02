package washbook.functions.portable;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.portable.CallArgument.Call;
import washbook.functions.portable.form.Fitted;
import washbook.functions.portable.form.Form;
import washbook.functions.portable.form.Forms;
import washbook.functions.portable.form.NotPortableException;

/**
 * Functions as plain-arithmetic cell formulas, without add-in or macro and with nothing newer than
 * Excel 2007 and ODF 1.2. Every formula carries its guards: a blank cell gives "", text and values
 * that the function refuses give #N/A; an error cell gives its own error. At the edge of what
 * contradicts itself (a gravity lower than the wash can ferment to) a formula may answer or refuse
 * otherwise than the function, within 0.0003 SG or 0.2 % vol of the edge.
 */
public final class PortableFormulas {
  /** Errors below this are mere rounding. */
  private static final double EXACT = 1e-8;

  private PortableFormulas() {}

  /** Whether a formula can stand in for the function. */
  public static boolean exists(CatalogueFunction function) {
    return function.portable() && !Forms.of(function.name()).isEmpty();
  }

  /**
   * The formula of one call, without "=", with commas between arguments.
   *
   * @param arguments formula texts of the arguments: references, numbers, words in quotation marks,
   *     other calls of ours ({@code WASHBOOK.CONVERT(C2,"F","C")}: a blank C2 then gives "" as
   *     well), other expressions, or "" for one that is left out
   * @throws NotPortableException when the function has no such form, or not for these arguments
   */
  public static String formula(CatalogueFunction function, List<String> arguments)
      throws NotPortableException {
    return compile(function, arguments).text(FormulaSyntax.A1.separator());
  }

  /**
   * What {@link #formula} gives, by the same steps: a number, the text "" for a blank cell, or a
   * refusal for #N/A.
   *
   * @param cells gives the value of a cell or expression by its text in the formula: Double,
   *     String, or null for blank
   */
  public static Answer answer(
      CatalogueFunction function, List<String> arguments, Function<String, ? extends Object> cells)
      throws NotPortableException {
    CompiledCall call = compile(function, arguments);
    List<Object> values = new ArrayList<>();
    call.cells().forEach(cell -> values.add(cells.apply(cell)));
    return call.answer(values);
  }

  static CompiledCall compile(CatalogueFunction function, List<String> arguments)
      throws NotPortableException {
    CallArguments reader = new CallArguments(FormulaSyntax.A1);
    List<CallArgument> read = new ArrayList<>();
    for (String argument : arguments) {
      read.add(reader.read(argument));
    }
    return CallCompiler.compile(new Call(function, read));
  }

  /** The largest error of the function's formulas, in its unit; NaN when it has none. */
  public static double maximumError(CatalogueFunction function) {
    return Forms.of(function.name()).stream()
        .mapToDouble(form -> Fitted.all().errors().get(form.key()))
        .max()
        .orElse(Double.NaN);
  }

  /**
   * What the reference page says of a function's portable formula, as "Portable formula: within
   * 0.00003 SG of the exact value."; "" when there is none.
   */
  public static String note(String functionName) {
    List<Form> forms =
        Catalogue.find(functionName).filter(PortableFormulas::exists).stream()
            .flatMap(function -> Forms.of(function.name()).stream())
            .toList();
    Map<String, Double> bounds = new LinkedHashMap<>();
    for (Form form : forms) {
      bounds.merge(
          (form.unit() + " " + form.per()).strip(),
          Fitted.all().errors().get(form.key()),
          Math::max);
    }
    bounds.values().removeIf(error -> error < EXACT);
    return forms.isEmpty()
        ? ""
        : bounds.isEmpty()
            ? "Portable formula: exact."
            : bounds.entrySet().stream()
                .map(e -> (bound(e.getValue()) + " " + e.getKey()).trim())
                .collect(
                    Collectors.joining(", ", "Portable formula: within ", " of the exact value."));
  }

  /** An error as it is told to people: one digit, rounded up. */
  private static String bound(double error) {
    return new BigDecimal(error)
        .round(new MathContext(1, RoundingMode.UP))
        .stripTrailingZeros()
        .toPlainString();
  }
}
