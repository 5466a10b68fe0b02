package washbook.runner.report;

import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import washbook.runner.language.Wording;

/** The columns of a table of batches, the same in every kind of file. */
public enum OverviewColumn {
  BATCH("batch", line -> line.batch().batch()),
  STATE("state", line -> line.batch().state()),
  WASH("wash", line -> line.batch().wash()),
  FIRST("firstDate", line -> line.batch().firstDate()),
  LAST("lastDate", line -> line.batch().lastDate()),
  DAYS("days", 1, line -> line.batch().days()),
  ORIGINAL("originalGravity", 4, line -> line.batch().originalGravity()),
  LATEST("latestGravity", 4, line -> line.batch().latestGravity()),
  ALCOHOL("alcohol", 1, line -> line.batch().alcohol()),
  PLUS_MINUS("alcoholPlusMinus", 1, l -> l.batch().alcoholPlusMinus()),
  APPARENT("apparentAttenuation", 1, l -> l.batch().apparentAttenuation()),
  REAL("realAttenuation", 1, line -> line.batch().realAttenuation()),
  EXTRACT("extractLeft", 1, line -> line.batch().extractLeft()),
  RATE("rate", 1, line -> line.batch().rate()),
  TO_FINISH("daysToFinish", 1, line -> line.batch().daysToFinish()),
  COLDEST("lowestTemperatureC", 1, line -> line.batch().lowestTemperatureC()),
  WARMEST("highestTemperatureC", 1, line -> line.batch().highestTemperatureC()),
  READINGS("readings", 0, line -> (double) line.batch().readings()),
  REFUSED("refused", 0, line -> (double) line.batch().refused()),
  WARNINGS("warnings", OverviewColumn::warnings),
  FILE("file", OverviewLine::file),
  SHEET("sheet", line -> line.batch().sheet());

  private final String word;
  private final int decimals;
  private final Function<OverviewLine, Object> value;

  OverviewColumn(String word, Function<OverviewLine, Object> value) {
    this(word, -1, value);
  }

  OverviewColumn(String word, int decimals, Function<OverviewLine, Object> value) {
    this.word = word;
    this.decimals = decimals;
    this.value = value;
  }

  /** What a person reads above it. */
  public String head(Wording words) {
    return words.say("column." + name());
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

  /** What a person reads; "" where it is not known. */
  public String shown(OverviewLine line, Wording words) {
    return switch (this) {
      case STATE -> words.say(line.batch().stateMessage());
      case WARNINGS ->
          line.batch().warnings().stream()
              .map(warning -> words.say(warning.kind().message()))
              .distinct()
              .collect(Collectors.joining(", "));
      default ->
          isDate() ? words.day(text(line)) : isNumber() ? words.decimal(text(line)) : text(line);
    };
  }

  /** What a program reads; "" where it is not known. */
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
