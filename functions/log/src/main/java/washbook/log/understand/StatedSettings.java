package washbook.log.understand;

import java.util.List;
import washbook.functions.Numbers;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.Doubts;
import washbook.log.LogSettings;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.StatedWash;
import washbook.log.WritingWish;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.HeaderRoles;
import washbook.log.layout.KeyLine;
import washbook.log.reading.RowRefusals;
import washbook.log.sheet.CellAddress;
import washbook.log.words.Concept;

/** What the lines above a table say about all its readings. */
final class StatedSettings {
  private final TableMap said;
  private final Doubts doubts;

  /** What the readings are corrected to if they are, °C; NaN when nothing says it. */
  double correctedToC = Double.NaN;

  private double temperatureC = Double.NaN;
  private Message temperatureWhy = Message.NONE;
  private boolean corrected;
  private double calibrationC = LogSettings.USUAL_CALIBRATION;
  private Message calibrationWhy = LogSettings.none().calibrationWhy();
  private double offset;
  private double factor = 1;
  private double volumeL = Double.NaN;

  /**
   * @param said what a map says, which need not be asked
   */
  StatedSettings(TableMap said, Doubts doubts) {
    this.said = said;
    this.doubts = doubts;
  }

  LogSettings read(List<KeyLine> lines, ColumnRoles columns, StatedWash wash) {
    boolean hasRefractometer = columns.columns.has(Role.REFRACTOMETER);
    if (!Double.isNaN(columns.reading.calibrationByHeader)) {
      calibrationC = columns.reading.calibrationByHeader;
      calibrationWhy = Message.of("from.header");
    }
    columns.columns.with(Role.CALIBRATION).forEach(cell -> readCalibration(cell, columns.columns));
    for (KeyLine line : lines) {
      if (line.isCalibration() || isOfInstrument(line, columns)) {
        readCalibration(line);
      } else if (line.has(Concept.FACTOR)) {
        readFactor(line, hasRefractometer);
      } else if (line.has(Concept.OFFSET)) {
        readOffset(line);
      } else if (HeaderRoles.role(line.meanings()) == Role.VOLUME && line.value() > 0) {
        volumeL = line.litres();
      }
    }
    for (KeyLine line : lines) {
      if (line.isCalibration() && !line.has(Concept.CORRECTED)) {
        continue;
      }
      if (line.saysCorrected()) {
        corrected = true;
        double to = line.celsius();
        temperatureC = isPossible(to) ? to : calibrationC;
        temperatureWhy = Message.of("from.corrected", line.cell());
      } else if (!corrected && line.isReadingTemperature()) {
        readTemperature(line);
      }
    }
    double byHeader =
        isPossible(columns.reading.temperatureByHeader)
            ? columns.reading.temperatureByHeader
            : Double.NaN;
    if (columns.reading.correctedByHeader && !corrected) {
      corrected = true;
      temperatureC = Double.isNaN(byHeader) ? calibrationC : byHeader;
      temperatureWhy = Message.of("from.correctedHeader");
    } else if (!corrected && !Double.isNaN(byHeader) && !columns.columns.has(Role.TEMPERATURE)) {
      temperatureC = byHeader;
      temperatureWhy = Message.of("from.oneHeader");
    }
    correctedToC = corrected ? temperatureC : byHeader;
    return new LogSettings(
        temperatureC,
        temperatureWhy,
        corrected,
        calibrationC,
        calibrationWhy,
        offset,
        factor,
        volumeL,
        LogSettings.SugarReadings.TOLD_BY_RISE,
        wash,
        WritingWish.NONE);
  }

  /** A column of the instrument's calibration temperatures: one for all rows, or it is asked. */
  private void readCalibration(HeaderCell cell, ColumnAssignment columns) {
    ColumnValues values = columns.facts(cell);
    if (values.numbers() == 0 || !Double.isNaN(said.calibrationC())) {
      return;
    }
    boolean inF = cell.meanings().contains(Concept.F);
    double celsius = inF ? TemperatureUnit.F.toCelsius(values.min()) : values.min();
    if (values.min() == values.max()
        && celsius >= Quantity.CALIBRATION_TEMPERATURE.min()
        && celsius <= Quantity.CALIBRATION_TEMPERATURE.max()) {
      calibrationC = celsius;
      calibrationWhy = Message.of("from.header");
      return;
    }
    columns.unsettle();
    columns.doubt(
        cell,
        Message.of("ask.calibrationColumn", CellAddress.letters(cell.column())),
        MapAnswer.like("calibration = 20 C"));
  }

  /** A hydrometer's temperature where a column holds those of the readings: its calibration. */
  private static boolean isOfInstrument(KeyLine line, ColumnRoles columns) {
    return columns.columns.has(Role.TEMPERATURE)
        && line.has(Concept.HYDROMETER)
        && line.has(Concept.TEMPERATURE)
        && !line.has(Concept.READING)
        && !line.has(Concept.SAMPLE)
        && !Double.isNaN(line.celsius());
  }

  private static boolean isPossible(double celsius) {
    return celsius >= Quantity.SUGAR_TEMPERATURE.min()
        && celsius <= Quantity.SUGAR_TEMPERATURE.max();
  }

  private void readTemperature(KeyLine line) {
    double celsius = line.celsius();
    if (Double.isNaN(celsius)) {
      doubts.ask(
          line.cell(),
          Message.of("ask.degrees", new Figure(Numbers.show(line.value()))),
          MapAnswer.of("temperature = " + Numbers.show(line.value()) + " C"),
          MapAnswer.of("temperature = " + Numbers.show(line.value()) + " F"));
    } else if (!isPossible(celsius)) {
      doubts.ask(
          line.cell(),
          outside("ask.temperatureOutside", line, Quantity.SUGAR_TEMPERATURE, " \u00b0C"),
          MapAnswer.like("temperature = 20 C"));
    } else {
      temperatureC = celsius;
      temperatureWhy = Message.of("from.one", line.cell());
    }
  }

  private void readCalibration(KeyLine line) {
    double celsius = line.celsius();
    if (Double.isNaN(line.value()) && Double.isNaN(celsius)) {
      return;
    }
    if (Double.isNaN(celsius)) {
      celsius = TemperatureUnit.F.toCelsius(line.value());
    }
    if (celsius >= Quantity.CALIBRATION_TEMPERATURE.min()
        && celsius <= Quantity.CALIBRATION_TEMPERATURE.max()) {
      calibrationC = celsius;
      calibrationWhy = Message.of("from.cell", line.cell());
    } else {
      doubts.ask(
          line.cell(),
          outside("ask.calibrationOutside", line, Quantity.CALIBRATION_TEMPERATURE, " \u00b0C"),
          MapAnswer.like("calibration = 20 C"));
    }
  }

  private void readFactor(KeyLine line, boolean hasRefractometer) {
    if (!hasRefractometer || Double.isNaN(line.value())) {
      return;
    }
    if (line.value() >= Quantity.REFRACTOMETER_FACTOR.min()
        && line.value() <= Quantity.REFRACTOMETER_FACTOR.max()) {
      factor = line.value();
    } else {
      doubts.ask(
          line.cell(),
          outside("ask.factorOutside", line, Quantity.REFRACTOMETER_FACTOR, ""),
          MapAnswer.like("refractometer factor = 1.04"));
    }
  }

  private void readOffset(KeyLine line) {
    double shown = line.value();
    if (Math.abs(shown) <= 0.05) {
      offset = shown;
    } else if (Math.abs(shown) <= 50) {
      offset = shown / 1000;
    }
  }

  private static Message outside(String key, KeyLine line, Quantity quantity, String sign) {
    return Message.of(
        key,
        new Figure(Numbers.show(line.value())),
        RowRefusals.range(quantity.min(), quantity.max(), sign));
  }
}
