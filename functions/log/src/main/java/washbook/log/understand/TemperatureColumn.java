package washbook.log.understand;

import java.util.List;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.TableRows;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;

/** Settles which column is the temperature of the readings, and its unit. */
final class TemperatureColumn {
  private final Grid grid;
  private final TableRows rows;
  private final ColumnAssignment columns;

  TemperatureColumn(Grid grid, TableRows rows, ColumnAssignment columns) {
    this.grid = grid;
    this.rows = rows;
    this.columns = columns;
  }

  void settle() {
    List<HeaderCell> cells = columns.with(Role.TEMPERATURE);
    List<HeaderCell> filled = cells.stream().filter(c -> hasAny(c)).toList();
    HeaderCell chosen = filled.isEmpty() ? cells.isEmpty() ? null : cells.get(0) : filled.get(0);
    for (HeaderCell cell : cells) {
      String unit = temperatureUnit(cell);
      if (cell == chosen) {
        columns.change(
            cell,
            Role.TEMPERATURE,
            unit,
            statedTemperature(cell).isEmpty() ? "unit by its values" : "by its header");
        if (unit.isEmpty() && columns.facts(cell).numbers() > 0) {
          columns.unsettle();
          columns.doubt(
              cell,
              "Are the temperatures in column "
                  + CellAddress.letters(cell.column())
                  + " ("
                  + cell.text()
                  + ", "
                  + columns.facts(cell).range()
                  + ") in °C or °F? In a map: column "
                  + CellAddress.letters(cell.column())
                  + " = TEMPERATURE in C");
        }
        continue;
      }
      if (filled.contains(cell) && !sameTemperature(chosen, cell)) {
        columns.unsettle();
        columns.doubt(
            cell,
            "Columns "
                + CellAddress.letters(chosen.column())
                + " and "
                + CellAddress.letters(cell.column())
                + " are both temperatures: at which one was read? In a map: column "
                + CellAddress.letters(cell.column())
                + " = OTHER");
      }
      columns.change(cell, Role.OTHER, "", "another column is the temperature");
    }
  }

  private boolean hasAny(HeaderCell cell) {
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      if (grid.kind(row, cell.column()) != Grid.Kind.BLANK) {
        return true;
      }
    }
    return false;
  }

  private boolean sameTemperature(HeaderCell one, HeaderCell other) {
    boolean firstF = temperatureUnit(one).equals("F");
    boolean secondF = temperatureUnit(other).equals("F");
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double a = CellText.plainNumber(grid, row, one.column());
      double b = CellText.plainNumber(grid, row, other.column());
      if (!Double.isNaN(b)
          && !(Math.abs((firstF ? (a - 32) / 1.8 : a) - (secondF ? (b - 32) / 1.8 : b)) <= 0.6)) {
        return false;
      }
    }
    return true;
  }

  private String statedTemperature(HeaderCell cell) {
    if (!columns.saidUnit(cell).isEmpty()) {
      return columns.saidUnit(cell);
    }
    boolean c = cell.meanings().contains(Concept.C);
    boolean f = cell.meanings().contains(Concept.F);
    return c == f ? "" : c ? "C" : "F";
  }

  private String temperatureUnit(HeaderCell cell) {
    String stated = statedTemperature(cell);
    return stated.isEmpty() ? columns.facts(cell).temperatureUnit() : stated;
  }
}
