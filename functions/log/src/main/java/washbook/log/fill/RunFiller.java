package washbook.log.fill;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.log.ComputedColumn;
import washbook.log.StillRun;
import washbook.log.WrittenScale;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;

/** Computes the wanted columns of the still runs of a sheet. */
final class RunFiller {
  private final Grid grid;
  private final ComputedColumnPlaces placement;
  private final FillOptions options;
  private final FormulaSource source;

  final List<FilledColumn> filled = new ArrayList<>();
  final List<ComputedRun> computed = new ArrayList<>();

  /**
   * @param source of formulas, null for none
   */
  RunFiller(Grid grid, ComputedColumnPlaces placement, FillOptions options, FormulaSource source) {
    this.grid = grid;
    this.placement = placement;
    this.options = options;
    this.source = source;
  }

  void fill(StillRun run) {
    if (!run.table().settled()) {
      return;
    }
    ComputedColumnPlaces.Present there = placement.present(run.table(), WrittenScale.SG, false);
    Set<ComputedColumn> columns = EnumSet.noneOf(ComputedColumn.class);
    columns.addAll(options.columns());
    columns.removeIf(c -> !c.isOfRun());
    ComputedRun.withoutEmpty(run, columns);
    boolean any = !columns.isEmpty() || options.columns().isEmpty();
    columns.addAll(there.places().keySet());
    columns.removeIf(c -> !c.isOfRun() && c != ComputedColumn.NOTE);
    ComputedRun cells = new ComputedRun(grid, run);
    if (cells.hasRefusals() && any) {
      columns.add(ComputedColumn.NOTE);
    }
    if (columns.isEmpty()) {
      return;
    }
    computed.add(cells);
    Language language =
        options
            .language()
            .or(() -> run.table().settings().writing().language())
            .orElseGet(() -> LogLanguage.ofRun(grid, run.table(), options.userLanguage()));
    Map<ComputedColumn, ComputedColumnPlaces.Place> places =
        placement.place(run.table(), columns, there, language);
    RunFormulas formulas = source == null ? null : new RunFormulas(grid, run, source, places);
    places.forEach(
        (column, place) ->
            filled.add(LogFiller.filled(run.table(), column, place, language, cells, formulas)));
  }
}
