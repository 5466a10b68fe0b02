package washbook.office.call;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.office.language.OfficeText;

/** The function that says why another one refuses, for arguments as Calc hands them over. */
final class Reason {
  private static final String NAME = "REASON";

  private static volatile Supplier<Language> language = () -> Language.EN;

  private Reason() {}

  /** Says how to ask for the language of the office; that is asked for each thing that is said. */
  static void askFor(Supplier<Language> office) {
    language = office;
  }

  static boolean is(CatalogueFunction function) {
    return function.name().equals(NAME);
  }

  /** Takes the name of the function in question, then its arguments as one array. */
  static Object cells(CatalogueFunction reason, Object... arguments) {
    Object name = Given.loose(reason.parameters().get(0), arguments[0]);
    Optional<CatalogueFunction> asked =
        name instanceof String text ? Catalogue.find(text) : Optional.empty();
    Object[] rest = (Object[]) arguments[1];
    if (asked.isEmpty() || rest.length > asked.get().parameters().size()) {
      return told(reason, withRest(name, rest));
    }
    CatalogueFunction function = asked.get();
    Object[] read = new Object[rest.length];
    for (int i = 0; i < read.length; i++) {
      read[i] = Given.loose(function.parameters().get(i), rest[i]);
    }
    return Sweep.over(read, values -> said(why(function, values)));
  }

  /** What the function itself says, of a name that is none or too many arguments. */
  private static Object told(CatalogueFunction reason, Object... values) {
    return reason.call(values) instanceof Answer.Told told
        ? told.told().in(language.get().code())
        : Call.cell(reason, values);
  }

  private static String said(Message why) {
    return why.isBlank() ? "" : why.in(language.get());
  }

  private static Object[] withRest(Object name, Object... rest) {
    Object[] all = new Object[rest.length + 1];
    all[0] = name;
    System.arraycopy(rest, 0, all, 1, rest.length);
    return all;
  }

  /**
   * A single 0 may be a blank cell here for every argument that may be 0, also where the function
   * itself can tell: then both are answered.
   */
  private static Message why(CatalogueFunction function, Object... values) {
    for (int i = 0; i < values.length; i++) {
      if (values[i] instanceof OtherNotation other) {
        return other.reason(function.parameters().get(i));
      }
    }
    int unclear = Arrays.asList(values).indexOf(Given.BLANK_OR_ZERO);
    if (unclear < 0) {
      return refusal(function.call(values));
    }
    Parameter parameter = function.parameters().get(unclear);
    if (parameter.optional()) {
      return OfficeText.of("reason.blankOrZero", parameter.told());
    }
    Message ifZero = why(function, with(values, unclear, 0.0));
    Message ifBlank = why(function, with(values, unclear, null));
    if (ifZero.equals(ifBlank)) {
      return ifZero;
    }
    return OfficeText.of("reason.either", parameter.told(), orNothing(ifBlank), orNothing(ifZero));
  }

  private static Message orNothing(Message why) {
    return why.isBlank() ? OfficeText.of("reason.nothing") : why;
  }

  private static Object[] with(Object[] values, int index, Object value) {
    Object[] changed = values.clone();
    changed[index] = value;
    return changed;
  }

  private static Message refusal(Answer answer) {
    return answer instanceof Answer.Refusal refusal
        ? OfficeText.of("reason.said", refusal.told())
        : Message.NONE;
  }
}
