package washbook.samples.generator;

import java.time.LocalDateTime;

/** One line of a table as it is written, with what can be known from it. */
final class Line {
  final Course.Visit visit;
  final String batch;
  final double shown;
  final double temperature;
  Truth.Kind kind = Truth.Kind.COMPUTABLE;

  /** What stands in the cells instead of plain numbers; null for the numbers. */
  Object readingCell;

  Object temperatureCell;
  boolean temperatureBlank;
  String note = "";
  String initials = "";

  /** Figures that a right reader gets, NaN where there are none. */
  double gravity = Double.NaN;

  double abv = Double.NaN;
  double gravityError;
  double abvError;

  Line(Course.Visit visit, String batch, double shown, double temperature) {
    this.visit = visit;
    this.batch = batch;
    this.shown = shown;
    this.temperature = temperature;
  }

  LocalDateTime time() {
    return visit.time();
  }
}
