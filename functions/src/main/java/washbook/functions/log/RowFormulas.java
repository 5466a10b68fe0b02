package washbook.functions.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import washbook.functions.Numbers;

/**
 * Writes the formulas of one table's rows. A formula refers to cells of its own row and to the
 * batch's original gravity: to the cell above the table that states it, held by $, or by a look-up
 * in a column of the table (see {@link FirstGravity}), so that it stays right when rows are put in
 * and when the table is sorted.
 */
final class RowFormulas {
  private final Grid grid;
  private final LogTable table;
  private final FormulaSource source;
  private final RowReading reading;
  private final int correctedColumn;
  private final int originalColumn;
  private final FirstGravity first;
  private final int[] batchOfRow;

  /**
   * @param places where our columns stand
   * @param all the sheet's tables
   */
  RowFormulas(
      Grid grid,
      LogTable table,
      FormulaSource source,
      Map<Computed, Placement.Place> places,
      List<LogTable> all) {
    this.grid = grid;
    this.table = table;
    this.source = source;
    this.reading = new RowReading(grid, table);
    correctedColumn = column(places, Computed.CORRECTED_GRAVITY);
    originalColumn = column(places, Computed.ORIGINAL_GRAVITY);
    first = new FirstGravity(grid, table, column(places, Computed.FIRST_GRAVITY), all);
    batchOfRow = new int[table.lastRow() - table.firstRow() + 1];
    java.util.Arrays.fill(batchOfRow, -1);
    for (int i = 0; i < table.batches().size(); i++) {
      for (int row : table.batches().get(i).rows()) {
        batchOfRow[row - table.firstRow()] = i;
      }
    }
  }

  private static int column(Map<Computed, Placement.Place> places, Computed column) {
    return places.containsKey(column) ? places.get(column).column() : -1;
  }

  /** The formula of a row that is filled; null where only the value can stand. */
  String formula(Computed column, int row) {
    int index = batchOfRow[row - table.firstRow()];
    if (index < 0 || reading.read(row) != RowReading.State.READ) {
      return null;
    }
    Batch batch = table.batches().get(index);
    reading.originalBrix = batch.originalBrix();
    if (column == Computed.CORRECTED_GRAVITY || column == Computed.FIRST_GRAVITY) {
      return corrected(batch, row);
    }
    if (column == Computed.ORIGINAL_GRAVITY) {
      String original = lookedUp(batch, row);
      return original == null || Numbers.parse(original) != null ? null : original;
    }
    String function = column.function();
    if (function == null) {
      return null;
    }
    String gravity =
        correctedColumn >= 0 ? CellAddress.of(row, correctedColumn) : corrected(batch, row);
    String original = row == batch.originRow() ? gravity : original(batch, row);
    if (gravity == null || original == null) {
      return null;
    }
    if (!isBeforeFerment(batch, row)) {
      return source.formula(function, List.of(original, gravity));
    }
    return correctedColumn < 0
        ? null
        : source.formula(function, List.of(original, "MIN(" + original + "," + gravity + ")"));
  }

  /** Whether the row just read is above the original gravity by no more than readings differ. */
  private boolean isBeforeFerment(Batch batch, int row) {
    double original = Originals.gravity(batch, Originals.stepOfRow(batch, row));
    return row != batch.originRow() && !Double.isNaN(reading.beforeFerment(original));
  }

  private String corrected(Batch batch, int row) {
    if (reading.byRefractometer()) {
      return byRefractometer(batch, row);
    }
    String shown = reading.gravityFormula(row, source);
    String temperature = reading.temperatureFormula(row, source);
    if (shown == null || temperature == null) {
      return null;
    }
    Settings settings = table.settings();
    boolean isFirst = row == batch.originRow() || isBeforeFerment(batch, row);
    List<String> arguments = new ArrayList<>(List.of(shown, temperature));
    boolean offset = settings.offset() != 0;
    if (!isFirst || offset || settings.calibrationC() != Settings.USUAL_CALIBRATION) {
      arguments.add(Numbers.show(settings.calibrationC()));
    }
    if (!isFirst || offset) {
      String original = isFirst ? "" : original(batch, row);
      if (original == null) {
        return null;
      }
      arguments.add(original);
    }
    if (offset) {
      arguments.add(Numbers.show(settings.offset()));
    }
    return source.formula("CORRECTEDGRAVITY", arguments);
  }

  private String byRefractometer(Batch batch, int row) {
    String present = reading.presentBrixFormula(row);
    boolean isFirst = row == batch.originRow() || isBeforeFerment(batch, row);
    String original = isFirst ? present : Numbers.show(batch.originalBrix());
    List<String> arguments = new ArrayList<>(List.of(original, present));
    if (table.settings().refractometerFactor() != 1) {
      arguments.add(Numbers.show(table.settings().refractometerFactor()));
    }
    return source.formula("REFRACTOMETERGRAVITY", arguments);
  }

  /** The original gravity for a row: the row's own cell where there is that column. */
  private String original(Batch batch, int row) {
    return originalColumn >= 0 ? CellAddress.of(row, originalColumn) : lookedUp(batch, row);
  }

  /** The batch's original gravity: a cell or a look-up where it can be one, else the number. */
  private String lookedUp(Batch batch, int row) {
    if (!batch.steps().isEmpty()) {
      return Numbers.show(Originals.gravity(batch, Originals.stepOfRow(batch, row)));
    }
    if (batch.origin() == Batch.Origin.FIRST_READING) {
      return first.hasColumn()
          ? first.ofFirstReading(batch, row)
          : correctedColumn >= 0
              ? CellAddress.fixed(batch.originRow(), correctedColumn)
              : Numbers.show(batch.originalGravity());
    }
    if (batch.originalGravityUnit().isEmpty()) {
      return Numbers.show(batch.originalGravity());
    }
    String cell = first.ofStatement(batch, row);
    return switch (batch.originalGravityUnit()) {
      case "SG" -> cell;
      case "SG1000" -> cell + "/1000";
      default ->
          source.formula(
              "CONVERT", List.of(cell, '"' + batch.originalGravityUnit() + '"', "\"SG\""));
    };
  }
}
