package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.Decimal;
import washbook.runner.markup.Length;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.OdsDrawings;

/**
 * The styles that patched columns need, each added once to the automatic styles. These stand before
 * the cells, so a look at the first rows tells which will be asked for.
 */
final class OdsStyles {
  static final byte[] AUTOMATIC = ascii("automatic-styles");
  private static final byte[] STYLE = ascii("style");
  private static final byte[] NAME = ascii("style:name");
  private static final byte[] FAMILY = ascii("style:family");
  private static final String USUAL = "Default";
  private static final Pattern WIDTH =
      Pattern.compile("\\sstyle:column-width\\s*=\\s*\"([^\"]*)\"");

  /** Millimetres for a line of 10 points. */
  private static final double LINE = 4.5;

  /** Tenths of a millimetre for a bold letter of 11 points, and for the margins of a column. */
  private static final int LETTER = 23;

  private static final int MARGINS = 20;

  /** Markup of the styles that were asked for, by their names. */
  private final Map<String, String> asked = new TreeMap<>();

  /** Markup of the document's cell styles, by their names. */
  private final Map<String, String> cells = new HashMap<>();

  /** Markup of the document's styles of sheets and columns, by their names. */
  private final Map<String, String> tables = new HashMap<>();

  private final Map<String, String> columns = new HashMap<>();

  private final Map<String, String> rows = new HashMap<>();

  /** Which of them look like most cells, as far as asked; null is the style of none. */
  private final Map<String, Boolean> plainOnes = new HashMap<>();

  /** Names of styles for numbers by decimals and by the styles that they are like. */
  private final Map<Integer, Map<String, String>> numbers = new HashMap<>();

  /** Whether the styles are written and no longer looked at. */
  private boolean written;

  /** From now on the styles that have been asked for are written; gives their names. */
  Set<String> write() {
    written = true;
    return asked();
  }

  /** The names of the styles that have been asked for so far. */
  Set<String> asked() {
    return Set.copyOf(asked.keySet());
  }

  /** How wide a column is that shows so many letters. */
  static double millimetres(int letters) {
    return (LETTER * letters + MARGINS) / 10.0;
  }

  /** The style of a column that shows so many letters. */
  String width(int letters) {
    String name = "washbook-width-" + letters;
    asked.computeIfAbsent(
        name,
        key ->
            "<style:style style:name=\""
                + key
                + "\" style:family=\"table-column\"><style:table-column-properties"
                + " style:column-width=\""
                + Decimal.format(millimetres(letters))
                + "mm\"/></style:style>");
    return name;
  }

  /**
   * A style like that of a row, which may be null, whose height is what its texts need; null where
   * there is room for so many lines, or it is that already.
   */
  String growing(String row, int lines) {
    String markup = row == null || lines == 1 ? null : rows.get(row);
    if (markup == null || OdsLook.fixedHeight(markup) >= lines * LINE) {
      return null;
    }
    String name = "washbook-row-" + row;
    asked.computeIfAbsent(name, key -> OdsLook.growing(markup, key));
    return name;
  }

  /** A style like that of a column, which may be null, whose columns begin a page. */
  String beginningPage(String base) {
    String name = "washbook-page-column" + (base == null ? "" : "-" + base);
    asked.computeIfAbsent(
        name, key -> OdsLook.beginningPage(columns.get(base), key, OdsDrawings.USUAL_WIDTH));
    return name;
  }

  /** Millimetres of a column of this style, which may be null; NaN where a page ends before it. */
  double columnWidth(String style) {
    String markup = columns.getOrDefault(style, "");
    Matcher width = WIDTH.matcher(markup);
    return markup.contains("break-before=\"page\"")
        ? Double.NaN
        : Length.millimetres(width.find() ? width.group(1) : "", OdsDrawings.USUAL_WIDTH);
  }

  /** The page style of a sheet's style, which may be null. */
  String pageOf(String table) {
    return OdsLook.pageOf(tables.get(table));
  }

  /** The style of a sheet, which may have none, on pages of another style. */
  String onPage(String table, String page) {
    String name = "washbook-sheet-" + (table == null ? page : table);
    asked.computeIfAbsent(name, key -> OdsLook.onPage(tables.get(table), key, page));
    return name;
  }

  /** A style like {@code base}, which may be null, in which text wraps. */
  String wrapping(String base) {
    String markup = cells.get(base);
    if (markup == null) {
      return lookOf(base, "washbook-wrap", null, true);
    }
    String name = "washbook-wrap-" + base;
    asked.computeIfAbsent(name, key -> OdsLook.wrapping(markup, key));
    return name;
  }

  /** Whether a style, which may be null, looks like that of most cells. */
  boolean isPlain(String base) {
    Boolean known = plainOnes.get(base);
    if (known == null) {
      String markup = cells.get(base);
      known = markup == null ? base == null || base.equals(USUAL) : OdsLook.isPlain(markup);
      plainOnes.put(base, known);
    }
    return known;
  }

  /** The look of {@code base} for numbers with that many decimal places. */
  String number(String base, int decimals) {
    Map<String, String> known = numbers.computeIfAbsent(decimals, key -> new HashMap<>());
    String name = known.get(base);
    if (name == null) {
      name = newNumber(base, decimals);
      known.put(base, name);
    }
    return name;
  }

  private String newNumber(String base, int decimals) {
    String number = "washbook-number-" + decimals;
    asked.computeIfAbsent(
        number,
        key ->
            "<number:number-style style:name=\""
                + key
                + "\"><number:number number:decimal-places=\""
                + decimals
                + "\" number:min-decimal-places=\""
                + decimals
                + "\" number:min-integer-digits=\"1\"/></number:number-style>");
    return lookOf(base, "washbook-" + decimals, number, false);
  }

  /** The look of {@code base} for sentences, which wrap. */
  String note(String base) {
    return lookOf(base, "washbook-note", null, true);
  }

  /** The look of {@code base} for a word; null where that is the usual one. */
  String text(String base) {
    return isPlain(base) ? null : lookOf(base, "washbook-text", null, false);
  }

  private String lookOf(String base, String kind, String number, boolean wraps) {
    boolean plain = isPlain(base);
    String name = plain ? kind : kind + "-" + base;
    String markup = plain ? null : cells.get(base);
    String parent = plain ? USUAL : base;
    asked.computeIfAbsent(name, key -> OdsLook.lookOf(markup, parent, key, number, wraps));
    return name;
  }

  /** Adds what is missing; the current token begins the automatic styles. */
  void patch(XmlSplicer splicer, boolean empty) throws IOException {
    if (empty) {
      byte[] added = markup(Set.of());
      if (added.length > 0) {
        ByteBuilder whole = new ByteBuilder();
        whole.raw(">").raw(added, 0, added.length).raw("</office:automatic-styles>");
        int end = splicer.tokenEnd();
        splicer.replace(end - 2, end, whole.bytes(), whole.length());
      }
      return;
    }
    Set<String> names = new HashSet<>();
    int outside = splicer.depth() - 1;
    while (true) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("how.stylesOpen");
      }
      if (token == Token.END && splicer.depth() == outside) {
        break;
      }
      if ((token == Token.START || token == Token.EMPTY) && splicer.attribute(NAME)) {
        String name = splicer.value();
        names.add(name);
        Map<String, String> kept =
            written || !splicer.is(STYLE) || !splicer.attribute(FAMILY)
                ? null
                : switch (splicer.value()) {
                  case "table-cell" -> cells;
                  case "table" -> tables;
                  case "table-column" -> columns;
                  case "table-row" -> rows;
                  default -> null;
                };
        if (kept != null) {
          kept.put(name, read(splicer, token));
        }
      }
    }
    byte[] added = markup(names);
    splicer.insert(splicer.tokenStart(), added, added.length);
  }

  private static String read(XmlSplicer splicer, Token first) throws IOException {
    splicer.holdFrom(splicer.tokenStart());
    int outside = splicer.depth() - 1;
    Token token = first;
    while (token == Token.START && splicer.depth() > outside) {
      if (splicer.next() == Token.DONE) {
        throw splicer.damaged("how.stylesOpen");
      }
    }
    int start = splicer.held();
    splicer.release();
    return new String(splicer.bytes(), start, splicer.tokenEnd() - start, StandardCharsets.UTF_8);
  }

  /** Adds automatic styles before the current token of a document that has none. */
  void insertAll(XmlSplicer splicer) throws IOException {
    byte[] added = markup(Set.of());
    if (added.length > 0) {
      ByteBuilder whole = new ByteBuilder();
      whole.raw("<office:automatic-styles>").raw(added, 0, added.length);
      whole.raw("</office:automatic-styles>");
      splicer.insert(splicer.tokenStart(), whole.bytes(), whole.length());
    }
  }

  private byte[] markup(Set<String> present) {
    StringBuilder markup = new StringBuilder();
    if (written) {
      asked.forEach((name, one) -> markup.append(present.contains(name) ? "" : one));
    }
    return markup.toString().getBytes(StandardCharsets.UTF_8);
  }
}
