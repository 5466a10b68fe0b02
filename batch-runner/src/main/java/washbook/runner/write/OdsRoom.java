package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.Decimal;
import washbook.runner.markup.Length;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.OdsCell;
import washbook.runner.read.OdsDrawings;
import washbook.runner.read.OdsEdges;

/**
 * Where columns may become wider and rows higher, as most drawings are tied to cells: none is
 * moved, one that ends in wider columns is tied again, and the end of one beside higher rows is
 * tied no longer, so that each keeps its size: it states one of its own.
 */
final class OdsRoom {
  private static final byte[] END = ascii("table:end-cell-address");
  private static final byte[] END_X = ascii("table:end-x");
  private static final Pattern END_CELL = Pattern.compile("(.*\\.\\$?)([A-Z]{1,3})(\\$?\\d{1,7})");

  private static final Pattern DRAWING = Pattern.compile("<draw:[\\w-]+\\s[^>]*>");
  private static final Pattern TIES =
      Pattern.compile("\\stable:end-(cell-address|x|y)\\s*=\\s*(\"[^\"]*\"|'[^']*')");
  private static final Pattern END_TIE =
      Pattern.compile("\\stable:end-cell-address\\s*=\\s*[\"']([^\"']*)[\"']");

  /** In a column that nobody has given a width. */
  private static final int USUAL_LETTERS = 9;

  private final OdsDrawings.OnSheet drawings;
  private final List<ColumnPatch> patches;

  /** How many lines texts of ours take in the rows that they make higher. */
  private final NavigableMap<Integer, Integer> raised = new TreeMap<>();

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

  /** Drawings that begin in a row with new cells, or beside another, are not tied again. */
  boolean mayWiden(int column) {
    return drawings.areas().stream()
        .filter(area -> area.lastColumn() >= column)
        .allMatch(
            area ->
                area.firstColumn() <= column
                    && !isPatched(area.firstRow())
                    && isAlone(area.firstRow()));
  }

  private boolean isAlone(int row) {
    return drawings.areas().stream().filter(area -> area.firstRow() == row).count() == 1;
  }

  boolean mayRaise(int row) {
    return drawings.areas().stream()
        .noneMatch(
            area ->
                area.firstRow() <= row
                    && area.lastRow() >= row
                    && !drawings.loose().contains(area));
  }

  /** Takes in which rows become higher where they may. */
  void raise(ColumnLook look) {
    for (ColumnPatch patch : patches) {
      double width = mayWiden(patch.column()) ? look.width(patch) : USUAL_LETTERS;
      if (patch.header().indexOf(' ') >= 0) {
        raise(patch.headerRow(), patch.header(), width);
      }
      for (int row = patch.firstRow(); look.isNote(patch) && row <= patch.lastRow(); row++) {
        if (patch.cells().text(row) != null) {
          raise(row, patch.cells().text(row), width * ColumnLook.LETTERS);
        }
      }
    }
  }

  private void raise(int row, String text, double width) {
    raised.merge(row, ColumnLook.lines(text, width), Math::max);
  }

  /** Whether a drawing that begins in this row ends beside higher ones. */
  boolean isLoosened(int row) {
    return drawings.loose().stream()
        .anyMatch(area -> area.firstRow() == row && isRaised(row, area.lastRow()));
  }

  /** How many lines a text of ours takes in a row; 1 where it does not wrap. */
  int lines(int row) {
    return mayRaise(row) ? raised.getOrDefault(row, 1) : 1;
  }

  private boolean isRaised(int first, int last) {
    Integer next = raised.ceilingKey(first);
    return next != null && next <= last;
  }

  /** A row's markup without the ties of drawings that end beside higher rows. */
  byte[] loosened(ByteBuilder markup, int row) {
    return DRAWING
        .matcher(new String(markup.bytes(), 0, markup.length(), StandardCharsets.UTF_8))
        .replaceAll(
            drawing -> {
              String tag = drawing.group();
              Matcher tie = END_TIE.matcher(tag);
              Matcher end = END_CELL.matcher(tie.find() ? tie.group(1) : "");
              boolean loose = end.matches() && isRaised(row, rowOf(end.group(3)));
              return Matcher.quoteReplacement(loose ? TIES.matcher(tag).replaceAll("") : tag);
            })
        .getBytes(StandardCharsets.UTF_8);
  }

  private static int rowOf(String digits) {
    return Integer.parseInt(digits.replace("$", "")) - 1;
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
