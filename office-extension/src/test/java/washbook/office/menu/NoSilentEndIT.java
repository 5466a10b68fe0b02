package washbook.office.menu;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XModel;
import com.sun.star.lang.DisposedException;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.system.SystemShellExecuteException;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XModifiable;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.language.Language;
import washbook.office.SharedOffice;
import washbook.office.dialog.Outcome;
import washbook.office.dialog.StoppedException;
import washbook.office.dialog.Windows;
import washbook.office.help.HelpPage;
import washbook.office.testing.Book;

/** Whatever fails inside a command, the user reads it and the document is as it was. */
class NoSilentEndIT {
  private static final List<Supplier<Throwable>> FAULTS =
      List.of(
          () -> new IllegalStateException("made up"),
          StackOverflowError::new,
          () -> new com.sun.star.uno.RuntimeException("made up"),
          () -> new DisposedException("made up"));

  /**
   * A prime, so that the fatal calls fall into every part of a command; the help makes few calls,
   * of which each fails once.
   */
  private static final int STEP = 23;

  private Book book;

  @BeforeEach
  void open() {
    open(SharedOffice.get().newBook());
  }

  private void open(Book opened) {
    book = opened;
    book.data(
        "A1:D4",
        new Object[][] {
          {"Day", "SG", "Temp °C", "ABV %"},
          {0.0, 1.085, 20.0, 0.0},
          {3.0, 1.05, 24.0, 4.6},
          {6.0, 1.02, "", 8.5}
        });
    book.formula("A8", "=WASHBOOK.ABV(1.085;B3)").select("A8");
  }

  @AfterEach
  void close() {
    book.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fill?ask=no",
        "fill?ask=no&as=pack",
        "fill?ask=no&as=portable&columns=abv",
        "audit",
        "charts",
        "audit?window=yes",
        "charts?window=yes",
        "portable?ask=no",
        "recalculate",
        "explain",
        "help?ask=no"
      })
  void everyFaultIsToldAndWhatWasWrittenIsTakenBack(String command) {
    if (command.contains("window")) {
      book.close();
      open(SharedOffice.get().visibleBook());
    }
    State before = state();
    int step = command.startsWith("help") ? 1 : STEP;
    int fatal = 1;
    for (boolean thrown = true; thrown; fatal += step) {
      FaultyOffice office = new FaultyOffice(fatal, FAULTS.get(fatal % FAULTS.size()));
      Outcome outcome = run(command, office);
      thrown = !office.fatalMethod().isEmpty();
      if (thrown) {
        String where =
            command + ", call " + fatal + ", " + office.fatalMethod() + ": " + outcome.text();
        assertFalse(outcome.done(), where);
        assertTrue(outcome.shown(), where);
        assertTrue(outcome.text().contains("made up") || outcome.text().contains("Error"), where);
        boolean addsSheet = command.startsWith("audit") || command.startsWith("charts");
        // These forget the steps of undo then.
        (addsSheet ? state().withUndo(before.undo()) : state()).assertSame(before, where);
      } else {
        assertTrue(outcome.done(), outcome.text());
      }
    }
    assertTrue(fatal > 1 + step, "the command was never disturbed");
  }

  private Outcome run(String command, FaultyOffice office) {
    return Commands.run(
        Command.of("washbook.office:" + command),
        new Windows(
            office.over(XComponentContext.class, SharedOffice.get().context()),
            null,
            false,
            Language.EN),
        () ->
            new OpenSheet(
                office.over(XModel.class, book.as(XModel.class)),
                office.over(XSpreadsheet.class, book.sheet())));
  }

  @Test
  void aBrowserThatDoesNotStartIsNoticed() {
    FaultyOffice office = new FaultyOffice(3, () -> new SystemShellExecuteException("made up"));
    XComponentContext context = SharedOffice.get().context();
    HelpPage page = HelpPage.of(context, Language.EN).orElseThrow();
    assertFalse(page.isTaken(office.over(XComponentContext.class, context)));
    assertEquals("execute", office.fatalMethod());
  }

  @Test
  void theUsersOwnLastStepIsNotTakenBackWithOurs() {
    XUndoManager undo = book.as(XUndoManagerSupplier.class).getUndoManager();
    String[] steps = undo.getAllUndoActionTitles();
    StoppedException stopped = null;
    try {
      new OpenSheet(book.as(XModel.class), book.sheet())
          .inOneStep(
              "Nothing yet",
              () -> {
                throw new IllegalStateException("made up");
              });
    } catch (StoppedException e) {
      stopped = e;
    }
    assertEquals(
        "The command stopped because of an error (IllegalStateException: made up). Nothing was"
            + " changed.",
        stopped.getMessage());
    assertArrayEquals(steps, undo.getAllUndoActionTitles());
  }

  private record State(
      List<String> cells,
      List<String> sheets,
      List<String> undo,
      boolean modified,
      boolean locked,
      boolean automatic) {
    State withUndo(List<String> other) {
      return new State(cells, sheets, other, modified, locked, automatic);
    }

    void assertSame(State before, String where) {
      assertEquals(before, this, where);
    }
  }

  private State state() {
    XUndoManager undo = book.as(XUndoManagerSupplier.class).getUndoManager();
    String[][] formulas =
        UnoRuntime.queryInterface(
                XCellRangeFormula.class, book.sheet().getCellRangeByName("A1:K12"))
            .getFormulaArray();
    return new State(
        Arrays.stream(formulas).map(row -> String.join("|", row)).toList(),
        List.of(book.as(XSpreadsheetDocument.class).getSheets().getElementNames()),
        List.of(undo.getAllUndoActionTitles()),
        book.as(XModifiable.class).isModified(),
        undo.isLocked() || book.as(XModel.class).hasControllersLocked(),
        book.as(XCalculatable.class).isAutomaticCalculationEnabled());
  }
}
