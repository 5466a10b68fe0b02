package washbook.functions.log;

import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Quantity;
import washbook.functions.scale.SugarScale;

/** Reads the refractometer column of a table, one row after the other. */
final class RefractometerReading {
  private final Grid grid;
  private final int column;
  private final SugarScale scale;

  /** What the instrument shows, °Bx. */
  double brix;

  CellRefusal refusal;

  /**
   * @param use the column, null when the table has none
   */
  RefractometerReading(Grid grid, ColumnUse use) {
    this.grid = grid;
    this.column = use == null ? -1 : use.column();
    this.scale = use == null ? SugarScale.BRIX : SugarScale.valueOf(use.unit());
  }

  RowReading.State read(int row) {
    refusal = null;
    double value = ColumnFacts.plainNumber(grid, row, column);
    if (Double.isNaN(value) && grid.kind(row, column) == Grid.Kind.TEXT) {
      CellText cell = CellText.read(grid.text(row, column));
      if (cell.form == CellText.Form.NOTHING) {
        return RowReading.State.NOTHING;
      }
      boolean inBrix =
          cell.form == CellText.Form.VALUE
              && isPercent(Units.sugarScale(cell.unit))
              && Double.isNaN(cell.temperature);
      if (!inBrix) {
        refusal =
            new CellRefusal(
                CellAddress.of(row, column),
                Code.NOT_A_NUMBER,
                "refractometer reading '"
                    + grid.text(row, column)
                    + "' is not a single number; it must be "
                    + range()
                    + ".");
        return RowReading.State.REFUSED;
      }
      return check(row, cell.value);
    }
    if (Double.isNaN(value) || value == 0) {
      return RowReading.State.NOTHING;
    }
    double gravity = scale == SugarScale.SG && value >= 100 ? value / 1000 : value;
    return check(
        row,
        scale == SugarScale.BRIX ? value : SugarScale.BRIX.fromGravity(scale.toGravity(gravity)));
  }

  private static boolean isPercent(SugarScale scale) {
    return scale == SugarScale.BRIX || scale == SugarScale.PLATO || scale == SugarScale.BALLING;
  }

  private RowReading.State check(int row, double inBrix) {
    brix = inBrix;
    if (brix >= Quantity.REFRACTOMETER_BRIX.min() && brix <= Quantity.REFRACTOMETER_BRIX.max()) {
      return RowReading.State.READ;
    }
    refusal =
        RowRefusals.outside(
            row,
            column,
            "refractometer reading " + RowRefusals.quoted(grid, row, column),
            range(),
            brix < 1);
    return RowReading.State.REFUSED;
  }

  /** The range of the instrument in the log's own unit. */
  private String range() {
    Quantity range = Quantity.REFRACTOMETER_BRIX;
    return scale == SugarScale.SG
        ? Numbers.round(SugarScale.BRIX.toGravity(range.min()), 4)
            + " to "
            + Numbers.round(SugarScale.BRIX.toGravity(range.max()), 4)
            + " SG"
        : range.range();
  }

  /** A reading that does not go with what the instrument showed before the ferment. */
  CellRefusal contradiction(int row, double presentBrix, double originalBrix) {
    String before =
        scale == SugarScale.SG
            ? Numbers.round(SugarScale.BRIX.toGravity(originalBrix), 4)
            : Numbers.round(originalBrix, 2) + " \u00b0Bx";
    String what =
        "refractometer reading " + RowRefusals.quoted(grid, row, column) + " does not go with ";
    return new CellRefusal(
        CellAddress.of(row, column),
        Code.CONTRADICTION,
        what
            + "the original reading "
            + before
            + (presentBrix > originalBrix
                ? "; it must be below it, or sugar was added."
                : "; it must be above what the wash can ferment to."));
  }

  /** The reading just read as an argument of a formula. */
  String formula(int row) {
    return grid.kind(row, column) == Grid.Kind.NUMBER && scale == SugarScale.BRIX
        ? CellAddress.of(row, column)
        : Numbers.show(brix);
  }
}
