package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.sheet.Grid.Kind;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.RepeatedWord;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.OdsCell;
import washbook.runner.sheet.CellContent;

/**
 * One row element as it stands in the file. Places are counted from the row's first byte, where the
 * splicer must hold until the row is dealt with.
 */
final class OdsRow {
  private static final byte[] ROWS_REPEATED = ascii("table:number-rows-repeated");
  private static final byte[] COLUMNS_REPEATED = ascii("table:number-columns-repeated");
  private static final byte[] STYLE = ascii("table:style-name");
  private static final byte[] ROW_CELL_STYLE = ascii("table:default-cell-style-name");

  /** A stretch of bytes. */
  record Span(int start, int end) {}

  /** A cell element, which may stand for several cells. */
  static final class Cell {
    int start;
    int end;
    int column;
    int repeated;
    boolean covered;
    String style;

    /** The attribute that says how many cells it stands for, with the space before it. */
    Span repeatAttribute;

    /** What follows is known only of cells that may be patched. */
    boolean known;

    Kind kind;
    double number;
    String text;
    String formula;
    boolean matrix;
    final List<Span> keptAttributes = new ArrayList<>();
    final List<Span> keptChildren = new ArrayList<>();

    boolean isBlank() {
      return kind == Kind.BLANK && formula == null;
    }

    /** Whether it holds this already. */
    boolean holds(CellContent content) {
      if (content.isBlank()) {
        return isBlank();
      }
      boolean sameFormula =
          content.formula() == null
              ? formula == null
              : OpenFormula.of(content.formula()).equals(formula);
      if (!sameFormula) {
        return false;
      }
      if (!Double.isNaN(content.number())) {
        return kind == Kind.NUMBER && number == content.number();
      }
      String wanted = content.text() == null ? "" : OdsCells.clean(content.text());
      return kind == Kind.TEXT && wanted.equals(text);
    }
  }

  private final List<Cell> pool = new ArrayList<>();
  private final OdsCell reader = new OdsCell();
  private final RepeatedWord styleNames = new RepeatedWord();
  private int count;
  private static final Pattern STYLE_OF_ROW =
      Pattern.compile("\\stable:style-name\\s*=\\s*(\"[^\"]*\"|'[^']*')");

  int tagEnd;
  int end;
  boolean empty;
  Span repeatAttribute;
  String cellStyle;

  /** The row's own, or null. */
  String style;

  int columns;

  /** Makes this a row that is not in the file. */
  void clear() {
    count = 0;
    columns = 0;
    cellStyle = null;
    style = null;
    repeatAttribute = null;
  }

  /**
   * Reads the row whose tag is the current token.
   *
   * @param patched whether a column may be patched
   */
  void read(XmlSplicer splicer, Token first, IntPredicate patched) throws IOException {
    clear();
    empty = first == Token.EMPTY;
    tagEnd = splicer.tokenEnd() - splicer.held();
    cellStyle = splicer.attribute(ROW_CELL_STYLE) ? splicer.value() : null;
    style = splicer.attribute(STYLE) ? splicer.value() : null;
    if (splicer.attribute(ROWS_REPEATED)) {
      repeatAttribute = attribute(splicer);
    }
    if (!empty) {
      int outside = splicer.depth() - 1;
      while (true) {
        Token token = splicer.next();
        if (token == Token.DONE) {
          throw splicer.damaged("how.rowOpen");
        }
        if (token == Token.END && splicer.depth() == outside) {
          break;
        }
        if (token != Token.START && token != Token.EMPTY) {
          continue;
        }
        boolean covered = splicer.is(OdsCell.COVERED);
        if (covered || splicer.is(OdsCell.CELL)) {
          readCell(splicer, token, covered, patched);
        } else {
          OdsCell.skip(splicer, token);
        }
      }
    }
    end = splicer.tokenEnd() - splicer.held();
  }

  private void readCell(XmlSplicer splicer, Token token, boolean covered, IntPredicate patched)
      throws IOException {
    if (count == pool.size()) {
      pool.add(new Cell());
    }
    Cell cell = pool.get(count++);
    cell.start = splicer.tokenStart() - splicer.held();
    cell.column = columns;
    cell.covered = covered;
    cell.repeated = 1;
    cell.repeatAttribute = null;
    cell.style = null;
    cell.known = false;
    splicer.rewindAttributes();
    while (splicer.nextAttribute()) {
      if (splicer.attributeIs(COLUMNS_REPEATED)) {
        cell.repeated = OdsCell.count(splicer);
        cell.repeatAttribute = attribute(splicer);
      } else if (splicer.attributeIs(STYLE)) {
        cell.style = styleNames.of(splicer);
      }
    }
    int last = Math.min(cell.column + cell.repeated, OdsSheetPatch.COLUMNS);
    for (int column = cell.column; column < last && !cell.known; column++) {
      cell.known = patched.test(column);
    }
    if (cell.known) {
      readContent(splicer, token, cell);
    } else {
      OdsCell.skip(splicer, token);
    }
    cell.end = splicer.tokenEnd() - splicer.held();
    columns = Math.min(columns + cell.repeated, Integer.MAX_VALUE / 2);
  }

  private void readContent(XmlSplicer splicer, Token token, Cell cell) throws IOException {
    cell.keptAttributes.clear();
    cell.keptChildren.clear();
    splicer.rewindAttributes();
    while (splicer.nextAttribute()) {
      if (!OdsCell.isContent(splicer)
          && !splicer.attributeIs(COLUMNS_REPEATED)
          && !splicer.attributeIs(STYLE)) {
        cell.keptAttributes.add(attribute(splicer));
      }
    }
    reader.read(
        splicer,
        token,
        (scanner, child) -> {
          int start = splicer.tokenStart() - splicer.held();
          OdsCell.skip(scanner, child);
          cell.keptChildren.add(new Span(start, splicer.tokenEnd() - splicer.held()));
        });
    cell.kind = reader.kind();
    cell.number = reader.number();
    cell.text = cell.kind == Kind.TEXT ? reader.text() : "";
    cell.formula = reader.formula();
    cell.matrix = reader.isMatrix();
  }

  /** The present attribute with the space before it. */
  private static Span attribute(XmlSplicer splicer) {
    return new Span(
        splicer.attributeStart() - 1 - splicer.held(), splicer.valueEnd() + 1 - splicer.held());
  }

  int size() {
    return count;
  }

  Cell cell(int index) {
    return pool.get(index);
  }

  /** The style that the cell of a column states, or null. */
  String styleOf(int column) {
    for (int i = 0; i < count; i++) {
      Cell cell = pool.get(i);
      if (column < cell.column + cell.repeated) {
        return cell.style;
      }
    }
    return null;
  }

  /** Adds the element's bytes so that it stands for so many cells. */
  static void copy(ByteBuilder to, byte[] bytes, int base, Cell cell, int repeated) {
    copy(
        to,
        bytes,
        base,
        cell.start,
        cell.end,
        cell.repeatAttribute,
        " table:number-columns-repeated=\"",
        repeated);
  }

  /** Adds the row's bytes so that it stands for so many rows, nothing for none. */
  void copy(ByteBuilder to, byte[] bytes, int base, int repeated) {
    if (repeated > 0) {
      copy(to, bytes, base, 0, end, repeatAttribute, " table:number-rows-repeated=\"", repeated);
    }
  }

  /**
   * Adds the row's tag so that it stands for one row and has content, with a style in place of its
   * own or, for null, with that.
   */
  void copyTag(ByteBuilder to, byte[] bytes, int base, String newStyle) {
    int tag = empty ? tagEnd - 2 : tagEnd;
    if (newStyle == null) {
      copy(to, bytes, base, 0, tag, repeatAttribute, "", 1);
    } else {
      ByteBuilder whole = new ByteBuilder();
      copy(whole, bytes, base, 0, tag, repeatAttribute, "", 1);
      String markup = new String(whole.bytes(), 0, whole.length(), StandardCharsets.UTF_8);
      String style = " table:style-name=\"" + newStyle + "\"";
      byte[] tagNow =
          STYLE_OF_ROW
              .matcher(markup)
              .replaceFirst(Matcher.quoteReplacement(style))
              .getBytes(StandardCharsets.UTF_8);
      to.raw(tagNow, 0, tagNow.length);
    }
    if (empty) {
      to.raw(">");
    }
  }

  private static void copy(
      ByteBuilder to,
      byte[] bytes,
      int base,
      int start,
      int end,
      Span repeatAttribute,
      String attribute,
      int repeated) {
    if (repeatAttribute == null) {
      to.raw(bytes, base + start, base + end);
      return;
    }
    to.raw(bytes, base + start, base + repeatAttribute.start());
    if (repeated > 1) {
      to.raw(attribute).number(repeated).raw("\"");
    }
    to.raw(bytes, base + repeatAttribute.end(), base + end);
  }
}
