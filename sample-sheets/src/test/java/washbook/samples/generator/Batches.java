package washbook.samples.generator;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.RefusedException;
import washbook.samples.ferment.Ferment;

/** The lines of one batch, with the figures that follow from them. */
final class Batches {
  /** What another order of rounding may change. */
  private static final double GRAVITY_ERROR = 0.0002;

  private static final double ABV_ERROR = 0.03;

  /** With a wobbling beginning, any of its readings may be taken as the original. */
  private static final double ABV_ERROR_AFTER_LAG = 0.2;

  private Batches() {}

  static List<Line> lines(
      Choice choice, Gauge gauge, Ferment wash, Course.Kind kind, boolean sensor) {
    List<Line> lines = new ArrayList<>();
    for (Course.Visit visit : Course.visits(choice, wash, kind, sensor)) {
      double temperature = gauge.thermometer().shows(visit.temperatureC());
      double celsius = gauge.thermometer().celsius(temperature);
      double shown = gauge.shows(visit.moment(), celsius);
      if (visit.inLag() && visit.day() > 0) {
        shown = wobbled(choice, gauge, shown);
      }
      lines.add(new Line(visit, wash.name(), shown, temperature));
    }
    return lines;
  }

  /** A reading in a wash in which nothing happens: up to 0.001 SG off, rather above than below. */
  private static double wobbled(Choice choice, Gauge gauge, double shown) {
    double step = gauge.kind() == Gauge.Kind.REFRACTOMETER ? 0.2 : gauge.hydrometer().step();
    int most = Math.max(0, (int) Math.floor(0.00101 / gauge.stepGravity()));
    return Choice.onStep(shown + step * choice.whole(-most / 2, most), step);
  }

  /**
   * Works out the figures.
   *
   * @param stated original gravity as the log states it, SG; NaN when the first reading is it
   */
  static void settle(List<Line> lines, Gauge gauge, double stated) {
    Line first = lines.get(0);
    double original =
        Double.isNaN(stated) ? gauge.originalOf(first.shown, celsius(gauge, first)) : stated;
    boolean lag = lines.stream().anyMatch(l -> l.visit.inLag() && l.visit.day() > 0);
    for (Line line : lines) {
      if (line.visit.afterFeeding() && line.kind != Truth.Kind.NO_VALUE) {
        line.kind = Truth.Kind.NOT_COMPUTABLE;
      }
      if (line.kind == Truth.Kind.COMPUTABLE || line.kind == Truth.Kind.DOUBTFUL) {
        boolean isOriginal = line == first && Double.isNaN(stated);
        figures(line, gauge, original, isOriginal, first.shown);
        line.abvError = lag ? ABV_ERROR_AFTER_LAG : ABV_ERROR;
      }
    }
  }

  private static void figures(
      Line line, Gauge gauge, double original, boolean isOriginal, double firstShown) {
    try {
      line.gravity =
          isOriginal
              ? original
              : gauge.gravityOf(line.shown, celsius(gauge, line), original, firstShown);
      line.gravityError = GRAVITY_ERROR;
      if (line.gravity >= original) {
        line.gravityError = Math.max(GRAVITY_ERROR, 2 * gauge.stepGravity());
        line.abv = 0;
      } else {
        line.abv = Gauge.abv(original, line.gravity);
      }
    } catch (RefusedException impossible) {
      line.kind = Truth.Kind.DOUBTFUL;
    }
  }

  static double celsius(Gauge gauge, Line line) {
    return gauge.thermometer().celsius(line.temperature);
  }
}
