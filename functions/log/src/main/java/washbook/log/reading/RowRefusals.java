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
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/**
 * Why a hydrometer's row is refused, in the words of its log: the cell's own value as it stands,
 * and the range in the log's own unit.
 */
final class RowRefusals {
  /** Digits behind the point that tell readings apart: a hydrometer is read to 0.0005 SG. */
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
  static String quoted(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        ? "'" + grid.text(row, column).strip() + "'"
        : Numbers.round(grid.number(row, column), GRAVITY_DIGITS);
  }

  /** The range of readings on the log's scale. */
  String range() {
    return range(scale, thousands);
  }

  private static String range(ReadingScale scale, boolean thousands) {
    if (scale == ReadingScale.SG && !thousands) {
      return Quantity.GRAVITY.range();
    }
    return inwards(Quantity.GRAVITY.min(), scale, RoundingMode.CEILING)
        + " to "
        + inwards(Quantity.GRAVITY.max(), scale, RoundingMode.FLOOR)
        + scale.sign();
  }

  /** An end of the range, rounded so that it is not refused itself. */
  private static String inwards(double gravity, ReadingScale scale, RoundingMode mode) {
    double value = scale == ReadingScale.SG ? 1000 * gravity : scale.fromGravity(gravity);
    double clean = Double.parseDouble(Numbers.round(value, 12));
    int digits = scale == ReadingScale.GCM3 ? 3 : 1;
    return Numbers.show(BigDecimal.valueOf(clean).setScale(digits, mode).doubleValue());
  }

  /** A gravity on the log's own scale. */
  String show(double gravity) {
    return written.shown(gravity).plain() + scale.sign();
  }

  static String temperatureRange(TemperatureUnit unit) {
    return unit == TemperatureUnit.C
        ? Quantity.SUGAR_TEMPERATURE.range()
        : Numbers.round(unit.fromCelsius(Quantity.SUGAR_TEMPERATURE.min()), 1)
            + " to "
            + Numbers.round(unit.fromCelsius(Quantity.SUGAR_TEMPERATURE.max()), 1)
            + " \u00b0F";
  }

  CellRefusal readingOutside(
      int row, int column, ReadingScale own, boolean inThousandths, boolean tooLow) {
    return outside(
        row, column, "reading " + quoted(grid, row, column), range(own, inThousandths), tooLow);
  }

  static CellRefusal outside(int row, int column, String what, String range, boolean tooLow) {
    return new CellRefusal(
        CellAddress.of(row, column),
        tooLow ? Code.TOO_LOW : Code.TOO_HIGH,
        what + (tooLow ? " is too low" : " is too high") + "; it must be " + range + ".");
  }

  /** A row without a temperature: its cell is blank, or says so in a word. */
  CellRefusal noTemperature(int row, int column, boolean hasColumn) {
    boolean word = hasColumn && grid.kind(row, column) == Grid.Kind.TEXT;
    String text = word ? grid.text(row, column).strip() : "";
    return new CellRefusal(
        CellAddress.of(row, column),
        text.isEmpty() ? Code.BLANK : Code.NOT_A_NUMBER,
        (text.isEmpty() ? "temperature is blank" : "temperature '" + text + "' is no number")
            + "; it must be "
            + temperatureRange(temperatureUnit)
            + ", or the log must say that its readings are corrected.");
  }

  /** A temperature outside the range, from its own column or from behind the reading. */
  CellRefusal temperatureOutside(
      int row, int readingColumn, int temperatureColumn, double temperatureC) {
    boolean tooLow = temperatureC < Quantity.SUGAR_TEMPERATURE.min();
    CellText behind = text(row, readingColumn);
    if (behind != null && !Double.isNaN(behind.temperature)) {
      boolean isC = Math.abs(behind.temperature - temperatureC) <= 1e-9;
      return outside(
          row,
          readingColumn,
          "the temperature in " + quoted(grid, row, readingColumn),
          temperatureRange(isC ? TemperatureUnit.C : TemperatureUnit.F),
          tooLow);
    }
    boolean fromColumn =
        temperatureColumn >= 0 && grid.kind(row, temperatureColumn) != Grid.Kind.BLANK;
    if (!fromColumn) {
      return outside(
          row,
          temperatureColumn >= 0 ? temperatureColumn : readingColumn,
          "temperature " + Numbers.round(temperatureC, 1) + " \u00b0C",
          temperatureRange(TemperatureUnit.C),
          tooLow);
    }
    CellText cell = text(row, temperatureColumn);
    boolean hasUnit = cell != null && cell.form == CellText.Form.TEMPERATURE;
    TemperatureUnit unit = hasUnit ? cell.temperatureUnit : temperatureUnit;
    String sign = hasUnit ? "" : " \u00b0" + unit;
    return outside(
        row,
        temperatureColumn,
        "temperature " + quoted(grid, row, temperatureColumn) + sign,
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
    String what = "reading " + quoted(grid, row, column) + " (corrected " + show(gravity) + ") is ";
    return new CellRefusal(
        CellAddress.of(row, column),
        Code.CONTRADICTION,
        gravity >= originalGravity
            ? what
                + "above the original gravity "
                + show(originalGravity)
                + " and no sugar was added; it must be "
                + range(originalGravity)
            : what
                + "lower than a wash of original gravity "
                + show(originalGravity)
                + " can ferment to; it must be "
                + range(originalGravity));
  }

  private String range(double originalGravity) {
    return inwards(Quantity.GRAVITY.min()) + " to " + show(originalGravity) + sign() + ".";
  }

  private String inwards(double gravity) {
    return scale == ReadingScale.SG && !thousands
        ? Numbers.show(gravity)
        : inwards(gravity, scale, RoundingMode.CEILING);
  }

  private String sign() {
    return scale == ReadingScale.SG && !thousands ? " SG" : "";
  }
}
