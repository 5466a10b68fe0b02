package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.quantity.Quantity;
import washbook.functions.reading.Hydrometer;
import washbook.log.Batch;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.OriginalGravity.Stated;
import washbook.log.OriginalGravity.StatedNumber;
import washbook.log.Role;
import washbook.log.RowStatement;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.layout.KeyLine;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RowRefusals;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;
import washbook.log.words.Statement;

/** The original gravity of each batch of a table. */
final class BatchOriginals {
  private static final Message ORIGINALS =
      RowRefusals.range(
          Quantity.ORIGINAL_GRAVITY.min(),
          Quantity.ORIGINAL_GRAVITY.max(),
          Message.of("unit", Message.of("scale.SG")));

  /** Figures that differ by less are the same figure, SG. */
  private static final double AS_READ = 1e-6;

  /** A correction by less would show the same last digit, SG. */
  private static final double LAST_DIGIT = 0.0007;

  /** A rise that is a wash put in, and no sugar or must, SG. */
  private static final double PUT_IN = 0.020;

  private final Grid grid;
  private final LogTable table;
  private final TableMap said;
  private final Doubts doubts;
  private final OriginalsList list;

  /**
   * @param table with columns and settings, without batches
   * @param list original gravities by batch, from a list above the table
   * @param said what a map says
   */
  BatchOriginals(Grid grid, LogTable table, OriginalsList list, TableMap said, Doubts doubts) {
    this.list = list;
    this.grid = grid;
    this.table = table;
    this.said = said;
    this.doubts = doubts;
  }

  /**
   * A batch with its original gravity: by the map, its column, a line, else its first reading.
   *
   * @param line a line that states it; null for none
   * @param isOpen whether several lines state one each and none is this batch's
   */
  Batch batch(String name, int[] batchRows, KeyLine line, boolean isOpen) {
    boolean begunByMap = said.feeds().batches().containsValue(name);
    Double ofAll = begunByMap ? null : said.originalGravities().get("");
    Double byMap = said.originalGravities().getOrDefault(name, ofAll);
    if (byMap != null) {
      return new Batch(
          name,
          batchRows,
          new Stated(byMap, "", Message.of("from.map"), Optional.empty()),
          originalBrix(byMap));
    }
    Batch fromColumn = fromColumn(name, batchRows);
    if (fromColumn != null) {
      return fromColumn;
    }
    Batch fromList =
        list.isEmpty() || said.firstReadingIsOriginal() ? null : fromList(name, batchRows);
    if (fromList != null) {
      return fromList;
    }
    if (isOpen) {
      return askWhich(name, batchRows);
    }
    return line != null ? fromKeyLine(line, name, batchRows) : fromFirstReading(name, batchRows);
  }

  private Batch fromColumn(String name, int[] batchRows) {
    LogColumn use = table.column(Role.ORIGINAL_GRAVITY).orElse(null);
    if (use == null || said.firstReadingIsOriginal()) {
      return null;
    }
    double found = Double.NaN;
    int foundRow = -1;
    for (int row : batchRows) {
      double value = CellText.plainNumber(grid, row, use.column());
      if (Double.isNaN(value) || value == 0) {
        continue;
      }
      if (foundRow < 0) {
        found = value;
        foundRow = row;
      } else if (Math.abs(value - found) > 1e-9) {
        String cell = grid.address(row, use.column());
        doubts.ask(
            cell,
            Message.of(
                "ask.twoOriginals",
                name,
                new Figure(Numbers.show(found)),
                new Figure(Numbers.show(value))),
            answers(name, List.of(found, value), use));
        return Batch.unknown(name, batchRows, cell, Message.of("why.two"));
      }
    }
    if (foundRow < 0) {
      return null;
    }
    ReadingScale ofColumn = use.unit().isEmpty() ? null : ReadingScale.valueOf(use.unit());
    return stated(
        name,
        batchRows,
        found,
        scale(found, Optional.empty(), Optional.ofNullable(ofColumn)),
        grid.address(foundRow, use.column()),
        grid.kind(foundRow, use.column()) == Grid.Kind.NUMBER);
  }

  /** Each of the figures that a column states, or that the column is about something else. */
  private static MapAnswer[] answers(String name, List<Double> figures, LogColumn column) {
    List<MapAnswer> answers = new ArrayList<>();
    for (double figure : figures) {
      String unit = column.unit().isEmpty() ? "SG" : column.unit();
      answers.add(
          MapAnswer.of("original gravity of " + name + " = " + Numbers.show(figure) + " " + unit));
    }
    answers.add(MapAnswer.of(MapPrinter.column(column.column()) + " = OTHER"));
    return answers.toArray(MapAnswer[]::new);
  }

  /** By the list above; a list that does not name the batch is not passed over. */
  private Batch fromList(String name, int[] batchRows) {
    OriginalsList.Entry entry = list.of(name).orElse(null);
    if (entry != null) {
      return stated(
          name,
          batchRows,
          entry.value(),
          scale(entry.value(), Optional.empty(), entry.scale()),
          entry.cell(),
          true);
    }
    return askWhich(name, batchRows);
  }

  private Batch askWhich(String name, int[] batchRows) {
    doubts.ask(
        list.cell(),
        Message.of("ask.whichOriginal", name),
        MapAnswer.like("original gravity of " + name + " = 1.085 SG"),
        MapAnswer.of("original gravity = first reading"));
    return Batch.unknown(name, batchRows, list.cell(), Message.of("why.two"));
  }

  private Batch fromKeyLine(KeyLine line, String name, int[] batchRows) {
    Optional<ReadingScale> scale =
        scale(line.value(), ReadingScale.in(line.units()), ReadingScale.in(line.meanings()));
    if (!Double.isNaN(line.temperatureC()) && scale.isPresent()) {
      return corrected(line, name, batchRows, scale.get());
    }
    return scale.isPresent() && isFirstAsRead(line, scale.get(), batchRows)
        ? fromFirstReading(name, batchRows)
        : stated(name, batchRows, line.value(), scale, line.cell(), line.numberCell());
  }

  /**
   * Whether a stated figure is the first reading as it was read, which a correction then moves: it
   * was copied from there, not corrected.
   */
  private boolean isFirstAsRead(KeyLine line, ReadingScale scale, int[] batchRows) {
    if (table.settings().correctedAlready()
        || Statement.saysCorrected(line.label())
        || Statement.saysCorrected(line.text())
        || isFormula(line.cell())) {
      return false;
    }
    HydrometerRows reading = new HydrometerRows(grid, table);
    for (int row : batchRows) {
      HydrometerRows.State state = reading.read(row);
      if (state == HydrometerRows.State.READ) {
        return !reading.byRefractometer()
            && Math.abs(reading.gravity - scale.toGravity(line.value())) < AS_READ
            && Math.abs(reading.asSugarSolution() - reading.gravity) > LAST_DIGIT;
      }
      if (state == HydrometerRows.State.REFUSED) {
        return false;
      }
    }
    return false;
  }

  /** Whether the person has the figure calculated: then it is what it is wanted to be. */
  private boolean isFormula(String cell) {
    String letters = cell.replaceAll("\\d", "");
    String digits = cell.substring(letters.length());
    return !letters.isEmpty()
        && digits.matches("\\d{1,7}")
        && grid.isFormula(Integer.parseInt(digits) - 1, CellAddress.column(letters));
  }

  /** A stated original gravity that was read at a temperature of its own. */
  private Batch corrected(KeyLine line, String name, int[] batchRows, ReadingScale scale) {
    Quantity temperatures = Quantity.SUGAR_TEMPERATURE;
    double shown = line.temperatureC();
    if (!(shown >= temperatures.min() && shown <= temperatures.max())) {
      Message degrees = Message.of("amount", new Figure(Numbers.round(shown, 1)), " \u00b0C");
      return Batch.unknown(
          name,
          batchRows,
          line.cell(),
          Message.of(
              "why.outside",
              degrees,
              RowRefusals.range(temperatures.min(), temperatures.max(), " \u00b0C")));
    }
    try {
      double reading = scale.toCheckedGravity(line.value());
      double gravity =
          Hydrometer.correctedGravity(
              reading,
              line.temperatureC(),
              table.settings().calibrationC(),
              table.settings().offset());
      return stated(name, batchRows, gravity, Optional.of(ReadingScale.SG), line.cell(), false);
    } catch (RefusedException refused) {
      return Batch.unknown(
          name, batchRows, line.cell(), Message.of("why.outside", line.cell(), ORIGINALS));
    }
  }

  /** The scale of a stated original gravity: its own, its label's, its looks, the table's. */
  private Optional<ReadingScale> scale(
      double value, Optional<ReadingScale> own, Optional<ReadingScale> label) {
    if (own.isPresent()) {
      return own;
    }
    if (label.isPresent() && label.get() != ReadingScale.SG) {
      return label;
    }
    if (ReadingScale.looksLikeGravity(value)) {
      return Optional.of(ReadingScale.SG);
    }
    return table
        .column(Role.GRAVITY)
        .map(LogColumn::unit)
        .filter(unit -> label.isEmpty() && !unit.isEmpty())
        .map(ReadingScale::of)
        .filter(scale -> scale != ReadingScale.SG && scale != ReadingScale.GCM3);
  }

  private Batch stated(
      String name,
      int[] batchRows,
      double value,
      Optional<ReadingScale> scale,
      String cell,
      boolean isNumber) {
    if (scale.isEmpty()) {
      doubts.ask(
          cell,
          Message.of("ask.originalScale", new Figure(Numbers.show(value))),
          MapAnswer.like("original gravity = " + Numbers.show(value) + " BRIX"));
      return Batch.unknown(name, batchRows, cell, Message.of("why.scale"));
    }
    try {
      double gravity =
          Quantity.ORIGINAL_GRAVITY.check("original gravity", scale.get().toCheckedGravity(value));
      Optional<StatedNumber> number =
          isNumber ? scale.map(on -> new StatedNumber(value, on)) : Optional.empty();
      return new Batch(
          name,
          batchRows,
          new Stated(gravity, cell, Message.of("from.cell", cell), number),
          originalBrix(gravity));
    } catch (RefusedException refused) {
      return Batch.unknown(
          name,
          batchRows,
          cell,
          Message.of("why.outside", new Figure(Numbers.round(value, 4)), ORIGINALS));
    }
  }

  private Batch fromFirstReading(String name, int[] batchRows) {
    HydrometerRows reading = new HydrometerRows(grid, table);
    for (int row : batchRows) {
      switch (reading.read(row)) {
        case NOTHING -> {
          continue;
        }
        case REFUSED -> {
          return Batch.unknown(
              name,
              batchRows,
              reading.refusal.cell(),
              Message.of(
                  "why.first", new Figure(Integer.toString(row + 1)), reading.refusal.cell()));
        }
        case READ -> {
          String cell = reading.cell(row);
          double gravity = reading.asSugarSolution();
          try {
            Quantity.ORIGINAL_GRAVITY.check("original gravity", gravity);
          } catch (RefusedException refused) {
            Message shown = reading.shown(gravity);
            askWhetherBegunLater(name, batchRows, row);
            return Batch.unknown(
                name, batchRows, cell, Message.of("why.outside", shown, ORIGINALS));
          }
          return new Batch(
              name,
              batchRows,
              new FirstReading(gravity, cell, row),
              reading.byRefractometer()
                  ? OptionalDouble.of(reading.presentBrix)
                  : originalBrix(reading, row, gravity));
        }
      }
    }
    return Batch.unknown(name, batchRows, "", Message.of("why.noReading"));
  }

  /**
   * Asks whether a wash was put in where the readings rise from water, or from a wash at its end.
   */
  private void askWhetherBegunLater(String name, int[] batchRows, int first) {
    HydrometerRows reading = new HydrometerRows(grid, table);
    reading.read(first);
    double lowest = reading.asSugarSolution();
    Message from = reading.shown(lowest);
    for (int row : batchRows) {
      boolean later = row != first && reading.read(row) == HydrometerRows.State.READ;
      double gravity = later ? reading.asSugarSolution() : Double.NaN;
      if (gravity > lowest + PUT_IN) {
        String cell = reading.cell(row);
        doubts.ask(
            cell,
            Message.of("ask.rise", cell, name, from, reading.shown(gravity)),
            MapAnswer.of(RowStatement.batch(row, name + " B"))
                .with(Message.of("answer.batchBegins")));
        return;
      }
    }
  }

  /** What the refractometer would show in a wash of that original gravity. */
  private OptionalDouble originalBrix(double originalGravity) {
    return table.column(Role.REFRACTOMETER).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            SucroseSolution.brix(originalGravity) * table.settings().refractometerFactor());
  }

  /** The refractometer's own reading beside the hydrometer's first one, else what it would show. */
  private OptionalDouble originalBrix(HydrometerRows reading, int row, double originalGravity) {
    return reading.hasRefractometer() && reading.readRefractometer(row) == HydrometerRows.State.READ
        ? OptionalDouble.of(reading.presentBrix)
        : originalBrix(originalGravity);
  }
}
