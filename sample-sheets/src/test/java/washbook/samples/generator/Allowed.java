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

  /** Chance, where other numbers of logs are made. */
  private static final double ROOM = 1.3;

  /**
   * Logs with a false figure, or no ferments that something was written into. Each has to become 0.
   */
  static final Map<String, Integer> WRONG =
      Map.ofEntries(
          Map.entry("AVERAGES_BELOW", 16),
          Map.entry("BATCH_COLUMN", 38),
          Map.entry("KEY_LINES", 33),
          Map.entry("NAME_LINES", 7),
          Map.entry("PLAIN", 22),
          Map.entry("SECOND_HEADING", 10),
          Map.entry("SENSOR_EXPORT", 3),
          Map.entry("SIDE_BY_SIDE", 11),
          Map.entry("SPIRIT_BELOW", 9),
          Map.entry("TITLE", 16),
          Map.entry("TWO_BELOW", 6),
          Map.entry("UNIT_ROW", 21),
          Map.entry("UNKNOWN_BATCH_COLUMN", 61),
          Map.entry("VESSELS_SHARE_DATES", 1),
          Map.entry("other, told IN_HEADER", 93),
          Map.entry("other, told IN_SHEET_NAME", 146),
          Map.entry("other, told IN_TITLE", 103),
          Map.entry("other, told NOWHERE", 149));

  /** Rows with a reading of which nothing was said. Each has to become 0. */
  static final Map<String, Integer> UNACCOUNTED =
      Map.ofEntries(
          Map.entry("AVERAGES_BELOW", 3),
          Map.entry("BATCH_COLUMN", 23),
          Map.entry("KEY_LINES", 19),
          Map.entry("NAME_LINES", 8),
          Map.entry("PLAIN", 17),
          Map.entry("SECOND_HEADING", 5),
          Map.entry("SIDE_BY_SIDE", 6),
          Map.entry("SPIRIT_BELOW", 6),
          Map.entry("TITLE", 13),
          Map.entry("TWO_BELOW", 13),
          Map.entry("UNIT_ROW", 19),
          Map.entry("UNKNOWN_BATCH_COLUMN", 13),
          Map.entry("VESSELS_SHARE_DATES", 1),
          Map.entry("inside a range", 31));

  /** Logs whose figures changed when nothing about the readings did. Each has to become 0. */
  static final Map<String, Integer> CHANGED =
      Map.ofEntries(
          Map.entry("another language", 181),
          Map.entry("corpus BATTERY_COLUMN", 142),
          Map.entry("corpus COLUMNS_SHUFFLED", 2),
          Map.entry("corpus TABLE_BELOW", 2),
          Map.entry("corpus TABLE_BESIDE", 1),
          Map.entry("corpus WEEKDAY_BEFORE_THE_DATE", 118),
          Map.entry("filled twice", 15),
          Map.entry("made BATTERY_COLUMN", 198),
          Map.entry("made COLUMNS_SHUFFLED", 12),
          Map.entry("made NEUTRAL_COLUMN", 1),
          Map.entry("made TABLE_BESIDE", 7),
          Map.entry("made WEEKDAY_BEFORE_THE_DATE", 57),
          Map.entry("words taken away", 120));

  private Allowed() {}

  /** Notes down a class with more faults than are allowed. */
  static void compare(
      String name, int found, Map<String, Integer> allowed, int logs, List<String> tooMany) {
    int most = allowed.getOrDefault(name, 0);
    if (logs != LOGS) {
      most = (int) Math.ceil(ROOM * most * logs / LOGS);
    }
    if (found > most) {
      tooMany.add(name + ": " + found + " where " + most + " are allowed");
    }
  }
}
