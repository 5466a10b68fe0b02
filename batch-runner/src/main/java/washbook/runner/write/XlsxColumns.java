package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.XlsxSizes;
import washbook.runner.sheet.CellReference;

/**
 * Widths for the new columns (ECMA-376-1:2016, 18.3.1.13 col), so that the words of their headers
 * can be read, and for the one beside them, whose texts ran on over what was blank. A column that
 * has a width of its own keeps it.
 */
final class XlsxColumns {
  /** The margins of a cell, in characters (18.3.1.13). */
  static final double FRACTION = 0.7109375;

  private static final String FRACTION_TEXT = ".7109375";
  private static final byte[] COL = ascii("col");
  private static final byte[] MIN = ascii("min");
  private static final byte[] MAX = ascii("max");
  private static final byte[] WIDTH = ascii("width");
  private static final byte[] CUSTOM = ascii("customWidth");
  private static final byte[] HIDDEN = ascii("hidden");
  private static final byte[] STYLE = ascii("style");
  private static final Pattern REPLACED =
      Pattern.compile("\\s(min|max|width|customWidth|bestFit)\\s*=\\s*(\"[^\"]*\"|'[^']*')");

  private final NavigableMap<Integer, Integer> widths = new TreeMap<>();
  private final Map<Integer, Integer> styles = new TreeMap<>();

  /** What the columns were, and what they are with the widths that were given. */
  private final XlsxSizes before;

  private final TreeMap<Integer, Integer> given = new TreeMap<>();

  /** No width changes where the sheet's drawings keep its sizes. */
  XlsxColumns(List<ColumnPatch> columns, XlsxDrawings drawings) {
    this.before = drawings.before();
    for (ColumnPatch column : columns) {
      if (!drawings.keepsSizes()) {
        widths.merge(column.column() + 1, drawings.width(column, columns), Math::max);
        int beside = drawings.widthBefore(column);
        if (beside > 0) {
          widths.merge(column.column(), beside, Math::max);
        }
      }
    }
  }

  /** Puts the widths that were given into the sizes. */
  void setIn(XlsxSizes after) {
    given.forEach((column, width) -> after.setColumn(column - 1, width + FRACTION));
  }

  /** The cell format that cells of the column have by default. */
  int style(int column) {
    return styles.getOrDefault(column + 1, 0);
  }

  /** Writes the whole element where a sheet has none. */
  void insertAll(XmlSplicer splicer) throws IOException {
    if (!widths.isEmpty()) {
      given.putAll(widths);
      String prefix = splicer.prefix();
      StringBuilder markup = new StringBuilder("<" + prefix + "cols>");
      widths.forEach((column, width) -> markup.append(element(prefix, column, column, width, "")));
      markup.append("</").append(prefix).append("cols>");
      insert(splicer, markup.toString());
    }
  }

  /** Goes through the element whose start tag is the current token. */
  void patch(XmlSplicer splicer) throws IOException {
    String prefix = splicer.prefix();
    while (true) {
      Token token = splicer.next();
      if (token == Token.END && splicer.depth() == 1) {
        insertBefore(splicer, prefix, Integer.MAX_VALUE);
        return;
      }
      if ((token == Token.START || token == Token.EMPTY) && splicer.is(COL)) {
        int first = number(splicer, MIN);
        int last = number(splicer, MAX);
        if (first < 1 || last < first) {
          throw splicer.damaged("how.columnNumber");
        }
        insertBefore(splicer, prefix, first);
        cover(splicer, token, prefix, first, last);
      }
    }
  }

  private void cover(XmlSplicer splicer, Token token, String prefix, int first, int last)
      throws IOException {
    NavigableMap<Integer, Integer> covered = widths.subMap(first, true, last, true);
    if (covered.isEmpty()) {
      return;
    }
    int style = Math.max(0, number(splicer, STYLE));
    covered.keySet().forEach(column -> styles.put(column, style));
    boolean hasOwnWidth = splicer.attribute(WIDTH) && isTrue(splicer, CUSTOM);
    if (token == Token.EMPTY && !hasOwnWidth && !isTrue(splicer, HIDDEN)) {
      given.putAll(covered);
      splicer.replace(
          splicer.tokenStart(),
          splicer.tokenEnd(),
          split(splicer, prefix, first, last, covered).getBytes(StandardCharsets.UTF_8));
    }
    covered.clear();
  }

  /** The element once for each stretch of columns: ours get a width, the others keep theirs. */
  private static String split(
      XmlSplicer splicer,
      String prefix,
      int first,
      int last,
      NavigableMap<Integer, Integer> covered) {
    String tag =
        new String(
            splicer.bytes(),
            splicer.tokenStart(),
            splicer.tokenEnd() - splicer.tokenStart(),
            StandardCharsets.UTF_8);
    String others = REPLACED.matcher(tag).replaceAll("");
    int nameEnd = 1 + prefix.length() + 3;
    String kept = others.substring(nameEnd, others.lastIndexOf('/')).strip();
    StringBuilder markup = new StringBuilder();
    int next = first;
    BitSet ours = new BitSet();
    covered.keySet().forEach(ours::set);
    for (int column = ours.nextSetBit(first); column >= 0; column = ours.nextSetBit(next)) {
      if (column > next) {
        markup.append(narrowed(tag, next, column - 1));
      }
      markup.append(element(prefix, column, column, covered.get(column), kept));
      next = column + 1;
    }
    if (next <= last) {
      markup.append(narrowed(tag, next, last));
    }
    return markup.toString();
  }

  private static String narrowed(String tag, int first, int last) {
    String with = tag.replaceFirst("(\\smin\\s*=\\s*[\"'])\\d+", "$1" + first);
    return with.replaceFirst(
        "(\\smax\\s*=\\s*[\"'])\\d+", Matcher.quoteReplacement("") + "$1" + last);
  }

  private void insertBefore(XmlSplicer splicer, String prefix, int first) throws IOException {
    NavigableMap<Integer, Integer> earlier = widths.headMap(first, false);
    StringBuilder markup = new StringBuilder();
    earlier.forEach((column, width) -> markup.append(element(prefix, column, column, width, "")));
    if (!earlier.isEmpty()) {
      given.putAll(earlier);
      insert(splicer, markup.toString());
      earlier.clear();
    }
  }

  private static String element(String prefix, int first, int last, int width, String kept) {
    return "<"
        + prefix
        + "col min=\""
        + first
        + "\" max=\""
        + last
        + "\" width=\""
        + width
        + FRACTION_TEXT
        + "\""
        + (kept.isEmpty() ? "" : " " + kept)
        + " customWidth=\"1\"/>";
  }

  private static void insert(XmlSplicer splicer, String markup) throws IOException {
    byte[] bytes = ascii(markup);
    splicer.insert(splicer.tokenStart(), bytes, bytes.length);
  }

  private static int number(XmlSplicer splicer, byte[] name) throws IOException {
    return splicer.attribute(name)
        ? CellReference.number(splicer.bytes(), splicer.valueStart(), splicer.valueEnd())
        : -1;
  }

  private static boolean isTrue(XmlSplicer splicer, byte[] name) throws IOException {
    if (!splicer.attribute(name)) {
      return false;
    }
    String value = splicer.value();
    return value.equals("1") || value.equals("true") || value.equals("on");
  }
}
