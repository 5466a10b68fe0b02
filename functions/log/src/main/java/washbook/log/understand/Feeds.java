package washbook.log.understand;

import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import washbook.log.Batch;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RiseWatch;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;
import washbook.log.words.AmountUnit;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.FeedWords;
import washbook.log.words.MovedWash;
import washbook.log.words.Vocabulary;

/**
 * Sugar and water put in after the first reading: from then on the original gravity is that of
 * everything put in. What was put in up to the first reading is in that reading already, unless the
 * next reading is higher.
 */
final class Feeds {
  /** A rise that no reading error explains, SG. */
  static final double RISE = 0.002;

  /** What a wash has lost when its ferment has clearly begun, SG. */
  private static final double BEGUN = 0.010;

  /** By so much for each °C warmer may a reading be the higher one though it looks lower, SG. */
  private static final double RISE_PER_DEGREE = 0.0008;

  /** A refractometer's reading that is higher by less hides no rise, °Bx. */
  private static final double RISE_BRIX = 0.2;

  /** Rows of other batches between two of one that are looked at. */
  private static final int MOST_BETWEEN = 40;

  private final Grid grid;
  final LogTable table;
  final RowTimes order;
  final TableMap.RowPart said;
  final HydrometerRows reading;
  final LogColumn sugar;
  final LogColumn water;
  private final LogColumn volume;
  private final LogColumn note;
  private final Collection<String> names;
  private final boolean sharesNotes;
  private final Doubts doubts;
  final FeedQuestions questions;

  private String batchName = "";

  /** The row whose note was looked at last, and that note. */
  private int noteRow = -1;

  private String own = "";

  /** The address by which a person finds a cell. */
  String address(int row, int column) {
    return grid.address(row, column);
  }

  /**
   * @param said what a map says of single rows
   * @param names of all batches that a note may name
   * @param sharesNotes whether the notes are about vessels side by side
   */
  Feeds(
      Grid grid,
      LogTable table,
      RowTimes order,
      TableMap.RowPart said,
      Collection<String> names,
      boolean sharesNotes,
      Doubts doubts) {
    this.names = names;
    this.sharesNotes = sharesNotes;
    this.doubts = doubts;
    this.grid = grid;
    this.table = table;
    this.order = order;
    this.said = said;
    this.reading = new HydrometerRows(grid, table);
    this.questions = new FeedQuestions(grid, table, doubts);
    sugar = table.column(Role.SUGAR_ADDED).orElse(null);
    water = table.column(Role.WATER_ADDED).orElse(null);
    volume = table.column(Role.VOLUME).orElse(null);
    note = table.column(Role.NOTE).orElse(null);
  }

  /** The batch with its steps where anything was added. */
  Batch over(Batch batch) {
    batchName = batch.name();
    noteRow = -1;
    boolean told = Arrays.stream(batch.rows()).anyMatch(said.sugar()::containsKey);
    boolean watched = told || mayRise(batch.rows());
    return sugar == null && water == null && note == null && !watched
        ? batch
        : new FedBatch(this, batch, told, watched).over();
  }

  /**
   * Whether a reading may be higher than the one before it by as much as begins a question. Looked
   * at as they stand: most batches only fall, and theirs need no closer look.
   */
  private boolean mayRise(int[] rows) {
    double gravity = Double.NaN;
    double temperatureC = Double.NaN;
    double brix = Double.NaN;
    for (int row : rows) {
      if (reading.read(row) != HydrometerRows.State.READ) {
        continue;
      }
      if (reading.byRefractometer()) {
        if (reading.presentBrix > brix + RISE_BRIX || !Double.isNaN(gravity)) {
          return true;
        }
        brix = reading.presentBrix;
        continue;
      }
      double warmer = Math.max(0, reading.temperatureC - temperatureC);
      if (reading.gravity + warmer * RISE_PER_DEGREE > gravity + RiseWatch.LASTING
          || !Double.isNaN(brix)) {
        return true;
      }
      gravity = reading.gravity;
      temperatureC = reading.temperatureC;
    }
    return false;
  }

  boolean isRead(int row) {
    return reading.read(row) == HydrometerRows.State.READ;
  }

  /** The column with the note on a row that tells of an addition. */
  int noteColumn(int row) {
    int told = note != null && saysAdded(row) ? note.column() : questions.columnThatSaysFed(row);
    return told < 0 && note != null ? note.column() : told;
  }

  int firstReading(int[] rows) {
    for (int position = 0; position < rows.length; position++) {
      if (reading.read(rows[position]) != HydrometerRows.State.NOTHING) {
        return position;
      }
    }
    return -1;
  }

  /** Spirit or another wash was put in: what is read from then on tells nothing of this ferment. */
  private Message askChanged(int row, String what) {
    String cell = grid.address(row, note.column());
    doubts.ask(cell, Message.of(what.equals("fortified") ? "ask.fortified" : "ask.blendedIn"));
    return Message.of("why." + what, cell);
  }

  /**
   * Whether spirit or another wash was put in by a row, as its note says or, since the row before,
   * one on a row of another batch; asks about it. {@link Message#NONE} where nothing was.
   */
  Message changed(String batch, int[] rows, int position) {
    int row = rows[position];
    int before = position == 0 ? row : rows[position - 1];
    int moved = movedRow(batch, before, row);
    if (moved >= 0) {
      return askChanged(moved, "blended");
    }
    Set<Concept> meanings = noteMeanings(row);
    boolean away = !meanings.isEmpty() && MovedWash.away(batch, names, noteText(row));
    if (away || meanings.contains(Concept.NEGATION)) {
      return Message.NONE;
    }
    if (meanings.contains(Concept.FORTIFIED)) {
      return askChanged(row, "fortified");
    }
    return meanings.contains(Concept.BLENDED) ? askChanged(row, "blended") : Message.NONE;
  }

  /** Whether a row's note says that it tells of what was done after the reading. */
  boolean isReadBefore(int row) {
    return MovedWash.isAfterReading(noteText(row));
  }

  /** The row whose note tells that another batch was put in, -1 for none. */
  private int movedRow(String batch, int before, int row) {
    boolean between = names.size() > 1 && before < row && row - before <= MOST_BETWEEN;
    for (int at = between ? before + 1 : row; note != null && at <= row; at++) {
      MovedWash.Row of =
          sharesNotes
              ? MovedWash.Row.SHARED
              : at == row ? MovedWash.Row.OWN : MovedWash.Row.ANOTHERS;
      if (MovedWash.into(batch, names, noteText(at), of)) {
        return at;
      }
    }
    return -1;
  }

  private Set<Concept> noteMeanings(int row) {
    String text = ownNote(row);
    return text.isEmpty() ? Set.of() : Vocabulary.meanings(text);
  }

  /** The note on a row where it is about this batch; beside vessels side by side it may not be. */
  private String ownNote(int row) {
    if (row != noteRow) {
      String text = noteText(row);
      boolean other =
          sharesNotes && !text.isEmpty() && MovedWash.isAboutOthers(batchName, names, text);
      noteRow = row;
      own = other ? "" : text;
    }
    return own;
  }

  /** The note on a row, "" for none. */
  private String noteText(int row) {
    return note == null || grid.kind(row, note.column()) != Grid.Kind.TEXT
        ? ""
        : grid.text(row, note.column());
  }

  /** Whether a note names sugar, honey or the like, and the next reading is higher. */
  boolean isSugarBeforeRise(int[] rows, int position) {
    String text = ownNote(rows[position]);
    return !text.isEmpty() && FeedWords.namesSugar(text) && risesAfter(rows, position);
  }

  boolean saysAdded(int row) {
    Set<Concept> meanings = noteMeanings(row);
    return FeedWords.saysMore(ownNote(row))
        || meanings.contains(Concept.SUGAR)
            && (meanings.contains(Concept.ADDED)
                || isSugarBehindPlus(noteText(row))
                || meanings.contains(Concept.KG)
                || meanings.contains(Concept.LB))
            && !meanings.contains(Concept.NEGATION);
  }

  /** As "+ sugar" or "racked, +2 cups of sugar": a plus is as good as "added". */
  private static boolean isSugarBehindPlus(String note) {
    int plus = note.indexOf('+');
    return plus >= 0 && Vocabulary.meanings(note.substring(plus + 1)).contains(Concept.SUGAR);
  }

  /** Whether a first reading is far below a stated original gravity: the ferment goes on there. */
  boolean isBelowStated(Batch batch, int row) {
    return batch.original() instanceof OriginalGravity.Stated stated
        && plain(row) < stated.sg() - BEGUN;
  }

  /** Whether the reading after a position is higher than the one there. */
  boolean risesAfter(int[] rows, int position) {
    double here = plain(rows[position]);
    for (int next = position + 1; next < rows.length; next++) {
      double then = plain(rows[next]);
      if (!Double.isNaN(then)) {
        return then > here + RISE;
      }
    }
    return false;
  }

  /** Whether water went in between two readings: then a rise does not tell how much sugar did. */
  boolean isWatered(int[] rows, int before, int after) {
    for (int position = before + 1; position <= after; position++) {
      if (amount(rows[position], water) != 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether the reading on the row of an addition was taken after it. */
  boolean readAfter(int[] rows, int position) {
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

  /** The first reading after an addition at a position: there or later; -1 for none. */
  int after(int[] rows, int position) {
    int next = position;
    while (next < rows.length
        && !(isRead(rows[next]) && (next > position || readAfter(rows, position)))) {
      next++;
    }
    return next == rows.length ? -1 : next;
  }

  /** The last reading before an addition at a position; -1 for none. */
  int before(int[] rows, int position) {
    int last = after(rows, position) == position ? position - 1 : position;
    while (last >= 0 && !isRead(rows[last])) {
      last--;
    }
    return last;
  }

  double plain(int row) {
    return reading.read(row) == HydrometerRows.State.READ ? reading.asSugarSolution() : Double.NaN;
  }

  /** Kilograms or litres in a cell; 0 for none, NaN when amount or unit is not clear. */
  double amount(int row, LogColumn use) {
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

  double startVolume(Batch batch) {
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
