package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Feeding;
import washbook.log.Batch;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.reading.HydrometerRows;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.AmountUnit;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/**
 * Sugar and water put in after the first reading: from then on the original gravity is that of
 * everything put in. What was put in up to the first reading is in that reading already, unless the
 * next reading is higher.
 */
final class Feeds {
  /** A rise that no reading error explains, SG. */
  private static final double RISE = 0.002;

  /** What a wash has lost when its ferment has clearly begun, SG. */
  private static final double BEGUN = 0.010;

  private final Grid grid;
  private final LogTable table;
  private final HydrometerRows reading;
  private final LogColumn sugar;
  private final LogColumn water;
  private final LogColumn volume;
  private final LogColumn note;
  private final Doubts doubts;

  Feeds(Grid grid, LogTable table, Doubts doubts) {
    this.doubts = doubts;
    this.grid = grid;
    this.table = table;
    this.reading = new HydrometerRows(grid, table);
    sugar = table.column(Role.SUGAR_ADDED).orElse(null);
    water = table.column(Role.WATER_ADDED).orElse(null);
    volume = table.column(Role.VOLUME).orElse(null);
    note = table.column(Role.NOTE).orElse(null);
  }

  /** The batch with its steps where anything was added. */
  Batch over(Batch batch) {
    if (sugar == null && water == null && note == null) {
      return batch;
    }
    int[] rows = batch.rows();
    int first = firstReading(rows);
    List<Batch.Step> steps = new ArrayList<>();
    steps.add(new Batch.Step(0, batch.original().gravity(), Message.NONE));
    List<Double> kilograms = new ArrayList<>();
    List<Double> litres = new ArrayList<>();
    Message missing = Message.NONE;
    for (int position = first; position >= 0 && position < rows.length; position++) {
      int row = rows[position];
      double sugarHere = amount(row, sugar);
      double waterHere = amount(row, water);
      boolean added = sugarHere != 0 || waterHere != 0;
      boolean noted = !added && sugar == null && saysAdded(row);
      String changed = position == first || added || noted ? "" : changed(row);
      if (!changed.isEmpty()) {
        missing = missing.equals(Message.NONE) ? askChanged(row, changed) : missing;
        steps.add(new Batch.Step(position, OptionalDouble.empty(), missing));
        continue;
      }
      boolean begun = position == first && isBelowStated(batch, row);
      boolean inFirst = position == first && !risesAfter(rows, position) && !begun;
      if ((!added && !noted) || inFirst) {
        continue;
      }
      if (missing.equals(Message.NONE)) {
        missing = noted ? askNote(row) : missing(batch, row, sugarHere, waterHere);
      }
      kilograms.add(sugarHere);
      litres.add(waterHere);
      int from = position + (readAfter(rows, position) || begun ? 0 : 1);
      steps.add(step(batch, from, kilograms, litres, missing));
    }
    return steps.size() == 1 ? batch : batch.fed(steps);
  }

  private Batch.Step step(
      Batch batch, int from, List<Double> kilograms, List<Double> water, Message missing) {
    if (!missing.equals(Message.NONE)) {
      return new Batch.Step(from, OptionalDouble.empty(), missing);
    }
    double[] litres = new double[water.size() + 1];
    double[] gravities = new double[water.size() + 1];
    litres[0] = startVolume(batch);
    gravities[0] = batch.original().gravity().orElseThrow();
    for (int i = 0; i < water.size(); i++) {
      boolean any = water.get(i) > 0;
      litres[i + 1] = any ? water.get(i) : Double.NaN;
      gravities[i + 1] = any ? 1 : Double.NaN;
    }
    double[] sugars = kilograms.stream().mapToDouble(Double::doubleValue).toArray();
    try {
      return new Batch.Step(
          from, OptionalDouble.of(Feeding.original(litres, gravities, sugars)), Message.NONE);
    } catch (RefusedException refused) {
      return new Batch.Step(from, OptionalDouble.empty(), Message.of("why.feed"));
    }
  }

  private int firstReading(int[] rows) {
    for (int position = 0; position < rows.length; position++) {
      if (reading.read(rows[position]) != HydrometerRows.State.NOTHING) {
        return position;
      }
    }
    return -1;
  }

  /** What is missing to calculate with an addition, as a sentence; asks for it once a batch. */
  private Message missing(Batch batch, int row, double sugarHere, double waterHere) {
    String cell =
        CellAddress.of(row, sugarHere != 0 && sugar != null ? sugar.column() : water.column());
    Message missing = Message.NONE;
    if (Double.isNaN(sugarHere) || Double.isNaN(waterHere)) {
      missing = Message.of("why.amount", cell);
      doubts.ask(
          cell,
          Message.of("ask.amount"),
          MapAnswer.like(
              "column "
                  + cell.replaceAll("\\d", "")
                  + (sugarHere != 0 && sugar != null
                      ? " = SUGAR_ADDED in KG"
                      : " = WATER_ADDED in L")));
    } else if (Double.isNaN(startVolume(batch))) {
      missing = Message.of("why.volume", cell);
      doubts.ask(cell, Message.of("ask.volume", batch.name()), MapAnswer.like("volume = 25 L"));
    }
    return missing;
  }

  private Message askNote(int row) {
    String cell = CellAddress.of(row, note.column());
    doubts.ask(cell, Message.of("ask.note"));
    return Message.of("why.note", cell);
  }

  /** Spirit or another wash was put in: what is read from then on tells nothing of this ferment. */
  private Message askChanged(int row, String what) {
    String cell = CellAddress.of(row, note.column());
    doubts.ask(cell, Message.of(what.equals("fortified") ? "ask.fortified" : "ask.blendedIn"));
    return Message.of("why." + what, cell);
  }

  private String changed(int row) {
    Set<Concept> meanings = noteMeanings(row);
    if (meanings.contains(Concept.NEGATION)) {
      return "";
    }
    return meanings.contains(Concept.FORTIFIED)
        ? "fortified"
        : meanings.contains(Concept.BLENDED) ? "blended" : "";
  }

  private Set<Concept> noteMeanings(int row) {
    return note == null || grid.kind(row, note.column()) != Grid.Kind.TEXT
        ? Set.of()
        : Vocabulary.meanings(grid.text(row, note.column()));
  }

  private boolean saysAdded(int row) {
    Set<Concept> meanings = noteMeanings(row);
    return meanings.contains(Concept.SUGAR)
        && (meanings.contains(Concept.ADDED)
            || meanings.contains(Concept.KG)
            || meanings.contains(Concept.LB))
        && !meanings.contains(Concept.NEGATION);
  }

  /** Whether a first reading is far below a stated original gravity: the ferment goes on there. */
  private boolean isBelowStated(Batch batch, int row) {
    return batch.original() instanceof OriginalGravity.Stated stated
        && plain(row) < stated.sg() - BEGUN;
  }

  /** Whether the reading after a position is higher than the one there. */
  private boolean risesAfter(int[] rows, int position) {
    double here = plain(rows[position]);
    for (int next = position + 1; next < rows.length; next++) {
      double then = plain(rows[next]);
      if (!Double.isNaN(then)) {
        return then > here + RISE;
      }
    }
    return false;
  }

  /** Whether the reading on the row of an addition was taken after it. */
  private boolean readAfter(int[] rows, int position) {
    switch (table.settings().sugarReadings()) {
      case BEFORE:
        return false;
      case AFTER:
        return true;
      default:
        double here = plain(rows[position]);
        for (int before = position - 1; before >= 0; before--) {
          double then = plain(rows[before]);
          if (!Double.isNaN(then)) {
            return here > then + RISE;
          }
        }
        return false;
    }
  }

  private double plain(int row) {
    return reading.read(row) == HydrometerRows.State.READ ? reading.asSugarSolution() : Double.NaN;
  }

  /** Kilograms or litres in a cell; 0 for none, NaN when amount or unit is not clear. */
  private double amount(int row, LogColumn use) {
    if (use == null) {
      return 0;
    }
    switch (grid.kind(row, use.column())) {
      case BLANK:
        return 0;
      case NUMBER:
        double value = grid.number(row, use.column());
        return value < 0 ? Double.NaN : inBase(value, AmountUnit.of(use.unit()));
      case TEXT:
        CellText cell = CellText.read(grid.text(row, use.column()));
        if (cell.form == CellText.Form.NOTHING) {
          return 0;
        }
        if (cell.form != CellText.Form.VALUE || cell.value < 0) {
          return Double.NaN;
        }
        return inBase(
            cell.value,
            cell.unit.isEmpty()
                ? AmountUnit.of(use.unit())
                : AmountUnit.in(Vocabulary.meanings(cell.unit), use == sugar));
      default:
        return Double.NaN;
    }
  }

  private static double inBase(double amount, Optional<AmountUnit> unit) {
    return amount == 0 ? 0 : unit.map(u -> u.toBase(amount)).orElse(Double.NaN);
  }

  private double startVolume(Batch batch) {
    if (!Double.isNaN(table.settings().volumeL())) {
      return table.settings().volumeL();
    }
    if (volume != null) {
      for (int row : batch.rows()) {
        double litres = amount(row, volume);
        if (litres != 0) {
          return litres;
        }
      }
    }
    return Double.NaN;
  }
}
