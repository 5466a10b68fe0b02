package washbook.functions.portable.form;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import washbook.functions.catalogue.CatalogueFunction;

/** All declared forms. */
public final class Forms {
  public static final List<Form> ALL =
      Stream.of(ScaleForms.ALL, FermentForms.ALL, ReadingForms.ALL, SpiritForms.ALL)
          .flatMap(List::stream)
          .toList();

  private static final Map<String, Form> BY_KEY =
      ALL.stream().collect(Collectors.toUnmodifiableMap(Form::key, UnaryOperator.identity()));

  private Forms() {}

  public static List<Form> of(String function) {
    return ALL.stream().filter(form -> form.function().equals(function)).toList();
  }

  /**
   * Calibrations that a function has forms of their own for, by the name that stands for each in a
   * form's words; empty where the calibration is an argument like others.
   */
  public static Map<String, Double> calibrations(CatalogueFunction function) {
    return function.name().equals(StrengthForm.NAME) ? StrengthForm.CALIBRATIONS : Map.of();
  }

  /** The form of a function for the words that a call gives. */
  public static Form find(CatalogueFunction function, List<String> words)
      throws NotPortableException {
    Form form = BY_KEY.get(Form.key(function.name(), words));
    if (form == null) {
      throw new NotPortableException("portable.words", function.name(), words);
    }
    return form;
  }
}
