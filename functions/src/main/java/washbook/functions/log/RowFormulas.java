package washbook.functions.log;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.Numbers;

/**
 * Writes the formulas of one table's rows. A formula refers to cells of its own row and to the cell
 * of the batch's original gravity, that one with $, so that it stays right when rows are put in.
 */
final class RowFormulas {
  private final Grid grid;
  private final LogTable table;
  private final FormulaSource source;
  private final RowReading reading;
  private final int correctedColumn;
  private final int[] batchOfRow;

  /**
   * @param correctedColumn where our corrected gravity stands, -1 when it is not in the sheet
   */
  RowFormulas(Grid grid, LogTable table, FormulaSource source, int correctedColumn) {
    this.grid = grid;
    this.table = table;
    this.source = source;
    this.reading = new RowReading(grid, table);
    this.correctedColumn = correctedColumn;
    batchOfRow = new int[table.lastRow() - table.firstRow() + 1];
    java.util.Arrays.fill(batchOfRow, -1);
    for (int i = 0; i < table.batches().size(); i++) {
      for (int row : table.batches().get(i).rows()) {
        batchOfRow[row - table.firstRow()] = i;
      }
    }
  }

  /** The formula of a row that is filled; null where only the value can stand. */
  String formula(Computed column, int row) {
    int index = batchOfRow[row - table.firstRow()];
    if (index < 0 || reading.read(row) != RowReading.State.READ) {
      return null;
    }
    Batch batch = table.batches().get(index);
    if (column == Computed.CORRECTED_GRAVITY) {
      return corrected(batch, row);
    }
    String function = column.function();
    if (function == null) {
      return null;
    }
    String gravity =
        correctedColumn >= 0 ? CellAddress.of(row, correctedColumn) : corrected(batch, row);
    String original = row == batch.originRow() ? gravity : original(batch, row);
    return gravity == null || original == null
        ? null
        : source.formula(function, List.of(original, gravity));
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
    boolean first = row == batch.originRow();
    List<String> arguments = new ArrayList<>(List.of(shown, temperature));
    boolean offset = settings.offset() != 0;
    if (!first || offset || settings.calibrationC() != Settings.USUAL_CALIBRATION) {
      arguments.add(Numbers.show(settings.calibrationC()));
    }
    if (!first || offset) {
      String original = first ? "" : original(batch, row);
      if (original == null) {
        return null;
      }
      arguments.add(original);
    }
    if (offset) {
      arguments.add(Numbers.show(settings.offset()));
    }
    String formula = source.formula("CORRECTEDGRAVITY", arguments);
    double gravity = first || formula == null ? Double.NaN : asWash(batch, row);
    return gravity > Originals.gravity(batch, Originals.stepOfRow(batch, row))
        ? "MIN(" + original(batch, row) + "," + formula + ")"
        : formula;
  }

  private double asWash(Batch batch, int row) {
    double original = Originals.gravity(batch, Originals.stepOfRow(batch, row));
    return reading.asWash(washbook.functions.liquid.SucroseSolution.brix(original));
  }

  private String byRefractometer(Batch batch, int row) {
    String present = reading.presentBrixFormula(row);
    String original = row == batch.originRow() ? present : Numbers.show(batch.originalBrix());
    List<String> arguments = new ArrayList<>(List.of(original, present));
    if (table.settings().refractometerFactor() != 1) {
      arguments.add(Numbers.show(table.settings().refractometerFactor()));
    }
    return source.formula("REFRACTOMETERGRAVITY", arguments);
  }

  /** The batch's original gravity: a cell where it can be one, else the number. */
  private String original(Batch batch, int row) {
    if (!batch.steps().isEmpty()) {
      return Numbers.show(Originals.gravity(batch, Originals.stepOfRow(batch, row)));
    }
    if (batch.origin() == Batch.Origin.FIRST_READING) {
      return correctedColumn >= 0
          ? CellAddress.fixed(batch.originRow(), correctedColumn)
          : Numbers.show(batch.originalGravity());
    }
    if (batch.originalGravityUnit().isEmpty()) {
      return Numbers.show(batch.originalGravity());
    }
    ColumnUse own = table.column(Role.ORIGINAL_GRAVITY).orElse(null);
    String cell =
        own != null && grid.kind(row, own.column()) == Grid.Kind.NUMBER
            ? CellAddress.of(row, own.column())
            : CellAddress.fixed(batch.originalGravityCell());
    return switch (batch.originalGravityUnit()) {
      case "SG" -> cell;
      case "SG1000" -> cell + "/1000";
      default ->
          source.formula(
              "CONVERT", List.of(cell, '"' + batch.originalGravityUnit() + '"', "\"SG\""));
    };
  }
}
