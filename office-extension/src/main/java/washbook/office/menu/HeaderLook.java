package washbook.office.menu;

import com.sun.star.beans.Property;
import com.sun.star.beans.PropertyAttribute;
import com.sun.star.beans.PropertyState;
import com.sun.star.beans.PropertyVetoException;
import com.sun.star.beans.UnknownPropertyException;
import com.sun.star.beans.XPropertySet;
import com.sun.star.beans.XPropertyState;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.AnyConverter;
import com.sun.star.uno.UnoRuntime;
import java.util.regex.Pattern;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;

/** Makes a new header look like the headers that are there, and readable. */
final class HeaderLook {
  /** Of the default font; hundredths of a millimetre. */
  private static final int LETTER_WIDTH = 240;

  /** What a cell has besides its look, and the sums of other properties. */
  private static final Pattern NO_LOOK =
      Pattern.compile(
          "Validation.*|Conditional.*|Formula.*|NumberFormat|UserDefined.*|TableBorder.*"
              + "|AbsoluteName|CellStyle|.*XML");

  private final OpenSheet sheet;
  private final Grid before;

  HeaderLook(OpenSheet sheet, Grid before) {
    this.sheet = sheet;
    this.before = before;
  }

  /** Leaves headers alone that were there before. */
  void apply(ColumnPatch patch) throws com.sun.star.uno.Exception {
    int row = patch.headerRow();
    if (!isBlank(row, patch.column())) {
      return;
    }
    XPropertySet header = cell(row, patch.column());
    int left = patch.column() - 1;
    while (left >= 0 && isBlank(row, left)) {
      left--;
    }
    if (left >= 0) {
      copy(cell(row, left), header);
    }
    header.setPropertyValue("IsTextWrapped", true);
    widen(patch);
    XPropertySet line = line(row);
    if (isFitted(line)) {
      line.setPropertyValue("OptimalHeight", true);
    }
  }

  private XPropertySet line(int row) throws com.sun.star.uno.Exception {
    return properties(sheet.sheet(XColumnRowRange.class).getRows().getByIndex(row));
  }

  private static boolean isFitted(XPropertySet line) throws com.sun.star.uno.Exception {
    return Boolean.TRUE.equals(line.getPropertyValue("OptimalHeight"));
  }

  /**
   * One property after the other: offices differ in what they have, and a property that reads as
   * nothing or is refused must not cost the others.
   */
  static void copy(XPropertySet from, XPropertySet to) throws com.sun.star.uno.Exception {
    to.setPropertyValue("CellStyle", from.getPropertyValue("CellStyle"));
    XPropertyState states = UnoRuntime.queryInterface(XPropertyState.class, from);
    for (Property property : from.getPropertySetInfo().getProperties()) {
      boolean copied =
          (property.Attributes & PropertyAttribute.READONLY) == 0
              && !NO_LOOK.matcher(property.Name).matches()
              && states.getPropertyState(property.Name) == PropertyState.DIRECT_VALUE;
      if (copied) {
        copy(property.Name, from, to);
      }
    }
  }

  private static void copy(String name, XPropertySet from, XPropertySet to)
      throws com.sun.star.uno.Exception {
    Object value = from.getPropertyValue(name);
    if (value == null || AnyConverter.isVoid(value)) {
      return;
    }
    try {
      to.setPropertyValue(name, value);
    } catch (IllegalArgumentException | PropertyVetoException | UnknownPropertyException e) {
      // A header that looks a little different is better than a log that is not filled.
    }
  }

  /** Two lines of header, or one where the user has fixed the height of the row. */
  private void widen(ColumnPatch patch) throws com.sun.star.uno.Exception {
    for (int row = 0; row < before.rowCount(); row++) {
      if (!isBlank(row, patch.column())) {
        return;
      }
    }
    int letters = patch.header().length();
    if (isFitted(line(patch.headerRow()))) {
      letters = inTwoLines(patch.header());
    }
    int width = (letters + 2) * LETTER_WIDTH;
    XPropertySet column =
        properties(sheet.sheet(XColumnRowRange.class).getColumns().getByIndex(patch.column()));
    if ((Integer) column.getPropertyValue("Width") < width) {
      column.setPropertyValue("Width", width);
    }
  }

  /** The longer line when a text is divided into two as evenly as its words allow. */
  private static int inTwoLines(String text) {
    int least = text.length();
    for (int i = text.indexOf(' '); i >= 0; i = text.indexOf(' ', i + 1)) {
      least = Math.min(least, Math.max(i, text.length() - i - 1));
    }
    return least;
  }

  private boolean isBlank(int row, int column) {
    return !before.isFormula(row, column) && before.kind(row, column) == Grid.Kind.BLANK;
  }

  private XPropertySet cell(int row, int column) throws com.sun.star.uno.Exception {
    return properties(sheet.sheet().getCellByPosition(column, row));
  }

  private static XPropertySet properties(Object of) {
    return UnoRuntime.queryInterface(XPropertySet.class, of);
  }
}
