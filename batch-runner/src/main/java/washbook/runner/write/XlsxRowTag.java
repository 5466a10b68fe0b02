package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.markup.Decimal;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.sheet.CellReference;
import washbook.runner.sheet.PatchRows;

/** Changes the tag of a row that gets cells (ECMA-376-1:2016, 18.3.1.73 row). */
final class XlsxRowTag {
  private static final byte[] SPANS = ascii("spans");
  private static final byte[] HEIGHT = ascii("ht");

  private final XmlSplicer splicer;
  private final PatchRows rows;
  private final XlsxDrawings drawings;

  XlsxRowTag(XmlSplicer splicer, PatchRows rows, XlsxDrawings drawings) {
    this.splicer = splicer;
    this.rows = rows;
    this.drawings = drawings;
  }

  /** Widens the hint of used columns and makes room for what wraps. */
  void change(int row) throws IOException {
    TreeMap<Integer, Edit> edits = new TreeMap<>();
    double height = neededHeight(row);
    if (height > drawings.height()) {
      String text = Decimal.format(height);
      if (splicer.attribute(HEIGHT)) {
        edits.put(splicer.valueStart(), new Edit(splicer.valueEnd(), text));
      } else {
        int end = splicer.tokenEnd() - (splicer.bytes()[splicer.tokenEnd() - 2] == '/' ? 2 : 1);
        edits.put(end, new Edit(end, " ht=\"" + text + "\""));
      }
      drawings.setHeight(row, height);
    }
    int last = rows.lastFilled() + 1;
    if (last > 0 && splicer.attribute(SPANS)) {
      byte[] bytes = splicer.bytes();
      int colon = splicer.valueStart();
      while (colon < splicer.valueEnd() && bytes[colon] != ':') {
        colon++;
      }
      int first = CellReference.number(bytes, splicer.valueStart(), colon);
      int end = CellReference.number(bytes, colon + 1, splicer.valueEnd());
      if (first >= 0 && end >= 0 && end < last) {
        edits.put(colon + 1, new Edit(splicer.valueEnd(), Integer.toString(last)));
      }
    }
    for (Map.Entry<Integer, Edit> edit : edits.entrySet()) {
      splicer.replace(edit.getKey(), edit.getValue().end(), ascii(edit.getValue().text()));
    }
  }

  /** The height that a row which is not there yet needs, as an attribute; "" for the usual one. */
  String ofNewRow(int row) {
    double height = neededHeight(row);
    return height > drawings.before().usualRow() ? " ht=\"" + Decimal.format(height) + "\"" : "";
  }

  /** In points, by the headers and notes of the loaded row; 0 where nothing wraps. */
  private double neededHeight(int row) {
    int lines = 0;
    for (int i = 0; i < rows.size(); i++) {
      ColumnPatch patch = rows.column(i).patch;
      String text = rows.content(i).text();
      boolean isHeader = rows.column(i).isHeader(row);
      if (text != null && (isHeader || drawings.isNote(patch))) {
        double width =
            drawings.after().characters(patch.column()) * (isHeader ? 1 : ColumnLook.LETTERS);
        lines = Math.max(lines, ColumnLook.lines(text, width));
      }
    }
    return lines > 1 && !drawings.keepsSizes() ? lines * drawings.before().usualRow() : 0;
  }

  private record Edit(int end, String text) {}
}
