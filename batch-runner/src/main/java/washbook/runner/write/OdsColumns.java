package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.OdsCell;
import washbook.runner.read.OdsDrawings;

/**
 * The declared columns of one sheet. New columns get a width by which their headers can be read; a
 * column that was declared alone or with few others keeps what it has.
 */
final class OdsColumns {
  static final byte[] COLUMN = ascii("table-column");
  private static final byte[] REPEATED = ascii("table:number-columns-repeated");
  private static final byte[] STYLE = ascii("table:style-name");
  private static final byte[] VISIBILITY = ascii("table:visibility");
  private static final byte[] CELL_STYLE = ascii("table:default-cell-style-name");

  /** So many equal columns are the rest of the sheet, which nobody has given a width. */
  private static final int REST = 100;

  private record Run(int end, String style, String cellStyle, boolean hidden) {}

  private final List<Run> runs = new ArrayList<>();
  private final TreeMap<Integer, String> widthStyles = new TreeMap<>();
  private final Map<Integer, Double> widths = new TreeMap<>();
  private final Map<Integer, Double> given = new TreeMap<>();
  private int last;

  OdsColumns(List<ColumnPatch> patches, ColumnLook look, OdsStyles styles, OdsRoom room) {
    for (ColumnPatch patch : patches) {
      last = Math.max(last, patch.column());
      if (room.mayWiden(patch.column())) {
        widths.put(patch.column(), OdsStyles.millimetres(look.width(patch)));
        widthStyles.put(patch.column(), styles.width(look.width(patch)));
      }
    }
  }

  /** Takes in the column element of the current token, and divides the rest of the sheet. */
  void add(XmlSplicer splicer, boolean empty) throws IOException {
    int count = splicer.attribute(REPEATED) ? OdsCell.count(splicer) : 1;
    int start = count();
    int end = Math.min(start + count, Integer.MAX_VALUE / 2);
    String style = splicer.attribute(STYLE) ? splicer.value() : null;
    boolean hidden = splicer.attribute(VISIBILITY) && !splicer.value().equals("visible");
    String cellStyle = splicer.attribute(CELL_STYLE) ? splicer.value() : null;
    runs.add(new Run(end, style, cellStyle, hidden));
    if (empty && count >= REST && !widthStyles.subMap(start, end).isEmpty()) {
      StringBuilder others = new StringBuilder();
      splicer.rewindAttributes();
      while (splicer.nextAttribute()) {
        if (!splicer.attributeIs(REPEATED) && !splicer.attributeIs(STYLE)) {
          int from = splicer.attributeStart();
          int length = splicer.valueEnd() + 1 - from;
          others.append(' ');
          others.append(new String(splicer.bytes(), from, length, StandardCharsets.UTF_8));
        }
      }
      ByteBuilder markup = new ByteBuilder();
      declare(start, end, style, others.toString(), markup);
      splicer.replace(splicer.tokenStart(), splicer.tokenEnd(), markup.bytes(), markup.length());
    }
  }

  /** Adds elements for the columns from start to end. */
  private void declare(int start, int end, String style, String others, ByteBuilder to) {
    int at = start;
    for (Map.Entry<Integer, String> patched : widthStyles.subMap(start, end).entrySet()) {
      column(patched.getKey() - at, style, others, to);
      column(1, patched.getValue(), others, to);
      given.put(patched.getKey(), widths.get(patched.getKey()));
      at = patched.getKey() + 1;
    }
    column(end - at, style, others, to);
  }

  private static void column(int count, String style, String others, ByteBuilder to) {
    if (count == 0) {
      return;
    }
    to.raw("<table:table-column");
    if (style != null) {
      to.raw(" table:style-name=\"").text(style).raw("\"");
    }
    if (count > 1) {
      to.raw(" table:number-columns-repeated=\"").number(count).raw("\"");
    }
    byte[] rest = others.getBytes(StandardCharsets.UTF_8);
    to.raw(rest, 0, rest.length).raw("/>");
  }

  /** The widths that columns have been given so far, in millimetres. */
  Map<Integer, Double> given() {
    return given;
  }

  /**
   * Millimetres from the first column to a last one, with the widths given so far; NaN where a page
   * ends between them.
   */
  double width(int lastColumn, OdsStyles styles) {
    double width = 0;
    int at = 0;
    for (Run run : runs) {
      double each = styles.columnWidth(run.style);
      for (; at < run.end && at <= lastColumn; at++) {
        width += run.hidden ? 0 : given.getOrDefault(at, each);
      }
    }
    return width + Math.max(0, lastColumn + 1 - at) * OdsDrawings.USUAL_WIDTH;
  }

  private int count() {
    return runs.isEmpty() ? 0 : runs.get(runs.size() - 1).end;
  }

  /** The style of a column's cells that have none of their own, or null. */
  String cellStyle(int column) {
    for (Run run : runs) {
      if (column < run.end) {
        return run.cellStyle;
      }
    }
    return null;
  }

  /** Declares the columns that are missing up to the last patched one. */
  void extend(ByteBuilder to) {
    int end = last + 1;
    if (end > count()) {
      String style = runs.isEmpty() ? null : runs.get(runs.size() - 1).style;
      declare(count(), end, style, "", to);
      runs.add(new Run(end, style, null, false));
    }
  }
}
