package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashSet;
import java.util.Set;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.sheet.CellReference;

/**
 * What a sheet says of its printing (ECMA-376-1:2016, 18.3.1.63 pageSetup, 18.3.1.62 pageMargins,
 * 18.3.1.65 pageSetUpPr, 18.3.1.14 colBreaks). Lengths are in points.
 */
public final class XlsxPaper {
  private static final byte[] ROW = ascii("row");
  private static final byte[] R = ascii("r");
  private static final byte[] FIT = ascii("fitToPage");
  private static final byte[] SCALE = ascii("scale");
  private static final byte[] ORIENTATION = ascii("orientation");
  private static final byte[] PAPER = ascii("paperSize");
  private static final byte[] LEFT = ascii("left");
  private static final byte[] RIGHT = ascii("right");
  private static final int A4 = 9;
  private static final int LETTER = 1;
  private static final int POINTS_PER_INCH = 72;

  private final Set<Integer> headed = new HashSet<>();
  private int lastColumn = -1;
  private boolean own;
  private boolean landscape;
  private double left = 0.75 * POINTS_PER_INCH;
  private double right = 0.75 * POINTS_PER_INCH;

  /** Where no paper is named, that side of A4 and Letter which is shorter. */
  private double shortSide = 595;

  private double longSide = 792;

  private XlsxPaper() {}

  /** Reads the whole part, of whose rows it looks at the one with a table's header. */
  public static XlsxPaper of(Archive archive, Part sheet, int headerRow) throws IOException {
    XlsxPaper paper = new XlsxPaper();
    try (InputStream in = archive.read(sheet)) {
      XmlScanner scanner = new XmlScanner(in, sheet.name(), sheet.size());
      int row = -1;
      for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
        if (token != Token.START && token != Token.EMPTY) {
          continue;
        }
        if (scanner.is('c')) {
          if (row == headerRow && scanner.attribute(R)) {
            paper.head(
                CellReference.parse(scanner.bytes(), scanner.valueStart(), scanner.valueEnd()));
          }
        } else if (scanner.is(ROW)) {
          row = scanner.attribute(R) ? (int) XlsxSizes.number(scanner, R) - 1 : row + 1;
        } else if (scanner.depth() <= 3) {
          paper.take(scanner);
        }
      }
    }
    return paper;
  }

  private void head(long reference) {
    if (reference >= 0) {
      headed.add(CellReference.column(reference));
    }
  }

  private void take(XmlScanner tag) throws IOException {
    if (tag.is(ascii("dimension")) && tag.attribute(ascii("ref"))) {
      byte[] last = ascii(tag.value().substring(tag.value().indexOf(':') + 1));
      lastColumn = CellReference.column(Math.max(-1, CellReference.parse(last, 0, last.length)));
    } else if (tag.is(ascii("pageSetUpPr"))) {
      own |= tag.attribute(FIT) && (tag.value().equals("1") || tag.value().equals("true"));
    } else if (tag.is(ascii("colBreaks")) || tag.is(ascii("rowBreaks"))) {
      own |= XlsxSizes.number(tag, ascii("count")) != 0;
    } else if (tag.is(ascii("pageMargins"))) {
      double statedLeft = XlsxSizes.number(tag, LEFT);
      double statedRight = XlsxSizes.number(tag, RIGHT);
      if (statedLeft >= 0 && statedRight >= 0) {
        left = statedLeft * POINTS_PER_INCH;
        right = statedRight * POINTS_PER_INCH;
      }
    } else if (tag.is(ascii("pageSetup"))) {
      double scale = XlsxSizes.number(tag, SCALE);
      own |= scale >= 0 && scale != 100;
      landscape = tag.attribute(ORIENTATION) && tag.value().equals("landscape");
      double kind = XlsxSizes.number(tag, PAPER);
      own |= kind > LETTER && kind != A4;
      if (kind == A4) {
        longSide = 842;
      } else if (kind == LETTER) {
        shortSide = 612;
      }
    }
  }

  /** Whether a person, or an earlier fill, has set how it is printed, or the paper is unusual. */
  public boolean isOwn() {
    return own;
  }

  public boolean isLandscape() {
    return landscape;
  }

  /** Of the cells, as the sheet states it; -1 where it does not. */
  public int lastColumn() {
    return lastColumn;
  }

  /** Whether the header's row had a cell there. */
  public boolean hasHead(int column) {
    return headed.contains(column);
  }

  /** What there is between the margins of a page. */
  public double across(boolean landscapeWanted) {
    return (landscapeWanted ? longSide : shortSide) - left - right;
  }

  public double leftMargin() {
    return left;
  }

  public double rightMargin() {
    return right;
  }
}
