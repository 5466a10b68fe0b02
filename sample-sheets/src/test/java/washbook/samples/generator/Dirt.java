package washbook.samples.generator;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import washbook.functions.scale.SugarScale;

/** What makes a log untidy. */
enum Dirt {
  /** A column with the day of the week before the date. */
  WEEKDAY,
  /** Who has measured: A, B, C ... */
  INITIALS,
  /** A reading written as {@code ~1.05}. */
  ABOUT,
  /** {@code n/a} or a dash in place of a reading. */
  NOTHING_READ,
  /** {@code 1.001?} as the last reading. */
  UNSURE,
  BLANK_ROWS,
  NOTES,
  TEXT_DATES,
  /** Readings as texts, with the decimal comma where the language has one. */
  READINGS_AS_TEXT,
  /** A reading without its temperature. */
  TEMPERATURE_BLANK,
  NEUTRAL_COLUMN,
  CELLAR_TEMPERATURE;

  static Set<Dirt> choose(Choice choice, Layout layout) {
    Set<Dirt> dirt = EnumSet.noneOf(Dirt.class);
    for (Dirt one : values()) {
      if (choice.chance(one == NOTES ? 0.4 : 0.12)) {
        dirt.add(one);
      }
    }
    if (layout == Layout.SENSOR_EXPORT) {
      dirt.retainAll(EnumSet.of(NOTHING_READ, TEMPERATURE_BLANK, TEXT_DATES));
    }
    if (layout == Layout.VESSELS_SHARE_DATES) {
      dirt.removeAll(EnumSet.of(BLANK_ROWS, CELLAR_TEMPERATURE));
    }
    return dirt;
  }

  /** Spoils single cells; never the first reading, on which everything rests. */
  static void spoil(Set<Dirt> dirt, List<Line> lines, Gauge gauge, Words words, Choice choice) {
    if (dirt.contains(READINGS_AS_TEXT)) {
      lines.forEach(l -> l.readingCell = written(l, gauge, words));
    }
    if (dirt.contains(ABOUT)) {
      Line line = inside(lines, choice);
      line.readingCell = "~" + written(line, gauge, words);
      line.kind = Truth.Kind.DOUBTFUL;
    }
    if (dirt.contains(TEMPERATURE_BLANK) && gauge.kind() == Gauge.Kind.HYDROMETER) {
      Line line = inside(lines, choice);
      line.temperatureBlank = true;
      line.kind = Truth.Kind.NOT_COMPUTABLE;
    }
    if (dirt.contains(NOTHING_READ) && gauge.kind() != Gauge.Kind.BOTH) {
      Line line = inside(lines, choice);
      line.readingCell = choice.among("n/a", "-", "—", "?");
      line.kind = Truth.Kind.NO_VALUE;
    }
    if (dirt.contains(UNSURE)) {
      Line line = lines.get(lines.size() - 1);
      line.readingCell = written(line, gauge, words) + "?";
      line.kind = Truth.Kind.DOUBTFUL;
    }
    if (dirt.contains(NOTES)) {
      lines.forEach(l -> l.note = choice.chance(0.4) ? words.one("notes", choice) : l.note);
    }
  }

  private static Line inside(List<Line> lines, Choice choice) {
    return lines.get(choice.whole(1, lines.size() - 2));
  }

  /** A reading as its keeper writes it by hand. */
  static String written(Line line, Gauge gauge, Words words) {
    if (gauge.thousand()) {
      return String.valueOf(Math.round(line.shown * 1000));
    }
    int places =
        gauge.scale() == SugarScale.SG
            ? gauge.hydrometer().step() < 0.001 ? 4 : 3
            : line.shown == Math.rint(line.shown) ? 0 : 1;
    String text = String.format(Locale.ROOT, "%." + places + "f", line.shown);
    return words.language().equals("en") ? text : text.replace('.', ',');
  }
}
