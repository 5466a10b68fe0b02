package washbook.office.testing;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.io.IOException;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.CloseVetoException;
import com.sun.star.util.XCloseable;
import com.sun.star.view.XSelectionSupplier;
import java.nio.file.Path;

/** A spreadsheet document open in the office; addresses are on its first sheet. */
public final class Book implements AutoCloseable {
  private final Office office;
  private final XComponent component;
  private final XSpreadsheet sheet;

  private Book(Office office, XComponent component) {
    this.office = office;
    this.component = component;
    try {
      var sheets = as(XSpreadsheetDocument.class).getSheets();
      Object first = sheets.getByName(sheets.getElementNames()[0]);
      sheet = UnoRuntime.queryInterface(XSpreadsheet.class, first);
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  static Book load(Office office, String url, boolean hidden) {
    try {
      XComponent loaded =
          UnoRuntime.queryInterface(XComponentLoader.class, office.desktop())
              .loadComponentFromURL(
                  url, "_blank", 0, new PropertyValue[] {property("Hidden", hidden)});
      if (loaded == null) {
        throw new IllegalStateException("the office does not open " + url);
      }
      return new Book(office, loaded);
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException("the office does not open " + url, e);
    }
  }

  /** The document's interface of that type. */
  public <T> T as(Class<T> type) {
    return UnoRuntime.queryInterface(type, component);
  }

  public XSpreadsheet sheet() {
    return sheet;
  }

  public XFrame frame() {
    XController controller = as(XModel.class).getCurrentController();
    return controller.getFrame();
  }

  public XCell cell(String address) {
    try {
      return sheet.getCellRangeByName(address).getCellByPosition(0, 0);
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new IllegalArgumentException(address, e);
    }
  }

  public Book number(String address, double value) {
    cell(address).setValue(value);
    return this;
  }

  public Book text(String address, String value) {
    UnoRuntime.queryInterface(XText.class, cell(address)).setString(value);
    return this;
  }

  /** Puts a formula in, with semicolons between arguments. */
  public Book formula(String address, String formula) {
    cell(address).setFormula(formula);
    return this;
  }

  /** Puts one array formula over a range. */
  public Book array(String range, String formula) {
    UnoRuntime.queryInterface(XArrayFormulaRange.class, sheet.getCellRangeByName(range))
        .setArrayFormula(formula);
    return this;
  }

  /** Puts numbers and texts into a range of that shape; null leaves a cell blank. */
  public Book data(String range, Object[][] values) {
    UnoRuntime.queryInterface(XCellRangeData.class, sheet.getCellRangeByName(range))
        .setDataArray(values);
    return this;
  }

  /** Numbers and texts of a range; a void for an error. */
  public Object[][] data(String range) {
    return UnoRuntime.queryInterface(XCellRangeData.class, sheet.getCellRangeByName(range))
        .getDataArray();
  }

  /** Runs a command in the document's window; what it answers, or null. */
  public Object dispatch(String url) {
    XDispatchHelper helper =
        office.service("com.sun.star.frame.DispatchHelper", XDispatchHelper.class);
    XDispatchProvider window = UnoRuntime.queryInterface(XDispatchProvider.class, frame());
    Object event = helper.executeDispatch(window, url, "_self", 0, new PropertyValue[0]);
    return event instanceof DispatchResultEvent result ? result.Result : null;
  }

  /** Brings the first sheet to the front of the window. */
  public void show() {
    UnoRuntime.queryInterface(XSpreadsheetView.class, as(XModel.class).getCurrentController())
        .setActiveSheet(sheet);
  }

  /** Makes a range the selection of the window. */
  public void select(String range) {
    UnoRuntime.queryInterface(XSelectionSupplier.class, as(XModel.class).getCurrentController())
        .select(sheet.getCellRangeByName(range));
  }

  public double number(String address) {
    return cell(address).getValue();
  }

  /** Formats of a range, and what else the office keeps with it. */
  public XPropertySet look(String range) {
    return UnoRuntime.queryInterface(XPropertySet.class, sheet.getCellRangeByName(range));
  }

  /** What the cell shows. */
  public String shown(String address) {
    return UnoRuntime.queryInterface(XText.class, cell(address)).getString();
  }

  /** The number of the error in the cell, 0 for none. */
  public int error(String address) {
    return cell(address).getError();
  }

  public void recalculate() {
    as(XCalculatable.class).calculateAll();
  }

  /** Saves it; the ending of the name says how. */
  public void save(Path file) {
    String name = file.toString();
    String filter =
        name.endsWith(".xlsx")
            ? "Calc MS Excel 2007 XML"
            : name.endsWith(".xls") ? "MS Excel 97" : "calc8";
    try {
      as(XStorable.class)
          .storeToURL(
              file.toUri().toString(), new PropertyValue[] {property("FilterName", filter)});
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    try {
      as(XCloseable.class).close(true);
    } catch (CloseVetoException e) {
      throw new IllegalStateException(e);
    }
  }

  static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }
}
