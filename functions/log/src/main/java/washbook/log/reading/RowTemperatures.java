package washbook.log.reading;

import java.util.List;
import washbook.functions.Answer.Code;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.language.Message;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Ditto;
import washbook.log.words.Statement;

/** Reads the column of temperatures of a table, one row after the other. */
final class RowTemperatures {
  private final Grid grid;
  private final LogSettings settings;
  private final int column;
  private final TemperatureUnit unit;

  /** Why the cell just read is no temperature; null where it is one, or blank. */
  CellRefusal refusal;

  /**
   * @param use the column, null when the table has none
   */
  RowTemperatures(Grid grid, LogColumn use, LogSettings settings) {
    this.grid = grid;
    this.settings = settings;
    this.column = use == null ? -1 : use.column();
    this.unit = HydrometerRows.unitOf(use);
  }

  /** The temperature of a row, °C, of a ditto mark that above it; NaN where there is none. */
  double read(int row) {
    refusal = null;
    if (column < 0) {
      return Double.NaN;
    }
    int stands = row;
    while (stands > 0 && isDitto(stands)) {
      stands--;
    }
    return here(stands);
  }

  private boolean isDitto(int row) {
    return grid.kind(row, column) == Kind.TEXT && Ditto.isMark(grid.text(row, column));
  }

  private double here(int row) {
    return switch (grid.kind(row, column)) {
      case NUMBER -> unit.toCelsius(grid.number(row, column));
      case TEXT -> ofText(row, grid.text(row, column));
      case BLANK -> Double.NaN;
      default -> refuse(row, new Message("temperature.error", List.of(range())));
    };
  }

  private double ofText(int row, String text) {
    CellText cell = CellText.read(text);
    if (cell.form == CellText.Form.NOTHING) {
      return Double.NaN;
    }
    if (cell.form == CellText.Form.TEMPERATURE) {
      return cell.celsius();
    }
    if (cell.form == CellText.Form.VALUE
        && (cell.unit.isEmpty() || cell.unit.matches("gr\\.?"))
        && Double.isNaN(cell.temperature)) {
      return unit.toCelsius(cell.value);
    }
    if (Statement.saysCorrected(text)) {
      return settings.correctedAlready() ? settings.temperatureC() : settings.calibrationC();
    }
    return refuse(
        row, new Message("temperature.notOne", List.of(RowRefusals.quoted(text), range())));
  }

  private Message range() {
    return RowRefusals.temperatureRange(unit);
  }

  private double refuse(int row, Message why) {
    refusal = new CellRefusal(grid.address(row, column), Code.NOT_A_NUMBER, why);
    return Double.NaN;
  }
}
