package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.runner.archive.PartOutput;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.XlsxAnchor;
import washbook.runner.read.XlsxSizes;

/**
 * Keeps the drawings of a sheet as large as they were, and where they were, when columns become
 * wider and rows higher: most of them are tied to cells (ECMA-376-1:2016, 20.5.2.33). A drawing
 * that begins below a higher row stays with its row, one that new columns would reach with its
 * column.
 */
final class XlsxDrawings {
  private static final byte[] HEIGHT = ascii("ht");
  private static final byte[] HIDDEN = ascii("hidden");

  private final ColumnLook look = new ColumnLook();
  private final XlsxSizes before;
  private final List<XlsxAnchor> anchors;
  private final boolean keepsSizes;
  private final int lastRow;
  private XlsxSizes after;

  /** Of the row read last, in points. */
  private double height;

  /**
   * Of a sheet with these sizes; {@code keepsSizes} where something on it has a place that is not
   * known here.
   */
  XlsxDrawings(List<XlsxAnchor> anchors, XlsxSizes sizes, boolean keepsSizes) {
    this.anchors = anchors;
    this.before = sizes;
    this.after = sizes;
    this.keepsSizes = keepsSizes;
    this.lastRow =
        anchors.stream().mapToInt(anchor -> anchor.area(before).lastRow() + 1).max().orElse(-1);
  }

  /** How wide a new column can be, in characters, before a drawing right of it is reached. */
  int width(ColumnPatch column, List<ColumnPatch> all) {
    int wanted = look.width(column);
    if (!look.isNote(column)) {
      return wanted;
    }
    double room = Double.MAX_VALUE;
    for (XlsxAnchor anchor : anchors) {
      Grid.Area area = anchor.area(before);
      if (area.lastRow() >= column.headerRow()
          && area.firstRow() <= column.lastRow()
          && area.firstColumn() > column.column()) {
        room = Math.min(room, room(column, all, area.firstColumn()));
      }
    }
    return (int) Math.max(ColumnLook.WIDEST, Math.min(wanted, Math.floor(room)));
  }

  /**
   * How wide the column left of a new one has to be, in characters, for a text that ran on over the
   * new one's cells; 0 where it stays as it is, since a person has given it a width, or for the
   * sake of drawings.
   */
  int widthBefore(ColumnPatch column) {
    int left = column.column() - 1;
    boolean stays =
        left < 0
            || Math.min(column.cut() + 1, ColumnLook.NOTE) <= before.characters(left)
            || !before.isUsual(left)
            || keepsSizes
            || !anchors.isEmpty();
    return stays ? 0 : Math.min(column.cut() + 1, ColumnLook.NOTE);
  }

  /** What is left for a column when its neighbours have their widths, up to another column. */
  private double room(ColumnPatch column, List<ColumnPatch> all, int end) {
    int first = all.stream().mapToInt(ColumnPatch::column).min().orElse(column.column());
    double room = 0;
    for (int i = first; i < end; i++) {
      room += before.characters(i) + XlsxColumns.FRACTION;
    }
    for (ColumnPatch other : all) {
      if (other != column && other.column() < end) {
        room -= look.width(other) + XlsxColumns.FRACTION;
      }
    }
    return room - XlsxColumns.FRACTION;
  }

  /** How wide the sheet becomes with new columns, in points, up to this column or a drawing. */
  double printedWidth(List<ColumnPatch> columns, int lastColumn) {
    int last = last(columns, lastColumn);
    for (XlsxAnchor anchor : anchors) {
      last = Math.max(last, anchor.area(before).lastColumn());
    }
    return widthUpTo(last, columns);
  }

  /** The same up to this column or a new one, without what is drawn right of them. */
  double cellsWidth(List<ColumnPatch> columns, int lastColumn) {
    return widthUpTo(last(columns, lastColumn), columns);
  }

  /**
   * The first column behind all cells, where every drawing that reaches beyond them begins at that
   * column or right of it; -1 where one does not.
   */
  int endOfCells(List<ColumnPatch> columns, int lastColumn) {
    int last = last(columns, lastColumn);
    for (XlsxAnchor anchor : anchors) {
      Grid.Area area = anchor.area(before);
      if (area.firstColumn() <= last && area.lastColumn() > last) {
        return -1;
      }
    }
    return last + 1;
  }

  private static int last(List<ColumnPatch> columns, int lastColumn) {
    return Math.max(
        lastColumn, columns.stream().mapToInt(ColumnPatch::column).max().orElse(lastColumn));
  }

  private double widthUpTo(int last, List<ColumnPatch> columns) {
    XlsxSizes wider = before.copy();
    for (ColumnPatch column : columns) {
      double width = width(column, columns) + XlsxColumns.FRACTION;
      boolean stays = keepsSizes || before.isOwn(column.column());
      if (!stays && width > before.characters(column.column())) {
        wider.setColumn(column.column(), width);
      }
      int beside = widthBefore(column);
      if (beside > 0) {
        wider.setColumn(column.column() - 1, beside + XlsxColumns.FRACTION);
      }
    }
    return IntStream.rangeClosed(0, last).mapToLong(wider::column).sum()
        / (double) XlsxSizes.PER_POINT;
  }

  ColumnLook look() {
    return look;
  }

  boolean isNote(ColumnPatch column) {
    return look.isNote(column);
  }

  boolean keepsSizes() {
    return keepsSizes;
  }

  XlsxSizes before() {
    return before;
  }

  XlsxSizes after() {
    return after;
  }

  /** The widths are settled; heights follow row by row. */
  void startRows(XlsxColumns columns) {
    after = before.copy();
    columns.setIn(after);
  }

  boolean isAtOrAbove(int row) {
    return row <= lastRow;
  }

  /** Takes in the height of the row whose tag is the current token. */
  void readRow(XmlScanner tag, int row) throws IOException {
    height = XlsxSizes.number(tag, HEIGHT);
    boolean hidden =
        tag.attribute(HIDDEN) && (tag.value().equals("1") || tag.value().equals("true"));
    height = hidden ? 0 : height < 0 ? before.usualRow() : height;
    if (isAtOrAbove(row) && height != before.usualRow()) {
      before.setRow(row, height);
      after.setRow(row, height);
    }
  }

  /** Of the row read last, in points; a hidden row needs no more. */
  double height() {
    return height == 0 ? Double.MAX_VALUE : height;
  }

  void setHeight(int row, double points) {
    if (isAtOrAbove(row)) {
      after.setRow(row, points);
    }
  }

  boolean isChanged() {
    return !after.isSameAs(before);
  }

  /** Writes the part with the drawings again. */
  void patch(InputStream old, String name, PartOutput to, List<ColumnPatch> columns)
      throws IOException {
    XmlSplicer splicer = new XmlSplicer(old, name, to);
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      if (XlsxAnchor.isAnchor(splicer, token)) {
        splicer.holdFrom(splicer.tokenStart());
        XlsxAnchor anchor =
            XlsxAnchor.read(splicer, scanner -> scanner.tokenStart() - splicer.held());
        int base = splicer.held();
        splicer.release();
        if (anchor.hasFrom()) {
          new Moved(anchor, columns).replace(splicer, base);
        }
      }
    }
    splicer.finish();
  }

  /** One anchor in the new sizes. */
  private final class Moved {
    private final XlsxAnchor anchor;
    private final long[] numbers = new long[8];

    Moved(XlsxAnchor anchor, List<ColumnPatch> columns) {
      this.anchor = anchor;
      for (int i = 0; i < numbers.length; i++) {
        numbers[i] = anchor.number(i);
      }
      long left = place(0, before::column);
      long from = isReached(columns) ? place(0, after::column) : left;
      long top = place(2, after::row);
      long right = from + place(4, before::column) - left;
      long bottom = top + place(6, before::row) - place(2, before::row);
      put(0, from, after::column);
      if (anchor.hasTo()) {
        put(4, right, after::column);
        put(6, bottom, after::row);
      }
    }

    /** Whether new columns beside it would run under the drawing if that stayed. */
    private boolean isReached(List<ColumnPatch> columns) {
      Grid.Area area = anchor.area(before);
      long left = place(0, before::column);
      for (ColumnPatch column : columns) {
        boolean beside =
            area.lastRow() >= column.headerRow()
                && area.firstRow() <= column.lastRow()
                && area.firstColumn() > column.column();
        if (beside && edge(column.column() + 1, after::column) > left) {
          return true;
        }
      }
      return false;
    }

    /** Distance from the sheet's edge to a corner; offsets reach no further than their cell. */
    private long place(int index, IntToLongFunction size) {
      int cell = (int) Math.min(1 << 20, anchor.number(index));
      return edge(cell, size) + Math.min(anchor.number(index + 1), size.applyAsLong(cell));
    }

    private static long edge(int cell, IntToLongFunction size) {
      long edge = 0;
      for (int i = 0; i < cell; i++) {
        edge += size.applyAsLong(i);
      }
      return edge;
    }

    private void put(int index, long place, IntToLongFunction size) {
      if (place(index, size) == place) {
        return;
      }
      int cell = 0;
      long rest = place;
      while (cell < 1 << 20 && rest > size.applyAsLong(cell)) {
        rest -= size.applyAsLong(cell++);
      }
      numbers[index] = cell;
      numbers[index + 1] = Math.max(0, rest);
    }

    void replace(XmlSplicer splicer, int base) throws IOException {
      for (int i = 0; i < numbers.length; i++) {
        if (anchor.isStated(i) && numbers[i] != anchor.number(i)) {
          byte[] digits = ascii(Long.toString(numbers[i]));
          splicer.replace(base + anchor.start(i), base + anchor.end(i), digits);
        }
      }
    }
  }
}
