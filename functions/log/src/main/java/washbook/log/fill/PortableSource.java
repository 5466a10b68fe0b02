package washbook.log.fill;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.portable.FormulaRewriter;
import washbook.functions.portable.PortableFormulas;
import washbook.functions.portable.form.NotPortableException;

/**
 * Writes calls as plain arithmetic. A formula of this source that comes back as an argument of
 * another is known again, so that both share their guards. For one filling of one sheet.
 */
public final class PortableSource implements FormulaSource {
  /** Arguments come back at once; a few rows' worth is plenty. */
  private static final int REMEMBERED = 64;

  /** What each formula given out stands for, as a call of the pack. */
  private final Map<String, String> calls =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, String> eldest) {
          return size() > REMEMBERED;
        }
      };

  @Override
  public String formula(String functionName, List<String> arguments) {
    Optional<CatalogueFunction> function = Catalogue.find(functionName);
    if (function.isEmpty()) {
      return null;
    }
    List<String> asCalls = arguments.stream().map(a -> calls.getOrDefault(a, a)).toList();
    try {
      String formula = PortableFormulas.formula(function.get(), asCalls);
      if (formula.length() > FormulaRewriter.LONGEST) {
        return null;
      }
      calls.put(formula, FormulaSource.pack().formula(functionName, asCalls));
      return formula;
    } catch (NotPortableException e) {
      return null;
    }
  }
}
