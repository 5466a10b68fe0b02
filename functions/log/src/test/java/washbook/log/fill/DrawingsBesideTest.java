package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.Understanding;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Where new columns go when charts or pictures stand on the sheet. */
class DrawingsBesideTest {
  private static final String LOG = "Day|SG|Temp C\n0|1.085|20\n3|1.05|20\n6|1.02|20";

  private static List<Integer> columns(TestGrid grid) {
    Understanding understanding = SheetUnderstanding.understand(grid, LogMap.none());
    return LogFiller.fill(grid, understanding, FillOptions.usual()).patch().columns().stream()
        .map(ColumnPatch::column)
        .toList();
  }

  @Test
  void columnsGoRightOfADrawingThatStandsBesideTheTable() {
    assertEquals(List.of(3, 4, 5, 6), columns(TestGrid.of("Log", LOG)));
    assertEquals(List.of(11, 12, 13, 14), columns(TestGrid.of("Log", LOG).draw(0, 4, 12, 9)));
    assertEquals(List.of(11, 12, 13, 14), columns(TestGrid.of("Log", LOG).draw(2, 1, 3, 9)));
  }

  @Test
  void columnsStayBesideTheTableWhenADrawingIsFarAwayOrBelowIt() {
    assertEquals(List.of(3, 4, 5, 6), columns(TestGrid.of("Log", LOG).draw(5, 0, 20, 9)));
    assertEquals(List.of(3, 4, 5, 6), columns(TestGrid.of("Log", LOG).draw(0, 9, 20, 15)));
  }

  @Test
  void aDrawingThatTheNewColumnsWouldReachWhenWidenedCountsAsBeside() {
    assertEquals(List.of(16, 17, 18, 19), columns(TestGrid.of("Log", LOG).draw(0, 8, 20, 14)));
  }

  @Test
  void columnsThatNameTheirTableAreDrawnToo() {
    TestGrid grid = TestGrid.of("Log", LOG).draw(0, 4, 12, 9);
    Understanding understanding = SheetUnderstanding.understand(grid, LogMap.none());
    Filling filling = LogFiller.fill(grid, understanding, FillOptions.usual());
    assertEquals(1, BatchCurve.of(grid, understanding, filling).size());
  }

  @Test
  void aLogInFahrenheitIsDrawnInFahrenheit() {
    TestGrid grid = TestGrid.of("Log", "Day|SG|Temp F\n0|1.085|68\n3|1.05|70\n6|1.02|70");
    Understanding understanding = SheetUnderstanding.understand(grid, LogMap.none());
    Filling filling = LogFiller.fill(grid, understanding, FillOptions.usual());
    assertEquals(
        TemperatureUnit.F, BatchCurve.of(grid, understanding, filling).get(0).temperatureUnit());
  }
}
