package washbook.functions.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

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
    Placement placement = new Placement(grid, understanding.tables());
    Map<LogTable, TableFill> fills = new LinkedHashMap<>();
    Map<LogTable, Set<Computed>> wanted = new HashMap<>();
    for (LogTable table : understanding.tables()) {
      if (table.settled()) {
        Set<Computed> columns = EnumSet.noneOf(Computed.class);
        columns.addAll(options.columns());
        columns.addAll(placement.present(table).keySet());
        if (source != null) {
          columns.addAll(FirstGravity.columns(grid, table));
        }
        boolean noted = columns.remove(Computed.NOTE);
        TableFill fill = new TableFill(grid, table, columns);
        if (fill.hasRefusals() || noted) {
          columns.add(Computed.NOTE);
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
        fills.values().stream().map(TableFill::count).toList(),
        new JoinedList<>(fills.values().stream().map(TableFill::refusals).toList()));
  }

  private static List<ColumnPatch> patches(
      Grid grid,
      Understanding understanding,
      LogTable table,
      TableFill fill,
      Map<Computed, Placement.Place> places,
      FormulaSource source) {
    RowFormulas formulas =
        source == null
            ? null
            : new RowFormulas(grid, table, source, places, understanding.tables());
    List<ColumnPatch> patches = new ArrayList<>();
    for (Map.Entry<Computed, Placement.Place> entry : new EnumMap<>(places).entrySet()) {
      Computed column = entry.getKey();
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

  private record FilledCells(Computed column, TableFill fill, RowFormulas formulas)
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
