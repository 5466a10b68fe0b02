package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;

/**
 * In which cells of an OpenDocument sheet a text wraps or is made smaller (OpenDocument 1.3 part 3,
 * 20.411 fo:wrap-option and 20.354 style:shrink-to-fit). A cell has its own style, else the row's,
 * else the column's.
 */
final class OdsInside {
  private static final byte[] STYLE = ascii("style");
  private static final byte[] PROPERTIES = ascii("table-cell-properties");
  private static final byte[] NAME = ascii("style:name");
  private static final byte[] WRAPS = ascii("fo:wrap-option");
  private static final byte[] SHRINKS = ascii("style:shrink-to-fit");
  private static final byte[] COLUMN = ascii("table-column");
  private static final byte[] REPEATED = ascii("table:number-columns-repeated");
  private static final byte[] CELL_STYLE = ascii("table:default-cell-style-name");

  /** The styles that keep texts inside. */
  private final Set<String> styles;

  private final List<Run> columns = new ArrayList<>();
  private String row;
  private int end;

  /** Columns whose cells have that style by themselves. */
  private record Run(int end, String style) {}

  OdsInside() {
    this(new HashSet<>());
  }

  private OdsInside(Set<String> styles) {
    this.styles = styles;
  }

  /** For another sheet of the document. */
  OdsInside onSheet() {
    return new OdsInside(styles);
  }

  /** Reads the automatic styles, which the current token begins. */
  void readStyles(XmlScanner scanner) throws IOException {
    int outside = scanner.depth() - 1;
    String name = "";
    while (true) {
      Token token = scanner.next();
      if (token == Token.DONE) {
        throw scanner.damaged("how.stylesOpen");
      }
      if (token == Token.END && scanner.depth() == outside) {
        return;
      }
      if (token != Token.START && token != Token.EMPTY) {
        continue;
      }
      if (scanner.is(STYLE)) {
        name = scanner.attribute(NAME) ? scanner.value() : "";
      } else if (scanner.is(PROPERTIES)
          && (scanner.attribute(WRAPS) && scanner.value().equals("wrap")
              || scanner.attribute(SHRINKS) && scanner.value().equals("true"))) {
        styles.add(name);
      }
    }
  }

  /** Takes in the element of the current token if it declares columns. */
  void addColumn(XmlScanner scanner) throws UnusableFileException {
    if (!styles.isEmpty() && scanner.is(COLUMN)) {
      int count = scanner.attribute(REPEATED) ? OdsCell.count(scanner) : 1;
      end = Math.min(end + count, Integer.MAX_VALUE / 2);
      columns.add(new Run(end, scanner.attribute(CELL_STYLE) ? scanner.value() : null));
    }
  }

  /** Takes in the row of the current token. */
  void startRow(XmlScanner scanner) throws UnusableFileException {
    row = !styles.isEmpty() && scanner.attribute(CELL_STYLE) ? scanner.value() : null;
  }

  /** Whether a text stays inside its cell, whose own style may be null. */
  boolean keeps(String style, int column) {
    if (styles.isEmpty()) {
      return false;
    }
    String used = style == null ? row : style;
    for (int i = 0; used == null && i < columns.size(); i++) {
      Run run = columns.get(i);
      if (column < run.end) {
        used = run.style;
        break;
      }
    }
    return used != null && styles.contains(used);
  }
}
