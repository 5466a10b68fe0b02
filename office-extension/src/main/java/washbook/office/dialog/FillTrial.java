package washbook.office.dialog;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.AcrossGrid;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/**
 * A sheet as it is understood and would be filled; nothing is written.
 *
 * @param map what is said about the log
 * @param options what is to be filled in
 */
public record FillTrial(
    Grid grid, LogMap map, FillOptions options, Understanding understanding, Filling filling) {

  public static FillTrial of(Grid grid, LogMap map, FillOptions options) {
    Understanding understanding = SheetUnderstanding.understand(grid, map);
    return new FillTrial(
        grid, map, options, understanding, LogFiller.fill(grid, understanding, options));
  }

  /** The same with something else to be filled in. */
  FillTrial with(FillOptions other) {
    return new FillTrial(
        grid, map, other, understanding, LogFiller.fill(grid, understanding, other));
  }

  /** The same with a column taken for something else. */
  FillTrial with(Place place, ColumnChoice choice) {
    return of(
        grid,
        map.with(grid.name(), place.headerRow(), List.of(place.key() + " = " + choice.statement())),
        options);
  }

  /** Whether there is anything to write. */
  public boolean fills() {
    return !filling.patch().columns().isEmpty();
  }

  /**
   * Where a column stands.
   *
   * @param headerRow the row of its header from 0, -1 in a log that runs across
   * @param key of it in a map
   * @param cell of its header
   */
  record Place(int headerRow, String key, String cell) {}

  /** A column that the log has itself. */
  record Column(Place place, LogColumn column) {}

  /** The columns of all tables but those that are computed. */
  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    Stream.concat(
            understanding.tables().stream(), understanding.runs().stream().map(StillRun::table))
        .forEach(
            table ->
                table.columns().stream()
                    .filter(column -> column.role() != Role.COMPUTED)
                    .map(column -> new Column(place(table, column.column()), column))
                    .forEach(columns::add));
    return columns;
  }

  private Place place(LogTable table, int column) {
    return understanding
        .across()
        .map(across -> acrossPlace(across, column))
        .orElseGet(
            () ->
                new Place(
                    table.headerRow(),
                    "column " + CellAddress.letters(column),
                    CellAddress.of(table.headerRow(), column)));
  }

  private static Place acrossPlace(AcrossGrid across, int column) {
    int row = across.sheetRow(column) + 1;
    return new Place(-1, "row " + row, String.valueOf(row));
  }
}
