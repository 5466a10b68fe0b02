package washbook.log.reading;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.LogTable;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** When readings were taken: days from the first one. */
class RowTimesTest {
  private static final String[] GRAVITIES = {"1.085", "1.070", "1.050", "1.030", "1.010"};

  /** A log with these time columns; {@code ^} separates cells, {@code ;} rows. */
  private static TestGrid log(String header, String rows) {
    StringBuilder text = new StringBuilder(header.replace('^', '|') + " | SG | Temp C");
    String[] times = rows.split(";");
    for (int i = 0; i < times.length; i++) {
      text.append('\n').append(times[i].replace('^', '|')).append(" | " + GRAVITIES[i] + " | 20");
    }
    return TestGrid.of("Plum wine 3", text.toString());
  }

  private static LogTable table(TestGrid grid) {
    return SheetUnderstanding.understand(grid, LogMap.none()).tables().get(0);
  }

  private static double[] days(String header, String rows) {
    TestGrid grid = log(header, rows);
    LogTable table = table(grid);
    int[] all = IntStream.rangeClosed(table.firstRow(), table.lastRow()).toArray();
    return RowTimes.of(grid, table).daysFromFirst(all);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Date | #2025-03-04; #2025-03-06; #2025-03-10 | 0 2 6",
        "Date | 4/3/2025; 6/3/2025; 10/3/2025 | 0 2 6",
        "Date | #2025-03-04; 1e308; #2025-03-10 | 0 0 6",
        "Day | 0; 2; 1e308 | 0 2 2",
        "Date | 9.9.2025; 11.9; 12.9. | 0 2 3",
        "Date | 28.9.2025; 2.1; 4.1 | 0 4 6",
        "Date | 3/4/2025; 3/6/2025; 3/30/2025 | 0 2 26",
        "Date | 28/2/2025; 1/3/2025; 2/3/2025 | 0 1 2",
        "Date | 2/11/2025; 2/12/2025; 3/1/2025 | 0 1 18",
        "Date | 4 Mar 2025; 6 Mar; 10 Mar | 0 2 6",
        "Date | 30 Dec 2024; 2 Jan; 4 Jan | 0 3 5",
        "Date | 25/09/2025; 26/09/2025; 27/09/2015; 28/09/2025 | 0 1 2 3",
        "Date | 25/09/2025; 26/09/2025; 27/09/2015; 20/09/2025 | 0 1 -3651 -5",
        "Date | #2025-03-04; ; #2025-03-10 | 0 0 6",
        "Date ^ Time | #2025-03-04 ^ 06:00; #2025-03-04 ^ 18:00; #2025-03-05 ^ 12:00 | 0 0.5 1.25",
        "Date ^ Time | #2025-03-04 ^ 06:00; ^ 18:00; #2025-03-05 ^ 12:00 | 0 0.5 1.25",
        "Date ^ Time | #2025-03-04 ^ 6; #2025-03-04 ^ 18; #2025-03-05 ^ 12 | 0 0.5 1.25",
        "Date ^ Time | #2025-03-04 ^ 0.25; #2025-03-04 ^ 0.75; #2025-03-05 ^ 0.5 | 0 0.5 1.25",
        "Date ^ Time | #2025-03-04 ^ 9 am; #2025-03-04 ^ 9 pm; #2025-03-05 ^ 9 am | 0 0.5 1",
        "Date | 1/2/2025; 1/3/2025; 1/13/2025 | 0 1 11",
        "Date | 3/4/2025; 3/6/2025; 4/2/2025 | 0 2 29",
        "Date | 1/2/2025; 1/3/2025; 1/4/2025 | 0 28 59",
        "Date | 28 Feb; 29 Feb; 2 Mar | 0 1 3",
        "Time ^ Date | 06:00 ^ #2025-03-04; 18:00 ^ #2025-03-04; 12:00 ^ #2025-03-05 | 0 0.5 1.25",
        "Date ^ Time | #2025-03-04 ^ 1; #2025-03-04 ^ 13; #2025-03-05 ^ 1 | 0 0.5 1",
        "Date ^ Time | #2025-03-04 ^ 12; #2025-03-04 ^ 24; #2025-03-05 ^ 12 | 0 0.5 1",
        "Date ^ Time | #2025-03-04 ^ 45720.25; #2025-03-04 ^ 45720.75; #2025-03-05 ^ 45721.5 | 0 0.5 1.25",
        "Date ^ Time | #2025-03-04 ^ 18:00; ^ ; #2025-03-05 ^ 12:00 | 0 0 0.75",
        "Time ^ Day | 06:00 ^ 1; 18:00 ^ 1; 12:00 ^ 2 | 0 0.5 1.25",
        "Day | Day 1; racked; Day 7 | 0 0 6",
        "Day | 1; ; 7 | 0 0 6",
        "Day | 0; 2; 6 | 0 2 6",
        "Day | 1; 3; 7 | 0 2 6",
        "Day | Day 1; Day 3; day 7 | 0 2 6",
        "Day ^ Time | 1 ^ 06:00; 1 ^ 18:00; 2 ^ 12:00 | 0 0.5 1.25",
        "Hours | 0; 12; 36 | 0 0.5 1.5",
      })
  void daysFromTheFirstReading(String header, String rows, String expected) {
    double[] wanted = Arrays.stream(expected.split(" ")).mapToDouble(Double::parseDouble).toArray();
    assertArrayEquals(wanted, days(header, rows), 1e-9);
  }

  @Test
  void aLogWithoutTimesHasNone() {
    TestGrid grid = TestGrid.of("Plum 3", "SG | Temp C\n1.085 | 20\n1.060 | 20\n1.030 | 20");
    RowTimes times = RowTimes.of(grid, table(grid));
    assertFalse(times.isKnown());
    assertTrue(Double.isNaN(times.days(1)));
    int[] rows = {3, 1, 2};
    times.sort(rows);
    assertArrayEquals(new int[] {3, 1, 2}, rows);
  }

  @Test
  void rowsAreSortedByTimeAndRowsOfOneTimeKeepTheirOrder() {
    TestGrid grid = log("Date", "#2025-03-10; #2025-03-04; #2025-03-10; #2025-03-06; #2025-03-04");
    RowTimes times = RowTimes.of(grid, table(grid));
    int[] rows = {1, 2, 3, 4, 5};
    times.sort(rows);
    assertArrayEquals(new int[] {2, 5, 4, 1, 3}, rows);
    assertTrue(times.isKnown());
    assertEquals(6, times.days(1) - times.days(2));
  }
}
