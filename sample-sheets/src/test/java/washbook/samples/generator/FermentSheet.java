package washbook.samples.generator;

import java.util.List;
import java.util.function.Function;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Refractometer;

/** Lays the lines of a ferment log out on a sheet. */
final class FermentSheet {
  private final FermentLog log;
  private final Words words;
  private final Choice style;
  private final Choice wording;
  private final Sheet sheet;
  private int row;

  FermentSheet(FermentLog log) {
    this.log = log;
    words = log.words;
    style = log.style;
    wording = log.wording;
    sheet = new Sheet(log.wordless ? "Sheet1" : named(words.one("sheet", wording), 0));
  }

  private String named(String pattern, int batch) {
    return pattern.replace("{n}", log.batches.get(batch).get(0).batch);
  }

  Sheet make() {
    if (!log.wordless) {
      above();
    }
    Function<Line, Object> date =
        Block.date(log.dirt, words, wording, log.layout == Layout.SENSOR_EXPORT);
    switch (log.layout) {
      case SIDE_BY_SIDE -> sideBySide(date);
      case VESSELS_SHARE_DATES -> vessels(date);
      case TWO_BELOW -> twoBelow(date);
      case NAME_LINES -> nameLines(date);
      default -> single(date);
    }
    return sheet;
  }

  private void above() {
    boolean title =
        switch (log.layout) {
          case TITLE, KEY_LINES -> true;
          case SENSOR_EXPORT, SIDE_BY_SIDE, TWO_BELOW -> false;
          default -> style.chance(0.4);
        };
    if (title) {
      boolean several = log.layout.isShared() || log.layout.isSeveral();
      sheet.put(row++, 0, named(words.one(several ? "neutraltitle" : "title", wording), 0));
    }
    if (log.headings.units == Headings.UnitPlace.TITLE) {
      String units = log.headings.readingUnit + " / " + log.headings.temperatureUnit;
      sheet.put(row++, 0, log.isSg() ? "SG" + units : units);
    }
    if (log.gauge.hydrometer().calibrationC() != 20 && log.gauge.needsTemperature()) {
      String at =
          log.gauge.hydrometer().calibrationC() == Instrument.SIXTY_F
              ? style.among("60 °F", "60F")
              : style.among("15 °C", "15°C");
      sheet.put(row++, 0, words.one("calibrated", wording).replace("{t}", at));
    }
    if (log.layout == Layout.KEY_LINES) {
      keyLines();
    }
    row += row > 0 && style.chance(0.7) ? 1 : 0;
  }

  private void keyLines() {
    if (!Double.isNaN(log.statedShown)) {
      boolean strange = style.chance(0.25);
      key(words.one(strange ? "strangeoriginal" : "original", wording), stated());
      if (strange) {
        log.features.add("original in unusual words");
      }
    }
    if (style.chance(0.5)) {
      key(words.one("volume", wording), 22.0);
    }
    if (style.chance(0.5)) {
      key(words.one("yeast", wording), words.one("yeastvalue", wording));
    }
  }

  private Object stated() {
    if (log.gauge.thousand()) {
      return (double) Math.round(log.statedShown * 1000);
    }
    String unit = log.headings.readingUnit;
    return unit.isEmpty() ? (Object) log.statedShown : Sheet.shown(log.statedShown) + " " + unit;
  }

  private void key(String label, Object value) {
    if (style.chance(0.3)) {
      sheet.put(row++, 0, label + ": " + Sheet.shown(value));
    } else {
      sheet.put(row, 0, label + style.among("", ":"));
      sheet.put(row++, 1, value);
    }
  }

  private Block block(Function<Line, Object> date, boolean inBatches) {
    Block block = new Block(sheet, log.truth);
    Headings heads = log.headings;
    if (log.dirt.contains(Dirt.WEEKDAY)) {
      String header = style.chance(0.5) ? "" : words.one("weekday", wording);
      block.add(header, "", Block.weekday(words));
    }
    block.add(words.one("date", wording), "", date);
    if (inBatches) {
      boolean known = log.layout == Layout.BATCH_COLUMN;
      block.add(words.one(known ? "batch" : "otherbatch", wording), "", l -> l.batch);
    }
    if (log.dirt.contains(Dirt.INITIALS)) {
      block.add(words.one("initials", wording), "", l -> l.initials);
    }
    boolean temperatureFirst = style.chance(0.3);
    if (temperatureFirst) {
      temperature(block);
    }
    block.reading(heads.reading, heads.readingUnit, Block.value(log.gauge, heads, words));
    if (log.gauge.kind() == Gauge.Kind.BOTH) {
      block.reading(heads.refractometer, "°Bx", l -> Refractometer.shows(l.visit.moment()));
    }
    if (!temperatureFirst) {
      temperature(block);
    }
    extras(block);
    return block;
  }

  private void temperature(Block block) {
    boolean wanted =
        log.gauge.needsTemperature() ? !log.withoutTemperature : log.wordless || style.chance(0.7);
    if (wanted) {
      block.add(
          log.headings.temperature,
          log.headings.temperatureUnit,
          Block.temperature(log.headings, words));
    }
    if (log.dirt.contains(Dirt.CELLAR_TEMPERATURE) && !log.withoutTemperature) {
      block.add(words.one("cellar", wording) + " °C", "°C", this::cellar);
    }
  }

  private Object cellar(Line line) {
    return Choice.onStep(12 + 3 * Math.sin(line.visit.day()), 0.5);
  }

  private void extras(Block block) {
    if (log.dirt.contains(Dirt.NEUTRAL_COLUMN)) {
      String header = words.one("neutral", wording);
      List<String> values = words.all("neutralvalues");
      block.add(
          header,
          "",
          header.equals("pH")
              ? l -> Choice.onStep(3.4 + 0.05 * Math.sin(7 * l.visit.day()), 0.1)
              : l -> values.get((int) (l.visit.day() * 7) % values.size()));
    }
    boolean noted = log.batches.stream().flatMap(List::stream).anyMatch(l -> !l.note.isEmpty());
    if (noted && !log.wordless) {
      block.add(words.one("note", wording), "", l -> l.note);
    }
    if (log.layout == Layout.SENSOR_EXPORT) {
      block.add(
          words.one("battery", wording), "V", l -> Choice.onStep(4.1 - l.visit.day() / 60, 0.01));
      block.add(
          words.one("signal", wording),
          "dBm",
          l -> Choice.onStep(-67 + 5 * Math.sin(9 * l.visit.day()), 1));
    }
  }

  private void single(Function<Line, Object> date) {
    Block block = block(date, log.layout.isShared());
    lines(block, 0, log.together());
    int width = block.columns.size();
    if (log.layout == Layout.AVERAGES_BELOW) {
      new Below(sheet, words, style, wording).averages(row, width, log.truth);
    } else if (log.layout == Layout.SPIRIT_BELOW) {
      new Below(sheet, words, style, wording).spirit(row + 2);
    }
  }

  /** Header and lines; the row counter ends below them. */
  private void lines(Block block, int column, List<Line> lines) {
    block.header(row++, column);
    if (log.headings.units == Headings.UnitPlace.UNIT_ROW) {
      block.units(row++, column);
    }
    int middle = lines.size() / 2;
    for (int i = 0; i < lines.size(); i++) {
      if (i == middle && log.layout == Layout.SECOND_HEADING) {
        row += style.chance(0.5) ? 1 : 0;
        block.header(row++, column);
      }
      if (i > 0 && log.dirt.contains(Dirt.BLANK_ROWS) && (i * 7 + middle) % 5 == 0) {
        row++;
      }
      block.line(row++, column, lines.get(i));
    }
  }

  private void twoBelow(Function<Line, Object> date) {
    Block block = block(date, false);
    for (int i = 0; i < log.batches.size(); i++) {
      sheet.put(row++, 0, named(words.one("title", wording), i));
      lines(block, 0, log.batches.get(i));
      row += 1 + style.whole(0, 1);
    }
  }

  private void sideBySide(Function<Line, Object> date) {
    Block block = block(date, false);
    int top = row;
    for (int i = 0; i < log.batches.size(); i++) {
      int column = i * (block.columns.size() + 1);
      row = top;
      sheet.put(row++, column, log.batches.get(i).get(0).batch);
      lines(block, column, log.batches.get(i));
    }
  }

  private void nameLines(Function<Line, Object> date) {
    Block block = block(date, false);
    block.header(row++, 0);
    for (List<Line> lines : log.batches) {
      sheet.put(row++, 0, lines.get(0).batch);
      for (Line line : lines) {
        block.line(row++, 0, line);
      }
    }
  }

  private void vessels(Function<Line, Object> date) {
    int vesselRow = row++;
    int headerRow = row++;
    sheet.put(headerRow, 0, words.one("date", wording));
    List<Line> first = log.batches.get(0);
    for (int i = 0; i < first.size(); i++) {
      sheet.put(row + i, 0, date.apply(first.get(i)));
    }
    int shift = 2 * style.whole(0, 2);
    for (int v = 0; v < log.batches.size(); v++) {
      Block block = new Block(sheet, log.truth);
      block.reading(
          log.headings.reading,
          log.headings.readingUnit,
          Block.value(log.gauge, log.headings, words));
      if (!log.withoutTemperature) {
        temperature(block);
      }
      int column = 1 + v * block.columns.size();
      sheet.put(vesselRow, column, words.all("vessel").get(shift + v));
      block.header(headerRow, column);
      for (int i = 0; i < log.batches.get(v).size(); i++) {
        block.line(row + i, column, log.batches.get(v).get(i));
      }
    }
  }
}
