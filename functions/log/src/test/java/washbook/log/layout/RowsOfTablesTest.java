package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;

/** Where a table ends, and which of its rows are no readings. */
class RowsOfTablesTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Log", text.replace('^', '|').replace(" ;", "\n"));
  }

  /** The last row as the sheet counts it, then the rows that are set aside. */
  private static String told(TableRows rows) {
    String aside =
        new TreeMap<>(rows.setAside())
            .entrySet().stream()
                .map(e -> " " + (e.getKey() + 1) + " " + e.getValue())
                .collect(Collectors.joining(","));
    return (rows.lastRow() + 1) + aside;
  }

  private static String rows(String text) {
    TestGrid grid = grid(text);
    Header header = new Headers(grid).find().get(0);
    return told(new TableRows(grid, header, grid.rowCount(), new BitSet()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "0^1.085^20 ; 2^1.05^20 ! 3",
        "0^1.085^20 ; 2^1.05^20 ; 3^^20 ; 4^^ ! 3",
        "0^1.085^20 ; ; 2^1.05^20 ! 4",
        "0^1.085^20 ; 2^'1.05 SG^20 ! 3",
        "0^1.085^20 ; 2^~1.05^20 ; 3^foam^20 ! 4",
        "0^1.085^20 ; 2^1.05^20 ; ; 3^foam^20 ; ^foam^ ! 5",
        "0^1.085^20 ; 2^1.05^20 ; 3^n/a^20 ! 3",
        "0^1.085^20 ; 2^1.05^20 ; 3^5 L^20 ! 3",
        "0^^20 ; 2^^20 ! 1",
        "0^1.085^20 ; 2^1.05^20 ; 3^#2025-11-04^20 ! 4",
        "0^1.085^20 ; 2^1.05^20 ; ^#2025-11-04^ ! 3",
        // a batch's name alone, or after a word for vessel, with words where the readings stand
        "0^1.085^20 ; 2^1.05^20 ; Tank^plum^ ! 3",
        "0^1.085^20 ; 2^1.05^20 ; Tank^plum^20 ! 4",
        "0^1.085^20 ; 2^1.05^20 ; Yeast^plum^ ! 4",
        "0^1.085^20 ; 2^1.05^20 ; Tank^^ ! 3",
        // words that begin another table, behind a gap
        "0^1.085^20 ; 2^1.05^20 ; ; Name^Weight^ ; Plum^1.01^ ! 3",
        "0^1.085^20 ; 2^1.05^20 ; Name^Weight^ ; 3^1.01^ ! 5",
        "0^1.085^20 ; 2^1.05^20 ; ; plum^^ ; 3^1.01^ ! 6",
        // what a map of the next table or a summary says
        "0^1.085^20 ; 2^1.05^20 ; ; OG^1.086^ ; FG^1.002^ ! 3",
        "0^1.085^20 ; 2^1.05^20 ; ; OG^1.086^ ; 4^1.02^20 ! 6",
      })
  void aTableEndsWithItsLastReading(String text, String told) {
    assertEquals(told, rows("Day^SG^Temp C ; " + text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Average^1.0675^20 ! 5 4 AVERAGE",
        "Average^1.07^20 ! 5 4 AVERAGE",
        "Average^1.02^20 ! 5",
        "Average^^20 ! 5 4 AVERAGE",
        "average of the week^1.0675^20 ! 5 4 AVERAGE",
        "Min^1.05^20 ! 5 4 AVERAGE",
        "Max^1.085^20 ! 5 4 AVERAGE",
        "Volume^^ ! 5 4 NOTE",
        "Calibration 20 C^^ ! 5 4 NOTE",
        "Yeast^^ ! 5",
      })
  void aRowThatSumsUpOrSaysSomethingIsNoReading(String row, String told) {
    assertEquals(told, rows("Day^SG^Temp C ; 0^1.085^20 ; 2^1.05^20 ; " + row + " ; 4^1.02^20"));
  }

  /** A second mean may be of the rows since the first. */
  @Test
  void meansOfWeeks() {
    assertEquals(
        "6 4 AVERAGE, 7 AVERAGE",
        rows(
            "Day^SG^Temp C ; 0^1.08^20 ; 2^1.06^20 ; Average^1.07^20 ; 4^1.04^20 ; 6^1.02^20"
                + " ; Average^1.03^20"));
  }

  @Test
  void figuresOfWholeColumnsWithoutADateSumThemUp() {
    String log =
        "Date^SG^Temp C ; #2025-11-04^1.08^20 ; #2025-11-05^1.06^24 ; #2025-11-06^1.04^22"
            + " ; #2025-11-07^1.02^18";
    assertEquals("5 6 AVERAGE", rows(log + " ; ^1.05^21"));
    assertEquals("5 6 AVERAGE", rows(log + " ; ^1.02^18"));
    assertEquals("6", rows(log + " ; ^1.01^18"));
    assertEquals("6", rows(log + " ; #2025-11-08^1.05^21"));
    assertEquals("6", rows(log.replace("Date", "Note").replace("#2025-11-0", "x") + " ; ^1.05^21"));
  }

  @Test
  void anAdditionIsNoRowAboutTheLog() {
    String log = "Day^SG^Temp C^Sugar added kg ; 0^1.085^20^ ; 2^1.05^20^ ; ";
    assertEquals("5", rows(log + "Volume^^^2 ; 4^1.02^20^"));
    assertEquals("5 4 NOTE", rows(log + "Volume^^^ ; 4^1.02^20^"));
  }

  @Test
  void aStatementBelowABatchesNameIsNoReading() {
    String log = "Date^SG^Temp C ; ";
    String readings = " ; #2025-11-04^1.085^20 ; #2025-11-06^1.05^20";
    assertEquals("5 3 NOTE", rows(log + "Plum 3^^ ; OG^1.086^" + readings));
    assertEquals("6 3 NOTE, 4 NOTE", rows(log + "Plum 3^^ ; OG^1.086^ ; FG^1.002^" + readings));
    assertEquals("4", rows(log + "OG^1.086^" + readings));
  }

  @Test
  void wordsOverTheFirstReadingGoOnWithTheHeader() {
    String readings = " ; #2025-11-04^1.085^20 ; #2025-11-06^1.05^20";
    assertEquals("4 2 HEADING", rows("Date^SG^Temp C ; ^as read^" + readings));
    assertEquals("4 2 HEADING", rows("Date^SG^Temp C ; ^(60/60)^" + readings));
    assertEquals("5 2 HEADING, 3 HEADING", rows("Date^SG^Temp C ; ^as read^ ; ^(b)^" + readings));
    assertEquals(
        "6 2 HEADING, 3 HEADING", rows("Date^SG^Temp C ; ^as read^ ; ^(b)^ ; ^c^" + readings));
    assertEquals("4 2 HEADING", rows("Date^SG^Temp C ; #2025-11-03^new hydrometer^" + readings));
    assertEquals("4", rows("Date^SG^Temp C ; #2025-11-03^as read^" + readings));
    assertEquals("4", rows("Date^SG^Temp C ; ^^yeast" + readings));
  }

  /** What stands in words before the next header is said about the next table. */
  @Test
  void linesBeforeTheNextHeaderBelongToIt() {
    TestGrid grid =
        grid(
            "Day^SG^Temp C ; 0^1.085^20 ; 2^1.05^20 ; Apple 7^with yeast 2^ ; Day^SG^Temp C"
                + " ; 0^1.06^20");
    List<Header> headers = new Headers(grid).find();
    assertEquals(2, headers.size());
    assertEquals("3", told(new TableRows(grid, headers.get(0), 4, new BitSet())));
    assertEquals("6", told(new TableRows(grid, headers.get(1), 6, new BitSet())));
  }

  /** Figures in thousandths are summed up in thousandths. */
  @ParameterizedTest
  @CsvSource({
    "Max, 1080, true",
    "Max, 1070, false",
    "Min, 1010, true",
    "Min, 1020, false",
    "median, 1060, true",
    "average, 1050, true",
    "average, 1048, false",
    "Max, 1081, false",
    "Min, 1009, false",
  })
  void thousandthsAreSummedUpAsTheyStand(String label, String figure, boolean sumsUp) {
    TestGrid grid = grid("1080 ; 1060 ; 1010 ; " + figure);
    assertEquals(sumsUp, Aggregate.sumsUp(grid, label, new int[] {0}, 0, 3, new BitSet()));
  }

  @Test
  void theMiddleOfFourIsHalfwayBetweenTheTwoInside() {
    TestGrid grid = grid("1.09 ; 1.06 ; 1.02 ; 1.01 ; 1.04");
    assertEquals(true, Aggregate.sumsUp(grid, "median", new int[] {0}, 0, 4, new BitSet()));
  }

  private static int kept(String text) {
    TestGrid grid = grid(text);
    return new RepeatedHeaders(grid).without(new Headers(grid).find()).size();
  }

  private static final String PLUM = "Day^SG^Temp C ; 0^1.085^20 ; 2^1.05^20 ; ";

  /** The same words in the same columns, no title above, and readings that go on. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Day^SG^Temp C ; 4^1.04^20 ; 6^1.01^20 ! 1",
        "Day^SG^Temp C ; 4^1.052^20 ; 6^1.01^20 ! 1",
        "Day^SG^Temp C ; 4^1.06^20 ; 6^1.01^20 ! 2",
        "Day^SG^Temp °C ; 4^1.04^20 ; 6^1.01^20 ! 2",
        "^Day^SG^Temp C ; ^4^1.04^20 ; ^6^1.01^20 ! 2",
        " ; Day^SG^Temp C ; 4^1.04^20 ; 6^1.01^20 ! 1",
        "continued^^ ; Day^SG^Temp C ; 4^1.04^20 ; 6^1.01^20 ! 1",
        "Apple 7^^ ; Day^SG^Temp C ; 4^1.04^20 ; 6^1.01^20 ! 2",
        "Day^SG^Temp C ; 4^^20 ; 6^^20 ! 2",
        "Day^SG^Temp C ; 4^1.04^20 ; Day^SG^Temp C ; 6^1.01^20 ! 1",
        "Day^SG^Temp C ; 4^1.04^20 ; Day^SG^Temp C ; 6^1.048^20 ! 2",
        "Day^SG^Temp C ; 4^1040^20 ; 6^1010^20 ! 1",
      })
  void aHeaderThatOnlyComesAgainIsNoNewTable(String text, int headers) {
    assertEquals(headers, kept(PLUM + text));
  }

  @Test
  void rowsOfAHeaderThatComesAgainAreKnown() {
    TestGrid grid = grid(PLUM + "Day^SG^Temp C ; 4^1.04^20 ; Day^SG^Temp C ; 6^1.01^20");
    RepeatedHeaders repeated = new RepeatedHeaders(grid);
    List<Header> kept = repeated.without(new Headers(grid).find());
    BitSet rows = new BitSet();
    rows.set(3);
    rows.set(5);
    assertEquals(rows, repeated.of(kept.get(0)));
    TableRows table = new TableRows(grid, kept.get(0), grid.rowCount(), repeated.of(kept.get(0)));
    assertEquals("7 4 HEADING, 6 HEADING", told(table));
    assertEquals(true, table.isSkipped(3));
    assertEquals(false, table.isSkipped(4));
    assertEquals(1, table.firstRow());
  }
}
