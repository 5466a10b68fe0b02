package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/**
 * New columns stand right beside their table if all have room there and a blank column stays before
 * what stands further right; else right of everything in the table's rows, after a blank column.
 */
class PlacesOfNewColumnsTest {
  private static List<ColumnPatch> patches(TestGrid grid) {
    return LogFiller.fill(
            grid, SheetUnderstanding.understand(grid, LogMap.none()), FillOptions.usual())
        .patch()
        .columns();
  }

  private static int first(TestGrid grid) {
    return patches(grid).get(0).column();
  }

  /** A title, the log's header in row 1 (from 0), three readings, a blank row and one below. */
  private static String log(String title, String first, String last, String below) {
    return ("Plum 3" + title + "\nDay|SG|Temp C\n0|1.085|20" + first + "\n3|1.05|20\n")
        + ("6|1.02|20" + last + "\n\n" + below + "\n\n");
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "'', '', '', '', 3",
        "'', '|x', '', '', 5",
        "'', '||||x', '', '', 8",
        "'', '|||||x', '', '', 9",
        "'', '||||||x', '', '', 3",
        "'', '', '|||||x', '', 9",
        "'', '', '|x', '', 5",
        "'||||x', '', '', '', 3",
        "'', '', '', '|||x', 3",
        "'', '|x', '', '||||||||||||x', 5",
      })
  void columnsGoWhereTheyHaveRoom(String title, String first, String last, String below, int at) {
    assertEquals(at, first(TestGrid.of("Log", log(title, first, last, below))));
  }

  private static TestGrid plain() {
    return TestGrid.of("Log", log("", "", "", ""));
  }

  /** Merged cells are taken, though blank: what is written into them is not seen. */
  @ParameterizedTest
  @CsvSource({
    "2, 3, 3, 4, 6",
    "1, 4, 1, 6, 8",
    "4, 6, 4, 7, 9",
    "2, 5, 3, 8, 10",
    "0, 3, 0, 6, 3",
    "5, 3, 5, 6, 3",
    "2, 8, 3, 9, 3",
    "4, 4, 7, 5, 7",
    "0, 4, 1, 5, 7",
  })
  void mergedCellsBesideTheRowsAreTaken(int top, int left, int bottom, int right, int at) {
    assertEquals(at, first(plain().merge(top, left, bottom, right)));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 4, 1, 6, 8",
    "0, 4, 0, 6, 3",
    "4, 4, 9, 6, 8",
    "5, 4, 9, 6, 3",
    "2, 1, 3, 3, 5",
    "2, 1, 3, 2, 3",
  })
  void drawingsBesideTheRowsAreTaken(int top, int left, int bottom, int right, int at) {
    assertEquals(at, first(plain().draw(top, left, bottom, right)));
  }

  private static List<String> headers(TestGrid grid) {
    return patches(grid).stream().map(p -> p.column() + " " + p.header()).toList();
  }

  private static TestGrid sideBySide(String first, String second, String gap) {
    return TestGrid.of(
        "Log",
        (first + "|||" + gap + second + "\nDay|SG|Temp C" + gap + "|Day|SG|Temp C\n")
            + ("0|1.085|20" + gap + "|0|1.065|20\n3|1.05|20" + gap + "|3|1.03|20"));
  }

  @Test
  void besideAnotherTableTheyGoRightOfAllAndNameTheirOwn() {
    List<String> named = headers(sideBySide("Plum 3", "Apple 7", "|"));
    assertEquals(8, named.size());
    assertEquals("8 Corrected gravity (SG, Washbook), Plum 3", named.get(0));
    assertEquals("13 Corrected gravity (SG, Washbook), Apple 7", named.get(4));
    List<String> unnamed = headers(sideBySide("", "", "|"));
    assertEquals("8 Corrected gravity (SG, Washbook), columns A to C", unnamed.get(0));
    assertEquals("13 Corrected gravity (SG, Washbook), columns E to G", unnamed.get(4));
    List<String> wide = headers(sideBySide("Plum 3", "Apple 7", "||||||"));
    assertEquals("3 Corrected gravity (SG)", wide.get(0));
    assertEquals("12 Corrected gravity (SG)", wide.get(4));
  }

  @Test
  void columnsThatNameTheirTableAreFoundAgain() {
    for (String gap : List.of("|", "||||||")) {
      for (String name : List.of("Plum 3", "")) {
        TestGrid grid = sideBySide(name, name.isEmpty() ? "" : "Apple 7", gap);
        TestGrid once = grid.with(patch(grid));
        assertEquals(once.all(), once.with(patch(once)).all(), name + gap);
      }
    }
  }

  private static SheetPatch patch(TestGrid grid) {
    return LogFiller.fill(
            grid, SheetUnderstanding.understand(grid, LogMap.none()), FillOptions.usual())
        .patch();
  }

  /** Vessels that share their dates: what stands beside them belongs to several. */
  @Test
  void besideVesselsThatShareDatesEvenTheOnlyOneFilledIsNamed() {
    String both =
        "|Plum 3||Apple 7|\nDate|SG|Temp C|SG|Temp C\n#2025-10-01|1.085|%s|1.065|20\n"
            + "#2025-10-04|1.05|%s|1.05|20";
    List<String> one = headers(TestGrid.of("Log", both.formatted("", "")));
    assertEquals("6 Corrected gravity (SG, Washbook), Apple 7", one.get(0));
    assertTrue(one.stream().allMatch(h -> h.endsWith("Apple 7")), one.toString());
    List<String> two = headers(TestGrid.of("Log", both.formatted("20", "20")));
    assertEquals("6 Corrected gravity (SG, Washbook), Plum 3", two.get(0));
    assertEquals("11 Corrected gravity (SG, Washbook), Apple 7", two.get(4));
  }

  @Test
  void tablesBelowEachOtherStandInEachOthersWayNowhere() {
    String log = "Plum 3\nDay|SG|Temp C\n0|1.085|20\n3|1.05|20\n\n";
    List<String> headers = headers(TestGrid.of("Log", log + log.replace("Plum 3", "Apple 7")));
    assertEquals("3 Corrected gravity (SG)", headers.get(0));
    assertEquals("3 Corrected gravity (SG)", headers.get(4));
  }
}
