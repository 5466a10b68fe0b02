package washbook.log.overview;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import washbook.functions.Answer;
import washbook.functions.RefusedException;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.ferment.Balance;
import washbook.functions.ferment.Outlook;
import washbook.functions.ferment.Progress;
import washbook.functions.liquid.WashKind;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.WarningLimits;
import washbook.log.fill.ComputedTable;
import washbook.log.fill.Filling;
import washbook.log.fill.RowNotes;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;

/** Makes the overviews of a sheet's batches, and the warnings about them for the log itself. */
public final class Overviews implements RowNotes {
  /** Readings back that the course is fitted to. */
  private static final int MOST_READINGS = 1000;

  /** Spreadsheet dates count from here. */
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private static final double LAST_DAY = 2_958_465;

  private final WarningLimits limits;
  private final LocalDate today;
  private final Language language;

  /**
   * @param today the day on which a reading may be overdue
   */
  public Overviews(WarningLimits limits, LocalDate today) {
    this(limits, today, Language.EN);
  }

  /**
   * @param today the day on which a reading may be overdue
   * @param language in which warnings are told
   */
  public Overviews(WarningLimits limits, LocalDate today, Language language) {
    this.limits = limits;
    this.today = today;
    this.language = language;
  }

  /** One for each batch with a reading, of the tables that are understood without doubt. */
  public List<BatchOverview> of(Grid sheet, Understanding understanding, Filling filling) {
    Grid grid = understanding.seen(sheet);
    List<BatchOverview> overviews = new ArrayList<>();
    int settled = 0;
    for (LogTable table : understanding.tables()) {
      if (!table.settled() || settled >= filling.tables().size()) {
        continue;
      }
      List<Filling.BatchCount> counts = filling.tables().get(settled++).batches();
      ComputedTable computed =
          new ComputedTable(grid, table, Set.of(ComputedColumn.CORRECTED_GRAVITY));
      RowTimes order = RowTimes.of(grid, table);
      for (int i = 0; i < counts.size(); i++) {
        if (counts.get(i).rows() > 0) {
          Batch batch = table.batches().get(i);
          BatchReadings readings = BatchReadings.of(grid, table, batch, computed, order);
          overviews.add(
              look(understanding.sheet(), table, batch, counts.get(i), readings, true)
                  .overview(language));
        }
      }
    }
    return overviews;
  }

  /** A warning on the row that it is about, on the last one where it is about the batch. */
  @Override
  public Map<Integer, List<Message>> of(Grid grid, LogTable table, ComputedTable computed) {
    Map<Integer, List<Message>> notes = new TreeMap<>();
    if (!table.settings().writing().warned()) {
      return notes;
    }
    ComputedTable figures =
        computed.has(ComputedColumn.CORRECTED_GRAVITY)
            ? computed
            : new ComputedTable(grid, table, Set.of(ComputedColumn.CORRECTED_GRAVITY));
    List<Filling.BatchCount> counts = figures.count().batches();
    RowTimes order = RowTimes.of(grid, table);
    for (int i = 0; i < counts.size(); i++) {
      Batch batch = table.batches().get(i);
      BatchReadings readings = BatchReadings.of(grid, table, batch, figures, order);
      if (readings.count() > 0) {
        for (FoundWarning found :
            look("", table, batch, counts.get(i), readings, false).warnings()) {
          notes
              .computeIfAbsent(found.row(), row -> new ArrayList<>())
              .add(
                  found.note(found.cell().isEmpty() ? readings.cellIn(found.row()) : found.cell()));
        }
      }
    }
    return notes;
  }

  /** An overview and what is to be put in its warnings. */
  private record Look(BatchOverview plain, List<FoundWarning> warnings) {
    BatchOverview overview(Language language) {
      return plain.with(warnings.stream().map(found -> found.in(language)).toList());
    }
  }

  /**
   * @param sheet null where only warnings are wanted: then no course is fitted that warns of
   *     nothing
   */
  private Look look(
      String sheet,
      LogTable table,
      Batch batch,
      Filling.BatchCount count,
      BatchReadings readings,
      boolean isWhole) {
    WashKind kind = table.settings().wash().kind();
    WarningLimits ofMap = table.settings().writing().limits();
    Optional<Balance> now = balance(batch, readings, kind);
    BatchReadings fitted = readings.last(MOST_READINGS);
    WarningLimits all = limits.over(ofMap);
    Warnings warnings = new Warnings(all);
    boolean dated = table.column(Role.DATE).isPresent();
    LocalDate lastRead = dated ? date(readings.lastTriedDay()) : null;
    boolean quiet =
        !isWhole
            && fitted.isTimed()
            && warnings.needNoCourse(fitted, readings.span(), lastRead, today);
    Outlook outlook = quiet ? null : outlook(fitted, all.of(WarningLimits.Limit.FINAL));
    BatchOverview plain =
        new BatchOverview(
            sheet,
            batch.name(),
            kind.word(),
            dated && readings.count() > 0 ? shown(date(readings.days()[0])) : null,
            readings.count() > 0 ? shown(lastRead) : null,
            known(readings.span(), 2),
            count.rows(),
            count.refused(),
            known(batch.originalGravity().orElse(Double.NaN), 4),
            readings.count() == 0 ? null : known(readings.gravities()[readings.count() - 1], 4),
            now.map(b -> known(b.percentVolume(), 2)).orElse(null),
            now.map(b -> plusMinus(original(batch, readings), b)).orElse(null),
            now.map(b -> known(b.apparentAttenuation(), 1)).orElse(null),
            now.map(b -> known(b.realAttenuation(), 1)).orElse(null),
            now.map(b -> known(b.trueExtract(), 2)).orElse(null),
            rate(fitted),
            outlook != null
                ? outlook.state()
                : quiet && warnings.isLongAgo(lastRead, today) ? Warnings.WORKING : "",
            outlook == null || outlook.finish() == null ? null : known(outlook.finish().days(), 1),
            outlook == null || outlook.finish() == null
                ? null
                : known(outlook.finish().plusMinus(), 1),
            known(Arrays.stream(readings.temperaturesC()).min().orElse(Double.NaN), 1),
            known(Arrays.stream(readings.temperaturesC()).max().orElse(Double.NaN), 1),
            List.of(),
            ofMap.isUsual() ? null : ofMap.toString());
    List<FoundWarning> found = warnings.of(plain, fitted, outlook);
    if (readings.count() > 0) {
      warnings.overdue(plain, today, readings.lastTried()).ifPresent(found::add);
    }
    return new Look(plain, found);
  }

  private static double original(Batch batch, BatchReadings readings) {
    int row = readings.rows()[readings.count() - 1];
    return batch.originalGravity(batch.stepsBegunAt(row)).orElse(Double.NaN);
  }

  /** A last reading a little above the original gravity means that nothing has fermented yet. */
  private static Optional<Balance> balance(Batch batch, BatchReadings readings, WashKind kind) {
    if (readings.count() == 0 || Double.isNaN(original(batch, readings))) {
      return Optional.empty();
    }
    double original = original(batch, readings);
    double gravity = readings.gravities()[readings.count() - 1];
    try {
      return Optional.of(Balance.of(original, Math.min(gravity, original), kind));
    } catch (RefusedException impossible) {
      return Optional.empty();
    }
  }

  private static Double plusMinus(double originalGravity, Balance balance) {
    Answer answer =
        Catalogue.get("ABVPLUSMINUS")
            .call(originalGravity, balance.gravity(), null, null, balance.kind().word());
    return answer instanceof Answer.Number number ? known(number.value(), 2) : null;
  }

  private static Outlook outlook(BatchReadings readings, double expectedFinal) {
    if (readings.count() == 0 || !readings.isTimed()) {
      return null;
    }
    try {
      return Outlook.of(readings.days(), readings.gravities(), expectedFinal);
    } catch (RefusedException cannot) {
      return null;
    }
  }

  private static Double rate(BatchReadings readings) {
    try {
      return readings.isTimed()
          ? known(Progress.rate(readings.days(), readings.gravities()), 2)
          : null;
    } catch (RefusedException tooFew) {
      return null;
    }
  }

  private static String shown(LocalDate date) {
    return date == null ? null : date.toString();
  }

  private static LocalDate date(double day) {
    return day >= 1 && day <= LAST_DAY ? DAY_ZERO.plusDays((long) day) : null;
  }

  private static Double known(double value, int decimals) {
    double power = Math.pow(10, decimals);
    return Double.isFinite(value) ? Math.rint(value * power) / power + 0.0 : null;
  }
}
