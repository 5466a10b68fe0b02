package washbook.log.reading;

import washbook.functions.Answer.Code;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.SugarScale;
import washbook.log.LogColumn;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/** Reads the refractometer column of a table, one row after the other. */
final class RefractometerRows {
  private final Grid grid;
  private final int column;
  private final SugarScale scale;

  /** What the instrument shows, °Bx. */
  double brix;

  CellRefusal refusal;

  /**
   * @param use the column, null when the table has none
   */
  RefractometerRows(Grid grid, LogColumn use) {
    this.grid = grid;
    this.column = use == null ? -1 : use.column();
    this.scale = use == null ? SugarScale.BRIX : SugarScale.valueOf(use.unit());
  }

  HydrometerRows.State read(int row) {
    refusal = null;
    double value = CellText.plainNumber(grid, row, column);
    if (Double.isNaN(value) && grid.kind(row, column) == Grid.Kind.TEXT) {
      CellText cell = CellText.read(grid.text(row, column));
      if (cell.form == CellText.Form.NOTHING) {
        return HydrometerRows.State.NOTHING;
      }
      boolean inBrix =
          cell.form == CellText.Form.VALUE
              && ReadingScale.sugarScale(cell.unit) == SugarScale.BRIX
              && Double.isNaN(cell.temperature);
      if (!inBrix) {
        refusal =
            RowRefusals.unreadable(
                row,
                column,
                Code.NOT_A_NUMBER,
                "refractometer reading '" + grid.text(row, column) + "' is not a single number",
                Quantity.REFRACTOMETER_BRIX);
        return HydrometerRows.State.REFUSED;
      }
      return check(row, cell.value, cell.value);
    }
    if (Double.isNaN(value) || value == 0) {
      return HydrometerRows.State.NOTHING;
    }
    double gravity = scale == SugarScale.SG && value >= 100 ? value / 1000 : value;
    return check(
        row,
        value,
        scale == SugarScale.BRIX ? value : SugarScale.BRIX.fromGravity(scale.toGravity(gravity)));
  }

  private HydrometerRows.State check(int row, double shown, double inBrix) {
    brix = inBrix;
    if (brix >= Quantity.REFRACTOMETER_BRIX.min() && brix <= Quantity.REFRACTOMETER_BRIX.max()) {
      return HydrometerRows.State.READ;
    }
    refusal =
        RowRefusals.outside(
            row,
            column,
            "refractometer reading",
            shown,
            Quantity.REFRACTOMETER_BRIX.range(),
            brix < 1);
    return HydrometerRows.State.REFUSED;
  }
}
