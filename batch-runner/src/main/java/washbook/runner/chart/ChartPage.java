package washbook.runner.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import washbook.functions.Numbers;
import washbook.functions.XmlText;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.ComputedColumn;
import washbook.log.ComputedHeader;
import washbook.log.WrittenScale;
import washbook.log.fill.BatchCurve;
import washbook.log.understand.ChartsSheet;
import washbook.runner.language.Wording;

/**
 * What stands on the sheet with charts, the same in all formats: title, one heading and up to three
 * charts below each other for every batch, each batch on a page of its own, and under all of them,
 * folded away, one table with the numbers drawn. Rows count from 0.
 */
final class ChartPage {
  static final int ROWS_PER_CHART = 13;

  /** A blank column keeps the batch's name off the numbers. */
  static final int BATCH_COLUMN = 5;

  static final double WIDTH_CM = 15.6;
  static final double HEIGHT_CM = 5.7;
  static final double ROW_CM = 0.4516;

  /** More batches than these make a sheet that no one reads and few programs open quickly. */
  static final int MOST_BATCHES = 60;

  private static final int FIRST_BLOCK = 3;

  /** One of the three quantities: its column in the table and how it is drawn. */
  enum Quantity {
    GRAVITY(1, 4, 0.01, "0.000", "1F4E5F", "circle"),
    ABV(2, 2, 1, "0", "9C3D10", "square"),
    TEMPERATURE(3, 1, 5, "0", "3F6B1F", "diamond");

    final int column;
    final int decimals;
    final double step;
    final String format;
    final String colour;
    final String symbol;

    Quantity(int column, int decimals, double step, String format, String colour, String symbol) {
      this.column = column;
      this.decimals = decimals;
      this.step = step;
      this.format = format;
      this.colour = colour;
      this.symbol = symbol;
    }

    /** What is drawn, on the log's own scale and in its unit of temperature. */
    double[] of(BatchCurve curve) {
      return switch (this) {
        case GRAVITY -> curve.shownGravity();
        case ABV -> curve.abv();
        case TEMPERATURE -> curve.shownTemperature();
      };
    }

    String title(BatchCurve curve) {
      return switch (this) {
        case GRAVITY ->
            ComputedHeader.title(ComputedColumn.CORRECTED_GRAVITY, curve.scale(), curve.language());
        case ABV -> ComputedHeader.title(ComputedColumn.ABV, WrittenScale.SG, curve.language());
        case TEMPERATURE -> words(curve).say("chart.temperature", curve.temperatureUnit());
      };
    }

    int decimals(BatchCurve curve) {
      return this == GRAVITY ? curve.scale().decimals() : decimals;
    }

    /** Distance of the axis's marks; on another scale than SG as far apart as there. */
    double step(BatchCurve curve) {
      return switch (this) {
        case GRAVITY ->
            curve.scale().isPlainGravity()
                ? step
                : Math.pow(10, Math.round(Math.log10(curve.scale().change(step)) - 0.3));
        case ABV -> step;
        case TEMPERATURE -> curve.temperatureUnit() == TemperatureUnit.F ? 2 * step : step;
      };
    }

    /** The axis's number format. */
    String format(BatchCurve curve) {
      boolean other = this == GRAVITY && !curve.scale().isPlainGravity();
      return !other || step(curve) < 0.1 ? format : step(curve) < 1 ? "0.0" : "0";
    }
  }

  /** One chart: where it stands and which rows of the sheet's table it draws. */
  record Chart(
      String sheet,
      int number,
      int atRow,
      BatchCurve curve,
      Quantity quantity,
      int firstRow,
      int lastRow) {

    String title() {
      return curve.batch() + ": " + name();
    }

    String name() {
      return quantity.title(curve);
    }

    String timeTitle() {
      return words(curve).say(curve.timed() ? "chart.days" : "chart.reading");
    }

    /** The value axis from here, a whole step at or below all points. */
    double from() {
      double lowest = Arrays.stream(quantity.of(curve)).filter(Double::isFinite).min().orElse(0);
      return rounded(Math.floor(lowest / step() + 1e-6) * step(), 2);
    }

    private double step() {
      return quantity.step(curve);
    }

    double to() {
      double highest = Arrays.stream(quantity.of(curve)).filter(Double::isFinite).max().orElse(1);
      double end = rounded(Math.ceil(highest / step() - 1e-6) * step(), 2);
      return end > from() ? end : rounded(end + step(), 2);
    }

    /** The number of a point's cell, NaN for none; {@code column} as in the table. */
    static double number(BatchCurve curve, int point, int column) {
      return switch (column) {
        case 0 -> rounded(curve.days()[point], 3);
        case 1 -> drawn(curve, point, Quantity.GRAVITY);
        case 2 -> drawn(curve, point, Quantity.ABV);
        default -> drawn(curve, point, Quantity.TEMPERATURE);
      };
    }
  }

  private static double drawn(BatchCurve curve, int point, Quantity quantity) {
    double drawn =
        switch (quantity) {
          case GRAVITY -> curve.shownGravity(point);
          case ABV -> curve.abv()[point];
          case TEMPERATURE -> curve.temperatureUnit().fromCelsius(curve.temperatureC()[point]);
        };
    return rounded(drawn, quantity.decimals(curve));
  }

  private final List<BatchCurve> curves;
  private final int all;
  private final List<Chart> charts = new ArrayList<>();
  private final List<Integer> headings = new ArrayList<>();
  private final int tableRow;
  private final String sheetName;

  /**
   * @param older the name of the sheet that the page takes the place of
   */
  ChartPage(List<BatchCurve> curves, Optional<String> older) {
    this.all = curves.size();
    this.sheetName = older.orElseGet(() -> ChartsSheet.name(curves.get(0).language()));
    this.curves = curves.subList(0, Math.min(all, MOST_BATCHES));
    int row = FIRST_BLOCK;
    int chartsInAll = 0;
    for (BatchCurve curve : this.curves) {
      headings.add(row);
      row += 1 + ROWS_PER_CHART * quantities(curve).size() + 1;
      chartsInAll += quantities(curve).size();
    }
    tableRow = row;
    int point = tableRow + 1;
    int at = 0;
    for (BatchCurve curve : this.curves) {
      int chartRow = headings.get(at++) + 1;
      for (Quantity quantity : quantities(curve)) {
        int last = point + curve.days().length - 1;
        charts.add(new Chart(sheetName, charts.size() + 1, chartRow, curve, quantity, point, last));
        chartRow += ROWS_PER_CHART;
      }
      point += curve.days().length;
    }
    if (charts.size() != chartsInAll) {
      throw new IllegalStateException("charts and their places differ");
    }
  }

  private static List<Quantity> quantities(BatchCurve curve) {
    return Arrays.stream(Quantity.values())
        .filter(q -> Arrays.stream(q.of(curve)).filter(Double::isFinite).count() > 1)
        .toList();
  }

  String sheetName() {
    return sheetName;
  }

  List<BatchCurve> curves() {
    return curves;
  }

  List<Chart> charts() {
    return charts;
  }

  /** Row of the heading of each batch. */
  int headingRow(int batch) {
    return headings.get(batch);
  }

  /** Row of the table's headers. */
  int tableRow() {
    return tableRow;
  }

  static String heading(BatchCurve curve) {
    return curve.batch().equals(curve.sheet())
        ? curve.batch()
        : words(curve).say("chart.heading", curve.batch(), curve.sheet());
  }

  /** The page as a whole is in the language of its first log. */
  private Wording words() {
    return words(curves.get(0));
  }

  private static Wording words(BatchCurve curve) {
    return new Wording(curve.language());
  }

  String title() {
    return ChartsSheet.title(words().language());
  }

  /** The heads of the table. */
  List<String> heads() {
    return List.of(
        words().say("head.day"),
        words().say("chart.gravity"),
        "% vol",
        words().say("chart.temperatures"),
        "",
        words().say("head.batch"));
  }

  /** Stands above the folded rows. */
  String folded() {
    return words().say("chart.folded");
  }

  String note() {
    String note = words().say("chart.note");
    return all == curves.size() ? note : words().say("chart.some", note, curves.size(), all);
  }

  static double rounded(double value, int decimals) {
    if (Double.isNaN(value)) {
      return value;
    }
    double power = Math.pow(10, decimals);
    return Math.rint(value * power) / power;
  }

  static String number(double value) {
    return Numbers.show(value);
  }

  static String centimetres(double value) {
    return String.format(Locale.ROOT, "%.3fcm", value);
  }

  /** Text on the page, in one line. */
  static String escaped(String text) {
    return XmlText.escaped(text.replaceAll("\\p{Cntrl}", " "));
  }
}
