package washbook.runner.extent;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/**
 * What stands behind the cells of a sheet and reaches over a log: its filter and the rules that
 * shade whole rows (ECMA-376-1:2016, 18.3.1.2 autoFilter, 18.3.1.18 conditionalFormatting), also
 * those in the list of extensions (MS-XLSX 2.6.32 CT_ConditionalFormatting), whose ranges stand in
 * an element of their own.
 */
public final class XlsxSheetEnd {
  private static final byte[] FILTER = ascii("autoFilter");
  private static final byte[] RULES = ascii("conditionalFormatting");
  private static final byte[] RULE = ascii("cfRule");
  private static final byte[] FORMULA = ascii("formula");
  private static final byte[] REF = ascii("ref");
  private static final byte[] SQREF = ascii("sqref");
  private static final byte[] TYPE = ascii("type");

  private XlsxSheetEnd() {}

  /** Goes from the end of the cells to the end of the sheet. */
  public static void patch(XmlSplicer splicer, NewColumns columns, XlsxPage page)
      throws IOException {
    for (Token token = splicer.next();
        token != Token.DONE && !columns.isEmpty();
        token = splicer.next()) {
      boolean child =
          token == Token.START && splicer.depth() == 2
              || token == Token.EMPTY && splicer.depth() == 1;
      page.after(splicer, token, child);
      if (child && splicer.is(FILTER) && splicer.attribute(REF)) {
        CellRange range = CellRange.of(splicer.value());
        if (range != null) {
          byte[] wider = ascii(range.upTo(columns.endOfFilter(range.area())));
          splicer.replace(splicer.valueStart(), splicer.valueEnd(), wider);
        }
      } else if (token == Token.START && splicer.is(RULES)) {
        patchRules(splicer, columns);
      }
    }
    splicer.finish();
  }

  private static void patchRules(XmlSplicer splicer, NewColumns columns) throws IOException {
    splicer.holdFrom(splicer.tokenStart());
    Rules rules = new Rules();
    if (splicer.attribute(SQREF)) {
      rules.reach(splicer, splicer.valueStart(), splicer.valueEnd());
    }
    rules.read(splicer);
    int base = splicer.held();
    splicer.release();
    if (rules.byRow && rules.ranges != null) {
      StringBuilder wider = new StringBuilder();
      for (String one : rules.ranges.strip().split("\\s+")) {
        CellRange range = CellRange.of(one);
        wider.append(wider.isEmpty() ? "" : " ");
        wider.append(range == null ? one : range.upTo(columns.endOfShading(range.area())));
      }
      splicer.replace(base + rules.start, base + rules.end, ascii(wider.toString()));
    }
  }

  /** The rules of one element: their ranges, and whether all of them look at whole rows. */
  private static final class Rules {
    private String ranges;
    private int start;
    private int end;
    private boolean byRow = true;

    /** Takes in where the ranges stand, counted from the held bytes. */
    void reach(XmlSplicer splicer, int from, int to) {
      ranges = new String(splicer.bytes(), from, to - from, StandardCharsets.UTF_8);
      start = from - splicer.held();
      end = to - splicer.held();
    }

    void read(XmlSplicer splicer) throws IOException {
      int outside = splicer.depth() - 1;
      boolean inFormula = false;
      boolean inRanges = false;
      while (splicer.depth() > outside) {
        Token token = splicer.next();
        if (token == Token.DONE) {
          throw splicer.damaged("how.rulesOpen");
        }
        if (token == Token.START || token == Token.EMPTY) {
          inFormula = token == Token.START && (splicer.is(FORMULA) || splicer.is('f'));
          inRanges = token == Token.START && splicer.is(SQREF);
          if (splicer.is(RULE)) {
            byRow &= splicer.attribute(TYPE) && splicer.value().equals("expression");
          }
        } else if (inFormula && (token == Token.TEXT || token == Token.CDATA)) {
          int from = splicer.tokenStart();
          int length = splicer.tokenEnd() - from;
          String formula = new String(splicer.bytes(), from, length, StandardCharsets.UTF_8);
          byRow &= ShadingFormula.isByRow(formula.replace("&quot;", "\""));
        } else if (inRanges && token == Token.TEXT) {
          byRow &= ranges == null;
          reach(splicer, splicer.tokenStart(), splicer.tokenEnd());
        } else {
          inFormula = false;
          inRanges = false;
        }
      }
    }
  }
}
