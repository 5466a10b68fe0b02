package washbook.office.menu;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.XConditionalFormat;
import com.sun.star.sheet.XConditionalFormats;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetCellRangeContainer;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import washbook.functions.portable.FormulaRewriter;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.office.language.OfficeText;

/**
 * Calls of our functions that no cell holds: in names, conditional formats and checks of entries.
 * They stay, since these places hold short formulas only.
 */
final class DocumentFormulasOutsideCells {
  private final List<Message> found = new ArrayList<>();

  private DocumentFormulasOutsideCells() {}

  /** One line for each, with its place. */
  static List<Message> of(OpenSheet open) throws com.sun.star.uno.Exception {
    DocumentFormulasOutsideCells others = new DocumentFormulasOutsideCells();
    others.readNames("", open.document(XPropertySet.class));
    var sheets = open.document(XSpreadsheetDocument.class).getSheets();
    for (String name : sheets.getElementNames()) {
      XSpreadsheet sheet = UnoRuntime.queryInterface(XSpreadsheet.class, sheets.getByName(name));
      XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, sheet);
      others.readNames(name + " ", properties);
      others.readFormats(name, properties);
      others.readChecks(name, sheet);
    }
    return others.found;
  }

  private void readNames(String where, XPropertySet holder) throws com.sun.star.uno.Exception {
    XNamedRanges names =
        UnoRuntime.queryInterface(XNamedRanges.class, holder.getPropertyValue("NamedRanges"));
    for (String name : names.getElementNames()) {
      XNamedRange range = UnoRuntime.queryInterface(XNamedRange.class, names.getByName(name));
      if (FormulaRewriter.concerns(range.getContent())) {
        leave(where + name, "portable.name");
      }
    }
  }

  private void readFormats(String where, XPropertySet sheet) throws com.sun.star.uno.Exception {
    XConditionalFormats formats =
        UnoRuntime.queryInterface(
            XConditionalFormats.class, sheet.getPropertyValue("ConditionalFormats"));
    for (XConditionalFormat format : formats.getConditionalFormats()) {
      XIndexAccess entries = UnoRuntime.queryInterface(XIndexAccess.class, format);
      for (int i = 0; i < entries.getCount(); i++) {
        if (concerns(entries.getByIndex(i))) {
          var range =
              UnoRuntime.queryInterface(
                  XSheetCellRangeContainer.class,
                  UnoRuntime.queryInterface(XPropertySet.class, format).getPropertyValue("Range"));
          leave(where + " " + words(range.getRangeAddresses()), "portable.format");
          break;
        }
      }
    }
  }

  /** An entry of a conditional format: data bars and the like have other properties. */
  private static boolean concerns(Object entry) throws com.sun.star.uno.Exception {
    XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, entry);
    for (String name : List.of("Formula1", "Formula2")) {
      if (properties.getPropertySetInfo().hasPropertyByName(name)
          && FormulaRewriter.concerns(String.valueOf(properties.getPropertyValue(name)))) {
        return true;
      }
    }
    return false;
  }

  private void readChecks(String where, XSpreadsheet sheet) throws com.sun.star.uno.Exception {
    XIndexAccess groups =
        UnoRuntime.queryInterface(XUniqueCellFormatRangesSupplier.class, sheet)
            .getUniqueCellFormatRanges();
    for (int i = 0; i < groups.getCount(); i++) {
      Object group = groups.getByIndex(i);
      Object check =
          UnoRuntime.queryInterface(XPropertySet.class, group).getPropertyValue("Validation");
      XSheetCondition condition = UnoRuntime.queryInterface(XSheetCondition.class, check);
      if (condition != null
          && (FormulaRewriter.concerns(condition.getFormula1())
              || FormulaRewriter.concerns(condition.getFormula2()))) {
        var ranges = UnoRuntime.queryInterface(XSheetCellRangeContainer.class, group);
        leave(where + " " + words(ranges.getRangeAddresses()), "portable.check");
      }
    }
  }

  private static String words(CellRangeAddress[] ranges) {
    StringJoiner words = new StringJoiner(" ");
    for (CellRangeAddress at : ranges) {
      String first = CellAddress.of(at.StartRow, at.StartColumn);
      String last = CellAddress.of(at.EndRow, at.EndColumn);
      words.add(first.equals(last) ? first : first + ":" + last);
    }
    return words.toString();
  }

  private void leave(String where, String what) {
    found.add(OfficeText.of("portable.outside", where, OfficeText.of(what)));
  }
}
