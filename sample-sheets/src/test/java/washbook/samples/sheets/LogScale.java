package washbook.samples.sheets;

import washbook.functions.scale.SugarScale;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Thermometer;

/** The scales on which a ready log is written. The sheet calculates in SG and °C. */
enum LogScale {
  SG("ferment-log", SugarScale.SG, 0.001, "Reading (SG)", "0.000", 0.98, 1.19, Thermometer.C_HALF),
  SG_FAHRENHEIT(
      "ferment-log-fahrenheit",
      SugarScale.SG,
      0.001,
      "Reading (SG)",
      "0.000",
      0.98,
      1.19,
      Thermometer.F),
  BRIX(
      "ferment-log-brix", SugarScale.BRIX, 0.1, "Reading (°Bx)", "0.0", -5, 42, Thermometer.C_HALF),
  OECHSLE(
      "ferment-log-oechsle",
      SugarScale.OECHSLE,
      1,
      "Reading (°Oe)",
      "0",
      -20,
      190,
      Thermometer.C_HALF);

  final String file;
  final SugarScale scale;
  final double step;
  final String head;
  final String format;
  final double least;
  final double most;
  final Thermometer thermometer;

  LogScale(
      String file,
      SugarScale scale,
      double step,
      String head,
      String format,
      double least,
      double most,
      Thermometer thermometer) {
    this.file = file;
    this.scale = scale;
    this.step = step;
    this.head = head;
    this.format = format;
    this.least = least;
    this.most = most;
    this.thermometer = thermometer;
  }

  boolean isFahrenheit() {
    return thermometer.unit().equals("F");
  }

  String degrees() {
    return isFahrenheit() ? "°F" : "°C";
  }

  /** On the log's own scale of temperature. */
  double shown(double temperatureC) {
    return isFahrenheit() ? temperatureC * 1.8 + 32 : temperatureC;
  }

  /** The cell's reading as SG. */
  String gravity(String cell) {
    return switch (this) {
      case BRIX -> "WASHBOOK.CONVERT(" + cell + ",\"BRIX\",\"SG\")";
      case OECHSLE -> "1+" + cell + "/1000";
      default -> cell;
    };
  }

  /** The cell's temperature in °C. */
  String celsius(String cell) {
    return isFahrenheit() ? "(" + cell + "-32)/1.8" : cell;
  }

  Instrument hydrometer() {
    return Instrument.reading(scale, step);
  }
}
