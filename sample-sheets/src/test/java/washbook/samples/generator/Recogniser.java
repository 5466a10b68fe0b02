package washbook.samples.generator;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.log.ComputedColumn;
import washbook.log.Doubt;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.RowAccount;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.runner.FileFormats;

/** The only place of these tests that knows how the program is asked. */
final class Recogniser {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final double MINUTES = 1440;

  private Recogniser() {}

  /** Understands and fills a sheet without any help. */
  static Seen look(Sheet sheet) {
    Grid grid = new SheetGrid(sheet);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    List<Seen.Table> tables =
        understood.tables().stream()
            .map(t -> table(understood.seen(grid), t, filling.accounts().get(t)))
            .toList();
    return new Seen(
        tables,
        understood.doubts().stream().map(Recogniser::question).toList(),
        filling.patch().columns().size(),
        understood.across().isPresent());
  }

  private static String question(Doubt doubt) {
    return doubt.cell() + ": " + doubt.question();
  }

  private static Seen.Table table(Grid grid, LogTable table, RowAccount account) {
    Set<Integer> readings = new HashSet<>();
    table.columns().stream()
        .filter(c -> c.role() == Role.GRAVITY || c.role() == Role.REFRACTOMETER)
        .forEach(c -> readings.add(c.column()));
    Map<Integer, Double> gravity = column(grid, table, ComputedColumn.CORRECTED_GRAVITY);
    Map<Integer, Seen.Figures> filled = new HashMap<>();
    column(grid, table, ComputedColumn.ABV)
        .forEach(
            (row, abv) ->
                filled.put(row, new Seen.Figures(gravity.getOrDefault(row, Double.NaN), abv)));
    return new Seen.Table(
        table.headerRow(),
        table.firstRow(),
        table.lastRow(),
        table.firstColumn(),
        table.lastColumn(),
        table.settled(),
        readings,
        filled,
        refused(grid, table),
        account);
  }

  /** One table alone with one computed column, so that it is plain whose figures they are. */
  private static Filling fill(Grid grid, LogTable table, ComputedColumn column) {
    return LogFiller.fill(
        grid,
        new Understanding(grid.name(), List.of(table), List.of(), List.of()),
        new FillOptions(EnumSet.of(column), FormulaStyle.VALUES));
  }

  private static Map<Integer, Double> column(Grid grid, LogTable table, ComputedColumn wanted) {
    Map<Integer, Double> numbers = new HashMap<>();
    fill(grid, table, wanted)
        .column(table, wanted)
        .ifPresent(
            column -> {
              for (int row = table.firstRow(); row <= table.lastRow(); row++) {
                double value = column.inGravity(row);
                if (!Double.isNaN(value)) {
                  numbers.put(row, value);
                }
              }
            });
    return numbers;
  }

  private static Map<Integer, String> refused(Grid grid, LogTable table) {
    Map<Integer, String> refused = new HashMap<>();
    fill(grid, table, ComputedColumn.ABV)
        .refusals()
        .forEach(r -> refused.put(rowOf(r.cell()), r.reason()));
    return refused;
  }

  private static int rowOf(String cell) {
    return Integer.parseInt(cell.replaceAll("[^0-9]", "")) - 1;
  }

  /** The sheet with the computed columns in it. */
  static Sheet filled(Sheet sheet) {
    return filled(sheet, FillOptions.usual());
  }

  static Sheet filled(Sheet sheet, FillOptions options) {
    Grid grid = new SheetGrid(sheet);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    Sheet filled = sheet.copy();
    for (ColumnPatch patch : LogFiller.fill(grid, understood, options).patch().columns()) {
      filled.put(patch.headerRow(), patch.column(), patch.header());
      for (int row = patch.firstRow(); row <= patch.lastRow(); row++) {
        double number = patch.cells().number(row);
        filled.put(
            row, patch.column(), Double.isNaN(number) ? patch.cells().text(row) : (Object) number);
      }
    }
    return filled;
  }

  /** The sheets of a file. */
  static List<Sheet> read(Path file) throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    for (Grid grid : FileFormats.of(file).reader().read(file)) {
      Sheet sheet = new Sheet(grid.name());
      for (int row = 0; row < grid.rowCount(); row++) {
        for (int column = 0; column < grid.columnCount(); column++) {
          Object value = value(grid, row, column);
          sheet.put(row, column, grid.isFormula(row, column) ? new Sheet.Formula(value) : value);
        }
      }
      grid.merged()
          .forEach(
              m ->
                  sheet.merge(
                      new Sheet.Merged(
                          m.firstRow(), m.firstColumn(), m.lastRow(), m.lastColumn())));
      sheets.add(sheet);
    }
    return sheets;
  }

  private static Object value(Grid grid, int row, int column) {
    return switch (grid.kind(row, column)) {
      case BLANK -> null;
      case NUMBER -> grid.number(row, column);
      case LOGICAL -> grid.number(row, column) != 0;
      case ERROR -> new Sheet.Failed();
      case TEXT -> grid.text(row, column);
      case DATE ->
          DAY_ZERO.atStartOfDay().plusMinutes(Math.round(grid.number(row, column) * MINUTES));
    };
  }

  private record SheetGrid(Sheet sheet) implements Grid {
    @Override
    public String name() {
      return sheet.name();
    }

    @Override
    public int rowCount() {
      return sheet.rows();
    }

    @Override
    public int columnCount() {
      return sheet.columns();
    }

    private Object content(int row, int column) {
      Object value = sheet.at(row, column);
      return value instanceof Sheet.Formula formula ? formula.result() : value;
    }

    @Override
    public Kind kind(int row, int column) {
      Object value = content(row, column);
      if (value == null) {
        return isFormula(row, column) ? Kind.ERROR : Kind.BLANK;
      }
      if (value instanceof Double) {
        return Kind.NUMBER;
      }
      if (value instanceof Boolean) {
        return Kind.LOGICAL;
      }
      if (value instanceof Sheet.Failed) {
        return Kind.ERROR;
      }
      return value instanceof String ? Kind.TEXT : Kind.DATE;
    }

    @Override
    public double number(int row, int column) {
      Object value = content(row, column);
      if (value instanceof Double number) {
        return number;
      }
      if (value instanceof Boolean truth) {
        return truth ? 1 : 0;
      }
      if (value instanceof LocalDate date) {
        return ChronoUnit.DAYS.between(DAY_ZERO, date);
      }
      if (value instanceof LocalDateTime time) {
        return ChronoUnit.MINUTES.between(DAY_ZERO.atStartOfDay(), time) / MINUTES;
      }
      return Double.NaN;
    }

    @Override
    public String text(int row, int column) {
      return content(row, column) instanceof String text ? text : "";
    }

    @Override
    public boolean isFormula(int row, int column) {
      return sheet.at(row, column) instanceof Sheet.Formula;
    }

    @Override
    public List<Area> merged() {
      return sheet.merged().stream()
          .map(m -> new Area(m.firstRow(), m.firstColumn(), m.lastRow(), m.lastColumn()))
          .toList();
    }
  }
}
