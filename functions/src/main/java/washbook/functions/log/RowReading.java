package washbook.functions.log;

import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.catalogue.Quantity;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.reading.Hydrometer;
import washbook.functions.reading.Refractometer;
import washbook.functions.scale.SugarScale;

/**
 * Reads one row of a table after the other and makes its reading right. One object serves a whole
 * table: nothing is created for a row that is in order.
 */
final class RowReading {
  /** What a row turned out to be. */
  enum State {
    /** No reading in it. */
    NOTHING,
    /** {@link #gravity} and {@link #temperatureC} are set. */
    READ,
    /** {@link #refusal} says why not. */
    REFUSED
  }

  private static final int NONE = -1;

  private final Grid grid;
  private final LogTable table;
  private final ColumnUse readingUse;
  private Pairs.Unit pairUnit;
  private final Settings settings;
  private final int gravityColumn;
  private final SugarScale scale;
  private final boolean perCubicCentimetre;
  private final double lowest;
  private final double highest;
  private final int temperatureColumn;
  private final boolean fahrenheit;
  private final int refractometerColumn;
  private final RefractometerReading refractometer;

  /** What the refractometer showed before the ferment, °Bx; set for every batch. */
  double originalBrix = Double.NaN;

  /** What the hydrometer shows, as SG, and where that scale is right. */
  double gravity;

  double calibrationC;

  /** What the refractometer shows in °Bx when there is no hydrometer reading, else NaN. */
  double presentBrix = Double.NaN;

  double temperatureC;
  CellRefusal refusal;

  RowReading(Grid grid, LogTable table) {
    this.grid = grid;
    this.table = table;
    this.settings = table.settings();
    readingUse = table.column(Role.GRAVITY).orElse(null);
    gravityColumn = readingUse == null ? NONE : readingUse.column();
    String unit = readingUse == null || readingUse.unit().isEmpty() ? "SG" : readingUse.unit();
    perCubicCentimetre = unit.equals(Units.GRAMS_PER_CUBIC_CENTIMETRE);
    scale = perCubicCentimetre ? SugarScale.KGM3 : SugarScale.valueOf(unit);
    lowest = scale.fromGravity(Quantity.GRAVITY.min());
    highest = scale.fromGravity(Quantity.GRAVITY.max());
    ColumnUse temperature = table.column(Role.TEMPERATURE).orElse(null);
    temperatureColumn = temperature == null ? NONE : temperature.column();
    fahrenheit = temperature != null && temperature.unit().equals("F");
    ColumnUse refractometer = table.column(Role.REFRACTOMETER).orElse(null);
    this.refractometer = new RefractometerReading(grid, refractometer);
    refractometerColumn = refractometer == null ? NONE : refractometer.column();
  }

  /** Reads a row: its hydrometer reading, or where there is none its refractometer reading. */
  State read(int row) {
    presentBrix = Double.NaN;
    State state = readHydrometer(row);
    return state == State.NOTHING && refractometerColumn != NONE ? readRefractometer(row) : state;
  }

  /** Reads a row's refractometer reading, whatever its hydrometer shows. */
  State readRefractometer(int row) {
    State state = refractometer.read(row);
    refusal = refractometer.refusal;
    presentBrix = state == State.READ ? refractometer.brix : presentBrix;
    return state;
  }

  boolean hasRefractometer() {
    return refractometerColumn != NONE;
  }

  private State readHydrometer(int row) {
    refusal = null;
    temperatureC = Double.NaN;
    if (gravityColumn == NONE) {
      return State.NOTHING;
    }
    switch (grid.kind(row, gravityColumn)) {
      case BLANK -> {
        return State.NOTHING;
      }
      case NUMBER -> {
        if (!gravityOf(row, grid.number(row, gravityColumn), scale)) {
          return refusal == null ? State.NOTHING : State.REFUSED;
        }
      }
      case TEXT -> {
        CellText cell = CellText.read(grid.text(row, gravityColumn));
        if (cell.form == CellText.Form.NOTHING) {
          return State.NOTHING;
        }
        if (!gravityOfText(row, cell)) {
          return refusal == null ? State.NOTHING : State.REFUSED;
        }
      }
      case DATE -> refuse(row, gravityColumn, Code.NOT_A_NUMBER, "reading is a date or time");
      case LOGICAL, ERROR ->
          refuse(row, gravityColumn, Code.NOT_A_NUMBER, "reading is an error or a truth value");
    }
    if (refusal != null) {
      return State.REFUSED;
    }
    return temperature(row) ? State.READ : State.REFUSED;
  }

  private boolean gravityOfText(int row, CellText cell) {
    if (cell.form == CellText.Form.PAIR && !takePair(row, cell)) {
      return false;
    }
    if (cell.form != CellText.Form.VALUE) {
      refuse(
          row,
          gravityColumn,
          Code.NOT_A_NUMBER,
          "reading '" + grid.text(row, gravityColumn) + "' is not a single number");
      return false;
    }
    SugarScale own = scale;
    if (!cell.unit.isEmpty()) {
      own = Units.sugarScale(cell.unit);
      if (own == null) {
        refuse(
            row,
            gravityColumn,
            Code.UNKNOWN_WORD,
            "reading '"
                + grid.text(row, gravityColumn)
                + "' has the unit '"
                + cell.unit
                + "', which is no scale of sugar");
        return false;
      }
    }
    if (!Double.isNaN(cell.temperature)) {
      temperatureC = cell.temperatureInF ? (cell.temperature - 32) / 1.8 : cell.temperature;
    }
    return gravityOf(row, cell.value, own);
  }

  /** Makes a value with its temperature of a pair, where what stands behind it is settled. */
  private boolean takePair(int row, CellText cell) {
    String text = grid.text(row, gravityColumn);
    if (!Pairs.isTemperature(readingUse, cell)) {
      refuse(
          row,
          gravityColumn,
          Code.NOT_A_NUMBER,
          "reading '" + text + "' holds two numbers, and nothing says what the second one is");
      return false;
    }
    if (pairUnit == null) {
      pairUnit = Pairs.unit(grid, table, readingUse);
    }
    if (pairUnit == Pairs.Unit.OPEN) {
      refuse(
          row,
          gravityColumn,
          Code.NOT_A_NUMBER,
          "reading '" + text + "' has a temperature that may be in \u00b0C or \u00b0F");
      return false;
    }
    cell.temperatureInF = pairUnit == Pairs.Unit.F;
    cell.form = CellText.Form.VALUE;
    return true;
  }

  private boolean gravityOf(int row, double value, SugarScale own) {
    calibrationC = settings.calibrationC();
    if (own == SugarScale.SG) {
      if (value == 0) {
        return false;
      }
      gravity = value >= 100 ? value / 1000 : value;
      if (gravity >= Quantity.GRAVITY.min() && gravity <= Quantity.GRAVITY.max()) {
        return true;
      }
      outside(row, gravityColumn, "reading", value, Quantity.GRAVITY.range(), gravity < 1);
      return false;
    }
    double shown = perCubicCentimetre && own == scale ? value * 1000 : value;
    double low = own == scale ? lowest : own.fromGravity(Quantity.GRAVITY.min());
    double high = own == scale ? highest : own.fromGravity(Quantity.GRAVITY.max());
    if (!(shown >= low && shown <= high)) {
      outside(
          row,
          gravityColumn,
          "reading",
          value,
          String.format(
              java.util.Locale.ROOT,
              "%.1f to %.1f %s (%s)",
              low,
              high,
              own,
              Quantity.GRAVITY.range()),
          shown < low);
      return false;
    }
    gravity = own.toGravity(shown);
    if (OtherBrixScale.is(own, settings)) {
      gravity = Hydrometer.gravityOfBrixScale(shown, calibrationC);
      calibrationC = Settings.USUAL_CALIBRATION;
    }
    return true;
  }

  private boolean temperature(int row) {
    if (Double.isNaN(temperatureC)) {
      temperatureC = temperatureOfRow(row);
      if (refusal != null) {
        return false;
      }
    }
    if (Double.isNaN(temperatureC)) {
      temperatureC = settings.temperatureC();
    }
    if (Double.isNaN(temperatureC)) {
      refusal =
          new CellRefusal(
              CellAddress.of(row, temperatureColumn == NONE ? gravityColumn : temperatureColumn),
              Code.BLANK,
              "temperature is blank; it must be "
                  + Quantity.SUGAR_TEMPERATURE.range()
                  + ", or the log must say that its readings are corrected.");
      return false;
    }
    if (temperatureC >= Quantity.SUGAR_TEMPERATURE.min()
        && temperatureC <= Quantity.SUGAR_TEMPERATURE.max()) {
      return true;
    }
    outside(
        row,
        temperatureColumn == NONE ? gravityColumn : temperatureColumn,
        "temperature",
        temperatureC,
        Quantity.SUGAR_TEMPERATURE.range(),
        temperatureC < Quantity.SUGAR_TEMPERATURE.min());
    return false;
  }

  private double temperatureOfRow(int row) {
    if (temperatureColumn == NONE) {
      return Double.NaN;
    }
    switch (grid.kind(row, temperatureColumn)) {
      case NUMBER:
        double value = grid.number(row, temperatureColumn);
        return fahrenheit ? (value - 32) / 1.8 : value;
      case TEXT:
        String text = grid.text(row, temperatureColumn);
        CellText cell = CellText.read(text);
        if (cell.form == CellText.Form.NOTHING) {
          return Double.NaN;
        }
        if (cell.form == CellText.Form.TEMPERATURE) {
          return cell.temperatureInF ? (cell.temperature - 32) / 1.8 : cell.temperature;
        }
        if (cell.form == CellText.Form.VALUE
            && cell.unit.isEmpty()
            && Double.isNaN(cell.temperature)) {
          return fahrenheit ? (cell.value - 32) / 1.8 : cell.value;
        }
        if (Statement.saysCorrected(text)) {
          return settings.correctedAlready() ? settings.temperatureC() : settings.calibrationC();
        }
        refuse(
            row,
            temperatureColumn,
            Code.NOT_A_NUMBER,
            "temperature '" + text + "' is not a temperature");
        return Double.NaN;
      case BLANK:
        return Double.NaN;
      default:
        refuse(
            row,
            temperatureColumn,
            Code.NOT_A_NUMBER,
            "temperature is a date, an error or a truth value");
        return Double.NaN;
    }
  }

  private void refuse(int row, int column, Code code, String what) {
    refusal =
        RowRefusals.unreadable(
            row,
            column,
            code,
            what,
            column == temperatureColumn ? Quantity.SUGAR_TEMPERATURE : Quantity.GRAVITY);
  }

  private void outside(
      int row, int column, String name, double value, String range, boolean tooLow) {
    refusal = RowRefusals.outside(row, column, name, value, range, tooLow);
  }

  /** Address of a row's reading. */
  String cell(int row) {
    return CellAddress.of(row, byRefractometer() ? refractometerColumn : gravityColumn);
  }

  /** Whether the reading just read is the refractometer's. */
  boolean byRefractometer() {
    return !Double.isNaN(presentBrix);
  }

  /** SG 20/20 of the reading just read, taken as a sugar solution. */
  double asSugarSolution() {
    if (byRefractometer()) {
      return byRefractometer(presentBrix);
    }
    return Hydrometer.correctedGravity(gravity, temperatureC, calibrationC, settings.offset());
  }

  /**
   * SG 20/20 of the reading just read in a wash of that original extract; NaN outside the model.
   */
  double asWash(double originalExtract) {
    if (byRefractometer()) {
      return byRefractometer(originalBrix);
    }
    double density =
        Hydrometer.liquidDensity(gravity - settings.offset(), temperatureC, calibrationC);
    double trueExtract =
        FermentingWash.trueExtractOfDensity(originalExtract, density, temperatureC);
    return trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT
        ? FermentingWash.gravity(originalExtract, trueExtract)
        : Double.NaN;
  }

  private double byRefractometer(double original) {
    try {
      return Refractometer.gravity(original, presentBrix, settings.refractometerFactor());
    } catch (RefusedException refused) {
      return presentBrix > original ? Double.POSITIVE_INFINITY : Double.NaN;
    }
  }

  /** Refuses the row just read because its gravity does not go with the original one. */
  CellRefusal contradiction(int row, double originalGravity) {
    return byRefractometer()
        ? RowRefusals.refractometer(cell(row), presentBrix, originalBrix)
        : RowRefusals.gravity(cell(row), asSugarSolution(), originalGravity);
  }

  /** The reading just read as an argument of a formula: its cell where it is a number. */
  String gravityFormula(int row, FormulaSource source) {
    if (byRefractometer()) {
      return null;
    }
    if (grid.kind(row, gravityColumn) != Grid.Kind.NUMBER) {
      return Numbers.show(gravity);
    }
    String cell = cell(row) + (perCubicCentimetre ? "*1000" : "");
    if (scale == SugarScale.SG) {
      return grid.number(row, gravityColumn) >= 100 ? cell + "/1000" : cell;
    }
    return OtherBrixScale.gravityFormula(cell, scale, settings, source);
  }

  /** The temperature just read as an argument of a formula. */
  String temperatureFormula(int row, FormulaSource source) {
    if (temperatureColumn == NONE || grid.kind(row, temperatureColumn) != Grid.Kind.NUMBER) {
      return Numbers.show(temperatureC);
    }
    String cell = CellAddress.of(row, temperatureColumn);
    return fahrenheit ? source.formula("CONVERT", java.util.List.of(cell, "\"F\"", "\"C\"")) : cell;
  }

  /** The present refractometer reading as an argument of a formula. */
  String presentBrixFormula(int row) {
    return refractometer.formula(row);
  }
}
