package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.uno.UnoRuntime;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import washbook.log.answer.KeptAnswers;
import washbook.office.testing.Book;
import washbook.office.testing.Dialogs;
import washbook.office.testing.Office;

/** What the dialog before a fill shows can be changed there, as a user does it. */
class FillDialogIT {
  private static Office office;
  private static Dialogs dialogs;

  @BeforeAll
  static void startTheOffice() {
    office = Office.withDialogs(SharedOffice.extension());
    dialogs = new Dialogs(office);
  }

  @AfterAll
  static void endTheOffice() {
    office.close();
  }

  /** Its temperatures are in °F, whatever its header says. */
  private static Book log() {
    return office
        .newBook()
        .data(
            "A1:C5",
            new Object[][] {
              {"Day", "SG", "Temp °C"},
              {0.0, 1.085, 35.0},
              {3.0, 1.05, 38.0},
              {6.0, 1.02, 36.0},
              {9.0, 1.0, 34.0}
            });
  }

  private static CompletableFuture<Void> fill(Book book) {
    return CompletableFuture.runAsync(
        () -> office.onMainThread(() -> book.dispatch("washbook.office:fill")));
  }

  private static String kept(Book book) throws com.sun.star.uno.Exception {
    XPropertySet properties =
        UnoRuntime.queryInterface(
            XPropertySet.class,
            book.as(XDocumentPropertiesSupplier.class)
                .getDocumentProperties()
                .getUserDefinedProperties());
    return properties.getPropertySetInfo().hasPropertyByName(KeptAnswers.PROPERTY)
        ? (String) properties.getPropertyValue(KeptAnswers.PROPERTY)
        : "";
  }

  @Test
  void aColumnTakenForSomethingElseIsComputedAtOnceAndKept() throws Exception {
    try (Book book = log()) {
      CompletableFuture<Void> command = fill(book);
      dialogs.awaitText("Row 5: Corrected gravity (SG) 1.00");
      dialogs.choose("C1", "temperature in F");
      dialogs.awaitText("Row 5: Corrected gravity (SG) 0.99");
      dialogs.press("Alcohol to date");
      dialogs.awaitText("Row 5: Corrected gravity (SG) 0.9975; Apparent attenuation");
      dialogs.press("Write plain arithmetic");
      dialogs.press("Fill");
      dialogs.press("OK");
      command.get(1, TimeUnit.MINUTES);
      assertTrue(kept(book).contains("column C = TEMPERATURE in F"), kept(book));
      assertEquals("Corrected gravity (SG)", book.shown("D1"));
      assertEquals("Apparent attenuation (%)", book.shown("E1"));
      String formula = book.cell("D3").getFormula();
      assertTrue(formula.startsWith("=") && !formula.contains("WASHBOOK"), formula);
      assertEquals(1.0475, book.number("D3"), 0.002);
      assertEquals(0, book.error("E5"));
    }
  }

  @Test
  void whatIsCalledOffLeavesTheDocumentAlone() throws Exception {
    try (Book book = log()) {
      CompletableFuture<Void> command = fill(book);
      dialogs.choose("C1", "temperature in F");
      dialogs.awaitText("Row 5: Corrected gravity (SG) 0.99");
      dialogs.press("Cancel");
      command.get(1, TimeUnit.MINUTES);
      assertEquals("", kept(book));
      assertEquals("", book.shown("D1"));
    }
  }

  /** A log of fourteen columns has two more behind the button. */
  @Test
  void everyColumnCanBeReached() throws Exception {
    try (Book book = log()) {
      Object[] heads = new Object[11];
      Object[] words = new Object[11];
      for (int i = 0; i < heads.length; i++) {
        heads[i] = "Remark " + (i + 1);
        words[i] = "fine";
      }
      book.data("D1:N3", new Object[][] {heads, words, words});
      CompletableFuture<Void> command = fill(book);
      dialogs.press("More columns");
      dialogs.choose("N1", "note");
      dialogs.press("More columns");
      dialogs.choose("C1", "temperature in F");
      dialogs.awaitText("Row 5: Corrected gravity (SG) 0.99");
      dialogs.press("Write formulas");
      dialogs.press("Fill");
      dialogs.awaitText("#NAME? when it is saved as .ods");
      dialogs.press("OK");
      command.get(1, TimeUnit.MINUTES);
      assertTrue(kept(book).contains("column N = NOTE"), kept(book));
      assertFalse(book.shown("P3").isEmpty());
    }
  }
}
