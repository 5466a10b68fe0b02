package washbook.runner.extent;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/**
 * What stands behind the cells of a sheet and reaches over a log: its filter and the rules that
 * shade whole rows (ECMA-376-1:2016, 18.3.1.2 autoFilter, 18.3.1.18 conditionalFormatting).
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
  public static void patch(XmlSplicer splicer, NewColumns columns) throws IOException {
    for (Token token = splicer.next();
        token != Token.DONE && !columns.isEmpty();
        token = splicer.next()) {
      boolean child =
          token == Token.START && splicer.depth() == 2
              || token == Token.EMPTY && splicer.depth() == 1;
      if (child && splicer.is(FILTER) && splicer.attribute(REF)) {
        CellRange range = CellRange.of(splicer.value());
        if (range != null) {
          byte[] wider = ascii(range.upTo(columns.endOfFilter(range.area())));
          splicer.replace(splicer.valueStart(), splicer.valueEnd(), wider);
        }
      } else if (token == Token.START && child && splicer.is(RULES)) {
        patchRules(splicer, columns);
      }
    }
    splicer.finish();
  }

  private static void patchRules(XmlSplicer splicer, NewColumns columns) throws IOException {
    if (!splicer.attribute(SQREF)) {
      return;
    }
    String ranges = splicer.value();
    splicer.holdFrom(splicer.tokenStart());
    int start = splicer.valueStart() - splicer.held();
    int end = splicer.valueEnd() - splicer.held();
    boolean byRow = shadesRows(splicer);
    int base = splicer.held();
    splicer.release();
    if (byRow) {
      StringBuilder wider = new StringBuilder();
      for (String one : ranges.strip().split("\\s+")) {
        CellRange range = CellRange.of(one);
        wider.append(wider.isEmpty() ? "" : " ");
        wider.append(range == null ? one : range.upTo(columns.endOfShading(range.area())));
      }
      splicer.replace(base + start, base + end, ascii(wider.toString()));
    }
  }

  /** Goes through the rules; whether all of them look at whole rows. */
  private static boolean shadesRows(XmlSplicer splicer) throws IOException {
    int outside = splicer.depth() - 1;
    boolean byRow = true;
    boolean inFormula = false;
    while (splicer.depth() > outside) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("rules of formatting are not closed");
      }
      if (token == Token.START || token == Token.EMPTY) {
        inFormula = token == Token.START && splicer.is(FORMULA);
        if (splicer.is(RULE)) {
          byRow &= splicer.attribute(TYPE) && splicer.value().equals("expression");
        }
      } else if (inFormula && (token == Token.TEXT || token == Token.CDATA)) {
        int start = splicer.tokenStart();
        int length = splicer.tokenEnd() - start;
        String formula = new String(splicer.bytes(), start, length, StandardCharsets.UTF_8);
        byRow &= ShadingFormula.isByRow(formula.replace("&quot;", "\""));
      } else {
        inFormula = false;
      }
    }
    return byRow;
  }
}
