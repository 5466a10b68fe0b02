package washbook.log.fill;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.WrittenScale;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.AcrossGrid;
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
   * written are brought up to date whether or not they are wanted now; a table of which no row can
   * be filled gets no new column. A log that runs across gets values in rows below it.
   */
  public static Filling fill(
      Grid grid, Understanding understanding, FillOptions options, FormulaSource source) {
    if (understanding.across().isEmpty()) {
      return computed(grid, understanding, options, source);
    }
    AcrossGrid turned = understanding.across().get();
    return AcrossFilling.of(grid, turned, computed(turned, understanding, options, null));
  }

  private static Filling computed(
      Grid grid, Understanding understanding, FillOptions options, FormulaSource source) {
    List<LogTable> all = new ArrayList<>(understanding.tables());
    understanding.runs().forEach(run -> all.add(run.table()));
    ComputedColumnPlaces placement = new ComputedColumnPlaces(grid, all);
    Map<LogTable, ComputedTable> fills = new LinkedHashMap<>();
    Map<LogTable, Map<Integer, List<Message>>> notes = new HashMap<>();
    Map<LogTable, Set<ComputedColumn>> wanted = new HashMap<>();
    Map<LogTable, ComputedColumnPlaces.Present> present = new HashMap<>();
    for (LogTable table : understanding.tables()) {
      if (table.settled()) {
        boolean gravityIsNeeded =
            source != null || options.columns().contains(ComputedColumn.SPECIFIC_GRAVITY);
        ComputedColumnPlaces.Present there =
            placement.present(
                table,
                options
                    .scale()
                    .or(() -> table.settings().writing().scale())
                    .orElseGet(() -> WrittenScale.of(grid, table)),
                gravityIsNeeded);
        Set<ComputedColumn> columns = EnumSet.noneOf(ComputedColumn.class);
        columns.addAll(options.columns());
        columns.addAll(there.places().keySet());
        columns.removeIf(ComputedColumn::isOfRun);
        if (source != null) {
          columns.addAll(OriginalGravityLookUp.columns(grid, table));
          if (columns.contains(ComputedColumn.CORRECTED_GRAVITY)) {
            columns.add(ComputedColumn.SPECIFIC_GRAVITY);
          }
        }
        if (there.scale().isPlainGravity()) {
          columns.remove(ComputedColumn.SPECIFIC_GRAVITY);
        }
        boolean noted = columns.remove(ComputedColumn.NOTE);
        ComputedTable fill = new ComputedTable(grid, table, columns);
        Map<Integer, List<Message>> said =
            isForRunsOnly(options) ? Map.of() : options.notes().of(grid, table, fill);
        notes.put(table, said);
        if (noted || ((fill.hasRefusals() || !said.isEmpty()) && !isForRunsOnly(options))) {
          columns.add(ComputedColumn.NOTE);
        }
        if (!fill.fillsAnyRow()) {
          columns.retainAll(there.places().keySet());
        }
        fills.put(table, fill);
        wanted.put(table, columns);
        present.put(table, there);
      }
    }
    List<FilledColumn> filled = new ArrayList<>();
    for (LogTable table : fills.keySet()) {
      Language language =
          options
              .language()
              .or(() -> table.settings().writing().language())
              .orElseGet(() -> LogLanguage.of(grid, table, options.userLanguage()));
      Map<ComputedColumn, ComputedColumnPlaces.Place> places =
          placement.place(table, wanted.get(table), present.get(table), language);
      RowFormulas formulas =
          source == null
              ? null
              : new RowFormulas(grid, table, source, places, understanding.tables());
      ComputedCells cells = new NotedCells(fills.get(table), notes.get(table));
      places.forEach(
          (column, place) -> filled.add(filled(table, column, place, language, cells, formulas)));
    }
    RunFiller runs = new RunFiller(grid, placement, options, source);
    understanding.runs().forEach(runs::fill);
    filled.addAll(runs.filled);
    List<ColumnPatch> patches =
        filled.stream()
            .map(column -> CutText.told(grid, column.patch()))
            .sorted(
                (a, b) ->
                    a.headerRow() != b.headerRow()
                        ? Integer.compare(a.headerRow(), b.headerRow())
                        : Integer.compare(a.column(), b.column()))
            .toList();
    return new Filling(
        new SheetPatch(understanding.sheet(), patches),
        List.copyOf(filled),
        Stream.concat(
                fills.values().stream().map(ComputedTable::count),
                runs.computed.stream().map(ComputedRun::count))
            .toList(),
        new JoinedList<>(
            Stream.concat(
                    fills.values().stream().map(ComputedTable::refusals),
                    runs.computed.stream().map(ComputedRun::refusals))
                .toList()),
        new RowAccounts(grid, understanding).of(fills, runs.computed));
  }

  /** Whether no column of a ferment was asked for. */
  private static boolean isForRunsOnly(FillOptions options) {
    return !options.columns().isEmpty()
        && options.columns().stream().allMatch(ComputedColumn::isOfRun);
  }

  static FilledColumn filled(
      LogTable table,
      ComputedColumn column,
      ComputedColumnPlaces.Place place,
      Language language,
      ComputedCells fill,
      CellFormulas formulas) {
    WrittenScale scale = place.header().scale();
    boolean corrected = column == ComputedColumn.CORRECTED_GRAVITY;
    String header = place.header().text(language);
    ColumnPatch patch =
        new ColumnPatch(
            place.column(),
            table.headerRow(),
            header,
            place.before().isEmpty() ? header : place.before(),
            table.firstRow(),
            table.lastRow(),
            corrected ? scale.decimals() : column.decimals(),
            new FilledCells(column, scale, language, fill, formulas));
    return new FilledColumn(table, column, scale, language, patch);
  }

  private record FilledCells(
      ComputedColumn column,
      WrittenScale scale,
      Language language,
      ComputedCells fill,
      CellFormulas formulas)
      implements ColumnPatch.Cells {
    @Override
    public double number(int row) {
      double number = fill.number(column, row);
      return scale.isPlainGravity() || Double.isNaN(number) ? number : scale.fromGravity(number);
    }

    @Override
    public String text(int row) {
      return fill.text(column, row, language);
    }

    @Override
    public String formula(int row) {
      return formulas == null || Double.isNaN(fill.number(column, row))
          ? null
          : formulas.formula(column, row);
    }
  }
}
