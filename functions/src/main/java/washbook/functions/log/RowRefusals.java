package washbook.functions.log;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Quantity;
import washbook.functions.scale.SugarScale;

/**
 * Why a hydrometer's row is refused, in the words of its log: the cell's own value as it stands,
 * and the range in the log's own unit.
 */
final class RowRefusals {
  /** Digits behind the point that tell readings apart: a hydrometer is read to 0.0005 SG. */
  private static final int GRAVITY_DIGITS = 4;

  private final Grid grid;
  private final SugarScale scale;
  private final boolean perCubicCentimetre;
  private final boolean thousands;
  private final boolean fahrenheit;

  RowRefusals(Grid grid, LogTable table) {
    this.grid = grid;
    ColumnUse reading = table.column(Role.GRAVITY).orElse(null);
    String unit = reading == null || reading.unit().isEmpty() ? "SG" : reading.unit();
    perCubicCentimetre = unit.equals(Units.GRAMS_PER_CUBIC_CENTIMETRE);
    scale = perCubicCentimetre ? SugarScale.KGM3 : SugarScale.valueOf(unit);
    thousands = reading != null && scale == SugarScale.SG && inThousands(table, reading.column());
    fahrenheit = table.column(Role.TEMPERATURE).filter(t -> t.unit().equals("F")).isPresent();
  }

  private boolean inThousands(LogTable table, int column) {
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double value = ColumnFacts.plainNumber(grid, row, column);
      if (ColumnFacts.looksLikeGravity(value)) {
        return value >= 100;
      }
    }
    return false;
  }

  /** A cell's value as a person reads it: a text in quotes, a number without endless digits. */
  static String quoted(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        ? "'" + grid.text(row, column).strip() + "'"
        : Numbers.round(grid.number(row, column), GRAVITY_DIGITS);
  }

  /** The range of readings on the log's scale. */
  String range() {
    return range(scale, perCubicCentimetre, thousands);
  }

  private static String range(SugarScale scale, boolean perCubicCentimetre, boolean thousands) {
    if (scale == SugarScale.SG && !thousands) {
      return Quantity.GRAVITY.range();
    }
    return inwards(Quantity.GRAVITY.min(), scale, perCubicCentimetre, RoundingMode.CEILING)
        + " to "
        + inwards(Quantity.GRAVITY.max(), scale, perCubicCentimetre, RoundingMode.FLOOR)
        + unit(scale, perCubicCentimetre);
  }

  /** An end of the range, rounded so that it is not refused itself. */
  private static String inwards(
      double gravity, SugarScale scale, boolean perCubicCentimetre, RoundingMode mode) {
    double value = scale == SugarScale.SG ? 1000 * gravity : scale.fromGravity(gravity);
    double clean = Double.parseDouble(Numbers.round(value, 9));
    double end = perCubicCentimetre ? clean / 1000 : clean;
    return Numbers.show(
        BigDecimal.valueOf(end).setScale(perCubicCentimetre ? 3 : 1, mode).doubleValue());
  }

  /** The unit's sign as it stands behind a number. */
  private static String unit(SugarScale scale, boolean perCubicCentimetre) {
    return perCubicCentimetre
        ? " g/cm\u00b3"
        : switch (scale) {
          case SG -> "";
          case POINTS -> " points";
          case BRIX -> " \u00b0Bx";
          case PLATO -> " \u00b0P";
          case BALLING -> " \u00b0Balling";
          case BAUME -> " \u00b0B\u00e9";
          case OECHSLE -> " \u00b0Oe";
          case KMW -> " \u00b0KMW";
          case TWADDELL -> " \u00b0Tw";
          case KGM3 -> " kg/m\u00b3";
          case GL -> " g/L";
          case POTENTIAL -> " % vol";
        };
  }

  /** A gravity on the log's own scale. */
  String show(double gravity) {
    if (scale == SugarScale.SG) {
      return thousands
          ? String.format(Locale.ROOT, "%.1f", 1000 * gravity)
          : String.format(Locale.ROOT, "%.4f", gravity);
    }
    double value = scale.fromGravity(gravity);
    String shown =
        perCubicCentimetre
            ? String.format(Locale.ROOT, "%.4f", value / 1000)
            : String.format(Locale.ROOT, "%.2f", value);
    return shown + unit(scale, perCubicCentimetre);
  }

  String temperatureRange(boolean inFahrenheit) {
    return inFahrenheit
        ? Numbers.round(Quantity.SUGAR_TEMPERATURE.min() * 1.8 + 32, 1)
            + " to "
            + Numbers.round(Quantity.SUGAR_TEMPERATURE.max() * 1.8 + 32, 1)
            + " \u00b0F"
        : Quantity.SUGAR_TEMPERATURE.range();
  }

  CellRefusal readingOutside(
      int row, int column, SugarScale own, boolean inOtherSize, boolean tooLow) {
    String range =
        own == SugarScale.SG ? range(own, false, inOtherSize) : range(own, inOtherSize, false);
    return outside(row, column, "reading " + quoted(grid, row, column), range, tooLow);
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
            + temperatureRange(fahrenheit)
            + ", or the log must say that its readings are corrected.");
  }

  /** A temperature outside the range, from its own column or from behind the reading. */
  CellRefusal temperatureOutside(
      int row, int readingColumn, int temperatureColumn, double temperatureC) {
    boolean tooLow = temperatureC < Quantity.SUGAR_TEMPERATURE.min();
    CellText behind = text(row, readingColumn);
    if (behind != null && !Double.isNaN(behind.temperature)) {
      boolean inF = Math.abs(behind.temperature - temperatureC) > 1e-9;
      return outside(
          row,
          readingColumn,
          "the temperature in " + quoted(grid, row, readingColumn),
          temperatureRange(inF),
          tooLow);
    }
    boolean fromColumn =
        temperatureColumn >= 0 && grid.kind(row, temperatureColumn) != Grid.Kind.BLANK;
    if (!fromColumn) {
      return outside(
          row,
          temperatureColumn >= 0 ? temperatureColumn : readingColumn,
          "temperature " + Numbers.round(temperatureC, 1) + " \u00b0C",
          temperatureRange(false),
          tooLow);
    }
    CellText cell = text(row, temperatureColumn);
    boolean hasUnit = cell != null && cell.form == CellText.Form.TEMPERATURE;
    boolean inF = hasUnit ? cell.temperatureInF : fahrenheit;
    String sign = hasUnit ? "" : inF ? " \u00b0F" : " \u00b0C";
    return outside(
        row,
        temperatureColumn,
        "temperature " + quoted(grid, row, temperatureColumn) + sign,
        temperatureRange(inF),
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
    return scale == SugarScale.SG && !thousands
        ? Numbers.show(gravity)
        : inwards(gravity, scale, perCubicCentimetre, RoundingMode.CEILING);
  }

  private String sign() {
    return scale == SugarScale.SG && !thousands ? " SG" : "";
  }
}
