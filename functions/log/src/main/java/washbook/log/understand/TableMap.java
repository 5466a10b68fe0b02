package washbook.log.understand;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import washbook.functions.liquid.WashKind;
import washbook.log.LogSettings;
import washbook.log.Role;
import washbook.log.StatedWash;
import washbook.log.WritingWish;
import washbook.log.language.Message;
import washbook.log.sheet.AcrossGrid;

/**
 * What a map says about one table, or about all tables of a sheet. What it leaves out is told from
 * the sheet as ever.
 *
 * @param sheet name of the sheet, "" for every sheet
 * @param headerRow row of the headers from 0, -1 for every table of the sheet
 * @param lastRow last row of the table from 0, -1 when the sheet tells it
 * @param ignored whether the table is to be left alone
 * @param columns what columns hold, by column number from 0
 * @param temperatureC one temperature for all readings, NaN when not said
 * @param corrected whether readings are corrected already, null when not said
 * @param calibrationC where the instrument is calibrated, NaN when not said
 * @param offset what the instrument shows too much in SG, NaN when not said
 * @param refractometerFactor NaN when not said
 * @param volumeL volume at the start, NaN when not said
 * @param batch name of the only batch, "" when not said
 * @param originalGravities SG 20/20 by batch; "" is every batch that has none of its own here
 * @param firstReadingIsOriginal whether the original gravity is the first reading, whatever is
 *     stated elsewhere
 * @param sugarReadings null when not said
 * @param wash what ferments, null when not said
 * @param feeds what is said of single rows: of sugar that was added, and of batches that begin
 *     there
 * @param writing how it is to be written into
 * @param run what is said of it as a still run
 */
public record TableMap(
    String sheet,
    int headerRow,
    int lastRow,
    boolean ignored,
    Map<Integer, ColumnMap> columns,
    double temperatureC,
    Boolean corrected,
    double calibrationC,
    double offset,
    double refractometerFactor,
    double volumeL,
    String batch,
    Map<String, Double> originalGravities,
    boolean firstReadingIsOriginal,
    LogSettings.SugarReadings sugarReadings,
    WashKind wash,
    RowPart feeds,
    WritingWish writing,
    RunPart run) {

  /**
   * What a map says of single rows, by the row from 0.
   *
   * @param sugar what was added there
   * @param batches the batch that begins there
   * @param uses what the row holds, of a log that runs across
   */
  record RowPart(
      Map<Integer, Feed> sugar, Map<Integer, String> batches, Map<Integer, ColumnMap> uses) {
    static final RowPart NONE = new RowPart(Map.of(), Map.of(), Map.of());

    RowPart {
      uses = Collections.unmodifiableMap(new TreeMap<>(uses));
      sugar = Collections.unmodifiableMap(new TreeMap<>(sugar));
      batches = Collections.unmodifiableMap(new TreeMap<>(batches));
    }
  }

  /**
   * Sugar that was added.
   *
   * @param kilograms how much; empty where the rise of the readings tells
   */
  record Feed(OptionalDouble kilograms) {
    static final Feed BY_THE_RISE = new Feed(OptionalDouble.empty());

    boolean isByTheRise() {
      return kilograms.isEmpty();
    }
  }

  /**
   * What a map says that only a still run has.
   *
   * @param isRun null when not said
   * @param volumesAt20 null when not said
   * @param chargeLitres NaN when not said; likewise the following
   */
  record RunPart(
      Boolean isRun,
      Boolean volumesAt20,
      double chargeLitres,
      double chargePercentVolume,
      double pressureHPa) {
    static final RunPart NONE = new RunPart(null, null, Double.NaN, Double.NaN, Double.NaN);
  }

  /**
   * What one column holds.
   *
   * @param unit word of CONVERT (or GCM3), "" when its values tell
   */
  public record ColumnMap(Role role, String unit) {}

  public TableMap {
    columns = Collections.unmodifiableMap(new TreeMap<>(columns));
    originalGravities = Collections.unmodifiableMap(new TreeMap<>(originalGravities));
  }

  /** A map of one table that says nothing yet. */
  static TableMap of(String sheet, int headerRow, Map<Integer, ColumnMap> columns) {
    return new TableMap(
        sheet,
        headerRow,
        -1,
        false,
        columns,
        Double.NaN,
        null,
        Double.NaN,
        Double.NaN,
        Double.NaN,
        Double.NaN,
        "",
        Map.of(),
        false,
        null,
        null,
        RowPart.NONE,
        WritingWish.NONE,
        RunPart.NONE);
  }

  /** Whether all that it says can be said of a log that runs across. */
  boolean mayTurn(AcrossGrid grid) {
    return lastRow < 0
        && columns.isEmpty()
        && feeds.sugar().isEmpty()
        && feeds.batches().isEmpty()
        && feeds.uses().keySet().stream().allMatch(row -> grid.column(row) >= 0);
  }

  /** The same about the turned sheet, where rows have become columns. */
  TableMap turned(AcrossGrid grid) {
    Map<Integer, ColumnMap> turned = new TreeMap<>();
    feeds
        .uses()
        .forEach(
            (row, use) -> {
              if (grid.column(row) >= 0) {
                turned.put(grid.column(row), use);
              }
            });
    return new TableMap(
        sheet,
        headerRow,
        -1,
        ignored,
        turned,
        temperatureC,
        corrected,
        calibrationC,
        offset,
        refractometerFactor,
        volumeL,
        batch,
        originalGravities,
        firstReadingIsOriginal,
        sugarReadings,
        wash,
        RowPart.NONE,
        writing,
        run);
  }

  /** Whether it holds no statement about any table. */
  boolean saysNothing() {
    return headerRow < 0 && equals(of(sheet, headerRow, Map.of()));
  }

  /** Whether it says something that only a ferment has. */
  boolean isFerment() {
    boolean column =
        Stream.concat(columns.values().stream(), feeds.uses().values().stream())
            .anyMatch(c -> c.role() == Role.GRAVITY || c.role() == Role.REFRACTOMETER);
    return column
        || wash != null
        || !originalGravities.isEmpty()
        || firstReadingIsOriginal
        || !feeds.sugar().isEmpty();
  }

  /** The columns that it says are readings. */
  Map<Integer, Role> readings() {
    return columns.entrySet().stream()
        .filter(
            c -> c.getValue().role() == Role.GRAVITY || c.getValue().role() == Role.REFRACTOMETER)
        .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, c -> c.getValue().role()));
  }

  boolean isFor(String name) {
    return sheet.isEmpty() || sheet.equals(name);
  }

  /**
   * The settings told from the sheet with what is said here put in their place.
   *
   * @param correctedToC what the sheet says that readings are corrected to, if they are; else NaN
   */
  LogSettings over(LogSettings told, double correctedToC) {
    double calibration = said(calibrationC, told.calibrationC());
    boolean already = corrected == null ? told.correctedAlready() : corrected;
    double temperature = said(temperatureC, told.temperatureC());
    Message why = Double.isNaN(temperatureC) ? told.temperatureWhy() : Message.of("from.oneMap");
    if (Boolean.TRUE.equals(corrected)) {
      temperature = said(temperatureC, said(correctedToC, calibration));
      why = Message.of("from.correctedMap");
    } else if (corrected != null && told.correctedAlready() && Double.isNaN(temperatureC)) {
      temperature = Double.NaN;
      why = Message.NONE;
    }
    return new LogSettings(
        temperature,
        why,
        already,
        calibration,
        Double.isNaN(calibrationC) ? told.calibrationWhy() : Message.of("col.map"),
        said(offset, told.offset()),
        said(refractometerFactor, told.refractometerFactor()),
        said(volumeL, told.volumeL()),
        sugarReadings == null ? told.sugarReadings() : sugarReadings,
        wash == null ? told.wash() : new StatedWash(wash, Message.of("col.map")),
        writing);
  }

  private static double said(double here, double told) {
    return Double.isNaN(here) ? told : here;
  }
}
