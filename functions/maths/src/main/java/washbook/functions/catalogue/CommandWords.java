package washbook.functions.catalogue;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Parameter.Kind;

/**
 * Arguments as words of a command line, which is also how {@link CatalogueFunction#example} writes
 * them: numbers with a point, texts as they are, a range as values with commas between, {@code -}
 * for nothing.
 */
public final class CommandWords {
  private static final String NOTHING = "-";

  private CommandWords() {}

  /** Raw values for {@link CatalogueFunction#call}. */
  public static Object[] read(CatalogueFunction function, List<String> words) {
    Object[] raw = new Object[words.size()];
    for (int i = 0; i < raw.length; i++) {
      raw[i] = value(kind(function, i), words.get(i));
    }
    return raw;
  }

  private static Kind kind(CatalogueFunction function, int index) {
    List<Parameter> parameters = function.parameters();
    int last = parameters.size() - 1;
    if (index <= last) {
      return parameters.get(index).kind();
    }
    return last >= 0 ? parameters.get(last).kind() : Kind.ANYTHING;
  }

  private static Object value(Kind kind, String word) {
    if (word.equals(NOTHING)) {
      return null;
    }
    return kind == Kind.NUMBERS || (kind == Kind.REST && isRange(word)) ? cells(word) : word;
  }

  private static boolean isRange(String word) {
    return word.indexOf(',') >= 0
        && cells(word).stream()
            .allMatch(cell -> cell == null || Numbers.parse(cell.toString()) != null);
  }

  private static List<Object> cells(String word) {
    List<Object> cells = new ArrayList<>();
    for (String part : word.split(",", -1)) {
      String cell = part.strip();
      cells.add(cell.isEmpty() || cell.equals(NOTHING) ? null : cell);
    }
    return cells;
  }
}
