package washbook.runner.report;

import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The columns of a table of batches, the same in every kind of file. */
public enum OverviewColumn {
  BATCH("Batch", "batch", line -> line.batch().batch()),
  STATE("State", "state", line -> line.batch().state()),
  WASH("Wash", "wash", line -> line.batch().wash()),
  FIRST("First reading", "firstDate", line -> line.batch().firstDate()),
  LAST("Last reading", "lastDate", line -> line.batch().lastDate()),
  DAYS("Days", "days", 1, line -> line.batch().days()),
  ORIGINAL("Original gravity (SG)", "originalGravity", 4, line -> line.batch().originalGravity()),
  LATEST("Latest gravity (SG)", "latestGravity", 4, line -> line.batch().latestGravity()),
  ALCOHOL("Alcohol to date (% vol)", "alcohol", 1, line -> line.batch().alcohol()),
  PLUS_MINUS("Plus or minus (% vol)", "alcoholPlusMinus", 1, l -> l.batch().alcoholPlusMinus()),
  APPARENT(
      "Apparent attenuation (%)", "apparentAttenuation", 1, l -> l.batch().apparentAttenuation()),
  REAL("Real attenuation (%)", "realAttenuation", 1, line -> line.batch().realAttenuation()),
  EXTRACT("Extract left (% by mass)", "extractLeft", 1, line -> line.batch().extractLeft()),
  RATE("Falls by (points a day)", "rate", 1, line -> line.batch().rate()),
  TO_FINISH("Days to finish", "daysToFinish", 1, line -> line.batch().daysToFinish()),
  COLDEST("Coldest (°C)", "lowestTemperatureC", 1, line -> line.batch().lowestTemperatureC()),
  WARMEST("Warmest (°C)", "highestTemperatureC", 1, line -> line.batch().highestTemperatureC()),
  READINGS("Readings", "readings", 0, line -> (double) line.batch().readings()),
  REFUSED("Refused", "refused", 0, line -> (double) line.batch().refused()),
  WARNINGS("Warnings", "warnings", OverviewColumn::warnings),
  FILE("File", "file", OverviewLine::file),
  SHEET("Sheet", "sheet", line -> line.batch().sheet());

  private final String head;
  private final String word;
  private final int decimals;
  private final Function<OverviewLine, Object> value;

  OverviewColumn(String head, String word, Function<OverviewLine, Object> value) {
    this(head, word, -1, value);
  }

  OverviewColumn(String head, String word, int decimals, Function<OverviewLine, Object> value) {
    this.head = head;
    this.word = word;
    this.decimals = decimals;
    this.value = value;
  }

  /** What a person reads above it. */
  public String head() {
    return head;
  }

  /** What a program reads above it. */
  public String word() {
    return word;
  }

  public boolean isNumber() {
    return decimals >= 0;
  }

  /** Decimal places that are shown. */
  public int decimals() {
    return decimals;
  }

  /** Whether it holds dates such as 2025-11-30. */
  public boolean isDate() {
    return this == FIRST || this == LAST;
  }

  /** The number of a column of numbers; null where it is not known. */
  public Double number(OverviewLine line) {
    return (Double) value.apply(line);
  }

  /** What is shown; "" where it is not known. */
  public String text(OverviewLine line) {
    Object known = value.apply(line);
    return known == null
        ? ""
        : isNumber() ? String.format(Locale.ROOT, "%." + decimals + "f", known) : known.toString();
  }

  private static String warnings(OverviewLine line) {
    return line.batch().warnings().stream()
        .map(warning -> warning.kind().word())
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
