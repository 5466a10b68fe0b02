package washbook.log.fill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;

/** Computes the columns of a log that was understood. */
public final class LogFiller {
  private LogFiller() {}

  /** Computes the wanted columns of every table that is understood without doubt. */
  public static Filling fill(Grid grid, Understanding understanding, FillOptions options) {
    FormulaSource source =
        switch (options.style()) {
          case VALUES -> null;
          case PACK -> FormulaSource.pack();
          case PORTABLE -> new PortableSource();
        };
    return fill(grid, understanding, options, source);
  }

  /**
   * The same with the formulas of {@code source}; null for none. Columns that an earlier run has
   * written are brought up to date whether or not they are wanted now.
   */
  public static Filling fill(
      Grid grid, Understanding understanding, FillOptions options, FormulaSource source) {
    ComputedColumnPlaces placement = new ComputedColumnPlaces(grid, understanding.tables());
    Map<LogTable, ComputedTable> fills = new LinkedHashMap<>();
    Map<LogTable, Set<ComputedColumn>> wanted = new HashMap<>();
    for (LogTable table : understanding.tables()) {
      if (table.settled()) {
        Set<ComputedColumn> columns = EnumSet.noneOf(ComputedColumn.class);
        columns.addAll(options.columns());
        columns.addAll(placement.present(table).keySet());
        if (source != null) {
          columns.addAll(OriginalGravityLookUp.columns(grid, table));
        }
        boolean noted = columns.remove(ComputedColumn.NOTE);
        ComputedTable fill = new ComputedTable(grid, table, columns);
        if (fill.hasRefusals() || noted) {
          columns.add(ComputedColumn.NOTE);
        }
        fills.put(table, fill);
        wanted.put(table, columns);
      }
    }
    List<ColumnPatch> patches = new ArrayList<>();
    for (LogTable table : fills.keySet()) {
      patches.addAll(
          patches(
              grid,
              understanding,
              table,
              fills.get(table),
              placement.place(table, wanted.get(table)),
              source));
    }
    patches.sort(Comparator.comparing(ColumnPatch::headerRow).thenComparing(ColumnPatch::column));
    return new Filling(
        new SheetPatch(understanding.sheet(), List.copyOf(patches)),
        fills.values().stream().map(ComputedTable::count).toList(),
        new JoinedList<>(fills.values().stream().map(ComputedTable::refusals).toList()));
  }

  private static List<ColumnPatch> patches(
      Grid grid,
      Understanding understanding,
      LogTable table,
      ComputedTable fill,
      Map<ComputedColumn, ComputedColumnPlaces.Place> places,
      FormulaSource source) {
    RowFormulas formulas =
        source == null
            ? null
            : new RowFormulas(grid, table, source, places, understanding.tables());
    List<ColumnPatch> patches = new ArrayList<>();
    for (Map.Entry<ComputedColumn, ComputedColumnPlaces.Place> entry :
        new EnumMap<>(places).entrySet()) {
      ComputedColumn column = entry.getKey();
      patches.add(
          new ColumnPatch(
              entry.getValue().column(),
              table.headerRow(),
              entry.getValue().header(),
              table.firstRow(),
              table.lastRow(),
              column.decimals(),
              new FilledCells(column, fill, formulas)));
    }
    return patches;
  }

  private record FilledCells(ComputedColumn column, ComputedTable fill, RowFormulas formulas)
      implements ColumnPatch.Cells {
    @Override
    public double number(int row) {
      return fill.number(column, row);
    }

    @Override
    public String text(int row) {
      return fill.text(column, row);
    }

    @Override
    public String formula(int row) {
      return formulas == null || Double.isNaN(fill.number(column, row))
          ? null
          : formulas.formula(column, row);
    }
  }
}
