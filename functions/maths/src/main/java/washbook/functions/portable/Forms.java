package washbook.functions.portable;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import washbook.functions.catalogue.Function;

/** All declared forms. */
final class Forms {
  static final List<Form> ALL =
      Stream.of(ScaleForms.ALL, FermentForms.ALL, ReadingForms.ALL, SpiritForms.ALL)
          .flatMap(List::stream)
          .toList();

  private static final Map<String, Form> BY_KEY =
      ALL.stream().collect(Collectors.toUnmodifiableMap(Form::key, UnaryOperator.identity()));

  private Forms() {}

  static List<Form> of(String function) {
    return ALL.stream().filter(form -> form.function().equals(function)).toList();
  }

  /**
   * Calibrations that a function has forms of their own for, by the name that stands for each in a
   * form's words; empty where the calibration is an argument like others.
   */
  static Map<String, Double> calibrations(Function function) {
    return function.name().equals(StrengthForm.NAME) ? StrengthForm.CALIBRATIONS : Map.of();
  }

  /** The form of a function for the words that a call gives. */
  static Form find(Function function, List<String> words) throws NotPortableException {
    Form form = BY_KEY.get(Form.key(function.name(), words));
    if (form == null) {
      throw new NotPortableException(
          function.name() + " has no portable form for " + String.join(", ", words) + ".");
    }
    return form;
  }
}
