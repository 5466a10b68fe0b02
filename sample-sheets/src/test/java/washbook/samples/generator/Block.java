package washbook.samples.generator;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** One table of a ferment log on its way into the sheet. */
final class Block {
  /**
   * A column.
   *
   * @param unit what a unit row holds under the header
   * @param isReading whether its values are readings
   */
  record Column(String header, String unit, boolean isReading, Function<Line, Object> cell) {}

  private final Sheet sheet;
  private final List<Truth.Row> truth;
  final List<Column> columns = new ArrayList<>();

  Block(Sheet sheet, List<Truth.Row> truth) {
    this.sheet = sheet;
    this.truth = truth;
  }

  Block add(String header, String unit, Function<Line, Object> cell) {
    columns.add(new Column(header, unit, false, cell));
    return this;
  }

  Block reading(String header, String unit, Function<Line, Object> cell) {
    columns.add(new Column(header, unit, true, cell));
    return this;
  }

  void header(int row, int firstColumn) {
    for (int i = 0; i < columns.size(); i++) {
      sheet.put(row, firstColumn + i, columns.get(i).header());
    }
  }

  void units(int row, int firstColumn) {
    for (int i = 0; i < columns.size(); i++) {
      sheet.put(row, firstColumn + i, columns.get(i).unit());
    }
  }

  void line(int row, int firstColumn, Line line) {
    List<Integer> readings = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      sheet.put(row, firstColumn + i, columns.get(i).cell().apply(line));
      if (columns.get(i).isReading()) {
        readings.add(firstColumn + i);
      }
    }
    truth.add(truth(row, readings, line));
  }

  static Truth.Row truth(int row, List<Integer> readings, Line line) {
    return new Truth.Row(
        row, readings, line.kind, line.gravity, line.gravityError, line.abv, line.abvError);
  }

  static Function<Line, Object> date(Set<Dirt> dirt, Words words, Choice choice, boolean clock) {
    if (clock) {
      return Line::time;
    }
    if (!dirt.contains(Dirt.TEXT_DATES)) {
      return l -> l.time().toLocalDate();
    }
    String pattern =
        words.language().equals("en")
            ? choice.among("d MMM yyyy", "d MMMM yyyy", "yyyy-MM-dd")
            : choice.among("d.M.yyyy", "dd.MM.yyyy", "d MMMM yyyy");
    DateTimeFormatter format = DateTimeFormatter.ofPattern(pattern, words.locale());
    return l -> format.format(l.time());
  }

  static Function<Line, Object> weekday(Words words) {
    return l -> words.all("weekdays").get(l.time().getDayOfWeek().getValue() - 1);
  }

  static Function<Line, Object> value(Gauge gauge, Headings headings, Words words) {
    return l -> {
      if (l.readingCell != null) {
        return l.readingCell;
      }
      if (headings.units == Headings.UnitPlace.CELLS && !headings.readingUnit.isEmpty()) {
        return Dirt.written(l, gauge, words) + " " + headings.readingUnit;
      }
      return gauge.thousand() ? (Object) (double) Math.round(l.shown * 1000) : (Object) l.shown;
    };
  }

  static Function<Line, Object> temperature(Headings headings, Words words) {
    return l -> {
      if (l.temperatureBlank) {
        return null;
      }
      if (headings.units == Headings.UnitPlace.CELLS) {
        String text = Sheet.shown(l.temperature) + " " + headings.temperatureUnit;
        return words.language().equals("en") ? text : text.replace('.', ',');
      }
      return l.temperature;
    };
  }
}
