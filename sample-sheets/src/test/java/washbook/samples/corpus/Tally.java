package washbook.samples.corpus;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import washbook.log.Role;

/** How often each role was recognised, missed, and seen where it was not. */
final class Tally {
  private static final int RIGHT = 0;
  private static final int FALSE = 1;
  private static final int MISSED = 2;

  private final Map<Role, int[]> counts = new EnumMap<>(Role.class);
  private final int[] names = new int[3];

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

  /** Counts the names of one table's batches: those that stand in the log, and those taken. */
  void countNames(List<String> standing, List<String> taken, String sheet) {
    for (String name : standing) {
      names[taken.stream().anyMatch(name::equalsIgnoreCase) ? RIGHT : MISSED]++;
    }
    for (String name : taken) {
      boolean right = standing.stream().anyMatch(name::equalsIgnoreCase);
      names[FALSE] += right || name.equals(sheet) ? 0 : 1;
    }
  }

  double namePrecision() {
    return names[RIGHT] / (double) Math.max(1, names[RIGHT] + names[FALSE]);
  }

  double nameRecall() {
    return names[RIGHT] / (double) Math.max(1, names[RIGHT] + names[MISSED]);
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
    counts.forEach((role, c) -> text.append(line(role.name(), c, precision(role), recall(role))));
    text.append(line("name of a batch", names, namePrecision(), nameRecall()));
    return text.toString();
  }

  private static String line(String what, int[] c, double precision, double recall) {
    return String.format(
        Locale.ROOT,
        "%-26s %6d %6d %6d %9.1f%% %7.1f%%%n",
        what,
        c[RIGHT],
        c[FALSE],
        c[MISSED],
        100 * precision,
        100 * recall);
  }
}
