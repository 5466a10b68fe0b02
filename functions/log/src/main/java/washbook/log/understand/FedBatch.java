package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Feeding;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;
import washbook.log.Batch;
import washbook.log.LogColumn;
import washbook.log.ReadingError;
import washbook.log.RowStatement;
import washbook.log.language.Message;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RiseWatch;
import washbook.log.words.FeedWords;

/** One batch while it is gone through from its first reading on. */
final class FedBatch {
  /** Readings further apart do not tell what went in between them, days; common practice. */
  private static final double MOST_APART = 1;

  private final Feeds feeds;
  private final TableMap.RowPart said;
  private final HydrometerRows reading;
  private final FeedQuestions questions;
  private final Batch batch;
  private final int[] rows;
  private final boolean watched;
  private final List<Batch.Step> steps = new ArrayList<>();
  private final List<Double> kilograms = new ArrayList<>();
  private final List<Double> litres = new ArrayList<>();
  private final RiseWatch watch = new RiseWatch();
  private final int first;

  /** What the amounts are added to. */
  private double baseLitres;

  private double baseGravity;
  private Message missing = Message.NONE;
  private boolean asked;
  private boolean tells;
  private int begun;
  private int readings;

  /** From there readings are higher than those before, or than any of this wash; -1 for none. */
  private int askFrom = -1;

  private boolean fallen;

  /** Up to there notes speak of an addition that is counted already. */
  private int coveredTo = -1;

  /**
   * @param told whether a map tells of additions to it
   * @param watched whether its readings may rise
   */
  FedBatch(Feeds feeds, Batch batch, boolean told, boolean watched) {
    this.feeds = feeds;
    said = feeds.said;
    reading = feeds.reading;
    questions = feeds.questions;
    this.batch = batch;
    this.rows = batch.rows();
    this.watched = watched;
    tells = told;
    first = feeds.firstReading(rows);
    baseLitres = feeds.startVolume(batch);
    baseGravity = batch.original().gravity().orElseThrow();
    steps.add(known(0, baseGravity));
  }

  Batch over() {
    for (int position = first; position >= 0 && position < rows.length; position++) {
      begin(position);
      take(position);
      if (watched) {
        begin(position);
        watch(position);
      }
    }
    boolean isAsked = watch.isOpen() || fallen;
    if (!asked && askFrom >= 0 && isAsked && (tells || !watch.isMixed(readings))) {
      askRise(askFrom);
    }
    return steps.size() == 1 ? batch : batch.fed(steps);
  }

  private void begin(int position) {
    while (begun < steps.size() && steps.get(begun).fromPosition() <= position) {
      begun++;
      watch.begin();
    }
  }

  private Batch.Step known(int from, double original) {
    return new Batch.Step(from, OptionalDouble.of(original), brix(original), Message.NONE, false);
  }

  private Batch.Step unknown(int from) {
    return new Batch.Step(from, OptionalDouble.empty(), missing);
  }

  /** What a refractometer would have shown of all that. */
  private OptionalDouble brix(double original) {
    return batch.originalBrix().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(brixOfExtract(SucroseSolution.brix(original)));
  }

  private double brixOfExtract(double extract) {
    double before = SucroseSolution.brix(batch.original().gravity().orElseThrow());
    return batch.originalBrix().orElse(Double.NaN) * extract / before;
  }

  private double original() {
    return steps.get(steps.size() - 1).originalGravity().orElse(Double.NaN);
  }

  private void watch(int position) {
    int row = rows[position];
    HydrometerRows.State state = reading.read(row);
    readings += state == HydrometerRows.State.NOTHING ? 0 : 1;
    double gravity = gravity(row, begun);
    if (state != HydrometerRows.State.READ || watch.isOpen()) {
      return;
    }
    if (Double.isNaN(gravity)) {
      boolean above = feeds.plain(row) > steps.get(begun - 1).originalGravity().orElse(Double.NaN);
      askFrom = above && askFrom < 0 ? position : askFrom;
      return;
    }
    fallen |= gravity < steps.get(begun - 1).originalGravity().orElseThrow() - RiseWatch.LASTING;
    watch.read(position, gravity);
    askFrom = !watch.isOpen() ? -1 : askFrom >= 0 ? askFrom : watch.openFrom();
  }

  /** SG 20/20 of a reading just read, when that many steps have begun. */
  private double gravity(int row, int stepsBegun) {
    Batch.Step step = steps.get(Math.max(stepsBegun, 1) - 1);
    if (step.originalGravity().isEmpty() || reading.read(row) != HydrometerRows.State.READ) {
      return Double.NaN;
    }
    if (batch.isFirstReading(row)) {
      return reading.asSugarSolution();
    }
    double original = step.originalGravity().getAsDouble();
    reading.begin(step.originalBrix().orElse(Double.NaN));
    double gravity = reading.asWash(SucroseSolution.brix(original));
    double before = gravity <= original ? Double.NaN : reading.beforeFerment(original);
    return Double.isNaN(before) ? gravity : before;
  }

  private void take(int position) {
    int row = rows[position];
    TableMap.Feed byMap = said.sugar().get(row);
    boolean byRise = byMap != null && byMap.isByTheRise();
    double sugarHere = byMap == null ? feeds.amount(row, feeds.sugar) : byMap.kilograms().orElse(0);
    double waterHere = feeds.amount(row, feeds.water);
    boolean added = byRise || sugarHere != 0 || waterHere != 0;
    boolean noted = !added && byMap == null && isNoted(position);
    if (byMap != null && !added) {
      nothingAdded(position);
      return;
    }
    boolean open = position != first && !added && !noted && missing.equals(Message.NONE);
    Message changed = open ? feeds.changed(batch.name(), rows, position) : Message.NONE;
    if (!changed.equals(Message.NONE)) {
      missing = changed;
      asked = true;
      steps.add(unknown(position + (feeds.isReadBefore(row) ? 1 : 0)));
      return;
    }
    boolean begunBefore = position == first && feeds.isBelowStated(batch, row);
    boolean inFirst =
        position == first && !byRise && !feeds.risesAfter(rows, position) && !begunBefore;
    if ((!added && !noted) || inFirst) {
      return;
    }
    tells = true;
    if (missing.equals(Message.NONE) && !byRise) {
      missing = noted ? askNote(position) : missing(position, sugarHere, waterHere);
    }
    int from = position + (feeds.readAfter(rows, position) || begunBefore ? 0 : 1);
    coveredTo = Math.max(coveredTo, feeds.after(rows, position));
    if (byRise) {
      steps.add(byRise(position, from));
    } else {
      kilograms.add(sugarHere);
      litres.add(waterHere);
      steps.add(step(from));
    }
  }

  /** Whether a note tells of an addition that nothing else tells of. */
  private boolean isNoted(int position) {
    if (feeds.sugar != null
        || !(feeds.saysAdded(rows[position]) || saysFedWhereItRises(position))) {
      return false;
    }
    boolean counted = position <= coveredTo && !feeds.risesAfter(rows, position);
    return !counted && !isSaidUntil(position);
  }

  /** Words for honey, syrup and the like count only where the readings bear them out. */
  private boolean saysFedWhereItRises(int position) {
    return position != first
        && (feeds.isSugarBeforeRise(rows, position)
            || watched
                && questions.saysFed(rows[position])
                && risesOver(position, RiseWatch.LASTING));
  }

  /** Whether the reading after a position is higher by so much than the one before it. */
  private boolean risesOver(int position, double least) {
    int after = feeds.after(rows, position);
    int before = after < 0 ? -1 : feeds.before(rows, position);
    return before >= 0 && feeds.plain(rows[after]) > feeds.plain(rows[before]) + least;
  }

  /** Whether a map tells what was added before the next reading, on a row that follows. */
  private boolean isSaidUntil(int position) {
    int after = feeds.after(rows, position);
    for (int next = position + 1; next <= after; next++) {
      if (said.sugar().containsKey(rows[next]) || said.batches().containsKey(rows[next])) {
        return true;
      }
    }
    return false;
  }

  /** A map says that nothing was added: a rise that does not stay is a slip, another is none. */
  private void nothingAdded(int position) {
    int after = feeds.after(rows, position);
    int before = feeds.before(rows, position);
    if (after < 0 || before < 0 || Double.isNaN(original())) {
      return;
    }
    double lower = feeds.plain(rows[before]);
    if (!(feeds.plain(rows[after]) > lower + Feeds.RISE)) {
      return;
    }
    coveredTo = Math.max(coveredTo, after);
    double original = original();
    int next = after + 1;
    while (next < rows.length && !feeds.isRead(rows[next])) {
      next++;
    }
    if (next < rows.length && feeds.plain(rows[next]) > lower + ReadingError.USUAL) {
      steps.add(known(after, original));
      return;
    }
    reading.read(rows[after]);
    steps.add(Batch.Step.slip(after, Message.of("why.slip", reading.cell(rows[after]))));
    steps.add(known(after + 1, original));
  }

  private Batch.Step byRise(int position, int from) {
    if (!missing.equals(Message.NONE)) {
      return unknown(from);
    }
    double before = original();
    OptionalDouble fed = fedByRise(position);
    if (fed.isEmpty()) {
      reading.read(rows[position]);
      String cell = reading.cell(rows[position]);
      missing = Message.of("why.rise", cell);
      askOnce(() -> questions.askInsteadOfRise(feed(position), cell));
      return unknown(from);
    }
    double mass =
        Feeding.mass(baseLitres, baseGravity)
            + litres.stream().mapToDouble(l -> Feeding.mass(l, 1)).sum()
            + kilograms.stream().mapToDouble(Double::doubleValue).sum();
    baseGravity = fed.getAsDouble();
    baseLitres = Feeding.litresByRise(mass, before, baseGravity, solids(position));
    kilograms.clear();
    litres.clear();
    return known(from, baseGravity);
  }

  private OptionalDouble fedByRise(int position) {
    int after = feeds.after(rows, position);
    int before = feeds.before(rows, position);
    if (after < 0
        || before < 0
        || feeds.isWatered(rows, before, after)
        || areApart(before, after)) {
      return OptionalDouble.empty();
    }
    double solids = solids(position);
    double lower = gravity(rows[before], steps.size());
    reading.read(rows[after]);
    try {
      double fed =
          Feeding.byRise(
              original(),
              lower,
              extract -> {
                reading.begin(brixOfExtract(extract));
                return reading.asWash(extract);
              },
              solids,
              feeds.table.settings().wash().kind());
      return OptionalDouble.of(fed);
    } catch (RefusedException refused) {
      return OptionalDouble.empty();
    }
  }

  private boolean areApart(int before, int after) {
    double days = feeds.order.days(rows[after]) - feeds.order.days(rows[before]);
    return !(days <= MOST_APART);
  }

  /** The share of sugar in what was put in. */
  private double solids(int position) {
    return feeds.table.settings().wash().kind().equals(WashKind.HONEY)
            || questions.isHoney(feed(position))
        ? FeedWords.SUGAR_IN_HONEY
        : 1;
  }

  private Batch.Step step(int from) {
    if (!missing.equals(Message.NONE)) {
      return unknown(from);
    }
    double[] volumes = new double[litres.size() + 1];
    double[] gravities = new double[litres.size() + 1];
    volumes[0] = baseLitres;
    gravities[0] = baseGravity;
    for (int i = 0; i < litres.size(); i++) {
      boolean any = litres.get(i) > 0;
      volumes[i + 1] = any ? litres.get(i) : Double.NaN;
      gravities[i + 1] = any ? 1 : Double.NaN;
    }
    double[] sugars = kilograms.stream().mapToDouble(Double::doubleValue).toArray();
    try {
      return known(from, Feeding.original(volumes, gravities, sugars));
    } catch (RefusedException refused) {
      return new Batch.Step(from, OptionalDouble.empty(), Message.of("why.feed"));
    }
  }

  private FeedQuestions.Feed feed(int position) {
    int before = feeds.before(rows, position);
    int after = feeds.after(rows, position);
    return new FeedQuestions.Feed(
        batch.name(),
        rows[position],
        before < 0 ? -1 : rows[before],
        after < 0 ? -1 : rows[after],
        !Double.isNaN(baseLitres),
        risesOver(position, Feeds.RISE) && !areApart(before, after));
  }

  private void askOnce(Runnable question) {
    if (!asked && !watch.isOpen()) {
      question.run();
      asked = true;
    }
  }

  private void askRise(int position) {
    int row = rows[position];
    int before = position - 1;
    while (before > 0 && Double.isNaN(gravity(rows[before], begun))) {
      before--;
    }
    feeds.isRead(rows[before]);
    Message from = reading.shown(reading.asSugarSolution());
    reading.read(row);
    Message to = reading.shown(reading.asSugarSolution());
    questions.askRise(feed(position), reading.cell(row), from, to);
  }

  private Message askNote(int position) {
    int row = rows[position];
    String cell = feeds.address(row, feeds.noteColumn(row));
    askOnce(() -> questions.askNote(feed(position), cell));
    return Message.of("why.note", cell, RowStatement.sugarByTheRise(row));
  }

  /** What is missing to calculate with an addition, as a sentence; asks for it once a batch. */
  private Message missing(int position, double sugarHere, double waterHere) {
    int row = rows[position];
    reading.read(row);
    boolean ofSugar = sugarHere != 0 && !(Double.isNaN(waterHere) && !Double.isNaN(sugarHere));
    LogColumn use = ofSugar ? feeds.sugar : feeds.water;
    boolean inColumn = use != null && !(ofSugar && said.sugar().containsKey(row));
    String cell = inColumn ? feeds.address(row, use.column()) : reading.cell(row);
    Message why =
        Double.isNaN(sugarHere) || Double.isNaN(waterHere)
            ? questions.askAmount(feed(position), cell, ofSugar && feeds.sugar != null)
            : Double.isNaN(baseLitres) ? questions.askVolume(feed(position), cell) : Message.NONE;
    asked |= !why.equals(Message.NONE);
    return why;
  }
}
