package washbook.samples.generator;

import java.util.List;
import java.util.Map;

/**
 * How much may be wrong today, class by class. What is not named must be right. Counts are lowered
 * when the recogniser learns, and never raised; an entry that has become 0 is taken out.
 */
final class Allowed {
  /** The number of logs that the counts are for. */
  static final int LOGS = 2000;

  /** Standard deviations of chance, where other numbers of logs are made. */
  private static final double ROOM = 3;

  /**
   * Logs with a false figure, or no ferments that something was written into. Each has to become 0.
   */
  static final Map<String, Integer> WRONG =
      Map.ofEntries(
          Map.entry("AVERAGES_BELOW", 1),
          Map.entry("BATCH_COLUMN", 6),
          Map.entry("KEY_LINES", 7),
          Map.entry("PLAIN", 2),
          Map.entry("SECOND_HEADING", 2),
          Map.entry("TITLE", 3),
          Map.entry("VESSELS_SHARE_DATES", 2),
          Map.entry("other, told IN_SHEET_NAME", 1),
          Map.entry("other, told IN_TITLE", 1),
          Map.entry("other, told NOWHERE", 1));

  /** Rows with a reading of which nothing was said. Each has to become 0. */
  static final Map<String, Integer> UNACCOUNTED = Map.of();

  /** Logs whose figures changed when nothing about the readings did. Each has to become 0. */
  static final Map<String, Integer> CHANGED =
      Map.ofEntries(
          Map.entry("another language", 152),
          Map.entry("corpus COLUMNS_SHUFFLED", 3),
          Map.entry("corpus TABLE_BELOW", 1),
          Map.entry("corpus TABLE_BESIDE", 1),
          Map.entry("corpus WEEKDAY_BEFORE_THE_DATE", 3),
          Map.entry("made BATTERY_COLUMN", 7),
          Map.entry("made BLANK_ROW", 1),
          Map.entry("made COLUMNS_SHUFFLED", 6),
          Map.entry("made INITIALS", 1),
          Map.entry("made SHEET_RENAMED", 3),
          Map.entry("made TABLE_BESIDE", 9),
          Map.entry("made WEEKDAY_BEFORE_THE_DATE", 8),
          Map.entry("words taken away", 120));

  private Allowed() {}

  /** Notes down a class with more faults than are allowed. */
  static void compare(
      String name, int found, Map<String, Integer> allowed, int logs, List<String> tooMany) {
    int most = allowed.getOrDefault(name, 0);
    if (logs != LOGS) {
      double times = (double) logs / LOGS;
      double chance = times * Math.sqrt(most) + Math.sqrt(times * most);
      most = (int) Math.ceil(times * most + ROOM * chance);
    }
    if (found > most) {
      tooMany.add(name + ": " + found + " where " + most + " are allowed");
    }
  }
}
