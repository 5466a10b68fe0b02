package washbook.office.call;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import washbook.functions.Answer;

/**
 * The last answers about long ranges. A course is fitted once, and not again for every formula that
 * asks the same of the same cells, as when a sheet states it in every row; comparing the values
 * takes a hundredth of that. Every function gives the same answer for the same values.
 */
final class RepeatedCalls {
  /** Shorter ranges are worked out as fast as they are looked up. */
  private static final int FEWEST_CELLS = 8;

  private static final int MOST_ANSWERS = 32;

  /** Cells of all remembered ranges together: some 20 bytes each. */
  private static final int MOST_CELLS = 500_000;

  private final Map<List<Object>, Answer> answers = new LinkedHashMap<>(MOST_ANSWERS, 0.75f, true);
  private long cells;

  /** The answer of {@code function}, which is asked only when it is not remembered. */
  Answer answer(String name, Object[] values, Supplier<Answer> function) {
    int size = size(values);
    if (size < FEWEST_CELLS || size > MOST_CELLS) {
      return function.get();
    }
    List<Object> call = new ArrayList<>(Arrays.asList(values));
    call.add(name);
    synchronized (this) {
      Answer known = answers.get(call);
      if (known != null) {
        return known;
      }
    }
    Answer found = function.get();
    remember(call, size, found);
    return found;
  }

  private synchronized void remember(List<Object> call, int size, Answer answer) {
    if (answers.put(call, answer) == null) {
      cells += size;
    }
    Iterator<List<Object>> oldest = answers.keySet().iterator();
    while (cells > MOST_CELLS || answers.size() > MOST_ANSWERS) {
      cells -= size(oldest.next().toArray());
      oldest.remove();
    }
  }

  private static int size(Object[] values) {
    int size = 0;
    for (Object value : values) {
      size += value instanceof List<?> range ? range.size() : 0;
    }
    return size;
  }
}
