package washbook.samples.corpus;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import washbook.functions.log.Role;

/** How often each role was recognised, missed, and seen where it was not. */
final class Tally {
  private static final int RIGHT = 0;
  private static final int FALSE = 1;
  private static final int MISSED = 2;

  private final Map<Role, int[]> counts = new EnumMap<>(Role.class);

  void count(Role expected, Role taken) {
    if (expected == taken) {
      of(expected)[RIGHT]++;
    } else {
      of(expected)[MISSED]++;
      if (taken != null) {
        of(taken)[FALSE]++;
      }
    }
  }

  private int[] of(Role role) {
    return counts.computeIfAbsent(role, r -> new int[3]);
  }

  double precision(Role role) {
    int[] c = of(role);
    return c[RIGHT] / (double) Math.max(1, c[RIGHT] + c[FALSE]);
  }

  double recall(Role role) {
    int[] c = of(role);
    return c[RIGHT] / (double) Math.max(1, c[RIGHT] + c[MISSED]);
  }

  String table() {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            "%-26s %6s %6s %6s %10s %8s%n",
            "role", "right", "false", "missed", "precision", "recall"));
    counts.forEach(
        (role, c) ->
            text.append(
                String.format(
                    Locale.ROOT,
                    "%-26s %6d %6d %6d %9.1f%% %7.1f%%%n",
                    role,
                    c[RIGHT],
                    c[FALSE],
                    c[MISSED],
                    100 * precision(role),
                    100 * recall(role))));
    return text.toString();
  }
}
