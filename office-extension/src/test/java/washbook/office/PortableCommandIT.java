package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSheetConditionalEntries;
import com.sun.star.table.CellAddress;
import com.sun.star.uno.UnoRuntime;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.portable.PortableFormulas;
import washbook.office.testing.Book;

/** The command that puts plain arithmetic in the place of our functions. */
class PortableCommandIT {
  private static final String PORTABLE = "washbook.office:portable?ask=no";

  private Book book;

  @BeforeEach
  void open() {
    book = SharedOffice.get().newBook();
  }

  @AfterEach
  void close() {
    book.close();
  }

  @Test
  void makesAWorkbookPortable() throws Exception {
    book.number("A1", 1.085).number("A2", 1.01);
    book.formula("B1", "=IF(A1>1;WASHBOOK.ABV($A$1;A2);\"a,b\")");
    book.formula("B2", "=WASHBOOK.BLENDSTRENGTH({1|2};{40|60})");
    book.array("C1:C2", "=WASHBOOK.ABV(1.085;A1:A2)");
    double exact = book.number("B1");
    String said = String.valueOf(book.dispatch(PORTABLE));
    assertTrue(said.contains("plain arithmetic: 1 (cells: 1)"), said);
    assertTrue(said.contains("Stays: Sheet1 B2: "), said);
    assertTrue(said.contains("Stays: Sheet1 C1:C2: it is part of an array formula."), said);
    assertFalse(book.cell("B1").getFormula().contains("WASHBOOK"), book.cell("B1").getFormula());
    assertTrue(book.cell("B1").getFormula().contains("\"a,b\""), book.cell("B1").getFormula());
    double most = PortableFormulas.maximumError(Catalogue.get("ABV"));
    assertEquals(exact, book.number("B1"), most + 1e-9);
    book.as(XUndoManagerSupplier.class).getUndoManager().undo();
    assertTrue(book.cell("B1").getFormula().contains("WASHBOOK.ABV"), book.cell("B1").getFormula());
  }

  @Test
  void makesLongColumnsPortableRowByRowAndKeepsFormatsAndComments() throws Exception {
    int rows = 300;
    Object[][] readings = new Object[rows][2];
    for (int i = 0; i < rows; i++) {
      readings[i] = new Object[] {1.085, 1.08 - i * 2e-4};
    }
    book.data("A1:B" + rows, readings);
    Object[][] exact = new Object[rows][1];
    for (int i = 1; i <= rows; i++) {
      book.formula("C" + i, "=WASHBOOK.ABV(A" + i + ";B" + i + ")");
      exact[i - 1][0] = book.number("C" + i);
    }
    book.look("C7").setPropertyValue("CellBackColor", 0xE8D8F0);
    var comments =
        UnoRuntime.queryInterface(XSheetAnnotationsSupplier.class, book.sheet()).getAnnotations();
    comments.insertNew(new CellAddress((short) 0, 2, 20), "strong already");
    String said = String.valueOf(book.dispatch(PORTABLE));
    assertTrue(said.contains("arithmetic: 300 (cells: 300)"), said);
    assertTrue(said.contains("Becomes plain arithmetic: Sheet1 C1:C300"), said);
    double most = PortableFormulas.maximumError(Catalogue.get("ABV"));
    for (int i = 1; i <= rows; i++) {
      assertFalse(book.cell("C" + i).getFormula().contains("WASHBOOK"), "row " + i);
      assertEquals((Double) exact[i - 1][0], book.number("C" + i), most + 1e-9, "row " + i);
    }
    assertEquals(0xE8D8F0, book.look("C7").getPropertyValue("CellBackColor"));
    assertEquals(-1, book.look("C8").getPropertyValue("CellBackColor"));
    assertEquals(1, comments.getCount());
    book.as(XUndoManagerSupplier.class).getUndoManager().undo();
    assertEquals("=WASHBOOK.ABV(A300;B300)", book.cell("C300").getFormula());
    assertEquals(1, comments.getCount());
  }

  @Test
  void listsCallsThatNoCellHolds() throws Exception {
    book.number("A1", 1.085).formula("B1", "=WASHBOOK.ABV(A1;1.01)");
    UnoRuntime.queryInterface(
            XNamedRanges.class, book.as(XPropertySet.class).getPropertyValue("NamedRanges"))
        .addNewByName("Strength", "WASHBOOK.ABV($Sheet1.$A$1;1.01)", new CellAddress(), 0);
    UnoRuntime.queryInterface(
            XNamedRanges.class, book.as(XPropertySet.class).getPropertyValue("NamedRanges"))
        .addNewByName("Start", "$Sheet1.$A$1", new CellAddress(), 0);
    XPropertySet formatted = book.look("C2:C9");
    Object format = formatted.getPropertyValue("ConditionalFormat");
    UnoRuntime.queryInterface(XSheetConditionalEntries.class, format)
        .addNew(
            new PropertyValue[] {
              property("Operator", ConditionOperator.FORMULA),
              property("Formula1", "WASHBOOK.ABV($A$1;C2)>5"),
              property("StyleName", "Good")
            });
    formatted.setPropertyValue("ConditionalFormat", format);
    XPropertySet checked = book.look("D2:D5");
    Object check = checked.getPropertyValue("Validation");
    UnoRuntime.queryInterface(XPropertySet.class, check)
        .setPropertyValue("Type", ValidationType.DECIMAL);
    XSheetCondition condition = UnoRuntime.queryInterface(XSheetCondition.class, check);
    condition.setOperator(ConditionOperator.LESS);
    condition.setFormula1("WASHBOOK.ABV(1.085;1.01)");
    checked.setPropertyValue("Validation", check);
    String said = String.valueOf(book.dispatch(PORTABLE));
    assertTrue(said.contains("plain arithmetic: 1 (cells: 1)"), said);
    assertTrue(said.contains("Stays: Strength (name): no cell holds it;"), said);
    assertTrue(said.contains("Stays: Sheet1 C2:C9 (conditional format): no cell"), said);
    assertTrue(said.contains("Stays: Sheet1 D2:D5 (check of entries): no cell"), said);
    assertEquals(3, said.split("Stays: ", -1).length - 1, said);
  }

  private static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }
}
