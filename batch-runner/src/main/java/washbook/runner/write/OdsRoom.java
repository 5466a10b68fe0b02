package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.markup.Decimal;
import washbook.runner.markup.Length;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.OdsCell;
import washbook.runner.read.OdsDrawings;
import washbook.runner.read.OdsEdges;

/**
 * Where columns may become wider and rows higher, as most drawings are tied to cells: none is
 * moved, and one that ends in wider columns is tied again, so that it keeps its size.
 */
final class OdsRoom {
  private static final byte[] END = ascii("table:end-cell-address");
  private static final byte[] END_X = ascii("table:end-x");
  private static final Pattern END_CELL = Pattern.compile("(.*\\.\\$?)([A-Z]{1,3})(\\$?\\d{1,7})");

  private final OdsDrawings.OnSheet drawings;
  private final List<ColumnPatch> patches;

  OdsRoom(OdsDrawings.OnSheet drawings, List<ColumnPatch> patches) {
    this.drawings = drawings;
    this.patches = patches;
  }

  boolean isEmpty() {
    return drawings.areas().isEmpty();
  }

  /** The last one that a drawing lies over, -1 where there is none. */
  int lastColumn() {
    return drawings.areas().stream().mapToInt(area -> area.lastColumn()).max().orElse(-1);
  }

  /** Whether all that reach beyond a column begin right of it. */
  boolean isFreeAt(int last) {
    return drawings.areas().stream()
        .noneMatch(area -> area.firstColumn() <= last && area.lastColumn() > last);
  }

  /** Drawings that begin in a row with new cells are not tied again. */
  boolean mayWiden(int column) {
    return drawings.areas().stream()
        .filter(area -> area.lastColumn() >= column)
        .allMatch(area -> area.firstColumn() <= column && !isPatched(area.firstRow()));
  }

  boolean mayRaise(int row) {
    return drawings.areas().stream()
        .noneMatch(area -> area.firstRow() <= row && area.lastRow() >= row);
  }

  private boolean isPatched(int row) {
    return patches.stream().anyMatch(p -> row >= p.headerRow() && row <= p.lastRow());
  }

  /** Goes through a row without new cells, given the new widths in millimetres. */
  void keepSizes(XmlSplicer splicer, Token first, Map<Integer, Double> widths) throws IOException {
    OdsEdges after = drawings.columns().with(widths);
    int outside = splicer.depth() - 1;
    while (first == Token.START && splicer.depth() > outside) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("how.rowOpen");
      }
      boolean tag = token == Token.START || token == Token.EMPTY;
      if (tag && splicer.prefix().equals("draw:")) {
        tieAnew(splicer, after);
        OdsCell.skip(splicer, token);
      }
    }
  }

  private void tieAnew(XmlSplicer splicer, OdsEdges after) throws IOException {
    Matcher cell = END_CELL.matcher(splicer.attribute(END) ? splicer.value() : "");
    if (!cell.matches() || !splicer.attribute(END_X)) {
      return;
    }
    int column = column(cell.group(2));
    double offset = Length.millimetres(splicer.value(), 0);
    double right = drawings.columns().edge(column) + offset;
    int now = after.at(right);
    double rest = right - after.edge(now);
    if (now == column && Math.abs(rest - offset) < 0.001) {
      return;
    }
    String address = cell.group(1) + CellAddress.letters(now) + cell.group(3);
    String place = Decimal.format(Math.round(rest * 1000) / 1000.0) + "mm";
    int xStart = splicer.valueStart();
    int xEnd = splicer.valueEnd();
    splicer.attribute(END);
    int start = splicer.valueStart();
    int end = splicer.valueEnd();
    if (start < xStart) {
      splicer.replaceValue(start, end, address);
      splicer.replace(xStart, xEnd, ascii(place));
    } else {
      splicer.replace(xStart, xEnd, ascii(place));
      splicer.replaceValue(start, end, address);
    }
  }

  private static int column(String letters) {
    int column = 0;
    for (char letter : letters.toCharArray()) {
      column = 26 * column + letter - 'A' + 1;
    }
    return column - 1;
  }
}
