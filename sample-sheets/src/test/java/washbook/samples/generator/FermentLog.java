package washbook.samples.generator;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import washbook.functions.scale.SugarScale;
import washbook.samples.ferment.Ferment;

/** Puts one ferment log together from what was chosen for it. */
final class FermentLog {
  private static final int FIGURES = 1;
  private static final int STYLE = 2;
  private static final int WORDS = 3;

  final Choice facts;
  final Choice style;
  final Choice wording;
  final Words words;
  final Layout layout;
  final Gauge gauge;
  final Set<Dirt> dirt;
  final Course.Kind course;
  final Headings headings;
  final boolean wordless;
  final boolean withoutTemperature;
  final List<List<Line>> batches = new ArrayList<>();
  final List<Truth.Row> truth = new ArrayList<>();
  final List<String> features = new ArrayList<>();

  /** The original gravity that the log states, SG; NaN for none. */
  double stated = Double.NaN;

  double statedShown = Double.NaN;

  private FermentLog(long seed, int number, GeneratedLog.Variant variant) {
    facts = new Choice(seed, number, FIGURES);
    style = new Choice(seed, number, STYLE);
    wording = new Choice(seed, number, WORDS);
    wordless = variant.wordless();
    String first = facts.of(Words.LANGUAGES);
    words = Words.in(variant.language().isEmpty() ? first : variant.language());
    Layout chosen = Layout.choose(facts);
    course = Course.choose(facts);
    gauge = Gauge.choose(facts, first, chosen);
    layout = wordless ? Layout.PLAIN : chosen;
    dirt = wordless ? EnumSet.noneOf(Dirt.class) : Dirt.choose(facts, layout);
    withoutTemperature = !wordless && gauge.kind() == Gauge.Kind.HYDROMETER && facts.chance(0.03);
    Headings.UnitPlace units =
        layout == Layout.UNIT_ROW
            ? Headings.UnitPlace.UNIT_ROW
            : style.among(
                Headings.UnitPlace.HEADER,
                Headings.UnitPlace.HEADER,
                Headings.UnitPlace.HEADER,
                layout == Layout.TITLE ? Headings.UnitPlace.TITLE : Headings.UnitPlace.HEADER,
                layout == Layout.SENSOR_EXPORT
                    ? Headings.UnitPlace.HEADER
                    : Headings.UnitPlace.CELLS,
                Headings.UnitPlace.NOWHERE);
    headings = new Headings(wording, words, gauge, units, wordless);
    washes();
    features.addAll(
        List.of(
            "language " + words.language(),
            "instrument " + gauge.kind() + (gauge.thousand() ? " written as 1085" : ""),
            "scale " + gauge.scale(),
            "calibration " + Math.round(gauge.hydrometer().calibrationC()),
            "units " + units,
            "course " + course));
    dirt.forEach(d -> features.add("dirt " + d));
    if (!Double.isNaN(stated)) {
      features.add("original stated");
    }
    if (withoutTemperature) {
      features.add("no temperature");
    }
  }

  static FermentLog chosen(long seed, int number) {
    return new FermentLog(seed, number, GeneratedLog.Variant.asWritten());
  }

  static GeneratedLog of(long seed, int number, GeneratedLog.Variant variant) {
    FermentLog log = new FermentLog(seed, number, variant);
    Sheet sheet = new FermentSheet(log).make();
    boolean ask = log.withoutTemperature || log.headings.leavesScaleOpen(log.gauge) || log.wordless;
    return new GeneratedLog(
        seed,
        number,
        sheet,
        new Truth(ask ? Truth.Verdict.MUST_ASK : Truth.Verdict.FILL, List.copyOf(log.truth)),
        log.layout.name(),
        List.copyOf(log.features));
  }

  private void washes() {
    boolean sensor = layout == Layout.SENSOR_EXPORT;
    int count = layout.isShared() || layout.isSeveral() ? 2 : 1;
    int trade = facts.whole(0, 3);
    for (int i = 0; i < count; i++) {
      int kind = (trade + i) % 4;
      Course.Kind here = i == 0 ? course : Course.Kind.ORDINARY;
      Ferment wash = Course.wash(facts, words.all("names").get(kind), kind, here);
      if (i > 0 && layout == Layout.VESSELS_SHARE_DATES) {
        batches.add(beside(batches.get(0), wash));
      } else {
        batches.add(Batches.lines(facts, gauge, wash, here, sensor));
      }
    }
    boolean canState =
        layout == Layout.KEY_LINES
            && gauge.kind() != Gauge.Kind.REFRACTOMETER
            && !headings.leavesScaleOpen(gauge);
    if (canState && facts.chance(0.6)) {
      Line first = batches.get(0).get(0);
      statedShown = gauge.hydrometer().showsOriginal(first.visit.moment());
      stated = gauge.hydrometer().scale().toGravity(statedShown);
      lateFirstReading();
    }
    for (List<Line> lines : batches) {
      Dirt.spoil(dirt, lines, gauge, words, facts);
      initials(lines);
      Batches.settle(lines, gauge, stated);
    }
    if (layout == Layout.BATCH_COLUMN && facts.chance(0.35)) {
      split();
    }
    notesOnFeeding();
  }

  /** Somebody who has stated the beginning often takes the next reading days later. */
  private void lateFirstReading() {
    List<Line> lines = batches.get(0);
    if (facts.chance(0.4)) {
      while (lines.size() > 4 && lines.get(0).visit.day() < 2) {
        lines.remove(0);
      }
      features.add("first reading late");
    }
  }

  /** A second vessel seen on the same visits. */
  private List<Line> beside(List<Line> first, Ferment wash) {
    List<Line> lines = new ArrayList<>();
    for (Line line : first) {
      double day = line.visit.day();
      double temperature = gauge.thermometer().shows(wash.temperatureC(day));
      Course.Visit visit =
          new Course.Visit(
              line.time(), day, wash.at(day), wash.temperatureC(day), false, false, false);
      double celsius = gauge.thermometer().celsius(temperature);
      lines.add(new Line(visit, wash.name(), gauge.shows(wash.at(day), celsius), temperature));
    }
    return lines;
  }

  private void initials(List<Line> lines) {
    int at = facts.whole(0, 25);
    for (Line line : lines) {
      line.initials = String.valueOf((char) ('A' + (dirt.contains(Dirt.INITIALS) ? at++ % 26 : 0)));
    }
  }

  private void notesOnFeeding() {
    if (!facts.chance(0.75)) {
      return;
    }
    for (Line line : batches.get(0)) {
      if (line.visit.fedNow()) {
        line.note = words.one("fed", wording);
        features.add("feeding noted");
      }
    }
  }

  /** Half of the first wash goes into another vessel when most of its sugar is gone. */
  private void split() {
    List<Line> whole = batches.get(0);
    List<Line> half = new ArrayList<>();
    double start = whole.get(0).visit.moment().gravity() - 1;
    for (Line line : whole) {
      boolean late = line.visit.moment().gravity() - 1 < 0.45 * start;
      if (late && !line.visit.afterFeeding() && line.kind == Truth.Kind.COMPUTABLE) {
        Line other = new Line(line.visit, line.batch + "b", line.shown, line.temperature);
        other.kind = Truth.Kind.NOT_COMPUTABLE;
        other.initials = line.initials;
        half.add(other);
      }
    }
    if (half.size() < 2) {
      return;
    }
    if (wording.chance(0.5)) {
      half.get(0).note = words.one("split", wording);
    }
    batches.add(half);
    features.add("split");
  }

  /** All lines of a table with several batches: one after the other, or by date. */
  List<Line> together() {
    List<Line> all = new ArrayList<>();
    batches.forEach(all::addAll);
    if (layout != Layout.NAME_LINES && style.chance(0.5)) {
      Collections.sort(all, Comparator.comparing(Line::time));
    }
    return all;
  }

  boolean isSg() {
    return gauge.scale() == SugarScale.SG;
  }
}
