package washbook.log.reading;

import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.SugarScale;
import washbook.log.LogColumn;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/** Reads the refractometer column of a table, one row after the other. */
final class RefractometerRows {
  private final Grid grid;
  private final int column;
  private final ReadingScale scale;

  /** What the instrument shows, °Bx. */
  double brix;

  CellRefusal refusal;

  /**
   * @param use the column, null when the table has none
   */
  RefractometerRows(Grid grid, LogColumn use) {
    this.grid = grid;
    this.column = use == null ? -1 : use.column();
    this.scale = use == null ? ReadingScale.BRIX : ReadingScale.of(use.unit());
  }

  HydrometerRows.State read(int row) {
    refusal = null;
    boolean isText = grid.kind(row, column) == Grid.Kind.TEXT;
    CellText cell = isText ? CellText.read(grid.text(row, column)) : null;
    double value = CellText.plainNumber(grid, row, column);
    if (isText && (Double.isNaN(value) || cell.isAbout)) {
      if (cell.form == CellText.Form.NOTHING) {
        return HydrometerRows.State.NOTHING;
      }
      boolean inBrix =
          cell.form == CellText.Form.VALUE
              && (cell.unit.isEmpty() || isPercent(cell.unit))
              && Double.isNaN(cell.temperature);
      if (!inBrix || cell.isAbout) {
        Object quoted = RowRefusals.quoted(grid.text(row, column));
        Message why =
            inBrix
                ? Message.of("reading.about", quoted)
                : Message.of("refractometer.notANumber", quoted, range());
        refusal = new CellRefusal(grid.address(row, column), Code.NOT_A_NUMBER, why);
        return HydrometerRows.State.REFUSED;
      }
      return check(row, cell.value);
    }
    if (Double.isNaN(value) || value == 0) {
      return HydrometerRows.State.NOTHING;
    }
    return check(
        row,
        scale == ReadingScale.BRIX ? value : SugarScale.BRIX.fromGravity(scale.toGravity(value)));
  }

  private static boolean isPercent(String unit) {
    return unit.equals("%")
        || ReadingScale.behind(unit).filter(ReadingScale::isPercentOfExtract).isPresent();
  }

  private HydrometerRows.State check(int row, double inBrix) {
    brix = inBrix;
    if (brix >= Quantity.REFRACTOMETER_BRIX.min() && brix <= Quantity.REFRACTOMETER_BRIX.max()) {
      return HydrometerRows.State.READ;
    }
    refusal =
        RowRefusals.outside(
            grid.address(row, column),
            "refractometer",
            RowRefusals.quoted(grid, row, column),
            range(),
            brix < 1);
    return HydrometerRows.State.REFUSED;
  }

  /** The range of the instrument in the log's own unit. */
  private Message range() {
    Quantity range = Quantity.REFRACTOMETER_BRIX;
    return scale == ReadingScale.SG
        ? Message.of(
            "range",
            asGravity(range.min()),
            asGravity(range.max()),
            Message.of("unit", Message.of("scale.SG")))
        : RowRefusals.range(range.min(), range.max(), ReadingScale.BRIX.sign());
  }

  private static Figure asGravity(double brix) {
    return new Figure(Numbers.round(SugarScale.BRIX.toGravity(brix), 4));
  }

  /** A reading that does not go with what the instrument showed before the ferment. */
  CellRefusal contradiction(int row, double presentBrix, double originalBrix) {
    Object before =
        scale == ReadingScale.SG
            ? asGravity(originalBrix)
            : Message.of(
                "amount", new Figure(Numbers.round(originalBrix, 2)), ReadingScale.BRIX.sign());
    return new CellRefusal(
        grid.address(row, column),
        Code.CONTRADICTION,
        Message.of(
            presentBrix > originalBrix ? "refractometer.above" : "refractometer.below",
            RowRefusals.quoted(grid, row, column),
            before));
  }
}
