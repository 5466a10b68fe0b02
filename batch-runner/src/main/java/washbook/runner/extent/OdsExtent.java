package washbook.runner.extent;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.sheet.Grid.Area;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/**
 * What reaches over a log in an OpenDocument spreadsheet: print ranges, filters and rules that
 * shade whole rows (OpenDocument 1.3 part 3, 19.696 table:print-ranges, 9.4.15
 * table:database-range; LibreOffice's own calcext:conditional-format).
 */
public final class OdsExtent {
  public static final byte[] RULES = ascii("conditional-formats");
  public static final byte[] DATABASE_RANGES = ascii("database-ranges");
  private static final byte[] RULE = ascii("conditional-format");
  private static final byte[] DATABASE_RANGE = ascii("database-range");
  private static final String TAG = "<table:table";
  private static final byte[] STYLE = ascii("table:style-name");
  private static final byte[] PRINTED = ascii("table:print-ranges");
  private static final byte[] TARGET = ascii("table:target-range-address");
  private static final byte[] BUTTONS = ascii("table:display-filter-buttons");
  private static final byte[] SHADED = ascii("calcext:target-range-address");
  private static final byte[] VALUE = ascii("calcext:value");
  private static final String BY_FORMULA = "formula-is(";

  private static final String SHEET = "\\$?('(?:[^']|'')+'|[^\\s.'$]+)?";
  private static final Pattern RANGE =
      Pattern.compile(
          SHEET + "\\.(\\$?[A-Z]{1,3}\\$?\\d{1,7}):" + SHEET + "\\.(\\$?[A-Z]{1,3}\\$?\\d{1,7})");

  private OdsExtent() {}

  /**
   * Changes the tag of a sheet, which is the current token: its print range, if it has just one, is
   * widened, and it gets another style where one is given.
   *
   * @return the style that it had, or null
   */
  public static String patchSheet(XmlSplicer splicer, NewColumns columns, String style)
      throws IOException {
    String old = splicer.attribute(STYLE) ? splicer.value() : null;
    int start = splicer.valueStart();
    int end = splicer.valueEnd();
    byte[] named = (style == null ? "" : style).getBytes(StandardCharsets.UTF_8);
    int printed = splicer.attribute(PRINTED) ? splicer.valueStart() : Integer.MAX_VALUE;
    if (style != null && old == null) {
      byte[] whole = (" table:style-name=\"" + style + "\"").getBytes(StandardCharsets.UTF_8);
      splicer.insert(splicer.tokenStart() + TAG.length(), whole, whole.length);
    } else if (style != null && start < printed) {
      splicer.replace(start, end, named);
    }
    if (splicer.attribute(PRINTED)) {
      widen(splicer, splicer.value(), columns::endOfPage);
    }
    if (style != null && old != null && start > printed) {
      splicer.replace(start, end, named);
    }
    return old;
  }

  /** Goes through the rules of formatting that the current token opens. */
  public static void patchRules(XmlSplicer splicer, NewColumns columns) throws IOException {
    int outside = splicer.depth() - 1;
    while (splicer.depth() > outside) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("how.rulesOpen");
      }
      if (token == Token.START && splicer.is(RULE) && splicer.attribute(SHADED)) {
        patchRule(splicer, columns);
      }
    }
  }

  private static void patchRule(XmlSplicer splicer, NewColumns columns) throws IOException {
    String range = splicer.value();
    splicer.holdFrom(splicer.tokenStart());
    int start = splicer.valueStart() - splicer.held();
    int end = splicer.valueEnd() - splicer.held();
    int outside = splicer.depth() - 1;
    boolean byRow = true;
    while (splicer.depth() > outside) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("how.rulesOpen");
      }
      if (token == Token.START || token == Token.EMPTY) {
        String value = splicer.attribute(VALUE) ? splicer.value() : "";
        byRow &= value.startsWith(BY_FORMULA) && ShadingFormula.isByRow(value);
      }
    }
    int base = splicer.held();
    splicer.release();
    if (byRow) {
      replace(splicer, base + start, base + end, wider(range, columns::endOfShading));
    }
  }

  /** Goes through the named and filtered ranges that the current token opens. */
  public static void patchFilters(XmlSplicer splicer, Map<String, NewColumns> columns)
      throws IOException {
    int outside = splicer.depth() - 1;
    while (splicer.depth() > outside) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("how.databaseOpen");
      }
      boolean filter =
          (token == Token.START || token == Token.EMPTY)
              && splicer.is(DATABASE_RANGE)
              && splicer.attribute(BUTTONS)
              && splicer.value().equals("true");
      if (filter && splicer.attribute(TARGET)) {
        NewColumns beside = columns.get(sheet(splicer.value()));
        if (beside != null) {
          widen(splicer, splicer.value(), beside::endOfFilter);
        }
      }
    }
  }

  private static String sheet(String range) {
    Matcher parts = RANGE.matcher(range);
    String name = parts.matches() && parts.group(1) != null ? parts.group(1) : "";
    return name.startsWith("'") ? name.substring(1, name.length() - 1).replace("''", "'") : name;
  }

  /** Replaces the present attribute's value. */
  private static void widen(XmlSplicer splicer, String range, ToIntFunction<Area> end)
      throws IOException {
    replace(splicer, splicer.valueStart(), splicer.valueEnd(), wider(range, end));
  }

  private static void replace(XmlSplicer splicer, int start, int end, String wider)
      throws IOException {
    if (wider != null) {
      splicer.replaceValue(start, end, wider);
    }
  }

  /** Null where nothing changes. */
  private static String wider(String text, ToIntFunction<Area> end) {
    Matcher parts = RANGE.matcher(text);
    CellRange range = parts.matches() ? CellRange.of(parts.group(2) + ":" + parts.group(4)) : null;
    if (range == null) {
      return null;
    }
    int column = end.applyAsInt(range.area());
    String cells = range.upTo(column);
    return column == range.area().lastColumn()
        ? null
        : text.substring(0, parts.start(4)) + cells.substring(cells.indexOf(':') + 1);
  }
}
