package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.XmlScanner;
import washbook.runner.read.OdsCell;
import washbook.runner.read.UnusableFileException;

/** The declared columns of one sheet. */
final class OdsColumns {
  static final byte[] COLUMN = ascii("table-column");
  private static final byte[] REPEATED = ascii("table:number-columns-repeated");
  private static final byte[] STYLE = ascii("table:style-name");
  private static final byte[] CELL_STYLE = ascii("table:default-cell-style-name");

  private record Run(int end, String style, String cellStyle) {}

  private final List<Run> runs = new ArrayList<>();

  /** Takes in the column element of the present token. */
  void add(XmlScanner scanner) throws UnusableFileException {
    int count = scanner.attribute(REPEATED) ? OdsCell.count(scanner) : 1;
    int end = Math.min(count() + count, Integer.MAX_VALUE / 2);
    String style = scanner.attribute(STYLE) ? scanner.value() : null;
    runs.add(new Run(end, style, scanner.attribute(CELL_STYLE) ? scanner.value() : null));
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

  /** The style that a cell must state to look like one that leaves its style to another column. */
  String cellStyleUnlike(int column, int other) {
    String style = cellStyle(column);
    return Objects.equals(style, cellStyle(other)) ? null : style;
  }

  /** Declares columns up to this one, as wide as the last that was declared. */
  void extend(int lastColumn, ByteBuilder to) {
    int more = lastColumn + 1 - count();
    if (more <= 0) {
      return;
    }
    String style = runs.isEmpty() ? null : runs.get(runs.size() - 1).style;
    to.raw("<table:table-column");
    if (style != null) {
      to.raw(" table:style-name=\"").text(style).raw("\"");
    }
    if (more > 1) {
      to.raw(" table:number-columns-repeated=\"").number(more).raw("\"");
    }
    to.raw("/>");
    runs.add(new Run(lastColumn + 1, style, null));
  }
}
