package washbook.functions.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
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
    List<ColumnPatch> patches = new ArrayList<>();
    List<Filling.TableCount> counts = new ArrayList<>();
    List<List<CellRefusal>> refusals = new ArrayList<>();
    for (LogTable table : understanding.tables()) {
      if (!table.settled()) {
        continue;
      }
      Map<Computed, Placement.Place> present = placement.present(table);
      Set<Computed> wanted = EnumSet.noneOf(Computed.class);
      wanted.addAll(options.columns());
      wanted.addAll(present.keySet());
      wanted.remove(Computed.NOTE);
      TableFill fill = new TableFill(grid, table, wanted);
      if (fill.hasRefusals() || present.containsKey(Computed.NOTE)) {
        wanted.add(Computed.NOTE);
      }
      Map<Computed, Placement.Place> places = placement.place(table, wanted);
      patches.addAll(patches(grid, table, fill, places, source));
      counts.add(fill.count());
      refusals.add(fill.refusals());
    }
    patches.sort(
        java.util.Comparator.comparing(ColumnPatch::headerRow).thenComparing(ColumnPatch::column));
    return new Filling(
        new SheetPatch(understanding.sheet(), List.copyOf(patches)),
        List.copyOf(counts),
        new JoinedList<>(refusals));
  }

  private static List<ColumnPatch> patches(
      Grid grid,
      LogTable table,
      TableFill fill,
      Map<Computed, Placement.Place> places,
      FormulaSource source) {
    Placement.Place corrected = places.get(Computed.CORRECTED_GRAVITY);
    RowFormulas formulas =
        source == null
            ? null
            : new RowFormulas(grid, table, source, corrected == null ? -1 : corrected.column());
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
      return column == Computed.NOTE ? fill.note(row) : null;
    }

    @Override
    public String formula(int row) {
      return formulas == null || Double.isNaN(fill.number(column, row))
          ? null
          : formulas.formula(column, row);
    }
  }
}
