package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.extent.NewColumns;
import washbook.runner.extent.PageFit;
import washbook.runner.extent.XlsxPage;
import washbook.runner.extent.XlsxSheetEnd;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.sheet.CellContent;
import washbook.runner.sheet.CellReference;
import washbook.runner.sheet.OwnCells;
import washbook.runner.sheet.PatchRows;

/** Puts patched columns into one sheet part while its bytes pass by. */
final class XlsxSheetPatch {
  private static final byte[] DIMENSION = ascii("dimension");
  private static final byte[] COLS = ascii("cols");
  private static final byte[] SHEET_DATA = ascii("sheetData");
  private static final byte[] ROW = ascii("row");
  private static final byte[] REF = ascii("ref");
  private static final byte[] R = ascii("r");
  private static final byte[] S = ascii("s");
  private static final byte[] CUSTOM_FORMAT = ascii("customFormat");

  private static final Set<String> NO = Set.of("0", "false");

  private final XmlSplicer splicer;
  private final String sheetName;
  private final PatchRows rows;
  private final XlsxColumns columns;
  private final XlsxStyles styles;
  private final XlsxOldCell old;
  private final XlsxDrawings drawings;
  private final XlsxPage page;
  private final ByteBuilder markup = new ByteBuilder();
  private String prefix = "";
  private int row = -1;
  private int rowStyle;
  private boolean formulaGone;

  /** Column and cell format of the cell that the current row had last. */
  private int lastColumn;

  private int lastStyle;

  XlsxSheetPatch(
      XmlSplicer splicer,
      String sheetName,
      List<ColumnPatch> patches,
      XlsxStyles styles,
      XlsxOldCell.SharedStrings sharedStrings,
      XlsxDrawings drawings,
      PageFit fit) {
    this.page = new XlsxPage(fit);
    this.drawings = drawings;
    this.splicer = splicer;
    this.sheetName = sheetName;
    this.rows = new PatchRows(patches);
    this.columns = new XlsxColumns(patches, drawings);
    this.styles = styles;
    this.old = new XlsxOldCell(sharedStrings);
  }

  void apply() throws IOException {
    if (rows.lastColumn() >= CellReference.COLUMNS || rows.lastRow() >= CellReference.ROWS) {
      throw UnusableFileException.of("write.full", UnusableFileException.quoted(sheetName));
    }
    boolean colsSeen = false;
    while (true) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("how.noCells");
      }
      boolean child =
          token == Token.START && splicer.depth() == 2
              || token == Token.EMPTY && splicer.depth() == 1;
      if (!child) {
        continue;
      }
      page.before(splicer, token);
      if (splicer.is(DIMENSION)) {
        widenDimension();
      } else if (splicer.is(COLS)) {
        colsSeen = true;
        if (token == Token.START) {
          columns.patch(splicer);
        }
      } else if (splicer.is(SHEET_DATA)) {
        if (!colsSeen) {
          columns.insertAll(splicer);
        }
        prefix = splicer.prefix();
        drawings.startRows(columns);
        patchTable(token == Token.EMPTY);
        XlsxSheetEnd.patch(splicer, added(), page);
        return;
      }
    }
  }

  /** The columns that were not there before. */
  NewColumns added() {
    return new NewColumns(rows.added());
  }

  /** Whether a cell that computed something does so no longer. */
  boolean isFormulaGone() {
    return formulaGone;
  }

  private void widenDimension() throws IOException {
    if (!splicer.attribute(REF)) {
      return;
    }
    String[] ends = splicer.value().split(":", 2);
    byte[] first = ascii(ends[0]);
    byte[] last = ascii(ends[ends.length - 1]);
    long from = CellReference.parse(first, 0, first.length);
    long to = CellReference.parse(last, 0, last.length);
    if (from < 0 || to < 0) {
      return;
    }
    int top = Math.min(CellReference.row(from), rows.firstRow());
    int left = Math.min(CellReference.column(from), rows.firstColumn());
    int bottom = Math.max(CellReference.row(to), rows.lastRow());
    int right = Math.max(CellReference.column(to), rows.lastColumn());
    String wider = CellAddress.of(top, left) + ":" + CellAddress.of(bottom, right);
    boolean same =
        CellReference.row(from) == top
            && CellReference.column(from) == left
            && CellReference.row(to) == bottom
            && CellReference.column(to) == right;
    if (!same) {
      splicer.replace(splicer.valueStart(), splicer.valueEnd(), ascii(wider));
    }
  }

  private void patchTable(boolean empty) throws IOException {
    if (empty) {
      markup.clear();
      appendRowsBefore(Integer.MAX_VALUE);
      if (markup.length() > 0) {
        ByteBuilder whole = new ByteBuilder();
        String name = prefix + "sheetData>";
        whole.raw("<").raw(name).raw(markup.bytes(), 0, markup.length()).raw("</").raw(name);
        splicer.replace(splicer.tokenStart(), splicer.tokenEnd(), whole.bytes(), whole.length());
      }
      return;
    }
    while (true) {
      Token token = splicer.next();
      if (token == Token.END && splicer.depth() == 1) {
        insertRowsBefore(Integer.MAX_VALUE);
        return;
      }
      boolean start = token == Token.START && splicer.depth() == 3;
      if ((start || token == Token.EMPTY && splicer.depth() == 2) && splicer.is(ROW)) {
        int number = row + 1;
        if (splicer.attribute(R)) {
          number =
              CellReference.number(splicer.bytes(), splicer.valueStart(), splicer.valueEnd()) - 1;
        }
        if (number <= row || number >= CellReference.ROWS) {
          throw splicer.damaged("how.rowsOrder");
        }
        insertRowsBefore(number);
        boolean patched = rows.next(number) == number;
        row = number;
        if (patched || drawings.isAtOrAbove(row)) {
          drawings.readRow(splicer, row);
        }
        if (patched) {
          patchRow(token == Token.EMPTY);
        }
      }
    }
  }

  private void insertRowsBefore(int number) throws IOException {
    markup.clear();
    appendRowsBefore(number);
    splicer.insert(splicer.tokenStart(), markup.bytes(), markup.length());
  }

  private void appendRowsBefore(int number) throws IOException {
    for (int missing = rows.next(row + 1); missing < number; missing = rows.next(missing + 1)) {
      rows.load(missing);
      startRow(missing, 0);
      if (rows.lastFilled() >= 0) {
        markup.raw("<").raw(prefix).raw("row r=\"").number(missing + 1).raw("\"");
        markup.raw(new XlsxRowTag(splicer, rows, drawings).ofNewRow(missing)).raw(">");
        appendCells(0, rows.size());
        markup.raw("</").raw(prefix).raw("row>");
      }
      row = missing;
    }
  }

  private void startRow(int number, int style) {
    row = number;
    rowStyle = style;
    lastColumn = -2;
    lastStyle = 0;
  }

  private void patchRow(boolean empty) throws IOException {
    rows.load(row);
    boolean hasFormat = splicer.attribute(CUSTOM_FORMAT) && !NO.contains(splicer.value());
    startRow(
        row,
        hasFormat && splicer.attribute(S)
            ? Math.max(
                0, CellReference.number(splicer.bytes(), splicer.valueStart(), splicer.valueEnd()))
            : 0);
    new XlsxRowTag(splicer, rows, drawings).change(row);
    if (!empty) {
      patchCells();
    } else if (rows.lastFilled() >= 0) {
      markup.clear();
      markup.raw(">");
      appendCells(0, rows.size());
      markup.raw("</").raw(prefix).raw("row>");
      int slash = splicer.tokenEnd() - 2;
      splicer.replace(slash, splicer.tokenEnd(), markup.bytes(), markup.length());
    }
  }

  private void patchCells() throws IOException {
    int next = 0;
    int column = -1;
    while (true) {
      Token token = splicer.next();
      if (token == Token.END && splicer.depth() == 2) {
        insertCells(next, rows.size());
        return;
      }
      boolean tag =
          token == Token.START && splicer.depth() == 4
              || token == Token.EMPTY && splicer.depth() == 3;
      if (!tag) {
        continue;
      }
      if (!splicer.is('c')) {
        insertCells(next, rows.size());
        next = rows.size();
        continue;
      }
      int place = place(column);
      if (place <= column) {
        throw splicer.damaged("how.cellsOrder", row + 1);
      }
      column = place;
      int first = next;
      while (next < rows.size() && rows.column(next).patch.column() < column) {
        next++;
      }
      insertCells(first, next);
      if (next < rows.size() && rows.column(next).patch.column() == column) {
        patchCell(token == Token.EMPTY, next);
        next++;
      } else {
        lastColumn = column;
        lastStyle = splicer.attribute(S) ? styleValue() : 0;
      }
    }
  }

  private int styleValue() {
    return Math.max(
        0, CellReference.number(splicer.bytes(), splicer.valueStart(), splicer.valueEnd()));
  }

  private int place(int before) throws IOException {
    if (!splicer.attribute(R)) {
      return before + 1;
    }
    long reference = CellReference.parse(splicer.bytes(), splicer.valueStart(), splicer.valueEnd());
    if (reference < 0 || CellReference.row(reference) != row) {
      throw splicer.damaged("how.otherAddress", row + 1);
    }
    return CellReference.column(reference);
  }

  private void insertCells(int first, int end) throws IOException {
    if (first < end) {
      markup.clear();
      appendCells(first, end);
      splicer.insert(splicer.tokenStart(), markup.bytes(), markup.length());
    }
  }

  private void appendCells(int first, int end) throws IOException {
    for (int i = first; i < end; i++) {
      if (!rows.content(i).isBlank()) {
        appendCell(i, newStyle(rows.column(i)));
      }
    }
  }

  private void appendCell(int index, int style) throws IOException {
    PatchRows.Column column = rows.column(index);
    XlsxCells.write(markup, prefix, column.letters, row, style, rows.content(index));
    lastColumn = column.patch.column();
    lastStyle = style;
  }

  /** A cell looks like the one to its left, else like its row or column has it. */
  private int newStyle(PatchRows.Column column) {
    boolean beside = lastColumn == column.patch.column() - 1;
    if (column.isHeader(row)) {
      return styles.wrapping(beside ? lastStyle : 0);
    }
    int base = rowStyle > 0 ? rowStyle : columns.style(column.patch.column());
    int style =
        beside && !styles.isPlain(lastStyle)
            ? styles.lookOf(lastStyle, column.patch.decimals(row))
            : styles.withDecimals(base, column.patch.decimals(row));
    return drawings.isNote(column.patch) ? styles.wrapping(style) : style;
  }

  private void patchCell(boolean empty, int index) throws IOException {
    splicer.holdFrom(splicer.tokenStart());
    splicer.rewindAttributes();
    old.read(splicer, empty);
    int start = splicer.held();
    splicer.release();
    PatchRows.Column column = rows.column(index);
    CellContent content = rows.content(index);
    refuseOthers(column, content);
    if (old.holds(content)) {
      lastColumn = column.patch.column();
      lastStyle = old.style();
      return;
    }
    formulaGone |= old.isFormula() && content.formula() == null;
    markup.clear();
    if (!content.isBlank() || old.style() > 0) {
      appendCell(index, style(column));
    }
    splicer.replace(start, splicer.tokenEnd(), markup.bytes(), markup.length());
  }

  private int style(PatchRows.Column column) {
    if (column.isHeader(row)) {
      return old.style() > 0 ? old.style() : newStyle(column);
    }
    return old.style() > 0
        ? styles.withDecimals(old.style(), column.patch.decimals(row))
        : newStyle(column);
  }

  private void refuseOthers(PatchRows.Column column, CellContent content) throws IOException {
    String address = column.letters + (row + 1);
    if (column.isHeader(row)) {
      column.isOurs = !old.isFormula() && column.patch.isOurs(old.text());
    }
    OwnCells.refuseOthers(sheetName, row, column.patch.column(), column.isOurs, old.isBlank());
    String kind = old.formulaKind();
    boolean reachesOut =
        kind.equals("array")
            || kind.equals("dataTable")
            || kind.equals("shared") && !old.formulaArea().isEmpty() && !isWithin(column.patch);
    if (reachesOut && !old.holds(content)) {
      throw UnusableFileException.of("formula.shared", address, sheetName);
    }
  }

  private boolean isWithin(ColumnPatch patch) {
    String[] ends = old.formulaArea().split(":", 2);
    byte[] first = ascii(ends[0]);
    byte[] last = ascii(ends[ends.length - 1]);
    long from = CellReference.parse(first, 0, first.length);
    long to = CellReference.parse(last, 0, last.length);
    return from >= 0
        && to >= 0
        && CellReference.column(from) == patch.column()
        && CellReference.column(to) == patch.column()
        && CellReference.row(from) >= patch.firstRow()
        && CellReference.row(to) <= patch.lastRow();
  }
}
