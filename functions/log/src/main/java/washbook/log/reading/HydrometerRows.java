package washbook.log.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.quantity.Quantity;
import washbook.functions.reading.Hydrometer;
import washbook.functions.reading.Refractometer;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.Batch;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/**
 * Reads one row of a table after the other and corrects its reading. One object serves a whole
 * table: nothing is created for a row that is in order.
 */
public final class HydrometerRows {
  /** Corrected as sugar and as wash, one reading differs by rounding. */
  public static final double SAME = 1e-9;

  /** A reading this much above the original gravity may be the same wash read again, SG. */
  static final double LAG = 0.002;

  /** The ends of a scale's range are rounded: 190 points come out as 189.99999999999994. */
  private static final double ROUNDING = 1e-9;

  /** What a row turned out to be. */
  public enum State {
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
  private final LogColumn readingUse;
  private Optional<TemperatureUnit> pairUnit;
  private final LogSettings settings;
  private final int gravityColumn;
  private final ReadingScale scale;
  private final double lowest;
  private final double highest;
  private final RowRefusals refusals;
  private final TotalLabels labels;
  private final int instrumentColumn;
  private final RowInstrument.Kindred[] instruments;
  private final int temperatureColumn;
  private final RowTemperatures temperatures;
  private final int refractometerColumn;
  private final RefractometerRows refractometer;

  /** What the refractometer showed before the ferment, °Bx. */
  private double originalBrix = Double.NaN;

  /** What the hydrometer shows, as SG, and where that scale is calibrated. */
  public double gravity;

  public double calibrationC;

  /** What the refractometer shows in °Bx when there is no hydrometer reading, else NaN. */
  public double presentBrix = Double.NaN;

  public double temperatureC;
  public CellRefusal refusal;

  public HydrometerRows(Grid grid, LogTable table) {
    this.grid = grid;
    this.table = table;
    this.settings = table.settings();
    LogColumn reading = table.column(Role.GRAVITY).orElse(null);
    readingUse = reading;
    gravityColumn = reading == null ? NONE : reading.column();
    scale = ReadingScale.of(reading == null ? "" : reading.unit());
    lowest = scale.fromGravity(Quantity.GRAVITY.min());
    highest = scale.fromGravity(Quantity.GRAVITY.max());
    LogColumn temperature = table.column(Role.TEMPERATURE).orElse(null);
    temperatureColumn = temperature == null ? NONE : temperature.column();
    temperatures = new RowTemperatures(grid, temperature, settings);
    instrumentColumn =
        reading == null ? NONE : table.column(Role.INSTRUMENT).map(LogColumn::column).orElse(NONE);
    instruments =
        instrumentColumn == NONE
            ? new RowInstrument.Kindred[0]
            : RowInstrument.ofRows(grid, instrumentColumn, table.firstRow(), table.lastRow());
    LogColumn refractometer =
        instrumentColumn == NONE ? table.column(Role.REFRACTOMETER).orElse(null) : reading;
    this.refractometer = new RefractometerRows(grid, refractometer);
    this.refusals = new RowRefusals(grid, table);
    this.labels = new TotalLabels(grid, table);
    refractometerColumn = refractometer == null ? NONE : refractometer.column();
  }

  /** The unit of a column of temperatures, °C where it has none. */
  public static TemperatureUnit unitOf(LogColumn temperature) {
    return temperature == null || temperature.unit().isEmpty()
        ? TemperatureUnit.C
        : TemperatureUnit.valueOf(temperature.unit());
  }

  /** To be called before rows of another batch are taken as a wash. */
  public void begin(Batch batch) {
    begin(batch, 0);
  }

  /** To be called when that many steps of a batch have begun. */
  public void begin(Batch batch, int stepsBegun) {
    originalBrix = batch.originalBrix(stepsBegun).orElse(Double.NaN);
  }

  /** To be called before rows are taken as a wash that a refractometer showed so at first. */
  public void begin(double originalBrix) {
    this.originalBrix = originalBrix;
  }

  /** Reads a row: its hydrometer reading, or where there is none its refractometer reading. */
  public State read(int row) {
    presentBrix = Double.NaN;
    boolean refracted = isRefracted(row);
    State state = refracted ? State.NOTHING : readHydrometer(row);
    boolean other = instrumentColumn == NONE ? refractometerColumn != NONE : refracted;
    if (state == State.NOTHING && other) {
      state = readRefractometer(row);
    }
    if (state == State.READ && labels.isTotal(row)) {
      return refuse(
          new CellRefusal(
              cell(row),
              Code.CONTRADICTION,
              Message.of("reading.total", RowRefusals.quoted(labels.of(row)))));
    }
    return state;
  }

  /**
   * The row of the last reading up to a position in some rows, which is then the one just read; -1
   * where there is none.
   */
  public int lastRead(int[] rows, int position) {
    int at = position;
    while (at >= 0 && read(rows[at]) != State.READ) {
      at--;
    }
    return at < 0 ? NONE : rows[at];
  }

  private boolean isRefracted(int row) {
    int at = row - table.firstRow();
    return at >= 0
        && at < instruments.length
        && instruments[at] == RowInstrument.Kindred.REFRACTOMETER;
  }

  /** Reads a row's refractometer reading, whatever its hydrometer shows. */
  public State readRefractometer(int row) {
    State state = refractometer.read(row);
    refusal = refractometer.refusal;
    presentBrix = state == State.READ ? refractometer.brix : presentBrix;
    return state;
  }

  public boolean hasRefractometer() {
    return refractometerColumn != NONE;
  }

  private State readHydrometer(int row) {
    refusal = null;
    temperatureC = Double.NaN;
    if (gravityColumn == NONE) {
      return State.NOTHING;
    }
    State state =
        switch (grid.kind(row, gravityColumn)) {
          case BLANK -> State.NOTHING;
          case NUMBER -> gravityOf(row, grid.number(row, gravityColumn), scale);
          case TEXT -> gravityOfText(row, grid.text(row, gravityColumn));
          case DATE -> refuse(row, gravityColumn, Code.NOT_A_NUMBER, "reading.date");
          case LOGICAL, ERROR -> refuse(row, gravityColumn, Code.NOT_A_NUMBER, "reading.error");
        };
    return state == State.READ ? temperature(row) : state;
  }

  private State gravityOfText(int row, String text) {
    CellText cell = CellText.read(text);
    if (cell.form == CellText.Form.NOTHING) {
      return State.NOTHING;
    }
    boolean isReading = cell.form == CellText.Form.VALUE || cell.form == CellText.Form.PAIR;
    if (cell.isAbout && isReading) {
      return refuse(row, gravityColumn, Code.NOT_A_NUMBER, "reading.about", text);
    }
    if (cell.form == CellText.Form.PAIR) {
      return gravityOfPair(row, text, cell);
    }
    if (cell.form != CellText.Form.VALUE) {
      return refuse(row, gravityColumn, Code.NOT_A_NUMBER, "reading.notANumber", text);
    }
    return gravityOfValue(row, text, cell);
  }

  private State gravityOfValue(int row, String text, CellText cell) {
    temperatureC = cell.celsius();
    boolean percent =
        cell.unit.equals("%") && (scale.isPercentOfExtract() || scale == ReadingScale.POTENTIAL);
    boolean volume = scale == ReadingScale.POTENTIAL && cell.unit.matches("vol\\.?");
    if (cell.unit.isEmpty() || percent || volume) {
      return gravityOf(row, cell.value, scale);
    }
    Optional<ReadingScale> own = ReadingScale.behind(cell.unit);
    return own.isPresent()
        ? gravityOf(row, cell.value, own.get())
        : refuse(row, gravityColumn, Code.UNKNOWN_WORD, "reading.foreignUnit", text, cell.unit);
  }

  /** Reads a value and the number after it, where it is settled what that is. */
  private State gravityOfPair(int row, String text, CellText cell) {
    if (!TemperatureBesideReading.isTemperature(readingUse, cell)) {
      return refuse(row, gravityColumn, Code.NOT_A_NUMBER, "reading.twoNumbers", text);
    }
    if (pairUnit == null) {
      pairUnit = TemperatureBesideReading.unit(grid, table, readingUse);
    }
    if (pairUnit.isEmpty()) {
      return refuse(row, gravityColumn, Code.NOT_A_NUMBER, "reading.openUnit", text);
    }
    cell.temperatureUnit = pairUnit.get();
    return gravityOfValue(row, text, cell);
  }

  private State gravityOf(int row, double value, ReadingScale own) {
    calibrationC = settings.calibrationC();
    if (own == ReadingScale.SG) {
      if (value == 0) {
        return State.NOTHING;
      }
      gravity = own.toGravity(value);
      if (gravity >= Quantity.GRAVITY.min() && gravity <= Quantity.GRAVITY.max()) {
        return State.READ;
      }
      return refuse(
          refusals.readingOutside(
              row, gravityColumn, own, own.isInThousandths(value), gravity < 1));
    }
    double low = own == scale ? lowest : own.fromGravity(Quantity.GRAVITY.min());
    double high = own == scale ? highest : own.fromGravity(Quantity.GRAVITY.max());
    if (!(value >= low - ROUNDING && value <= high + ROUNDING)) {
      return refuse(refusals.readingOutside(row, gravityColumn, own, false, value < low));
    }
    gravity = own.toGravity(value);
    if (OtherBrixScale.is(own, settings)) {
      gravity = Hydrometer.gravityOfBrixScale(value, calibrationC);
      calibrationC = LogSettings.USUAL_CALIBRATION;
    }
    return State.READ;
  }

  private State temperature(int row) {
    if (settings.correctedAlready()) {
      temperatureC = settings.temperatureC();
      return State.READ;
    }
    if (Double.isNaN(temperatureC)) {
      temperatureC = temperatures.read(row);
      refusal = temperatures.refusal;
      if (refusal != null) {
        return State.REFUSED;
      }
    }
    if (Double.isNaN(temperatureC)) {
      temperatureC = settings.temperatureC();
    }
    int column = temperatureColumn == NONE ? gravityColumn : temperatureColumn;
    if (Double.isNaN(temperatureC)) {
      return refuse(refusals.noTemperature(row, column, temperatureColumn != NONE));
    }
    boolean inside =
        temperatureC >= Quantity.SUGAR_TEMPERATURE.min()
            && temperatureC <= Quantity.SUGAR_TEMPERATURE.max();
    return inside
        ? State.READ
        : refuse(refusals.temperatureOutside(row, gravityColumn, temperatureColumn, temperatureC));
  }

  /**
   * What a thermometer showed beside a reading, °C, also where the reading is corrected already.
   */
  public double measuredC(int row) {
    return temperatures.read(row);
  }

  /** Refuses with a message of the texts quoted and the range that is wanted. */
  private State refuse(int row, int column, Code code, String key, String... texts) {
    List<Object> arguments = new ArrayList<>();
    for (String text : texts) {
      arguments.add(RowRefusals.quoted(text));
    }
    arguments.add(refusals.range());
    return refuse(new CellRefusal(grid.address(row, column), code, new Message(key, arguments)));
  }

  private State refuse(CellRefusal why) {
    refusal = why;
    return State.REFUSED;
  }

  /** Address of a row's reading. */
  public String cell(int row) {
    return grid.address(row, byRefractometer() ? refractometerColumn : gravityColumn);
  }

  /** Whether the reading just read is the refractometer's. */
  public boolean byRefractometer() {
    return !Double.isNaN(presentBrix);
  }

  /** SG 20/20 of the reading just read, taken as a sugar solution. */
  public double asSugarSolution() {
    if (byRefractometer()) {
      return byRefractometer(presentBrix);
    }
    return Hydrometer.correctedGravity(gravity, temperatureC, calibrationC, settings.offset());
  }

  /**
   * SG 20/20 of the reading just read in a wash of that original extract; NaN outside the model.
   */
  public double asWash(double originalExtract) {
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

  /**
   * SG 20/20 of a reading just read that is above the original gravity by no more than two readings
   * of one wash differ: nothing has fermented yet. NaN for any other.
   */
  public double beforeFerment(double originalGravity) {
    boolean refracted = byRefractometer();
    if (refracted && !(presentBrix > originalBrix)) {
      return Double.NaN;
    }
    double original = refracted ? unfermented(originalBrix) : originalGravity;
    double now = refracted ? unfermented(presentBrix) : asSugarSolution();
    boolean above = refracted || now > original + SAME;
    return above && now <= original + LAG + SAME ? now : Double.NaN;
  }

  private double unfermented(double brix) {
    return Refractometer.gravity(brix, brix, settings.refractometerFactor());
  }

  /** Refuses the row just read because its gravity does not go with the original one. */
  public CellRefusal contradiction(int row, double originalGravity) {
    return byRefractometer()
        ? refractometer.contradiction(row, presentBrix, originalBrix)
        : refusals.contradiction(row, gravityColumn, asSugarSolution(), originalGravity);
  }

  /** A gravity on the log's own scale, to be read. */
  public Message shown(double gravity) {
    return refusals.show(gravity);
  }

  /** A difference of gravities on the log's own scale, to be read. */
  public Message shownDifference(double gravity) {
    return refusals.difference(gravity);
  }
}
