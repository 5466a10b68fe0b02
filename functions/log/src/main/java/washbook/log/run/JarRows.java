package washbook.log.run;

import java.util.Optional;
import java.util.Set;
import washbook.functions.Answer;
import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;

/** Reads and computes one jar at a time. */
public final class JarRows {
  private static final double THOUSAND = 1000;

  private static final CatalogueFunction TRUE_STRENGTH = Catalogue.get("TRUESTRENGTH");
  private static final CatalogueFunction VOLUME_AT_20 = Catalogue.get("VOLUMEAT20");
  private static final CatalogueFunction PURE_ALCOHOL = Catalogue.get("PUREALCOHOL");
  private static final CatalogueFunction HEAD_STRENGTH = Catalogue.get("HEADSTRENGTH");

  /** Decimal places in which a value is quoted. */
  private static final int QUOTED_DIGITS = 3;

  private final Grid grid;
  private final StillRun run;
  private final StillRun.Settings settings;
  private final LogColumn strengthColumn;
  private final LogColumn volumeColumn;
  private final Optional<LogColumn> temperatureColumn;
  private final Optional<LogColumn> headColumn;
  private final RunVolumeUnit volumeUnit;

  /** % vol as read in the jar last read, NaN when it is refused; likewise the following. */
  public double readStrength;

  /** Litres as read. */
  public double readLitres;

  /** Of the spirit, °C; 20 where none is needed. */
  public double temperatureC;

  /** % vol at 20 \u00b0C of the jar last read, NaN when it is refused; likewise the following. */
  public double trueStrength;

  /** Litres at 20 \u00b0C. */
  public double volumeAt20;

  /** Litres of pure alcohol. */
  public double pureAlcohol;

  /** % vol that the head's temperature tells, NaN where it does not. */
  public double headStrength;

  /** Why the jar last read is refused; null when it is not. */
  public CellRefusal refusal;

  public JarRows(Grid grid, StillRun run) {
    this.grid = grid;
    this.run = run;
    settings = run.settings();
    strengthColumn = run.table().column(Role.STRENGTH).orElseThrow();
    volumeColumn =
        run.table()
            .column(Role.VOLUME)
            .or(() -> run.table().column(Role.VOLUME_SO_FAR))
            .orElseThrow();
    temperatureColumn = run.table().column(Role.TEMPERATURE);
    headColumn = run.table().column(Role.HEAD_TEMPERATURE);
    volumeUnit = RunVolumeUnit.of(volumeColumn.unit()).orElseThrow();
  }

  /** Whether a figure of a jar is corrected by a temperature. */
  boolean needsTemperature(int row) {
    return !run.isCorrected(row) || !settings.volumesAt20();
  }

  /** The row whose cell holds for a row of a column: the one above where it is only repeated. */
  public static int source(Grid grid, int row, int column) {
    return RunCells.source(grid, row, column);
  }

  /**
   * Reads a row; false when it is refused. A strength that is known without the volume is told all
   * the same.
   */
  public boolean read(int row) {
    readStrength = Double.NaN;
    readLitres = Double.NaN;
    temperatureC = Double.NaN;
    trueStrength = Double.NaN;
    volumeAt20 = Double.NaN;
    pureAlcohol = Double.NaN;
    refusal = null;
    headStrength = headStrength(row);
    LogColumn column = run.table().column(run.strengthRole(row)).orElse(strengthColumn);
    double percent = RunStrengthUnit.of(column.unit()).toPercent(strength(row, column));
    if (refusal != null) {
      return false;
    }
    double litres = litres(row);
    CellRefusal noVolume = refusal;
    refusal = null;
    double celsius = needsTemperature(row) ? temperature(row) : 20;
    if (noVolume == null && refusal == null) {
      compute(row, percent, litres, celsius);
      return refusal == null;
    }
    if (refusal == null || run.isCorrected(row)) {
      trueStrength = trueStrength(row, percent, celsius);
    }
    refusal = noVolume == null ? refusal : noVolume;
    return false;
  }

  private double trueStrength(int row, double percent, double celsius) {
    return run.isCorrected(row)
        ? percent
        : number(TRUE_STRENGTH.call(percent, celsius, settings.calibrationC()));
  }

  private double strength(int row, LogColumn column) {
    double shown = figure(row, column, "run.strength", strengthRange(column));
    StillRun.Jar.Strength state = run.jar(row).strength();
    boolean untold = state == StillRun.Jar.Strength.UNTOLD;
    if (refusal == null && (untold || state == StillRun.Jar.Strength.UNFIT)) {
      String why = untold ? "run.strength.untold" : "run.strength.unfit";
      refuse(row, column, Code.CONTRADICTION, Message.of(why, quoted(row, column.column())));
    }
    return shown;
  }

  /** Litres of a jar; NaN with a refusal where they are not known. */
  private double litres(int row) {
    StillRun.Jar jar = run.jar(row);
    double shown = figure(row, volumeColumn, "run.volume", volumeRange(row));
    if (refusal == null && jar.volume() == StillRun.Jar.Volume.UNTOLD) {
      refuse(
          row,
          volumeColumn,
          Code.CONTRADICTION,
          Message.of("run.volume.total", quoted(row, volumeColumn.column())));
    }
    if (refusal != null) {
      return Double.NaN;
    }
    return jar.before() < 0
        ? inLitres(row, shown)
        : inLitres(row, shown)
            - inLitres(jar.before(), RunCells.number(grid, jar.before(), volumeColumn.column()));
  }

  private double inLitres(int row, double shown) {
    int source = RunCells.source(grid, row, volumeColumn.column());
    RunVolumeUnit unit = volumeUnit(source);
    boolean thousands =
        unit == RunVolumeUnit.ML
            && RunCells.hasMarkOfThousands(grid, source, volumeColumn.column());
    return unit.toLitres(thousands ? THOUSAND * shown : shown);
  }

  /** The unit in the cell that holds for a row, else that of the column. */
  private RunVolumeUnit volumeUnit(int source) {
    return RunCells.volumeUnit(grid, source, volumeColumn.column()).orElse(volumeUnit);
  }

  private void compute(int row, double percent, double litres, double celsius) {
    double strength = trueStrength(row, percent, celsius);
    double volume =
        settings.volumesAt20()
            ? number(VOLUME_AT_20.call(litres, 20.0, strength))
            : number(VOLUME_AT_20.call(litres, celsius, strength));
    double pure = number(PURE_ALCOHOL.call(volume, strength));
    if (Double.isNaN(strength) || Double.isNaN(volume) || Double.isNaN(pure)) {
      refusal =
          new CellRefusal(
              CellAddress.of(row, strengthColumn.column()),
              Code.CONTRADICTION,
              Message.of("run.together", quoted(row, strengthColumn.column())));
      return;
    }
    readStrength = percent;
    readLitres = litres;
    temperatureC = celsius;
    trueStrength = strength;
    volumeAt20 = volume;
    pureAlcohol = pure;
  }

  private static double number(Answer answer) {
    return answer instanceof Answer.Number number ? number.value() : Double.NaN;
  }

  private double headStrength(int row) {
    double shown = headColumn.map(c -> RunCells.number(grid, row, c.column())).orElse(Double.NaN);
    if (Double.isNaN(shown)) {
      return Double.NaN;
    }
    double celsius = celsius(shown, headColumn.orElseThrow());
    return number(
        Double.isNaN(settings.pressureHPa())
            ? HEAD_STRENGTH.call(celsius)
            : HEAD_STRENGTH.call(celsius, settings.pressureHPa()));
  }

  private static double celsius(double shown, LogColumn column) {
    return column.unit().equals("F") ? TemperatureUnit.F.toCelsius(shown) : shown;
  }

  private double temperature(int row) {
    if (!Double.isNaN(run.jar(row).temperatureC())) {
      return run.jar(row).temperatureC();
    }
    if (temperatureColumn.isEmpty()) {
      if (Double.isNaN(settings.temperatureC())) {
        Range range = temperatureRange(TemperatureUnit.C);
        refuse(row, strengthColumn, Code.BLANK, Message.of("run.temperature.blank", range.told()));
      }
      return settings.temperatureC();
    }
    LogColumn column = temperatureColumn.orElseThrow();
    if (!Double.isNaN(settings.temperatureC())
        && grid.kind(row, column.column()) == Grid.Kind.BLANK) {
      return settings.temperatureC();
    }
    int source = RunCells.source(grid, row, column.column());
    TemperatureUnit unit =
        RunCells.temperatureUnit(grid, source, column.column())
            .orElse(column.unit().equals("F") ? TemperatureUnit.F : TemperatureUnit.C);
    return unit.toCelsius(figure(row, column, "run.temperature", temperatureRange(unit)));
  }

  private static Range temperatureRange(TemperatureUnit unit) {
    return new Range(
        unit.fromCelsius(Quantity.SPIRIT_TEMPERATURE.min()),
        unit.fromCelsius(Quantity.SPIRIT_TEMPERATURE.max()),
        " \u00b0" + unit,
        false);
  }

  private record Range(double low, double high, String unit, boolean zeroIsBlank) {
    Message told() {
      return Message.of(
          "range",
          new Figure(Numbers.round(low, QUOTED_DIGITS)),
          new Figure(Numbers.round(high, QUOTED_DIGITS)),
          unit);
    }
  }

  private static Range strengthRange(LogColumn column) {
    RunStrengthUnit unit = RunStrengthUnit.of(column.unit());
    return new Range(
        unit.ofPercent(Quantity.PERCENT_VOL.min()),
        unit.ofPercent(Quantity.PERCENT_VOL.max()),
        unit.isProof() ? " proof" : " % vol",
        true);
  }

  private Range volumeRange(int row) {
    RunVolumeUnit own = volumeUnit(RunCells.source(grid, row, volumeColumn.column()));
    double unit = own.toLitres(1);
    return new Range(
        Quantity.LITRES.min() / unit, Quantity.LITRES.max() / unit, " " + shown(own), true);
  }

  private static String shown(RunVolumeUnit unit) {
    return switch (unit) {
      case ML -> "mL";
      case CL -> "cL";
      case DL -> "dL";
      case L -> "L";
      case GALUS, GALUK -> "gal";
    };
  }

  /** The number of a cell; NaN with a refusal where it holds none or none that can be. */
  private double figure(int line, LogColumn column, String what, Range range) {
    int row = RunCells.source(grid, line, column.column());
    double value = RunCells.number(grid, row, column.column());
    boolean blank = grid.kind(row, column.column()) == Grid.Kind.BLANK;
    if (blank || value == 0 && range.zeroIsBlank()) {
      refuse(row, column, Code.BLANK, Message.of(what + ".blank", range.told()));
      return Double.NaN;
    }
    boolean isStrength =
        (column.role() == Role.STRENGTH || column.role() == Role.OWN_TRUE_STRENGTH)
            && !Double.isNaN(value);
    if (isStrength && RunCells.isAbout(grid, row, column.column())) {
      refuse(
          row,
          column,
          Code.NOT_A_NUMBER,
          Message.of("reading.about", quoted(row, column.column())));
      return value;
    }
    boolean other =
        RunCells.hasOtherUnit(
            grid,
            row,
            column.column(),
            units(column.role(), RunStrengthUnit.of(column.unit()).isProof()));
    if (Double.isNaN(value) || other) {
      refuse(row, column, Code.NOT_A_NUMBER, wrong(row, column, what, range));
    } else if (!(value >= range.low())) {
      refuse(row, column, Code.TOO_LOW, wrong(row, column, what, range));
    } else if (!(value <= range.high())) {
      refuse(row, column, Code.TOO_HIGH, wrong(row, column, what, range));
    }
    return value;
  }

  /** Words that may stand after a number of a column. */
  static Set<RunWord> units(Role role, boolean proof) {
    return switch (role) {
      case STRENGTH, OWN_TRUE_STRENGTH ->
          proof ? Set.of(RunWord.PROOF) : Set.of(RunWord.STRENGTH, RunWord.VOLUME);
      case VOLUME, VOLUME_SO_FAR -> Set.of(RunWord.ML, RunWord.CL, RunWord.DL, RunWord.L);
      default -> Set.of(RunWord.TEMPERATURE, RunWord.C, RunWord.F, RunWord.DEGREE);
    };
  }

  private Message wrong(int row, LogColumn column, String what, Range range) {
    return Message.of(what + ".wrong", quoted(row, column.column()), range.told());
  }

  private Object quoted(int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        ? Message.of("quoted", grid.text(row, column).strip())
        : new Figure(Numbers.round(grid.number(row, column), QUOTED_DIGITS));
  }

  private void refuse(int row, LogColumn column, Code code, Message message) {
    refusal = new CellRefusal(CellAddress.of(row, column.column()), code, message);
  }
}
