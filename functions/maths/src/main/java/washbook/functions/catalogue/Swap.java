package washbook.functions.catalogue;

import java.util.List;
import washbook.functions.Answer;
import washbook.functions.Answer.Refusal;
import washbook.functions.RefusedException;
import washbook.functions.Sentence;

/** Notices two arguments that were given in each other's place. */
final class Swap {
  private Swap() {}

  /** The refusal, with a sentence more where the call would be answered the other way round. */
  static Refusal named(CatalogueFunction function, Object[] raw, Refusal refusal) {
    if (function.mixedUp().isEmpty() || refusal.code() == Answer.Code.BLANK) {
      return refusal;
    }
    int one = index(function, function.mixedUp().get(0));
    int other = index(function, function.mixedUp().get(1));
    if (one >= raw.length || other >= raw.length || raw[one] == null || raw[other] == null) {
      return refusal;
    }
    Object[] swapped = raw.clone();
    swapped[one] = raw[other];
    swapped[other] = raw[one];
    if (isRefused(function, swapped)) {
      return refusal;
    }
    List<Sentence> order = function.parameters().stream().map(Parameter::told).toList();
    return new Refusal(
        refusal.code(),
        Sentence.of("swapped", refusal.told(), order.get(one), order.get(other), order));
  }

  private static boolean isRefused(CatalogueFunction function, Object[] raw) {
    try {
      return function.body().apply(ArgumentReader.read(function.parameters(), raw)) == null;
    } catch (RefusedException refused) {
      return true;
    }
  }

  private static int index(CatalogueFunction function, String parameter) {
    for (int i = 0; i < function.parameters().size(); i++) {
      if (function.parameters().get(i).name().equals(parameter)) {
        return i;
      }
    }
    throw new IllegalArgumentException(function.name() + " has no " + parameter);
  }
}
