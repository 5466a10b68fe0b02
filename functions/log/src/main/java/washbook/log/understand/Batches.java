package washbook.log.understand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.OriginalGravity.Stated;
import washbook.log.OriginalGravity.StatedNumber;
import washbook.log.OriginalGravity.Unknown;
import washbook.log.Role;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.layout.KeyLine;
import washbook.log.layout.KeyLines;
import washbook.log.layout.TableRows;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.BatchNameText;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/** Splits a table's rows into batches and finds each batch's original gravity. */
final class Batches {
  private static final Message ORIGINALS =
      range(Quantity.ORIGINAL_GRAVITY, Message.of("unit", Message.of("scale.SG")));

  private final Grid grid;
  private final LogTable table;
  private final TableRows rows;
  private final String tableName;
  private final KeyLine stated;
  private final TableMap said;
  private final Doubts doubts;

  /** Original gravities stated between the rows, by the batch that a row of its own begins. */
  private final Map<String, Optional<KeyLine>> begunInside = new HashMap<>();

  /**
   * @param table with columns and settings, without batches
   * @param tableName name of a batch that the rows do not name
   * @param stated key line with the original gravity, or null
   * @param said what a map says
   */
  Batches(
      Grid grid,
      LogTable table,
      TableRows rows,
      String tableName,
      KeyLine stated,
      TableMap said,
      Doubts doubts) {
    this.grid = grid;
    this.table = table;
    this.rows = rows;
    this.tableName = tableName;
    this.stated = stated;
    this.said = said;
    this.doubts = doubts;
  }

  List<Batch> make() {
    RowTimes order = RowTimes.of(grid, table);
    Feeds additions = new Feeds(grid, table, doubts);
    List<Batch> batches = new ArrayList<>();
    for (Map.Entry<String, Ints> entry : byName().entrySet()) {
      int[] batchRows = entry.getValue().toArray();
      order.sort(batchRows);
      Batch batch = batch(entry.getKey(), batchRows);
      batches.add(batch.original().gravity().isEmpty() ? batch : additions.over(batch));
    }
    return said.firstReadingIsOriginal()
        ? batches
        : new PartedBatches(grid, table, order).withoutTheirStart(batches);
  }

  private Map<String, Ints> byName() {
    Map<String, Ints> byName = new LinkedHashMap<>();
    Map<String, String> spellings = new HashMap<>();
    int column = table.column(Role.BATCH).map(LogColumn::column).orElse(-1);
    String name = tableName;
    Ints current = null;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      String begun = column < 0 ? BatchNameText.of(onlyText(row)) : "";
      if (!begun.isEmpty()) {
        name = begun;
        current = null;
        begunInside.put(name, Optional.empty());
      }
      if (begunInside.containsKey(name) && (rows.isSkipped(row) || !begun.isEmpty())) {
        String batch = name;
        statedIn(row).ifPresent(line -> begunInside.put(batch, Optional.of(line)));
      }
      if (rows.isSkipped(row) || !begun.isEmpty()) {
        continue;
      }
      if (column >= 0) {
        String shown = name(row, column);
        if (!shown.isEmpty() && !shown.equals(name)) {
          String first = shown;
          name = spellings.computeIfAbsent(shown.toLowerCase(Locale.ROOT), k -> first);
          current = null;
        }
      }
      if (isBlank(row)) {
        continue;
      }
      if (current == null) {
        current = byName.computeIfAbsent(name, k -> new Ints());
      }
      current.add(row);
    }
    return byName;
  }

  /** The text in the table's first column where nothing else stands in the row, else "". */
  private String onlyText(int row) {
    int first = table.firstColumn();
    if (grid.kind(row, first) != Grid.Kind.TEXT) {
      return "";
    }
    for (int column = first + 1; column <= table.lastColumn(); column++) {
      if (grid.kind(row, column) != Grid.Kind.BLANK) {
        return "";
      }
    }
    return grid.text(row, first);
  }

  private Optional<KeyLine> statedIn(int row) {
    return new KeyLines(grid)
        .find(row, row, table.firstColumn(), table.lastColumn()).stream()
            .filter(l -> l.isOriginalGravity() && !Double.isNaN(l.value()))
            .findFirst();
  }

  private boolean isBlank(int row) {
    for (LogColumn use : table.columns()) {
      if (use.role() != Role.COMPUTED && grid.kind(row, use.column()) != Grid.Kind.BLANK) {
        return false;
      }
    }
    return true;
  }

  private String name(int row, int column) {
    return switch (grid.kind(row, column)) {
      case TEXT -> grid.text(row, column).strip();
      case NUMBER, DATE -> Numbers.show(grid.number(row, column));
      default -> "";
    };
  }

  private Batch batch(String name, int[] batchRows) {
    Double byMap = said.originalGravities().getOrDefault(name, said.originalGravities().get(""));
    if (byMap != null) {
      return new Batch(
          name,
          batchRows,
          new Stated(byMap, "", "stated in the map", Optional.empty()),
          originalBrix(byMap));
    }
    Batch fromColumn = fromColumn(name, batchRows);
    if (fromColumn != null) {
      return fromColumn;
    }
    KeyLine own = begunInside.getOrDefault(name, Optional.ofNullable(stated)).orElse(null);
    return own != null ? fromKeyLine(own, name, batchRows) : fromFirstReading(name, batchRows);
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
        String cell = CellAddress.of(row, use.column());
        doubts.ask(
            cell,
            "Batch "
                + name
                + " has the original gravities "
                + Numbers.show(found)
                + " and "
                + Numbers.show(value)
                + ": which one holds? Correct the column, or say in a map: original gravity ="
                + " 1.085 SG");
        return unknown(name, batchRows, cell, Message.of("why.two"));
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
        CellAddress.of(foundRow, use.column()),
        grid.kind(foundRow, use.column()) == Grid.Kind.NUMBER);
  }

  private Batch fromKeyLine(KeyLine line, String name, int[] batchRows) {
    Optional<ReadingScale> scale =
        scale(line.value(), ReadingScale.in(line.units()), ReadingScale.in(line.meanings()));
    if (!Double.isNaN(line.temperatureC()) && scale.isPresent()) {
      return corrected(line, name, batchRows, scale.get());
    }
    return stated(name, batchRows, line.value(), scale, line.cell(), line.numberCell());
  }

  /** A stated original gravity that was read at a temperature of its own. */
  private Batch corrected(KeyLine line, String name, int[] batchRows, ReadingScale scale) {
    Quantity temperatures = Quantity.SUGAR_TEMPERATURE;
    double shown = line.temperatureC();
    if (!(shown >= temperatures.min() && shown <= temperatures.max())) {
      Message degrees = Message.of("amount", new Figure(Numbers.round(shown, 1)), " \u00b0C");
      return unknown(
          name,
          batchRows,
          line.cell(),
          Message.of("why.outside", degrees, range(temperatures, " \u00b0C")));
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
      return unknown(
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
          "On which scale is the original gravity "
              + Numbers.show(value)
              + "? In a map: original gravity = "
              + Numbers.show(value)
              + " BRIX");
      return unknown(name, batchRows, cell, Message.of("why.scale"));
    }
    try {
      double gravity =
          Quantity.ORIGINAL_GRAVITY.check("original gravity", scale.get().toCheckedGravity(value));
      Optional<StatedNumber> number =
          isNumber ? scale.map(on -> new StatedNumber(value, on)) : Optional.empty();
      return new Batch(
          name,
          batchRows,
          new Stated(gravity, cell, "stated in " + cell, number),
          originalBrix(gravity));
    } catch (RefusedException refused) {
      return unknown(
          name,
          batchRows,
          cell,
          Message.of("why.outside", new Figure(Numbers.show(value)), ORIGINALS));
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
          return unknown(
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
            return unknown(
                name,
                batchRows,
                cell,
                Message.of("why.outside", reading.shown(gravity), ORIGINALS));
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
    return unknown(name, batchRows, "", Message.of("why.noReading"));
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

  private static Message range(Quantity quantity, Object sign) {
    return Message.of(
        "range",
        new Figure(Numbers.show(quantity.min())),
        new Figure(Numbers.show(quantity.max())),
        sign);
  }

  private static Batch unknown(String name, int[] batchRows, String cell, Message why) {
    return new Batch(name, batchRows, new Unknown(cell, why), OptionalDouble.empty());
  }

  /** A growing list of row numbers. */
  private static final class Ints {
    private int[] values = new int[16];
    private int size;

    void add(int value) {
      if (size == values.length) {
        values = Arrays.copyOf(values, size + (size >> 1));
      }
      values[size++] = value;
    }

    int[] toArray() {
      return Arrays.copyOf(values, size);
    }
  }
}
