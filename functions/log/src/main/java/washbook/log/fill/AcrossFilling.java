package washbook.log.fill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import washbook.log.LogTable;
import washbook.log.RowAccount;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.AcrossGrid;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;

/**
 * Turns what was computed for a log that runs across back into the directions of its sheet: a row
 * for each computed column, below everything in the sheet, under a heading row that numbers the
 * readings.
 */
final class AcrossFilling {
  /** For the width alone: each row has its own digits. */
  private static final int DIGITS = 4;

  private final Grid sheet;
  private final AcrossGrid turned;
  private final List<ColumnPatch> computed;
  private final Language language;
  private final int headingRow;

  private AcrossFilling(
      Grid sheet, AcrossGrid turned, List<ColumnPatch> computed, Language language) {
    this.sheet = sheet;
    this.turned = turned;
    this.computed = computed;
    this.language = language;
    this.headingRow = turned.headingRow();
  }

  /**
   * @param computed in the directions of the turned sheet
   */
  static Filling of(Grid sheet, AcrossGrid turned, Filling computed) {
    List<ColumnPatch> columns =
        computed.columns().isEmpty()
            ? List.of()
            : new AcrossFilling(
                    sheet, turned, computed.patch().columns(), computed.columns().get(0).language())
                .columns();
    return new Filling(
        new SheetPatch(computed.patch().sheet(), columns),
        computed.columns(),
        computed.tables(),
        computed.refusals(),
        accounts(turned, computed.accounts()));
  }

  /** What became of the rows of the turned log, which are columns of the sheet. */
  private static Map<LogTable, RowAccount> accounts(
      AcrossGrid turned, Map<LogTable, RowAccount> accounts) {
    Map<LogTable, RowAccount> told = new LinkedHashMap<>();
    accounts.forEach(
        (table, account) ->
            told.put(table, account.shownBy(row -> CellAddress.letters(turned.sheetColumn(row)))));
    return told;
  }

  private List<ColumnPatch> columns() {
    TreeSet<Integer> rows = new TreeSet<>();
    rows.add(turned.headerRow());
    for (ColumnPatch column : computed) {
      for (int row = column.firstRow(); row <= column.lastRow(); row++) {
        rows.add(row);
      }
    }
    for (int column = turned.sheetColumn(rows.last()) + 1; column < sheet.columnCount(); column++) {
      // Figures of a reading that is there no more.
      if (sheet.kind(headingRow, column) != Grid.Kind.BLANK && isNumber(there(column))) {
        rows.add(column - turned.sheetColumn(0));
      }
    }
    List<ColumnPatch> columns = new ArrayList<>();
    for (int row : rows) {
      int at = turned.sheetColumn(row);
      String header =
          row == turned.headerRow()
              ? Message.of("header.across").in(language)
              : String.valueOf(row - turned.headerRow());
      String there = isNumber(there(at)) || row == turned.headerRow() ? there(at) : "";
      columns.add(
          new ColumnPatch(
              at,
              headingRow,
              header,
              there.isEmpty() ? header : there,
              headingRow + 1,
              lastRow(),
              DIGITS,
              new TurnedCells(row)));
    }
    return columns;
  }

  private static boolean isNumber(String text) {
    return text.matches("[1-9]\\d{0,3}");
  }

  /** What the heading row says now: a text file's numbers are read as such. */
  private String there(int column) {
    return sheet.kind(headingRow, column) == Grid.Kind.NUMBER
        ? String.valueOf((long) sheet.number(headingRow, column))
        : sheet.text(headingRow, column).strip();
  }

  private int lastRow() {
    return computed.stream().mapToInt(c -> turned.sheetRow(c.column())).max().orElseThrow();
  }

  /** The cells of one column of the sheet, by its rows. */
  private final class TurnedCells implements ColumnPatch.Cells {
    private final int turnedRow;

    TurnedCells(int turnedRow) {
      this.turnedRow = turnedRow;
    }

    /** What was computed for a row of the sheet; null where it is none of ours. */
    private ColumnPatch of(int row) {
      return computed.stream()
          .filter(c -> turned.sheetRow(c.column()) == row)
          .filter(c -> isLabel() || turnedRow >= c.firstRow() && turnedRow <= c.lastRow())
          .findFirst()
          .orElse(null);
    }

    @Override
    public boolean owns(int row) {
      return computed.stream().anyMatch(c -> turned.sheetRow(c.column()) == row);
    }

    private boolean isLabel() {
      return turnedRow == turned.headerRow();
    }

    @Override
    public double number(int row) {
      ColumnPatch column = of(row);
      return column == null || isLabel() ? Double.NaN : column.cells().number(turnedRow);
    }

    @Override
    public String text(int row) {
      ColumnPatch column = of(row);
      return column == null ? null : isLabel() ? column.header() : column.cells().text(turnedRow);
    }

    @Override
    public boolean nameRows() {
      return isLabel();
    }

    @Override
    public int decimals(int row, int usual) {
      ColumnPatch column = of(row);
      return column == null ? usual : column.decimals();
    }
  }
}
