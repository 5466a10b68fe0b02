package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.Numbers;
import washbook.log.ComputedColumn;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** The formulas that go next to the values. */
class FormulaTest {
  private static List<String> formulas(TestGrid grid, int row, ComputedColumn... columns) {
    EnumSet<ComputedColumn> wanted = EnumSet.noneOf(ComputedColumn.class);
    wanted.addAll(List.of(columns));
    Filling filling =
        LogFiller.fill(
            grid,
            SheetUnderstanding.understand(grid, LogMap.none()),
            new FillOptions(wanted, FormulaStyle.PACK));
    return filling.patch().columns().stream()
        .map(c -> String.valueOf(c.cells().formula(row)))
        .toList();
  }

  private static final TestGrid STATED =
      TestGrid.of(
          "Apple 7",
          """
          Hydrometer calibrated at 60 F
          OG | 1064
          Day | Brix | Temp F
          0 | 15.0 | 68
          3 | '9,5 | 70""");

  @Test
  void aStatedOriginalGravityIsHeldInPlace() {
    assertEquals(
        List.of(
            "WASHBOOK.CONVERT(F4,\"SG\",\"BRIX\")",
            "WASHBOOK.ABV($B$2/1000,F4)",
            "WASHBOOK.CORRECTEDGRAVITY("
                + "WASHBOOK.CONVERT(WASHBOOK.CORRECTEDBRIX(B4,20,15.555555555555555),\"BRIX\",\"SG\"),"
                + "WASHBOOK.CONVERT(C4,\"F\",\"C\"),20,$B$2/1000)"),
        formulas(STATED, 3, ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV));
  }

  @Test
  void aTextReadingStandsAsItsNumber() {
    String formula = formulas(STATED, 4, ComputedColumn.CORRECTED_GRAVITY).get(1);
    String number =
        Numbers.show(
            SimpleLogTest.calc(
                "CONVERT",
                SimpleLogTest.calc("CORRECTEDBRIX", 9.5, 20.0, 140.0 / 9),
                "BRIX",
                "SG"));
    assertEquals(
        "WASHBOOK.CORRECTEDGRAVITY(" + number + ",WASHBOOK.CONVERT(C5,\"F\",\"C\"),20,$B$2/1000)",
        formula);
  }

  private static final TestGrid FIRST =
      TestGrid.of(
          "Plum 3",
          """
          Day | SG | Temp C
          0 | 1.085 | 22
          3 | 1.050 | 24
          4 | 1.049 |""");

  @Test
  void theFirstReadingIsTheBatchsCell() {
    assertEquals(
        List.of(
            "WASHBOOK.CORRECTEDGRAVITY(B2,C2)",
            "WASHBOOK.ABV(D2,D2)",
            "WASHBOOK.CORRECTEDGRAVITY(B2,C2)",
            "null"),
        formulas(FIRST, 1, ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV));
    assertEquals(
        List.of(
            "WASHBOOK.CORRECTEDGRAVITY(B3,C3,20,MAX($F$1:$F$204))",
            "WASHBOOK.ABV(MAX($F$1:$F$204),D3)",
            "null",
            "null"),
        formulas(FIRST, 2, ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV));
  }

  private static final TestGrid BATCHES =
      TestGrid.of(
          "Winter",
          """
          Batch | Day | SG | Temp C
          Plum 3 | 0 | 1.085 | 22
          Plum 31 | 0 | 1.070 | 21
          Apple 7 | 0 | 1.052 | 20
          Plum 3 | 3 | 1.050 | 24
          Plum 31 | 3 | 1.041 | 24
          Apple 7 | 4 | 1.030 | 19""");

  @Test
  void eachRowLooksForTheFirstReadingOfItsBatch() {
    ComputedColumn[] columns = {ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV};
    assertEquals(
        List.of(
            "WASHBOOK.CORRECTEDGRAVITY(C2,D2)",
            "WASHBOOK.ABV(E2,E2)",
            "SUMPRODUCT(($A$1:$A$207=A2)*1,$H$1:$H$207)",
            "WASHBOOK.CORRECTEDGRAVITY(C2,D2)"),
        formulas(BATCHES, 1, columns));
    assertEquals(
        List.of(
            "WASHBOOK.CORRECTEDGRAVITY(C6,D6,20,G6)",
            "WASHBOOK.ABV(G6,E6)",
            "SUMIF($A$1:$A$207,A6,$H$1:$H$207)",
            "null"),
        formulas(BATCHES, 5, columns));
  }

  private static final TestGrid STATED_ONCE =
      TestGrid.of(
          "Plum 3",
          """
          Day | OG | SG | Temp C
          0 | 1.085 | 1.084 | 22
          3 | | 1.050 | 24
          | | |
          Total | | |""");

  @Test
  void aStatementInTheTableIsLookedFor() {
    assertEquals(
        List.of("WASHBOOK.ABV(B2,E2)"),
        formulas(STATED_ONCE, 1, ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV)
            .subList(1, 2));
    assertEquals(
        List.of("WASHBOOK.ABV(MAX($B$1:$B$203),E3)"),
        formulas(STATED_ONCE, 2, ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV)
            .subList(1, 2));
  }

  @Test
  void aVeryLongTableKeepsTheReference() {
    StringBuilder rows = new StringBuilder("Day | SG | Temp C");
    for (int day = 0; day <= OriginalGravityLookUp.MOST_ROWS; day++) {
      rows.append("\n" + day + " | " + (day == 0 ? "1.085" : "1.050") + " | 22");
    }
    assertEquals(
        List.of("WASHBOOK.CORRECTEDGRAVITY(B3,C3,20,$D$2)", "WASHBOOK.ABV($D$2,D3)"),
        formulas(
            TestGrid.of("Plum 3", rows.toString()),
            2,
            ComputedColumn.CORRECTED_GRAVITY,
            ComputedColumn.ABV));
  }

  @Test
  void aRefusedRowHasNoFormula() {
    assertEquals(
        List.of("null", "null", "null", "null"),
        formulas(FIRST, 3, ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV));
  }

  @Test
  void valuesOnlyHaveNoFormula() {
    Filling filling =
        LogFiller.fill(
            FIRST, SheetUnderstanding.understand(FIRST, LogMap.none()), FillOptions.usual());
    assertNull(filling.patch().columns().get(0).cells().formula(2));
  }
}
