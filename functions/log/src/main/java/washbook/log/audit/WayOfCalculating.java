package washbook.log.audit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Balance;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.reading.Hydrometer;
import washbook.functions.scale.PotentialAlcohol;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.ComputedColumn;
import washbook.log.language.Figure;
import washbook.log.language.Message;

/**
 * One way in which a person may have come to a figure.
 *
 * @param causes what is wrong with it; empty for the right way
 * @param detail in words
 * @param figure recomputes a row that way; NaN where it cannot
 */
record WayOfCalculating(
    Set<Audit.Cause> causes, Message detail, ToDoubleFunction<AuditRow> figure) {

  /** Multipliers of the difference of the gravities: common practice, no source. */
  private static final double[] FACTORS = {131.25, 131, 125, 1000 / 7.36, 1000 / 7.5, 129, 105};

  /** Between these lies what people multiply with. */
  private static final double LEAST_FACTOR = 95;

  private static final double MOST_FACTOR = 145;

  /** Calibrations in use, °C. */
  private static final double[] CALIBRATIONS = {20, 140.0 / 9, 15, 17.5, 25};

  /** A pair of gravities that a figure may have been calculated from. */
  private record Source(
      Set<Audit.Cause> causes,
      Message detail,
      ToDoubleFunction<AuditRow> original,
      ToDoubleFunction<AuditRow> gravity) {}

  /** A way to calculate from two gravities. */
  private record Way(Set<Audit.Cause> causes, Message detail, DoubleBinaryOperator figure) {}

  /** All ways to come to a column, the right one first and simpler ones before others. */
  static List<WayOfCalculating> of(ComputedColumn column, double calibrationC) {
    List<Source> sources = sources(calibrationC);
    if (column == ComputedColumn.CORRECTED_GRAVITY) {
      return gravities(sources, calibrationC);
    }
    List<WayOfCalculating> all = new ArrayList<>();
    for (Way way : ways(column)) {
      for (Source source : sources) {
        Set<Audit.Cause> causes = EnumSet.noneOf(Audit.Cause.class);
        causes.addAll(way.causes());
        causes.addAll(source.causes());
        all.add(
            new WayOfCalculating(
                causes,
                join(way.detail(), source.detail()),
                row ->
                    figure(
                        way.figure(),
                        source.original().applyAsDouble(row),
                        source.gravity().applyAsDouble(row))));
      }
    }
    all.sort((a, b) -> Integer.compare(a.causes().size(), b.causes().size()));
    return all;
  }

  /**
   * Alcohol by a multiplier of the person's own, measured to two decimals from each pair of
   * gravities; simpler ones before others.
   *
   * @param figures of the log, one for each row
   */
  static List<WayOfCalculating> measured(
      List<AuditRow> rows, List<Double> figures, double calibrationC) {
    List<WayOfCalculating> all = new ArrayList<>();
    for (Source source : sources(calibrationC)) {
      ToDoubleFunction<AuditRow> fall =
          row -> source.original().applyAsDouble(row) - source.gravity().applyAsDouble(row);
      double product = 0;
      double square = 0;
      for (int i = 0; i < rows.size(); i++) {
        double fallen = fall.applyAsDouble(rows.get(i));
        product += Double.isNaN(fallen) ? 0 : fallen * figures.get(i);
        square += Double.isNaN(fallen) ? 0 : fallen * fallen;
      }
      double factor = Math.rint(100 * product / square) / 100;
      if (factor >= LEAST_FACTOR && factor <= MOST_FACTOR) {
        Set<Audit.Cause> causes = EnumSet.of(Audit.Cause.RULE_OF_THUMB);
        causes.addAll(source.causes());
        Message detail = join(detail("factor", figure("%.2f", factor)), source.detail());
        all.add(new WayOfCalculating(causes, detail, row -> factor * fall.applyAsDouble(row)));
      }
    }
    all.sort((a, b) -> Integer.compare(a.causes().size(), b.causes().size()));
    return all;
  }

  private static Message join(Message way, Message source) {
    return way.equals(Message.NONE)
        ? source
        : source.equals(Message.NONE) ? way : detail("both", way, source);
  }

  private static Message detail(String key, Object... arguments) {
    return Message.of("audit.detail." + key, arguments);
  }

  private static Figure figure(String format, double value) {
    return new Figure(String.format(Locale.ROOT, format, value));
  }

  private static double figure(DoubleBinaryOperator way, double original, double gravity) {
    try {
      double figure = way.applyAsDouble(original, gravity);
      return Double.isFinite(figure) ? figure : Double.NaN;
    } catch (RefusedException refused) {
      return Double.NaN;
    }
  }

  private static List<Source> sources(double calibrationC) {
    List<Source> sources = new ArrayList<>();
    sources.add(new Source(Set.of(), Message.NONE, AuditRow::original, AuditRow::gravity));
    sources.add(
        new Source(
            EnumSet.of(Audit.Cause.WARM_READING),
            detail("asRead"),
            row -> row.original() + row.originalReading() - row.unfed(),
            AuditRow::reading));
    sources.add(
        new Source(
            EnumSet.of(Audit.Cause.FED_SUGAR_IGNORED),
            detail("firstAlone"),
            AuditRow::unfed,
            AuditRow::gravity));
    for (double other : CALIBRATIONS) {
      if (Math.abs(other - calibrationC) > 0.3) {
        sources.add(
            new Source(
                EnumSet.of(Audit.Cause.WRONG_REFERENCE),
                detail("calibrated", figure("%.1f", other)),
                row -> original(row, other),
                row -> corrected(row, other, original(row, other))));
      }
    }
    return sources;
  }

  private static double original(AuditRow row, double calibrationC) {
    return Double.isNaN(row.originalTemperatureC())
        ? row.original()
        : Hydrometer.correctedGravity(
            row.originalReading(), row.originalTemperatureC(), calibrationC, row.offset());
  }

  private static double corrected(AuditRow row, double calibrationC, double original) {
    try {
      return Hydrometer.correctedGravity(
          row.reading(), row.temperatureC(), calibrationC, original, row.offset());
    } catch (RefusedException refused) {
      return Double.NaN;
    }
  }

  private static List<WayOfCalculating> gravities(List<Source> sources, double calibrationC) {
    List<WayOfCalculating> all = new ArrayList<>();
    for (Source source : sources) {
      if (!source.causes().contains(Audit.Cause.FED_SUGAR_IGNORED)) {
        all.add(new WayOfCalculating(source.causes(), source.detail(), source.gravity()));
      }
    }
    Set<Audit.Cause> thumb = EnumSet.of(Audit.Cause.RULE_OF_THUMB);
    all.add(
        new WayOfCalculating(
            thumb,
            detail("fahrenheit"),
            row ->
                row.reading() + (TemperatureUnit.F.fromCelsius(row.temperatureC()) - 60) / 6000));
    for (double perDegree : new double[] {0.0002, 0.00025, 0.0003}) {
      all.add(
          new WayOfCalculating(
              thumb,
              detail("perDegree", figure("%.5f", perDegree)),
              row -> row.reading() + (row.temperatureC() - calibrationC) * perDegree));
    }
    return all;
  }

  private static List<Way> ways(ComputedColumn column) {
    return switch (column) {
      case ABV -> alcohol();
      case APPARENT_ATTENUATION -> apparent();
      case REAL_ATTENUATION -> real();
      default -> List.of();
    };
  }

  private static List<Way> alcohol() {
    List<Way> ways = new ArrayList<>();
    ways.add(
        new Way(
            Set.of(), Message.NONE, (og, g) -> Balance.of(og, Math.min(og, g)).percentVolume()));
    Set<Audit.Cause> thumb = EnumSet.of(Audit.Cause.RULE_OF_THUMB);
    for (double factor : FACTORS) {
      ways.add(
          new Way(thumb, detail("factor", figure("%.2f", factor)), (og, g) -> factor * (og - g)));
    }
    Set<Audit.Cause> potentials = EnumSet.of(Audit.Cause.DIFFERENCE_OF_POTENTIALS);
    ways.add(
        new Way(
            potentials,
            detail("potentials"),
            (og, g) -> PotentialAlcohol.model(og) - PotentialAlcohol.model(g)));
    for (double grams : new double[] {16.83, 17, 18}) {
      ways.add(
          new Way(
              potentials,
              detail("grams", figure("%.2f", grams)),
              (og, g) -> PotentialAlcohol.fixed(og, grams) - PotentialAlcohol.fixed(g, grams)));
    }
    ways.add(
        new Way(
            EnumSet.of(Audit.Cause.APPARENT_AS_REAL),
            detail("balance"),
            (og, g) ->
                FermentingWash.alcoholByMass(SucroseSolution.brix(og), SucroseSolution.brix(g))
                    * FermentingWash.density20(g)
                    / EthanolWater.ETHANOL_DENSITY_20));
    return ways;
  }

  private static List<Way> apparent() {
    return List.of(
        new Way(
            Set.of(),
            Message.NONE,
            (og, g) -> Balance.of(og, Math.min(og, g)).apparentAttenuation()),
        new Way(
            EnumSet.of(Audit.Cause.RULE_OF_THUMB), detail("points"), WayOfCalculating::pointsGone));
  }

  private static List<Way> real() {
    Set<Audit.Cause> apparent = EnumSet.of(Audit.Cause.APPARENT_AS_REAL);
    return List.of(
        new Way(
            Set.of(), Message.NONE, (og, g) -> Balance.of(og, Math.min(og, g)).realAttenuation()),
        new Way(apparent, detail("gravities"), WayOfCalculating::pointsGone),
        new Way(
            apparent,
            detail("extract"),
            (og, g) -> Balance.of(og, Math.min(og, g)).apparentAttenuation()),
        new Way(
            EnumSet.of(Audit.Cause.RULE_OF_THUMB),
            detail("share", new Figure("0.8192")),
            (og, g) -> 0.8192 * Balance.of(og, Math.min(og, g)).apparentAttenuation()));
  }

  private static double pointsGone(double original, double gravity) {
    return 100 * (original - gravity) / (original - 1);
  }
}
