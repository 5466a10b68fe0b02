package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.log.Understanding;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Plain logs from sheet to filled columns, every number against the catalogue's functions. */
public class SimpleLogTest {
  public static double calc(String name, Object... arguments) {
    return ((Answer.Number) Catalogue.get(name).call(arguments)).value();
  }

  private static final TestGrid PLUM =
      TestGrid.of(
          "Plum 3",
          """
          Date | SG | Temp (°C) | Note
          #2025-10-01 | 1.085 | 24 | pressed and pitched
          #2025-10-03 | 1.062 | 27 |
          #2025-10-06 | 1.030 | 25.5 | racked
          #2025-10-14 | 0.998 | 19 |\
          """);

  @Test
  void fillsTheUsualColumns() {
    Understanding understood = SheetUnderstanding.understand(PLUM, LogMap.none());
    assertEquals(List.of(), understood.doubts());
    Filling filling = LogFiller.fill(PLUM, understood, FillOptions.usual());
    assertEquals(List.of(), filling.refusals());
    assertEquals(
        List.of(
            "Corrected gravity (SG)",
            "Alcohol to date (% vol)",
            "Apparent attenuation (%)",
            "Real attenuation (%)"),
        filling.patch().columns().stream().map(ColumnPatch::header).toList());
    TestGrid filled = PLUM.with(filling.patch());
    double original = calc("CORRECTEDGRAVITY", 1.085, 24.0);
    double[][] readings = {{1.062, 27}, {1.030, 25.5}, {0.998, 19}};
    assertEquals(original, filled.number(1, 4));
    assertEquals(0.0, filled.number(1, 5));
    for (int i = 0; i < readings.length; i++) {
      double gravity = calc("CORRECTEDGRAVITY", readings[i][0], readings[i][1], 20.0, original);
      assertEquals(gravity, filled.number(i + 2, 4));
      assertEquals(calc("ABV", original, gravity), filled.number(i + 2, 5));
      assertEquals(calc("APPARENTATTENUATION", original, gravity), filled.number(i + 2, 6));
      assertEquals(calc("REALATTENUATION", original, gravity), filled.number(i + 2, 7));
    }
    Filling.BatchCount count = filling.tables().get(0).batches().get(0);
    assertEquals("Plum 3", count.name());
    assertEquals(original, count.originalGravity().orElseThrow());
    assertEquals(4, count.rows());
    assertEquals(4, count.filled());
  }

  @Test
  void fillingAFilledSheetChangesNothing() {
    TestGrid once = fill(PLUM);
    assertEquals(once.all(), fill(once).all());
  }

  public static TestGrid fill(TestGrid grid) {
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    return grid.with(LogFiller.fill(grid, understood, FillOptions.usual()).patch());
  }

  @Test
  void refusesBlankTemperatureAndARiseWithTheirCells() {
    TestGrid grid =
        TestGrid.of(
            "Apple 7",
            """
            Cider log, cellar book
            Original gravity | 1.060
            |
            Day | Gravity | Temp F
            0 | 1.058 | 68
            2 | 1.045 |
            3 | | 70
            4 | 1.075 | 70
            9 | 1,004 | 66
            12 | n/a | 65\
            """);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    List<CellRefusal> refusals = filling.refusals();
    assertEquals(2, refusals.size());
    assertEquals("C6", refusals.get(0).cell());
    assertEquals(Answer.Code.BLANK, refusals.get(0).code());
    assertEquals("B8", refusals.get(1).cell());
    assertEquals(Answer.Code.CONTRADICTION, refusals.get(1).code());
    TestGrid filled = grid.with(filling.patch());
    assertEquals("Washbook note", filled.text(3, 7));
    assertTrue(filled.text(5, 7).startsWith("C6: temperature is blank"), filled.text(5, 7));
    double gravity = calc("CORRECTEDGRAVITY", 1.004, calc("CONVERT", 66.0, "F", "C"), 20.0, 1.060);
    assertEquals(gravity, filled.number(8, 3));
    assertEquals(calc("ABV", 1.060, gravity), filled.number(8, 4));
    assertEquals(Grid.Kind.BLANK, filled.kind(6, 3));
    assertEquals(filled.all(), fill(filled).all());
  }

  @Test
  void keepsBatchesOfABatchColumnApart() {
    TestGrid grid =
        TestGrid.of(
            "winter",
            """
            Batch | Date | Brix | Temp C
            Plum 3 | #2025-10-01 | 20.5 | 22
            Apple 7 | #2025-10-01 | 12.5 | 18
            Plum 3 | #2025-10-08 | 6.1 | 24
            Apple 7 | #2025-10-08 | 2 | 20
            Total | | 41.1 |\
            """);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(2, understood.tables().get(0).batches().size());
    TestGrid filled = fill(grid);
    double original = calc("CORRECTEDGRAVITY", calc("CONVERT", 12.5, "BRIX", "SG"), 18.0);
    double gravity =
        calc("CORRECTEDGRAVITY", calc("CONVERT", 2.0, "BRIX", "SG"), 20.0, 20.0, original);
    assertEquals(calc("ABV", original, gravity), filled.number(4, 5));
    assertEquals(Grid.Kind.BLANK, filled.kind(5, 5));
  }

  @Test
  void readingsCorrectedAlreadyNeedNoTemperature() {
    TestGrid grid =
        TestGrid.of(
            "Sugar 4",
            """
            All readings corrected to 20 °C
            Day | SG
            0 | 1.090
            5 | 1.020\
            """);
    TestGrid filled = fill(grid);
    assertEquals(1.090, filled.number(2, 2), 1e-12);
    double original = filled.number(2, 2);
    double gravity = calc("CORRECTEDGRAVITY", 1.020, 20.0, 20.0, original);
    assertEquals(calc("ABV", original, gravity), filled.number(3, 3));
  }
}
