package washbook.runner.read;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToLongFunction;
import washbook.log.sheet.Grid;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;

/**
 * Where a drawing stands on a sheet (ECMA-376-1:2016, 20.5.2.1 absoluteAnchor, 20.5.2.24
 * oneCellAnchor, 20.5.2.33 twoCellAnchor): the numbers as they stand, and where each stands.
 */
public final class XlsxAnchor {
  /** More columns and rows than any drawing covers. */
  private static final int FAR = 1 << 20;

  private static final String[] PLACES = {"col", "colOff", "row", "rowOff"};

  /** Numbers of {@code from} and {@code to}: column, offset, row, offset; -1 where missing. */
  private final long[] numbers = new long[8];

  /** Where the digits of each number start and end, counted from the anchor's first byte. */
  private final int[] starts = new int[8];

  private final int[] ends = new int[8];
  private long x;
  private long y;
  private long width = -1;
  private long height = -1;

  /** Whether the current tag begins an anchor. */
  public static boolean isAnchor(XmlScanner scanner, Token token) {
    return token == Token.START && scanner.localName().endsWith("CellAnchor")
        || token == Token.START && scanner.localName().equals("absoluteAnchor");
  }

  /** Reads the anchor whose tag is the current token up to its end. */
  public static XlsxAnchor read(XmlScanner scanner, Position position) throws IOException {
    XlsxAnchor anchor = new XlsxAnchor();
    Arrays.fill(anchor.numbers, -1);
    int outside = scanner.depth() - 1;
    int corner = -1;
    int place = -1;
    while (scanner.depth() > outside) {
      Token token = scanner.next();
      if (token == Token.DONE) {
        throw scanner.damaged("how.anchorOpen");
      }
      boolean direct = scanner.depth() - outside == (token == Token.START ? 2 : 1);
      if (token == Token.START && direct) {
        corner = scanner.localName().equals("from") ? 0 : scanner.localName().equals("to") ? 4 : -1;
      } else if (token == Token.START && corner >= 0) {
        place = List.of(PLACES).indexOf(scanner.localName());
      } else if (token == Token.TEXT && corner >= 0 && place >= 0) {
        anchor.put(scanner, corner + place, position.of(scanner));
      } else if (token == Token.END) {
        place = -1;
      } else if (token == Token.EMPTY && direct) {
        anchor.measure(scanner);
      }
    }
    return anchor;
  }

  /** Gives where the current token starts, counted from the anchor's first byte. */
  public interface Position {
    int of(XmlScanner scanner);
  }

  private void put(XmlScanner scanner, int index, int start) {
    String text =
        new String(
            scanner.bytes(),
            scanner.tokenStart(),
            scanner.tokenEnd() - scanner.tokenStart(),
            StandardCharsets.US_ASCII);
    try {
      numbers[index] = Long.parseLong(text.strip());
      starts[index] = start;
      ends[index] = start + scanner.tokenEnd() - scanner.tokenStart();
    } catch (NumberFormatException e) {
      numbers[index] = -1;
    }
  }

  private void measure(XmlScanner scanner) throws IOException {
    if (scanner.is(XmlScanner.ascii("ext"))) {
      width = (long) XlsxSizes.number(scanner, XmlScanner.ascii("cx"));
      height = (long) XlsxSizes.number(scanner, XmlScanner.ascii("cy"));
    } else if (scanner.is(XmlScanner.ascii("pos"))) {
      x = (long) XlsxSizes.number(scanner, XmlScanner.ascii("x"));
      y = (long) XlsxSizes.number(scanner, XmlScanner.ascii("y"));
    }
  }

  public boolean hasFrom() {
    return numbers[0] >= 0 && numbers[2] >= 0;
  }

  public boolean hasTo() {
    return hasFrom() && numbers[4] >= 0 && numbers[6] >= 0;
  }

  /** One of the eight numbers; never below 0. */
  public long number(int index) {
    return Math.max(0, numbers[index]);
  }

  /** Whether the number can be replaced where it stands. */
  public boolean isStated(int index) {
    return ends[index] > starts[index];
  }

  public int start(int index) {
    return starts[index];
  }

  public int end(int index) {
    return ends[index];
  }

  /** The cells that the drawing lies over. */
  public Grid.Area area(XlsxSizes sizes) {
    int column = (int) Math.min(FAR, number(0));
    int row = (int) Math.min(FAR, number(2));
    if (hasTo()) {
      int lastColumn = (int) Math.min(FAR, number(4)) - (number(5) == 0 ? 1 : 0);
      int lastRow = (int) Math.min(FAR, number(6)) - (number(7) == 0 ? 1 : 0);
      return new Grid.Area(row, column, Math.max(row, lastRow), Math.max(column, lastColumn));
    }
    long left = hasFrom() ? number(1) : x;
    long top = hasFrom() ? number(3) : y;
    int firstColumn = hasFrom() ? column : reached(0, left, sizes::column);
    int firstRow = hasFrom() ? row : reached(0, top, sizes::row);
    return new Grid.Area(
        firstRow,
        firstColumn,
        reached(row, top + height - 1, sizes::row),
        reached(column, left + width - 1, sizes::column));
  }

  /** The column or row that a distance from the start of another one leads to. */
  private static int reached(int from, long distance, IntToLongFunction size) {
    long left = distance;
    int at = from;
    while (at < FAR && left >= size.applyAsLong(at)) {
      left -= size.applyAsLong(at++);
    }
    return at;
  }
}
