package washbook.log.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.WrittenScale;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/**
 * Why a hydrometer's row is refused, in the words of its log: the cell's own value as it stands,
 * and the range in the log's own unit.
 */
public final class RowRefusals {
  /** Decimal places that tell readings apart: a hydrometer is read to 0.0005 SG. */
  private static final int GRAVITY_DIGITS = 4;

  private final Grid grid;
  private final WrittenScale written;
  private final ReadingScale scale;
  private final boolean thousands;
  private final TemperatureUnit temperatureUnit;

  RowRefusals(Grid grid, LogTable table) {
    this.grid = grid;
    written = WrittenScale.of(grid, table);
    scale = written.scale();
    thousands = written.inThousandths();
    temperatureUnit = HydrometerRows.unitOf(table.column(Role.TEMPERATURE).orElse(null));
  }

  /** A cell's value as a person reads it: a text in quotes, a number without endless digits. */
  static Object quoted(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        ? quoted(grid.text(row, column).strip())
        : new Figure(Numbers.round(grid.number(row, column), GRAVITY_DIGITS));
  }

  static Message quoted(String text) {
    return Message.of("quoted", text);
  }

  /** The range of readings on the log's scale. */
  Message range() {
    return range(scale, thousands);
  }

  private static Message range(ReadingScale scale, boolean thousands) {
    if (scale == ReadingScale.SG && !thousands) {
      return range(Quantity.GRAVITY.min(), Quantity.GRAVITY.max(), sign(scale));
    }
    return Message.of(
        "range",
        inwards(Quantity.GRAVITY.min(), scale, RoundingMode.CEILING),
        inwards(Quantity.GRAVITY.max(), scale, RoundingMode.FLOOR),
        scale == ReadingScale.SG ? "" : sign(scale));
  }

  /** A range in words, from low to high with the sign of its unit. */
  public static Message range(double low, double high, Object sign) {
    return Message.of("range", new Figure(Numbers.show(low)), new Figure(Numbers.show(high)), sign);
  }

  /** A scale's name after a number, with the space before it. */
  private static Object sign(ReadingScale scale) {
    return switch (scale) {
      case SG, POINTS -> Message.of("unit", Message.of("scale." + scale));
      default -> scale.sign();
    };
  }

  /** An end of the range, rounded so that it is not refused itself. */
  private static Figure inwards(double gravity, ReadingScale scale, RoundingMode mode) {
    double value = scale == ReadingScale.SG ? 1000 * gravity : scale.fromGravity(gravity);
    double clean = Double.parseDouble(Numbers.round(value, 12));
    int digits = scale == ReadingScale.GCM3 ? 3 : 1;
    return new Figure(Numbers.show(BigDecimal.valueOf(clean).setScale(digits, mode).doubleValue()));
  }

  /** A gravity on the log's own scale. */
  Message show(double gravity) {
    return Message.of(
        "amount", written.shown(gravity), scale == ReadingScale.SG ? "" : sign(scale));
  }

  /** A difference of gravities on the log's own scale. */
  Message difference(double gravity) {
    String plain =
        written.isPlainGravity()
            ? Numbers.round(gravity, GRAVITY_DIGITS)
            : Numbers.round(written.change(gravity), 1);
    return Message.of("amount", new Figure(plain), thousands ? "" : sign(scale));
  }

  static Message temperatureRange(TemperatureUnit unit) {
    return Message.of(
        "range",
        degrees(unit, Quantity.SUGAR_TEMPERATURE.min()),
        degrees(unit, Quantity.SUGAR_TEMPERATURE.max()),
        " \u00b0" + unit);
  }

  private static Figure degrees(TemperatureUnit unit, double celsius) {
    return new Figure(Numbers.round(unit.fromCelsius(celsius), 1));
  }

  CellRefusal readingOutside(
      int row, int column, ReadingScale own, boolean inThousandths, boolean tooLow) {
    return outside(
        grid.address(row, column),
        "reading",
        quoted(grid, row, column),
        range(own, inThousandths),
        tooLow);
  }

  /**
   * @param what what is outside: the message's key without its ending
   */
  static CellRefusal outside(
      String cell, String what, Object shown, Message range, boolean tooLow) {
    return new CellRefusal(
        cell,
        tooLow ? Code.TOO_LOW : Code.TOO_HIGH,
        Message.of(what + (tooLow ? ".tooLow" : ".tooHigh"), shown, range));
  }

  /** A row without a temperature: its cell is blank, or says so in a word. */
  CellRefusal noTemperature(int row, int column, boolean hasColumn) {
    boolean word = hasColumn && grid.kind(row, column) == Grid.Kind.TEXT;
    String text = word ? grid.text(row, column).strip() : "";
    Message range = temperatureRange(temperatureUnit);
    return new CellRefusal(
        grid.address(row, column),
        text.isEmpty() ? Code.BLANK : Code.NOT_A_NUMBER,
        text.isEmpty()
            ? Message.of("temperature.blank", range)
            : Message.of("temperature.word", quoted(text), range));
  }

  /** A temperature outside the range, from its own column or from after the reading. */
  CellRefusal temperatureOutside(
      int row, int readingColumn, int temperatureColumn, double temperatureC) {
    boolean tooLow = temperatureC < Quantity.SUGAR_TEMPERATURE.min();
    CellText behind = text(row, readingColumn);
    if (behind != null && !Double.isNaN(behind.temperature)) {
      boolean isC = Math.abs(behind.temperature - temperatureC) <= 1e-9;
      return outside(
          grid.address(row, readingColumn),
          "temperature.inReading",
          quoted(grid, row, readingColumn),
          temperatureRange(isC ? TemperatureUnit.C : TemperatureUnit.F),
          tooLow);
    }
    boolean fromColumn =
        temperatureColumn >= 0 && grid.kind(row, temperatureColumn) != Grid.Kind.BLANK;
    if (!fromColumn) {
      return outside(
          grid.address(row, temperatureColumn >= 0 ? temperatureColumn : readingColumn),
          "temperature",
          Message.of("amount", degrees(temperatureUnit, temperatureC), " \u00b0" + temperatureUnit),
          temperatureRange(temperatureUnit),
          tooLow);
    }
    CellText cell = text(row, temperatureColumn);
    boolean hasUnit = cell != null && cell.form == CellText.Form.TEMPERATURE;
    TemperatureUnit unit = hasUnit ? cell.temperatureUnit : temperatureUnit;
    return outside(
        grid.address(row, temperatureColumn),
        "temperature",
        Message.of("amount", quoted(grid, row, temperatureColumn), hasUnit ? "" : " \u00b0" + unit),
        temperatureRange(unit),
        tooLow);
  }

  private CellText text(int row, int column) {
    return column >= 0 && grid.kind(row, column) == Grid.Kind.TEXT
        ? CellText.read(grid.text(row, column))
        : null;
  }

  /** A reading that does not go with the batch's original gravity. */
  CellRefusal contradiction(int row, int column, double gravity, double originalGravity) {
    return new CellRefusal(
        grid.address(row, column),
        Code.CONTRADICTION,
        Message.of(
            gravity >= originalGravity ? "original.above" : "original.below",
            quoted(grid, row, column),
            show(gravity),
            show(originalGravity),
            Message.of(
                "range",
                lowest(),
                show(originalGravity),
                written.isPlainGravity() ? sign(scale) : "")));
  }

  private Figure lowest() {
    return written.isPlainGravity()
        ? new Figure(Numbers.show(Quantity.GRAVITY.min()))
        : inwards(Quantity.GRAVITY.min(), scale, RoundingMode.CEILING);
  }
}
