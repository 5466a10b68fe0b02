package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import washbook.runner.markup.XmlScanner;

/**
 * How wide the columns and how high the rows of a sheet are, in the units of drawings: 9525 English
 * Metric Units to the pixel, 12700 to the point (ECMA-376-1:2016, 18.3.1.13 col, 18.3.1.81
 * sheetFormatPr, 20.1.10.16). A character is taken to be seven pixels wide, as in the usual fonts.
 */
public final class XlsxSizes {
  public static final int PER_POINT = 12_700;
  private static final int PER_PIXEL = 9_525;
  private static final int PIXELS_PER_CHARACTER = 7;
  private static final int USUAL_COLUMN = 64;
  private static final double USUAL_ROW = 15;
  private static final byte[] MIN = ascii("min");
  private static final byte[] MAX = ascii("max");
  private static final byte[] WIDTH = ascii("width");
  private static final byte[] HIDDEN = ascii("hidden");
  private static final byte[] CUSTOM = ascii("customWidth");

  private record Run(int first, int last, long size, boolean own) {}

  private final List<Run> runs = new ArrayList<>();
  private final TreeMap<Integer, Long> set = new TreeMap<>();
  private final TreeMap<Integer, Double> rows = new TreeMap<>();
  private long column = (long) USUAL_COLUMN * PER_PIXEL;
  private double row = USUAL_ROW;

  /** Takes in the sheet's usual sizes, which the current tag states. */
  public void readUsual(XmlScanner format) throws IOException {
    double width = number(format, ascii("defaultColWidth"));
    if (width > 0) {
      column = size(width);
    }
    double height = number(format, ascii("defaultRowHeight"));
    if (height > 0) {
      row = height;
    }
  }

  /** Takes in the columns that the current tag states. */
  public void readColumns(XmlScanner tag) throws IOException {
    int first = (int) number(tag, MIN);
    int last = (int) number(tag, MAX);
    double width = number(tag, WIDTH);
    boolean hidden =
        tag.attribute(HIDDEN) && (tag.value().equals("1") || tag.value().equals("true"));
    if (hidden || width >= 0) {
      boolean own =
          tag.attribute(CUSTOM) && (tag.value().equals("1") || tag.value().equals("true"));
      runs.add(new Run(first - 1, last - 1, hidden ? 0 : size(width), own || hidden));
    }
  }

  /** The width of columns that show so many characters. */
  public static long size(double characters) {
    double pixels = Math.floor((256 * characters + 18) / 256 * PIXELS_PER_CHARACTER);
    return (long) pixels * PER_PIXEL;
  }

  /** Gives one column a width in characters. */
  public void setColumn(int index, double characters) {
    set.put(index, size(characters));
  }

  /** How many characters a column shows. */
  public double characters(int index) {
    return (double) column(index) / PER_PIXEL / PIXELS_PER_CHARACTER - 0.7;
  }

  /** Whether nobody has made a column wider or narrower. */
  public boolean isUsual(int index) {
    return column(index) == column && !isOwn(index);
  }

  /** Whether a person has given a column a width, be it the usual one, or has hidden it. */
  public boolean isOwn(int index) {
    return runs.stream().anyMatch(run -> index >= run.first && index <= run.last && run.own);
  }

  public long column(int index) {
    Long given = set.get(index);
    if (given != null) {
      return given;
    }
    for (Run run : runs) {
      if (index >= run.first && index <= run.last) {
        return run.size;
      }
    }
    return column;
  }

  /** In points. */
  public void setRow(int index, double height) {
    rows.put(index, height);
  }

  public double usualRow() {
    return row;
  }

  public long row(int index) {
    return (long) (rows.getOrDefault(index, row) * PER_POINT);
  }

  /** A copy to be changed. */
  public XlsxSizes copy() {
    XlsxSizes copy = new XlsxSizes();
    copy.runs.addAll(runs);
    copy.set.putAll(set);
    copy.rows.putAll(rows);
    copy.column = column;
    copy.row = row;
    return copy;
  }

  public boolean isSameAs(XlsxSizes other) {
    return set.equals(other.set) && rows.equals(other.rows);
  }

  /** A number that an attribute states, or -1. */
  public static double number(XmlScanner tag, byte[] attribute) throws IOException {
    if (!tag.attribute(attribute)) {
      return -1;
    }
    try {
      double number = Double.parseDouble(tag.value().strip());
      return number >= 0 && number < 1e15 ? number : -1;
    } catch (NumberFormatException e) {
      return -1;
    }
  }
}
