package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.extent.OdsPages;
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

  /** Millimetres by which a width may differ that an office has rounded. */
  private static final double SAME_WIDTH = 0.05;

  /**
   * What a first look at a sheet found.
   *
   * @param sheetStyle the sheet's, for other pages, or null
   * @param columnStyles those of columns beside the new ones
   * @param columnWidths of those that get another, in millimetres
   * @param note how many letters wide sentences are
   */
  record Paper(
      String sheetStyle,
      Map<Integer, String> columnStyles,
      Map<Integer, Double> columnWidths,
      int note) {
    static final Paper SAME = new Paper(null, Map.of(), Map.of(), ColumnLook.NOTE);
  }

  private record Run(int end, String style, String cellStyle, boolean hidden) {}

  private final List<Run> runs = new ArrayList<>();
  private final TreeMap<Integer, String> widthStyles = new TreeMap<>();
  private final Map<Integer, Double> widths = new TreeMap<>();
  private final Map<Integer, Double> given = new TreeMap<>();
  private final List<ColumnPatch> patches;
  private final ColumnLook look;
  private final OdsStyles styles;
  private final OdsRoom room;
  private final Paper paper;
  private int last;

  OdsColumns(
      List<ColumnPatch> patches, ColumnLook look, OdsStyles styles, OdsRoom room, Paper paper) {
    this.patches = patches;
    this.look = look;
    this.styles = styles;
    this.room = room;
    this.paper = paper;
    look.setNote(paper.note);
    for (int other : paper.columnStyles.keySet()) {
      last = Math.max(last, other);
    }
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
    TreeMap<Integer, String> changed = new TreeMap<>(paper.columnStyles);
    if (count >= REST) {
      changed.putAll(widthStyles);
    }
    if (empty && !changed.subMap(start, end).isEmpty()) {
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
      declare(start, end, style, others.toString(), changed, markup);
      splicer.replace(splicer.tokenStart(), splicer.tokenEnd(), markup.bytes(), markup.length());
    }
  }

  /** Adds elements for the columns from start to end. */
  private void declare(
      int start,
      int end,
      String style,
      String others,
      TreeMap<Integer, String> changed,
      ByteBuilder to) {
    int at = start;
    for (Map.Entry<Integer, String> one : changed.subMap(start, end).entrySet()) {
      int column = one.getKey();
      column(column - at, style, others, to);
      column(1, one.getValue(), others, to);
      Double width = paper.columnWidths.getOrDefault(column, widths.get(column));
      if (width != null) {
        given.put(column, width);
      }
      at = column + 1;
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
  private double width(int lastColumn) {
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

  /**
   * How the sheet is to be printed, of a style that may be null, once all its columns have been
   * seen; where cells fit on a page, what is drawn right of them begins the next.
   */
  Paper paper(String tableStyle, OdsPages pages) {
    Map<Integer, String> columnStyles = new TreeMap<>();
    Map<Integer, Double> columnWidths = new TreeMap<>();
    for (ColumnPatch patch : patches) {
      int letters = lettersBefore(patch);
      if (letters > 0) {
        columnStyles.put(patch.column() - 1, styles.width(letters));
        columnWidths.put(patch.column() - 1, OdsStyles.millimetres(letters));
      }
    }
    given.putAll(columnWidths);
    String page = styles.pageOf(tableStyle);
    int end = patches.stream().mapToInt(ColumnPatch::column).max().orElse(-1) + 1;
    int last = Math.max(end - 1, room.lastColumn());
    if (Double.isNaN(width(last))) {
      // A person has said where a page ends.
      return new Paper(null, columnStyles, columnWidths, ColumnLook.NOTE);
    }
    look.fitNotes(
        () -> {
          noteWidths();
          return pages.sides(page, width(last));
        });
    noteWidths();
    double whole = width(last);
    String other = null;
    if (room.isFreeAt(end - 1) && room.lastColumn() >= end) {
      other = pages.apart(page, whole, width(end - 1));
    }
    if (other != null) {
      columnStyles.put(end, styles.beginningPage(style(end)));
    } else {
      other = pages.fitting(page, whole);
    }
    String sheetStyle = other == null ? null : styles.onPage(tableStyle, other);
    return new Paper(sheetStyle, columnStyles, columnWidths, look.note());
  }

  /** Columns of sentences among those that have been given a width get the one of now. */
  private void noteWidths() {
    for (ColumnPatch patch : patches) {
      if (look.isNote(patch)) {
        given.computeIfPresent(
            patch.column(), (column, width) -> OdsStyles.millimetres(look.width(patch)));
      }
    }
  }

  /**
   * For how many letters the column left of a new one has to have room, where a text ran on over
   * the new one's cells; 0 where it stays as it is, since a person has given it a width, or for the
   * sake of drawings.
   */
  private int lettersBefore(ColumnPatch patch) {
    int left = patch.column() - 1;
    int wanted = (int) Math.ceil((patch.cut() + 1) / ColumnLook.LETTERS) + 1;
    boolean stays =
        patch.cut() == 0
            || left < 0
            || patches.stream().anyMatch(other -> other.column() == left)
            || !room.isEmpty()
            || !isUsual(left)
            || OdsStyles.millimetres(wanted) <= styles.columnWidth(style(left));
    return stays ? 0 : Math.min(wanted, ColumnLook.NOTE);
  }

  /** Whether nobody has made a column wider or narrower, nor hidden it. */
  private boolean isUsual(int column) {
    double width = styles.columnWidth(style(column));
    boolean usual = Math.abs(width - OdsDrawings.USUAL_WIDTH) < SAME_WIDTH;
    int start = 0;
    for (Run run : runs) {
      if (run.end - start >= REST) {
        usual |= Math.abs(width - styles.columnWidth(run.style)) < SAME_WIDTH;
      }
      if (column >= start && column < run.end && run.hidden) {
        return false;
      }
      start = run.end;
    }
    return usual;
  }

  /** The style of a column, in its absence that of the last one; or null. */
  private String style(int column) {
    String style = null;
    for (Run run : runs) {
      style = run.style;
      if (column < run.end) {
        break;
      }
    }
    return style;
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
      TreeMap<Integer, String> changed = new TreeMap<>(paper.columnStyles);
      changed.putAll(widthStyles);
      declare(count(), end, style, "", changed, to);
      runs.add(new Run(end, style, null, false));
    }
  }
}
