package washbook.samples.answers;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyAttribute;
import com.sun.star.beans.XPropertyContainer;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.ComputedColumn;
import washbook.log.Understanding;
import washbook.log.answer.KeptAnswers;
import washbook.log.fill.FillOptions;
import washbook.log.fill.FilledColumn;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.Grid;
import washbook.log.understand.SheetUnderstanding;
import washbook.office.testing.Book;
import washbook.office.testing.Dialogs;
import washbook.office.testing.Office;
import washbook.runner.FileFormats;
import washbook.runner.ask.MapBeside;
import washbook.runner.read.CustomProperty;

/** What is answered in the office is kept in the document, and the runner fills it by that. */
class AnswersInDocumentIT {
  private static final Object[][] LOG = {
    {"Plum wine, fermentation", "", ""},
    {"Day", "Reading", "Temp °C"},
    {0.0, 20.5, 20.0},
    {3.0, 14.0, 24.0},
    {6.0, 9.0, 21.0},
    {9.0, 6.0, 21.0}
  };

  private static final String FILL = "washbook.office:fill";

  @TempDir static Path folder;
  private static Office office;
  private static Dialogs dialogs;

  @BeforeAll
  static void startTheOffice() {
    office = Office.withDialogs(Path.of(System.getProperty("washbook.oxt")));
    dialogs = new Dialogs(office);
  }

  @AfterAll
  static void endTheOffice() {
    office.close();
  }

  private static Book log() {
    Book book = office.newBook();
    book.data("A1:C6", LOG);
    return book;
  }

  private static XPropertyContainer properties(Book book) {
    return book.as(XDocumentPropertiesSupplier.class)
        .getDocumentProperties()
        .getUserDefinedProperties();
  }

  private static String kept(Book book) {
    XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, properties(book));
    try {
      return properties.getPropertySetInfo().hasPropertyByName(KeptAnswers.PROPERTY)
          ? (String) properties.getPropertyValue(KeptAnswers.PROPERTY)
          : null;
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** The menu's command as a user starts it, which waits for its dialogs. */
  private static CompletableFuture<Object> fill(Book book) {
    return CompletableFuture.supplyAsync(() -> book.dispatch(FILL));
  }

  /** The alcohol that the runner computes for each row of a file by what is kept in it. */
  private static double[] abv(Path file) throws IOException {
    MapBeside map = MapBeside.of(file);
    assertTrue(map.isKept());
    Grid grid = FileFormats.of(file).reader().read(file).get(0);
    Understanding understanding = SheetUnderstanding.understand(grid, map.map());
    FilledColumn column =
        LogFiller.fill(grid, understanding, FillOptions.usual())
            .column(understanding.tables().get(0), ComputedColumn.ABV)
            .orElseThrow();
    return IntStream.rangeClosed(2, 5)
        .mapToDouble(row -> column.patch().cells().number(row))
        .toArray();
  }

  private static double[] shownAbv(Book book) {
    return IntStream.rangeClosed(3, 6).mapToDouble(row -> book.number("E" + row)).toArray();
  }

  @ParameterizedTest
  @ValueSource(strings = {"ods", "xlsx"})
  void anAnswerGivenInTheDialogIsKeptAndTheRunnerFillsByIt(String kind) throws Exception {
    Path file = folder.resolve("answered." + kind);
    double[] shown;
    try (Book book = log()) {
      CompletableFuture<Object> command = fill(book);
      dialogs.awaitText("Sheet Sheet1, B2: On which scale are the readings");
      dialogs.awaitText("column B = REFRACTOMETER in BRIX\nalcohol from 0 to 12.9 % vol in 4 rows");
      dialogs.press("column B = GRAVITY in BRIX");
      dialogs.press("Answer");
      dialogs.press("Fill");
      dialogs.press("OK");
      String said = String.valueOf(command.get(1, TimeUnit.MINUTES));
      assertEquals("The log is filled. Readings: 4; filled: 4; refused: 0.", said);
      shown = shownAbv(book);
      assertEquals(8.2, shown[3], 0.05);
      book.save(file);
      assertEquals(kept(book), CustomProperty.of(file, KeptAnswers.PROPERTY).orElse("none"));
    }
    assertArrayEquals(shown, abv(file), 1e-9);
    try (Book again = office.open(file)) {
      String said = String.valueOf(again.dispatch(FILL + "?ask=no"));
      assertTrue(said.startsWith("By the answers that the document keeps"), said);
      assertTrue(said.contains("Rows: 5; filled: 4; refused: 0; passed over: 1"), said);
    }
  }

  @Test
  void anAnswerKeptByAnotherProgramFillsTheLogInTheOffice() throws Exception {
    Path file = folder.resolve("kept.xlsx");
    try (Book book = log()) {
      book.save(file);
    }
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      workbook
          .getProperties()
          .getCustomProperties()
          .addProperty(
              KeptAnswers.PROPERTY,
              "[table]\nsheet = Sheet1\nheader row = 2\ncolumn B = REFRACTOMETER in BRIX");
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
    try (Book book = office.open(file)) {
      String said = String.valueOf(book.dispatch(FILL + "?ask=no"));
      assertTrue(said.contains("filled: 4; refused: 0"), said);
      assertEquals(12.9, book.number("E6"), 0.05);
      assertArrayEquals(abv(file), shownAbv(book), 1e-9);
    }
  }

  @Test
  void aWrongAnswerIsAskedAgainAndAQuestionLeftOpenKeepsNothing() throws Exception {
    try (Book book = log()) {
      CompletableFuture<Object> command = fill(book);
      dialogs.type("column B = SWEETNESS");
      dialogs.press("Answer");
      dialogs.awaitText("SWEETNESS");
      dialogs.press("Leave it open");
      dialogs.awaitText("No row can be computed so.");
      dialogs.press("Cancel");
      command.get(1, TimeUnit.MINUTES);
      assertNull(kept(book));
      assertEquals("", book.shown("D2"));
    }
  }

  @Test
  void answersThatCannotBeReadAreToldAndNotOverwritten() throws Exception {
    try (Book book = log()) {
      properties(book).addProperty(KeptAnswers.PROPERTY, PropertyAttribute.REMOVABLE, "warm");
      String said = String.valueOf(book.dispatch(FILL + "?ask=no"));
      assertTrue(said.contains("custom property Washbook answers, cannot be used"), said);
      assertEquals("", book.shown("D2"));
      assertEquals("warm", kept(book));
    }
  }
}
