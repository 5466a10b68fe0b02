package washbook.runner.write;

import java.io.IOException;
import java.util.BitSet;
import java.util.List;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.extent.NewColumns;
import washbook.runner.extent.OdsExtent;
import washbook.runner.extent.OdsPages;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.OdsCell;
import washbook.runner.read.OdsReader;
import washbook.runner.sheet.CellContent;
import washbook.runner.sheet.OwnCells;
import washbook.runner.sheet.PatchRows;

/** Puts patched columns into one OpenDocument sheet while its bytes pass by. */
final class OdsSheetPatch {
  static final int COLUMNS = 16_384;
  private static final int ROWS = 1_048_576;

  private final XmlSplicer splicer;
  private final String sheetName;
  private final PatchRows rows;
  private final OdsColumns columns;
  private final OdsStyles styles;
  private final OdsRoom room;
  private final NewColumns newColumns;
  private final OdsColumns.Paper paper;
  private String tableStyle;
  private final ColumnLook look = new ColumnLook();
  private final BitSet patchedColumns = new BitSet();
  private final OdsRow old = new OdsRow();
  private final ByteBuilder single = new ByteBuilder();
  private final ByteBuilder markup = new ByteBuilder();
  private int row;
  private boolean rowsBegun;
  private boolean rowsEnded;

  /**
   * @param paper how the sheet is to be printed, as a first look found
   */
  OdsSheetPatch(
      XmlSplicer splicer,
      String sheetName,
      List<ColumnPatch> patches,
      OdsStyles styles,
      OdsRoom room,
      NewColumns newColumns,
      OdsColumns.Paper paper) {
    this.newColumns = newColumns;
    this.paper = paper;
    this.room = room;
    this.styles = styles;
    this.splicer = splicer;
    this.sheetName = sheetName;
    this.rows = new PatchRows(patches);
    this.columns = new OdsColumns(patches, look, styles, room, paper);
    room.raise(look);
    for (ColumnPatch patch : patches) {
      patchedColumns.set(patch.column());
    }
  }

  /**
   * Patches the sheet whose tag is the current token.
   *
   * @param mostRows how many row elements at most
   * @return whether that was the whole sheet
   */
  boolean apply(Token first, int mostRows) throws IOException {
    int rowsSeen = 0;
    if (rows.lastColumn() >= COLUMNS || rows.lastRow() >= ROWS) {
      throw UnusableFileException.of("write.full", UnusableFileException.quoted(sheetName));
    }
    if (first == Token.EMPTY) {
      markup.clear();
      markup.raw(">");
      columns.extend(markup);
      appendMissingRows();
      markup.raw("</table:table>");
      int end = splicer.tokenEnd();
      splicer.replace(end - 2, end, markup.bytes(), markup.length());
      return true;
    }
    tableStyle = OdsExtent.patchSheet(splicer, newColumns, paper.sheetStyle());
    int outside = splicer.depth() - 1;
    while (true) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("how.sheetOpen");
      }
      if (token == Token.END && splicer.depth() == outside) {
        beginRows();
        endRows();
        return true;
      }
      if (token != Token.START && token != Token.EMPTY) {
        continue;
      }
      int level = splicer.depth() - outside - (token == Token.START ? 2 : 1);
      if (splicer.is(OdsReader.ROW)) {
        beginRows();
        if (rowsSeen++ == mostRows) {
          return false;
        }
        patchRows(token);
      } else if (OdsReader.isRowHolder(splicer)) {
        beginRows();
      } else if (splicer.is(OdsColumns.COLUMN)) {
        columns.add(splicer, token == Token.EMPTY);
      } else if (!OdsReader.isHolder(splicer)) {
        if (level == 0 && rowsBegun) {
          endRows();
        }
        if (token == Token.START && splicer.is(OdsExtent.RULES)) {
          OdsExtent.patchRules(splicer, newColumns);
        } else {
          OdsCell.skip(splicer, token);
        }
      }
    }
  }

  /** How this sheet is to be printed and its other columns to be set, after a look at it. */
  OdsColumns.Paper paper(OdsPages pages) {
    return rows.added().isEmpty() ? OdsColumns.Paper.SAME : columns.paper(tableStyle, pages);
  }

  /** The columns that were not there before. */
  NewColumns added() {
    return new NewColumns(rows.added());
  }

  /** Declares the columns that are missing before the first row. */
  private void beginRows() throws IOException {
    if (!rowsBegun) {
      rowsBegun = true;
      markup.clear();
      columns.extend(markup);
      splicer.insert(splicer.tokenStart(), markup.bytes(), markup.length());
    }
  }

  /** Adds the rows that are missing behind the last one. */
  private void endRows() throws IOException {
    if (!rowsEnded) {
      rowsEnded = true;
      markup.clear();
      appendMissingRows();
      splicer.insert(splicer.tokenStart(), markup.bytes(), markup.length());
    }
  }

  private void appendMissingRows() throws IOException {
    old.clear();
    for (int next = rows.next(row); next < ROWS; next = rows.next(next + 1)) {
      rows.load(next);
      if (rows.lastFilled() < 0) {
        continue;
      }
      if (next > row) {
        markup.raw("<table:table-row");
        if (next > row + 1) {
          markup.raw(" table:number-rows-repeated=\"").number(next - row).raw("\"");
        }
        markup.raw("><table:table-cell/></table:table-row>");
      }
      single.clear();
      single.raw("<table:table-row>");
      appendCells(next, 0);
      markup.raw(single.bytes(), 0, single.length()).raw("</table:table-row>");
      row = next + 1;
    }
  }

  /** Patches the rows that the row element of the current token stands for. */
  private void patchRows(Token token) throws IOException {
    int first = row;
    int repeated = OdsReader.rowsRepeated(splicer);
    row = Math.min(first + repeated, Integer.MAX_VALUE / 2);
    int next = rows.next(first);
    if (repeated == 1 && room.isLoosened(first) && token == Token.START) {
      loosenRow(token, first, next < row);
      return;
    }
    if (next >= row) {
      if (room.isEmpty() || columns.given().isEmpty()) {
        OdsCell.skip(splicer, token);
      } else {
        room.keepSizes(splicer, token, columns.given());
      }
      return;
    }
    int base = readRow(token);
    byte[] bytes = splicer.bytes();
    markup.clear();
    int same = 0;
    boolean changed = false;
    int at = first;
    for (; next < row; next = rows.next(next + 1)) {
      same += next - at;
      at = next + 1;
      rows.load(next);
      if (patchRow(next, bytes, base)) {
        changed = true;
        old.copy(markup, bytes, base, same);
        same = 0;
        markup.raw(single.bytes(), 0, single.length());
      } else {
        same++;
      }
    }
    if (changed) {
      old.copy(markup, bytes, base, same + row - at);
      splicer.replace(base, base + old.end, markup.bytes(), markup.length());
    }
  }

  /** A row in which a drawing begins that ends beside higher rows, patched or not. */
  private void loosenRow(Token token, int number, boolean patched) throws IOException {
    int base = readRow(token);
    if (patched) {
      rows.load(number);
    }
    if (!patched || !patchRow(number, splicer.bytes(), base)) {
      single.clear();
      single.raw(splicer.bytes(), base, base + old.end);
    }
    splicer.replace(base, base + old.end, room.loosened(single, number));
  }

  /** Reads the row of the current token into the old one, and says where its bytes begin. */
  private int readRow(Token token) throws IOException {
    splicer.holdFrom(splicer.tokenStart());
    old.read(splicer, token, patchedColumns::get);
    int base = splicer.held();
    splicer.release();
    return base;
  }

  /** Puts the loaded row together from the old one; false when nothing is new. */
  private boolean patchRow(int number, byte[] bytes, int base) throws IOException {
    single.clear();
    old.copyTag(single, bytes, base, styles.growing(old.style, room.lines(number)));
    boolean changed = false;
    int copied = old.tagEnd;
    int next = 0;
    for (int i = 0; i < old.size(); i++) {
      OdsRow.Cell cell = old.cell(i);
      int end = cell.column + cell.repeated;
      single.raw(bytes, base + copied, base + cell.start);
      copied = cell.end;
      int from = cell.column;
      for (; next < rows.size() && rows.column(next).patch.column() < end; next++) {
        PatchRows.Column column = rows.column(next);
        CellContent content = rows.content(next);
        if (isHeld(number, column, content, cell)) {
          continue;
        }
        int place = column.patch.column();
        if (place > from) {
          OdsRow.copy(single, bytes, base, cell, place - from);
        }
        appendCell(number, column, content, cell, bytes, base);
        from = place + 1;
        changed = true;
      }
      if (from < end) {
        OdsRow.copy(single, bytes, base, cell, end - from);
      }
    }
    int length = single.length();
    appendCells(number, next);
    changed |= single.length() > length;
    if (old.empty) {
      single.raw("</table:table-row>");
    } else {
      single.raw(bytes, base + copied, base + old.end);
    }
    return changed;
  }

  /** Adds the filled cells behind the last one of the row. */
  private void appendCells(int number, int first) throws IOException {
    int at = old.columns;
    for (int i = first; i < rows.size(); i++) {
      int place = rows.column(i).patch.column();
      if (rows.content(i).isBlank()) {
        continue;
      }
      if (place > at) {
        single.raw("<table:table-cell");
        if (place > at + 1) {
          single.raw(" table:number-columns-repeated=\"").number(place - at).raw("\"");
        }
        single.raw("/>");
      }
      appendCell(number, rows.column(i), rows.content(i), null, null, 0);
      at = place + 1;
    }
  }

  /** Whether the cell holds this already; refuses to replace what is not ours. */
  private boolean isHeld(int number, PatchRows.Column column, CellContent content, OdsRow.Cell cell)
      throws UnusableFileException {
    if (column.isHeader(number)) {
      column.isOurs =
          cell.formula == null
              && (OdsCells.clean(content.text()).equals(cell.text)
                  || OdsCells.clean(column.patch.headerBefore()).equals(cell.text));
    }
    OwnCells.refuseOthers(sheetName, number, column.patch.column(), column.isOurs, cell.isBlank());
    boolean held = cell.holds(content);
    if (!held && cell.matrix) {
      throw UnusableFileException.of(
          "formula.shared", CellAddress.of(number, column.patch.column()), sheetName);
    }
    return held;
  }

  private void appendCell(
      int number,
      PatchRows.Column column,
      CellContent content,
      OdsRow.Cell cell,
      byte[] bytes,
      int base) {
    String style = style(number, column, content, cell);
    boolean covered = cell != null && cell.covered;
    String element = covered ? "table:covered-table-cell" : "table:table-cell";
    single.raw("<").raw(element);
    if (style != null) {
      single.raw(" table:style-name=\"").text(style).raw("\"");
    }
    if (cell != null) {
      for (OdsRow.Span kept : cell.keptAttributes) {
        single.raw(bytes, base + kept.start(), base + kept.end());
      }
    }
    OdsCells.attributes(single, content);
    boolean children = cell != null && !cell.keptChildren.isEmpty();
    if (content.isBlank() && !children) {
      single.raw("/>");
    } else {
      single.raw(">");
      if (children) {
        for (OdsRow.Span kept : cell.keptChildren) {
          single.raw(bytes, base + kept.start(), base + kept.end());
        }
      }
      OdsCells.paragraphs(single, content, column.patch.decimals(number));
      single.raw("</").raw(element).raw(">");
    }
  }

  /** What is there keeps its looks; what is new looks like the log to its left. */
  private String style(int number, PatchRows.Column column, CellContent content, OdsRow.Cell cell) {
    String own = cell == null ? null : cell.style;
    if (content.isBlank() || cell != null && !cell.isBlank()) {
      return own;
    }
    ColumnPatch patch = column.patch;
    String left = styleBeside(patch.column());
    if (column.isHeader(number)) {
      String base = left == null ? own : left;
      boolean wraps = patch.header().indexOf(' ') >= 0 && room.mayRaise(number);
      return wraps ? styles.wrapping(base) : base;
    }
    String base = styles.isPlain(own) ? left : own;
    if (look.isNote(patch) && room.mayRaise(number)) {
      return styles.note(base);
    }
    boolean shown = !Double.isNaN(content.number()) && patch.decimals() >= 0;
    String style = shown ? styles.number(base, patch.decimals(number)) : styles.text(base);
    return style == null ? own : style;
  }

  /** The style of the log's cell beside the patched columns, wherever it is stated; or null. */
  private String styleBeside(int patched) {
    int column = patched - 1;
    while (column >= 0 && patchedColumns.get(column)) {
      column--;
    }
    if (column < 0) {
      return null;
    }
    String style = old.styleOf(column);
    if (style == null) {
      style = old.cellStyle == null ? columns.cellStyle(column) : old.cellStyle;
    }
    return style;
  }
}
