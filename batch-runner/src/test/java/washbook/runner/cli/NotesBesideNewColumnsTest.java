package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.runner.RawOds;
import washbook.runner.corpus.ZipParts;

/** Notes that ran on over blank cells can still be read where new columns come there. */
class NotesBesideNewColumnsTest {
  private static final int NOTES = 3;
  private static final String LONG = "pitched at noon, smells of treacle";

  @TempDir private Path folder;

  @Test
  void theColumnOfNotesThatRanOnIsMadeWider() throws IOException {
    Path filled = filled(log("", LONG, "", "clear"), "once");
    double width = width(filled);
    assertTrue(width >= LONG.length() && width < LONG.length() + 3, width + " characters");
    assertEquals(-1, Files.mismatch(filled, filled(filled, "twice")));
  }

  @Test
  void shortNotesAndAWidthOfThePersonsStay() throws IOException {
    Path log = log("", "foam", "", "clear");
    assertEquals(width(log), width(filled(log, "short")));
    Path own = folder.resolve("own.xlsx");
    try (InputStream in = Files.newInputStream(log(LONG, "", "", ""));
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(own)) {
      book.getSheetAt(0).setColumnWidth(NOTES, 14 * 256);
      book.write(out);
    }
    assertEquals(14, width(filled(own, "own")), 0.01);
  }

  /** A text that wraps or is made smaller ran on over nothing. */
  @ParameterizedTest
  @ValueSource(strings = {"xlsx wraps", "xlsx shrinks", "xls wraps", "xls shrinks"})
  void notesThatStayInTheirCellsNeedNoWiderColumn(String how) throws IOException {
    Path log = folder.resolve("inside." + how.split(" ")[0]);
    Workbook made = how.startsWith("xlsx") ? new XSSFWorkbook() : new HSSFWorkbook();
    CellStyle style = made.createCellStyle();
    style.setWrapText(how.endsWith("wraps"));
    style.setShrinkToFit(how.endsWith("shrinks"));
    try (made) {
      fillIn(made, "", LONG, "", "clear");
      made.getSheetAt(0).getRow(2).getCell(NOTES).setCellStyle(style);
      try (OutputStream out = Files.newOutputStream(log)) {
        made.write(out);
      }
    }
    assertEquals(width(log), width(filled(log, "inside")));
  }

  @Test
  void soItIsWithStylesOfAnOpenDocumentLog() throws IOException {
    String columns =
        "<table:table-column table:number-columns-repeated=\"3\"/>"
            + "<table:table-column table:default-cell-style-name=\"wraps\"/>";
    for (String kept : new String[] {"fo:wrap-option=\"wrap\"", "style:shrink-to-fit=\"true\""}) {
      String style =
          "<style:style style:name=\"wraps\" style:family=\"table-cell\">"
              + "<style:table-cell-properties "
              + kept
              + "/></style:style>";
      Path log =
          RawOds.log("<text:p>" + LONG + "</text:p>")
              .styles(style)
              .inTable(columns)
              .write(folder.resolve("inside.ods"));
      String filled = content(filled(log, "inside" + kept.length()));
      assertFalse(filled.contains("washbook-width-31"), filled);
    }
  }

  /** Be it the usual one. */
  @Test
  void aWidthThatAPersonHasSetToTheUsualOneIsNoRoomToGrow() throws IOException {
    Path own = folder.resolve("usual.xlsx");
    try (InputStream in = Files.newInputStream(log("", LONG, "", ""));
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(own)) {
      // 64 pixels, as columns have by themselves.
      book.getSheetAt(0).setColumnWidth(NOTES, (int) (8.43 * 256) + 182);
      book.write(out);
    }
    double before = width(own);
    assertEquals(before, width(filled(own, "usual")));
  }

  /** Not even the longest note makes a column wider than our own. */
  @Test
  void aLongNoteTakesNoMoreThanOneOfOurs() throws IOException {
    assertEquals(36.7, width(filled(log("", LONG + ", " + LONG, "", ""), "long")), 0.1);
  }

  @Test
  void soItIsInAWorkbookOfTheOldKind() throws IOException {
    Path filled = filled(log(new HSSFWorkbook(), "log.xls", "", LONG, "", "clear"), "once");
    double width = width(filled);
    assertTrue(width >= LONG.length() && width < LONG.length() + 3, width + " characters");
    assertEquals(-1, Files.mismatch(filled, filled(filled, "twice")));
    Path log = log(new HSSFWorkbook(), "log.xls", "", "foam", "", "clear");
    assertEquals(width(log), width(filled(log, "short")));
    Path own = folder.resolve("own.xls");
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      book.createSheet("Log").setColumnWidth(NOTES, 14 * 256);
      log(book, "own.xls", LONG, "", "", "");
    }
    assertEquals(14, width(filled(own, "own")), 0.01);
  }

  /** A letter of a sentence takes 1.9 mm there, and none of the widths is in digits. */
  @Test
  void soItIsInAnOpenDocumentLog() throws IOException {
    Path filled = filled(raw("<table:table-column table:number-columns-repeated=\"3\"/>"), "once");
    String content = content(filled);
    assertTrue(
        content.contains(
            "<table:table-column table:number-columns-repeated=\"3\"/>"
                + "<table:table-column table:style-name=\"washbook-width-31\"/>"),
        content);
    assertEquals(-1, Files.mismatch(filled, filled(filled, "twice")));
  }

  /** The columns that nobody has touched are declared as one; hidden ones stay as they are. */
  @Test
  void anOpenDocumentLogsColumnIsTakenOutOfTheOthers() throws IOException {
    String rest = "<table:table-column table:number-columns-repeated=\"16383\"/>";
    assertTrue(content(filled(raw(rest), "rest")).contains("\"washbook-width-31\"/>"));
    String few = "<table:table-column table:number-columns-repeated=\"6\"/>";
    String content = content(filled(raw(few), "few"));
    assertTrue(
        content.contains(
            "<table:table-column table:number-columns-repeated=\"3\"/>"
                + "<table:table-column table:style-name=\"washbook-width-31\"/>"
                + "<table:table-column table:number-columns-repeated=\"2\"/>"),
        content);
    String hidden = "<table:table-column table:visibility=\"collapse\"";
    String four = hidden + " table:number-columns-repeated=\"4\"/>";
    assertTrue(content(filled(raw(four), "hidden")).contains(four));
  }

  private Path raw(String columns) throws IOException {
    return RawOds.log("<text:p>" + LONG + "</text:p>")
        .inTable(columns)
        .write(folder.resolve("log.ods"));
  }

  private static String content(Path file) throws IOException {
    return new String(ZipParts.content(file, "content.xml"), StandardCharsets.UTF_8);
  }

  private Path log(String... notes) throws IOException {
    return log(new XSSFWorkbook(), "log.xlsx", notes);
  }

  private Path log(Workbook made, String name, String... notes) throws IOException {
    Path log = folder.resolve(name);
    try (Workbook book = made;
        OutputStream out = Files.newOutputStream(log)) {
      fillIn(book, notes);
      book.write(out);
    }
    return log;
  }

  private static void fillIn(Workbook book, String... notes) {
    double[][] rows = {{0, 1.085, 20}, {3, 1.05, 21}, {6, 1.02, 20}, {9, 1.004, 19}};
    Sheet sheet = book.getNumberOfSheets() > 0 ? book.getSheetAt(0) : book.createSheet("Log");
    Row head = sheet.createRow(0);
    String[] heads = {"Day", "SG", "Temp C", "Notes"};
    for (int column = 0; column < heads.length; column++) {
      head.createCell(column).setCellValue(heads[column]);
    }
    for (int i = 0; i < rows.length; i++) {
      Row row = sheet.createRow(i + 1);
      for (int column = 0; column < NOTES; column++) {
        row.createCell(column).setCellValue(rows[i][column]);
      }
      if (!notes[i].isEmpty()) {
        row.createCell(NOTES).setCellValue(notes[i]);
      }
    }
  }

  private Path filled(Path log, String into) {
    Cli run = Cli.run("fill", log.toString(), "--out", folder.resolve(into).toString());
    assertEquals(0, run.code(), run.out() + run.err());
    return folder.resolve(into).resolve(log.getFileName());
  }

  private static double width(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file);
        Workbook book = WorkbookFactory.create(in)) {
      return book.getSheetAt(0).getColumnWidth(NOTES) / 256.0;
    }
  }
}
