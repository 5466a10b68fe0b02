package washbook.log.understand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.Conversion;
import washbook.log.Batch;
import washbook.log.Doubt;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.layout.KeyLine;
import washbook.log.layout.KeyLines;
import washbook.log.layout.TableRows;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RowOrder;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.BatchNameText;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/** Parts a table's rows into batches and finds each batch's original gravity. */
final class Batches {
  private final Grid grid;
  private final LogTable table;
  private final TableRows rows;
  private final String tableName;
  private final KeyLine stated;
  private final TableMap said;
  final List<Doubt> doubts = new ArrayList<>();

  /** Original gravities stated between the rows, by the batch that a row of its own begins. */
  private final Map<String, Optional<KeyLine>> begunInside = new HashMap<>();

  /**
   * @param table with columns and settings, without batches
   * @param tableName name of a batch that the rows do not name
   * @param stated key line with the original gravity, or null
   * @param said what a map says
   */
  Batches(
      Grid grid, LogTable table, TableRows rows, String tableName, KeyLine stated, TableMap said) {
    this.grid = grid;
    this.table = table;
    this.rows = rows;
    this.tableName = tableName;
    this.stated = stated;
    this.said = said;
  }

  List<Batch> make() {
    RowOrder order = RowOrder.of(grid, table);
    Feeds additions = new Feeds(grid, table);
    List<Batch> batches = new ArrayList<>();
    for (Map.Entry<String, Ints> entry : byName().entrySet()) {
      int[] batchRows = entry.getValue().toArray();
      order.sort(batchRows);
      Batch batch = batch(entry.getKey(), batchRows);
      batches.add(batch.origin() == Batch.Origin.UNKNOWN ? batch : additions.over(batch));
    }
    doubts.addAll(additions.doubts);
    return batches;
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
          byMap,
          "",
          "stated in the map",
          "",
          Batch.Origin.STATED,
          -1,
          originalBrix(byMap),
          List.of());
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
    if (use == null) {
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
        doubts.add(
            new Doubt(
                cell,
                "Batch "
                    + name
                    + " has the original gravities "
                    + Numbers.show(found)
                    + " and "
                    + Numbers.show(value)
                    + ": which one holds? Correct the column, or say in a map: original gravity ="
                    + " 1.085 SG"));
        return unknown(name, batchRows, cell, "the log states two original gravities");
      }
    }
    if (foundRow < 0) {
      return null;
    }
    return stated(
        name,
        batchRows,
        found,
        scale(found, "", use.unit()),
        CellAddress.of(foundRow, use.column()),
        grid.kind(foundRow, use.column()) == Grid.Kind.NUMBER);
  }

  private Batch fromKeyLine(KeyLine line, String name, int[] batchRows) {
    String own = ReadingScale.sugarScale(line.units());
    String header = ReadingScale.sugarScale(line.meanings());
    String scale = scale(line.value(), own, header);
    if (!Double.isNaN(line.temperatureC()) && !scale.isEmpty()) {
      return corrected(line, name, batchRows, scale);
    }
    return stated(name, batchRows, line.value(), scale, line.cell(), line.numberCell());
  }

  /** A stated original gravity that was read at a temperature of its own. */
  private Batch corrected(KeyLine line, String name, int[] batchRows, String scale) {
    try {
      double reading = toGravity(line.value(), scale);
      Quantity.SUGAR_TEMPERATURE.check("temperature", line.temperatureC());
      double gravity =
          washbook.functions.reading.Hydrometer.correctedGravity(
              reading,
              line.temperatureC(),
              table.settings().calibrationC(),
              table.settings().offset());
      return stated(name, batchRows, gravity, "SG", line.cell(), false);
    } catch (RefusedException refused) {
      return unknown(name, batchRows, line.cell(), refused.refusal().reason());
    }
  }

  private static double toGravity(double value, String scale) {
    if (scale.equals("SG")) {
      return value >= 100 ? value / 1000 : value;
    }
    return Conversion.convert(value, scale, "SG");
  }

  /** The scale of a stated original gravity: its own, its label's, its looks, the table's. */
  private String scale(double value, String own, String label) {
    if (!own.isEmpty()) {
      return own;
    }
    if (!label.isEmpty() && !label.equals("SG")) {
      return label;
    }
    if (ReadingScale.looksLikeGravity(value)) {
      return "SG";
    }
    String unit = table.column(Role.GRAVITY).map(LogColumn::unit).orElse("");
    return label.isEmpty() && !unit.equals("SG") && !unit.equals("GCM3") ? unit : "";
  }

  private Batch stated(
      String name, int[] batchRows, double value, String scale, String cell, boolean reference) {
    if (scale.isEmpty()) {
      doubts.add(
          new Doubt(
              cell,
              "On which scale is the original gravity "
                  + Numbers.show(value)
                  + "? In a map: original gravity = "
                  + Numbers.show(value)
                  + " BRIX"));
      return unknown(name, batchRows, cell, "the scale of the stated original gravity is unclear");
    }
    try {
      double gravity = Quantity.ORIGINAL_GRAVITY.check("original gravity", toGravity(value, scale));
      String unit = !reference ? "" : scale.equals("SG") && value >= 100 ? "SG1000" : scale;
      return new Batch(
          name,
          batchRows,
          gravity,
          cell,
          "stated in " + cell,
          unit,
          Batch.Origin.STATED,
          -1,
          originalBrix(gravity),
          List.of());
    } catch (RefusedException refused) {
      return unknown(name, batchRows, cell, refused.refusal().reason());
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
              "the batch's first reading, in row "
                  + (row + 1)
                  + ", is refused ("
                  + reading.refusal.cell()
                  + "); state the original gravity or complete that row");
        }
        case READ -> {
          String cell = reading.cell(row);
          double gravity = reading.asSugarSolution();
          try {
            Quantity.ORIGINAL_GRAVITY.check("original gravity", gravity);
          } catch (RefusedException refused) {
            return unknown(name, batchRows, cell, refused.refusal().reason());
          }
          return new Batch(
              name,
              batchRows,
              gravity,
              cell,
              String.format(Locale.ROOT, "first reading, %s, corrected", cell),
              "",
              Batch.Origin.FIRST_READING,
              row,
              reading.byRefractometer() ? reading.presentBrix : originalBrix(reading, row, gravity),
              List.of());
        }
      }
    }
    return unknown(name, batchRows, "", "it has no reading");
  }

  /** What the refractometer would show in a wash of that original gravity. */
  private double originalBrix(double originalGravity) {
    return table.column(Role.REFRACTOMETER).isEmpty()
        ? Double.NaN
        : SucroseSolution.brix(originalGravity) * table.settings().refractometerFactor();
  }

  /** The refractometer's own reading beside the hydrometer's first one, else what it would show. */
  private double originalBrix(HydrometerRows reading, int row, double originalGravity) {
    return reading.hasRefractometer() && reading.readRefractometer(row) == HydrometerRows.State.READ
        ? reading.presentBrix
        : originalBrix(originalGravity);
  }

  private static Batch unknown(String name, int[] batchRows, String cell, String why) {
    return new Batch(
        name,
        batchRows,
        Double.NaN,
        cell,
        why,
        "",
        Batch.Origin.UNKNOWN,
        -1,
        Double.NaN,
        List.of());
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
