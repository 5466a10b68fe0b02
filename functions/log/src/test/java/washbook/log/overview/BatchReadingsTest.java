package washbook.log.overview;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.WarningLimits;
import washbook.log.fill.ComputedTable;
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** The readings that an overview rests on, with their cells. */
class BatchReadingsTest {
  private static BatchReadings readings(String log) {
    TestGrid grid = TestGrid.of("Plum 3", log);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    LogTable table = understood.tables().get(0);
    return BatchReadings.of(
        grid,
        table,
        table.batches().get(0),
        new ComputedTable(grid, table, Set.of(ComputedColumn.CORRECTED_GRAVITY)),
        RowTimes.of(grid, table));
  }

  private static List<String> cells(BatchReadings readings) {
    return IntStream.range(0, readings.count()).mapToObj(readings::cell).toList();
  }

  private static List<String> temperatureCells(BatchReadings readings) {
    return IntStream.range(0, readings.temperaturesC().length)
        .mapToObj(readings::temperatureCell)
        .toList();
  }

  private static final String WITH_COLUMN =
      """
      Fermentation log
      Day | SG | Temp (°C) | Note
      0 | 1.085 | 20 | pitched
      1 | 1.070 | 100 |
      2 | 1.050 | -20 |
      3 | 1.030 | 101 |
      4 | 1.020 | 24 |
      5 | | 25 |
      6 | 1.012 | 24 |
      7 | 1.008 | 24 |
      8 | 1.004 | 24 |""";

  /** A thermometer in a wash shows -20 to 100 °C; what is beyond was not measured. */
  @Test
  void refusedReadingsAreLeftOutAndTheirTemperaturesAreNot() {
    BatchReadings readings = readings(WITH_COLUMN);
    assertEquals(List.of("B3", "B7", "B9", "B10", "B11"), cells(readings));
    assertArrayEquals(new double[] {0, 4, 6, 7, 8}, readings.days());
    assertEquals(8, readings.span());
    assertEquals(
        List.of("C3", "C4", "C5", "C7", "C8", "C9", "C10", "C11"), temperatureCells(readings));
    assertArrayEquals(new double[] {20, 100, -20, 24, 25, 24, 24, 24}, readings.temperaturesC());
    assertTrue(readings.isTimed());
  }

  /** A temperature beside the reading was measured; one stated for all was not. */
  @Test
  void aTemperatureThatStandsWithItsReadingIsTheReadingsCell() {
    BatchReadings beside =
        readings("Day | SG\n0 | 1.085 @ 20C\n1 | 1.070 @ 25C\n2 | 1.050 @ 26C\n3 | 1.030 @ 24C");
    assertEquals(List.of("B2", "B3", "B4", "B5"), temperatureCells(beside));
    assertArrayEquals(new double[] {20, 25, 26, 24}, beside.temperaturesC());
    BatchReadings stated =
        readings("All samples at 20 C\n|\nDay | SG\n0 | 1.085\n1 | 1.070\n2 | 1.050\n3 | 1.030");
    assertEquals(List.of(), temperatureCells(stated));
    assertEquals(4, stated.count());
  }

  @Test
  void withoutTimesNothingIsTimed() {
    BatchReadings readings =
        readings("Ferment\nSG | Temp C\n1.085 | 20\n1.070 | 20\n1.050 | 20\n1.030 | 20");
    assertFalse(readings.isTimed());
    assertTrue(Double.isNaN(readings.span()));
  }

  @Test
  void onlyTheLastReadingsAreFitted() {
    BatchReadings readings =
        readings("Day | SG | Temp C\n0 | 1.085 | 20\n1 | 1.07 | 20\n2 | 1.05 | 20\n3 | 1.03 | 20");
    BatchReadings last = readings.last(3);
    assertEquals(List.of("B3", "B4", "B5"), cells(last));
    assertArrayEquals(new double[] {1, 2, 3}, last.days());
    assertArrayEquals(new int[] {2, 3, 4}, last.rows());
    assertEquals(3, last.gravities().length);
    assertEquals(4, readings.last(4).count());
    assertEquals(4, last.temperaturesC().length);
  }

  private static BatchOverview overview(String log) {
    TestGrid grid = TestGrid.of("Plum 3", log);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    return new Overviews(WarningLimits.usual(), LocalDate.of(2025, 10, 20))
        .of(grid, understood, LogFiller.fill(grid, understood, FillOptions.usual()))
        .get(0);
  }

  @Test
  void whatIsNotKnownIsNotZero() {
    BatchOverview batch =
        overview("Ferment\nSG | Temp C\n1.085 | 20\n1.070 | 20\n1.050 | 20\n1.030 | 20");
    assertNull(batch.days());
    assertNull(batch.firstDate());
    assertNull(batch.rate());
    assertNull(batch.daysToFinish());
    assertEquals("", batch.state());
    assertEquals(4, batch.readings());
  }
}
