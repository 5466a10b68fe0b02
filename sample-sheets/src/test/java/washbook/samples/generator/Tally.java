package washbook.samples.generator;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** How many logs of each class came out how. */
final class Tally {
  private static final String UNACCOUNTED = "rows unaccounted";

  private final Map<String, Map<Judgement.Result, Integer>> counts = new TreeMap<>();
  private final Map<String, Integer> unaccounted = new TreeMap<>();

  void count(String name, Judgement judgement) {
    counts
        .computeIfAbsent(name, n -> new EnumMap<>(Judgement.Result.class))
        .merge(judgement.result(), 1, Integer::sum);
    unaccounted.merge(name, judgement.unaccounted().size(), Integer::sum);
  }

  int of(String name, Judgement.Result result) {
    return counts.getOrDefault(name, Map.of()).getOrDefault(result, 0);
  }

  int unaccounted(String name) {
    return unaccounted.getOrDefault(name, 0);
  }

  Iterable<String> names() {
    return counts.keySet();
  }

  String table() {
    StringBuilder text = new StringBuilder(String.format(Locale.ROOT, "%-36s", "class"));
    for (Judgement.Result result : Judgement.Result.values()) {
      text.append(String.format(Locale.ROOT, " %12s", result));
    }
    text.append("  ").append(UNACCOUNTED).append('\n');
    counts.forEach(
        (name, results) -> {
          text.append(String.format(Locale.ROOT, "%-36s", name));
          for (Judgement.Result result : Judgement.Result.values()) {
            int count = results.getOrDefault(result, 0);
            text.append(String.format(Locale.ROOT, " %12s", count == 0 ? "." : count));
          }
          text.append("  ").append(unaccounted.get(name)).append('\n');
        });
    return text.toString();
  }
}
