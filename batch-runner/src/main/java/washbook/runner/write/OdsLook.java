package washbook.runner.write;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.runner.markup.Decimal;
import washbook.runner.markup.Length;

/** Makes cell styles (OpenDocument 1.3 part 3, 16.2 style:style) from the markup of others. */
final class OdsLook {
  private static final Pattern PARENT =
      Pattern.compile("\\sstyle:parent-style-name\\s*=\\s*\"([^\"]*)\"");
  private static final Pattern NAME = Pattern.compile("\\sstyle:name\\s*=\\s*\"[^\"]*\"");
  private static final Pattern PAGE =
      Pattern.compile("\\sstyle:master-page-name\\s*=\\s*\"([^\"]*)\"");
  private static final Pattern CELL_PROPERTIES = properties("table-cell-properties");
  private static final Pattern COLUMN_PROPERTIES = properties("table-column-properties");
  private static final Pattern TEXT_PROPERTIES = properties("text-properties");
  private static final Pattern ATTRIBUTE =
      Pattern.compile("\\s(([\\w-]+:)?([\\w-]+)\\s*=\\s*(\"[^\"]*\"|'[^']*'))");

  /** What a cell shares with its neighbour, whatever it holds; wrapping is stated again. */
  private static final Pattern SHARED =
      Pattern.compile("border.*|background-color|padding.*|shadow|vertical-align|cell-protect");

  private static final Pattern WRAPPING = Pattern.compile("wrap-option|shrink-to-fit");
  private static final Pattern HEIGHT = Pattern.compile("\\sstyle:row-height\\s*=\\s*\"([^\"]*)\"");
  private static final Pattern NOT_OPTIMAL =
      Pattern.compile("\\sstyle:use-optimal-row-height\\s*=\\s*\"[^\"]*\"");
  private static final Pattern OPTIMAL =
      Pattern.compile("\\sstyle:use-optimal-row-height\\s*=\\s*\"true\"");
  private static final Pattern BREAK = Pattern.compile("break-before");
  private static final Pattern CONDITION = Pattern.compile("<style:map\\b[^>]*/>");

  private OdsLook() {}

  private static Pattern properties(String name) {
    return Pattern.compile(
        "<style:" + name + "\\b(([^>]*)/>|([^>]*)>.*?</style:" + name + "\\s*>)", Pattern.DOTALL);
  }

  /** Whether an automatic style has no font, border or background of its own. */
  static boolean isPlain(String style) {
    Matcher parent = PARENT.matcher(style);
    boolean usual = !parent.find() || parent.group(1).equals("Default");
    return usual && shared(style).isEmpty() && !TEXT_PROPERTIES.matcher(style).find();
  }

  /** The same style under another name, in which text wraps. */
  static String wrapping(String style, String name) {
    String kept = CONDITION.matcher(style).replaceAll("");
    int tagEnd = kept.indexOf('>') + 1;
    boolean empty = kept.startsWith("/>", tagEnd - 2);
    String tag = NAME.matcher(kept.substring(0, tagEnd)).replaceFirst(quoted(name));
    if (empty) {
      return tag.substring(0, tag.length() - 2) + ">" + wraps("") + "</style:style>";
    }
    Matcher cell = CELL_PROPERTIES.matcher(kept);
    if (!cell.find()) {
      return tag + wraps("") + kept.substring(tagEnd);
    }
    String others = attributes(cell, WRAPPING, false);
    return tag + kept.substring(tagEnd, cell.start()) + wraps(others) + kept.substring(cell.end());
  }

  /**
   * A sheet's style under another name, on other pages; {@code style} is null where it has none.
   */
  static String onPage(String style, String name, String page) {
    if (style == null) {
      return "<style:style"
          + quoted(name)
          + " style:family=\"table\" style:master-page-name=\""
          + page
          + "\"><style:table-properties table:display=\"true\"/></style:style>";
    }
    int tagEnd = style.indexOf('>');
    String tag = NAME.matcher(style.substring(0, tagEnd)).replaceFirst(quoted(name));
    Matcher old = PAGE.matcher(tag);
    String master = " style:master-page-name=\"" + page + "\"";
    String now =
        old.find() ? old.replaceFirst(master) : tag.replaceFirst("<style:style", "$0" + master);
    return now + style.substring(tagEnd);
  }

  /** Millimetres of rows that a person gave a height; no end of them where none did. */
  static double fixedHeight(String row) {
    Matcher height = HEIGHT.matcher(row);
    return height.find() && !OPTIMAL.matcher(row).find()
        ? Length.millimetres(height.group(1), 0)
        : Double.MAX_VALUE;
  }

  /** A row's style under another name, as high as its texts need. */
  static String growing(String row, String name) {
    int tagEnd = row.indexOf('>');
    String tag = NAME.matcher(row.substring(0, tagEnd)).replaceFirst(quoted(name));
    String others = NOT_OPTIMAL.matcher(row.substring(tagEnd)).replaceAll("");
    String optimal = " style:use-optimal-row-height=\"true\"";
    return tag + HEIGHT.matcher(others).replaceFirst(optimal);
  }

  /** A column's style under another name, whose columns begin a page; null where it has none. */
  static String beginningPage(String style, String name, double usualMm) {
    Matcher properties = COLUMN_PROPERTIES.matcher(style == null ? "" : style);
    String kept =
        properties.find()
            ? attributes(properties, BREAK, false)
            : " style:column-width=\"" + Decimal.format(usualMm) + "mm\"";
    return "<style:style"
        + quoted(name)
        + " style:family=\"table-column\"><style:table-column-properties fo:break-before=\"page\""
        + kept
        + "/></style:style>";
  }

  /** The page style that a sheet's style names. */
  static String pageOf(String style) {
    Matcher page = PAGE.matcher(style == null ? "" : style);
    return page.find() ? page.group(1) : "Default";
  }

  /** Font, border, background and place alone; {@code style} is null where it is a common one. */
  static String lookOf(String style, String parent, String name, String number, boolean wraps) {
    String own = style == null ? "" : style;
    Matcher inherited = PARENT.matcher(own);
    String from = inherited.find() ? inherited.group(1) : parent;
    StringBuilder look = new StringBuilder("<style:style");
    look.append(quoted(name)).append(" style:family=\"table-cell\"");
    look.append(" style:parent-style-name=\"").append(from).append('"');
    if (number != null) {
      look.append(" style:data-style-name=\"").append(number).append('"');
    }
    String shared = shared(own);
    String cell = wraps ? wraps(shared) : shared.isEmpty() ? "" : element(shared);
    Matcher text = TEXT_PROPERTIES.matcher(own);
    String inside = cell + (text.find() ? text.group() : "");
    return look.append(inside.isEmpty() ? "/>" : ">" + inside + "</style:style>").toString();
  }

  private static String quoted(String name) {
    return " style:name=\"" + name + "\"";
  }

  private static String shared(String style) {
    Matcher cell = CELL_PROPERTIES.matcher(style);
    return cell.find() ? attributes(cell, SHARED, true) : "";
  }

  /** The attributes of a properties element whose local names match, or those that do not. */
  private static String attributes(Matcher element, Pattern names, boolean match) {
    String tag = element.group(2) == null ? element.group(3) : element.group(2);
    StringBuilder kept = new StringBuilder();
    Matcher attribute = ATTRIBUTE.matcher(tag);
    while (attribute.find()) {
      if (names.matcher(attribute.group(3)).matches() == match) {
        kept.append(' ').append(attribute.group(1));
      }
    }
    return kept.toString();
  }

  private static String wraps(String attributes) {
    return element(" fo:wrap-option=\"wrap\"" + attributes);
  }

  private static String element(String attributes) {
    return "<style:table-cell-properties" + attributes + "/>";
  }
}
