package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.functions.spirit.Spirit;
import washbook.log.ComputedColumn;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** What is written beside the jars of a run; strengths here show wiring, not the physics. */
class RunFillTest {
  private static final String PLUM =
      """
      Plum 3, spirit run | | | | |
      Charge | 10 | L | 30 | % vol |
      Jar | mL | % vol | Temp C | Head C | Cut
      1 | 100 | 75 | 15 | 84 | heads
      2 | 500 | 74 | 16 | 85 | hearts
      3 | 500 | 66 | 25 | 88 | hearts
      4 | 500 | 42 | 25 | 95 | tails
      Total | 1600 | | | |""";

  private static Filling fill(TestGrid grid, FillOptions options) {
    return LogFiller.fill(grid, SheetUnderstanding.understand(grid, LogMap.none()), options);
  }

  private static Filling fill(String text) {
    return fill(TestGrid.of("Run", text), FillOptions.usual());
  }

  private static ColumnPatch column(Filling filling, ComputedColumn column) {
    return filling.columns().stream()
        .filter(c -> c.column() == column)
        .findFirst()
        .orElseThrow()
        .patch();
  }

  private static double figure(Filling filling, ComputedColumn column, int row) {
    return column(filling, column).cells().number(row);
  }

  @Test
  void columnsOfAnEarlierRunAreNoReadingsOfAFerment() {
    String filled =
        """
        Plum 3 - spirit run
        Charge (L) | 11.5
        Charge strength (% vol) | 28
         |
        Jar | mL | ABV read | Temp C | Head C | Cut | Smell | True strength (% vol) | Pure alcohol (L) | Pure alcohol to date (L) | Share of the charge's alcohol (%) | Mean strength of the cut (% vol)
        1 | 100 | 74.6 | 15.5 | 84.9 | heads | glue | 76.00 | 0.0763 | 0.0763 | 2.4
        2 | 200 | 74.4 | 16.0 | 85.1 | heads | sharp | 75.65 | 0.1519 | 0.2282 | 7.1 | 75.77
        3 | 500 | 73.8 | 16.5 | 85.5 | hearts | plum | 74.90 | 0.3758 | 0.6040 | 18.8
        4 | 500 | 72.6 | 17.0 | 86.2 | hearts | stone | 73.55 | 0.3688 | 0.9728 | 30.2
        5 | 500 | 71.0 | 17.5 | 87.0 | hearts |  | 71.80 | 0.3599 | 1.3326 | 41.4
        6 | 500 | 68.4 | 18.0 | 88.2 | hearts | soft | 69.06 | 0.3459 | 1.6786 | 52.1
        7 | 500 | 64.1 | 18.0 | 90.1 | hearts |  | 64.78 | 0.3245 | 2.0030 | 62.2 | 70.82
        8 | 500 | 57.2 | 18.5 | 92.2 | tails | damp | 57.73 | 0.2890 | 2.2921 | 71.2
        9 | 500 | 45.0 | 19.0 | 94.6 | tails | cardboard | 45.39 | 0.2271 | 2.5192 | 78.2
        10 | 500 | 27.5 |  | 97.2 | tails | thermometer in the other jar
        11 | 300 | 14.0 | 19.5 | 98.6 | tails | off | 14.11 | 0.0423
        Total | 4600\
        """;
    assertEquals(
        List.of(),
        SheetUnderstanding.understand(TestGrid.of("Run", filled), LogMap.none()).doubts());
  }

  @Test
  void strengthAlcoholSumShareAndCutsStandBesideTheJars() {
    Filling filling = fill(PLUM);
    assertEquals(
        List.of(
            "True strength (% vol)",
            "Pure alcohol (L)",
            "Pure alcohol to date (L)",
            "Share of the charge's alcohol (%)",
            "Mean strength of the cut (% vol)",
            "Strength by head temperature (% vol)"),
        filling.patch().columns().stream().map(ColumnPatch::header).toList());
    // 42 % read at 25 °C are 40.015: OIML R 22, as in the reference page.
    assertEquals(40.015, figure(filling, ComputedColumn.TRUE_STRENGTH, 6), 0.001);
    double sum = 0;
    double[] litres = {0.1, 0.5, 0.5, 0.5};
    double[] temperatures = {15, 16, 25, 25};
    double[] pure = new double[4];
    for (int i = 0; i < 4; i++) {
      double strength = figure(filling, ComputedColumn.TRUE_STRENGTH, 3 + i);
      pure[i] = Spirit.pureAlcohol(litres[i], strength, temperatures[i]);
      sum += pure[i];
      assertEquals(pure[i], figure(filling, ComputedColumn.PURE_ALCOHOL, 3 + i), 1e-12);
      assertEquals(sum, figure(filling, ComputedColumn.PURE_SUM, 3 + i), 1e-12);
      assertEquals(sum / 3 * 100, figure(filling, ComputedColumn.CHARGE_SHARE, 3 + i), 1e-9);
    }
    assertTrue(Double.isNaN(figure(filling, ComputedColumn.CUT_STRENGTH, 4)), "not its last jar");
    double first = figure(filling, ComputedColumn.TRUE_STRENGTH, 4);
    double second = figure(filling, ComputedColumn.TRUE_STRENGTH, 5);
    double volume = Spirit.volumeAt20(0.5, 16, first) + Spirit.volumeAt20(0.5, 25, second);
    assertEquals(
        100 * (pure[1] + pure[2]) / volume, figure(filling, ComputedColumn.CUT_STRENGTH, 5), 1e-9);
    assertEquals(List.of(), filling.refusals());
    assertEquals(4, filling.tables().get(0).batches().get(0).filled());
  }

  @ParameterizedTest
  @CsvSource({
    "2 | 500 | 74 | | 85 | hearts, D5, temperature is blank",
    "2 | 500 | | 16 | 85 | hearts, C5, strength is blank",
    "2 | | 74 | 16 | 85 | hearts, B5, volume is blank",
    "2 | 500 | 0 | 16 | 85 | hearts, C5, strength is blank",
    "2 | 500 | 120 | 16 | 85 | hearts, C5, strength 120",
    "2 | 500 | ~ | 16 | 85 | hearts, C5, strength '~'",
    "2 | 500 | 74 | 61 | 85 | hearts, D5, temperature 61",
    "2 | | | | | , C5, strength is blank",
  })
  void aJarThatLacksAFigureIsRefusedAndSumsEndThere(String jar, String cell, String reason) {
    Filling filling = fill(PLUM.replace("2 | 500 | 74 | 16 | 85 | hearts", jar));
    assertEquals(1, filling.refusals().size());
    assertEquals(cell, filling.refusals().get(0).cell());
    assertTrue(
        filling.refusals().get(0).reason().contains(reason), filling.refusals().get(0).reason());
    boolean known = cell.startsWith("B");
    assertEquals(known, !Double.isNaN(figure(filling, ComputedColumn.TRUE_STRENGTH, 4)));
    assertTrue(figure(filling, ComputedColumn.PURE_SUM, 3) > 0);
    for (int row = 4; row <= 6; row++) {
      assertTrue(Double.isNaN(figure(filling, ComputedColumn.PURE_SUM, row)));
      assertTrue(Double.isNaN(figure(filling, ComputedColumn.CHARGE_SHARE, row)));
    }
    assertTrue(figure(filling, ComputedColumn.PURE_ALCOHOL, 5) > 0);
    ColumnPatch note = column(filling, ComputedColumn.NOTE);
    assertNull(note.cells().text(3));
    assertTrue(note.cells().text(5).contains("no sum and no share from here on"));
    assertTrue(note.cells().text(5).contains(cell));
    assertEquals(1, filling.tables().get(0).batches().get(0).refused());
  }

  @Test
  void moreAlcoholThanTheChargeHeldGivesNoShare() {
    Filling filling = fill(PLUM.replace("| 10 | L | 30", "| 1 | L | 30"));
    assertTrue(Double.isNaN(figure(filling, ComputedColumn.CHARGE_SHARE, 6)));
    assertTrue(figure(filling, ComputedColumn.PURE_SUM, 6) > 0);
    assertTrue(filling.refusals().get(0).reason().contains("check the charge"));
  }

  @Test
  void withoutAChargeThereIsNoShareAndWithoutCutsNoMean() {
    Filling filling =
        fill(
            """
            Still run
            Jar | mL | % vol | Temp C
            1 | 100 | 75 | 15
            2 | 500 | 74 | 16
            3 | 500 | 66 | 25
            4 | 500 | 42 | 25""");
    assertEquals(3, filling.patch().columns().size());
  }

  @Test
  void volumesAndStrengthsAtTwentyDegreesAreTakenAsTheyAre() {
    Filling filling =
        fill(
            """
            Still run, strengths corrected to 20 °C, volumes also
            Jar | cL | ABV
            1 | 10 | 75
            2 | 50 | 74
            3 | 50 | 66
            4 | 50 | 42""");
    assertEquals(42, figure(filling, ComputedColumn.TRUE_STRENGTH, 5), 1e-9);
    assertEquals(0.21, figure(filling, ComputedColumn.PURE_ALCOHOL, 5), 1e-9);
  }

  @Test
  void proofAndFahrenheitAreRead() {
    String jars =
        """
        Still run; hydrometer true at 68 F
        Jar | mL | US proof | Temp F
        1 | 100 | 150 | 59
        2 | 500 | 148 | 60.8
        3 | 500 | 132 | 77
        4 | 500 | 84 | 77""";
    Filling filling = fill(jars);
    assertEquals(40.015, figure(filling, ComputedColumn.TRUE_STRENGTH, 5), 0.001);
  }

  @Test
  void aFermentOnTheSameSheetIsFilledAsIfItStoodAlone() {
    String ferment =
        """
        Plum 3 wash
        Date | SG | Temp C
        #2025-09-01 | 1.058 | 22
        #2025-09-03 | 1.051 | 24
        #2025-09-06 | 1.038 | 24
        #2025-09-11 | 1.007 | 21
        #2025-09-20 | 1.002 | 19
        """;
    Filling alone = fill(ferment);
    Filling below = fill(ferment + "\n" + PLUM);
    Filling above = fill(PLUM + "\n\n" + ferment);
    for (ComputedColumn column : List.of(ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV)) {
      for (int row = 2; row <= 6; row++) {
        assertEquals(figure(alone, column, row), figure(below, column, row));
        assertEquals(figure(alone, column, row), figure(above, column, row + 9));
      }
    }
    double strength = figure(fill(PLUM), ComputedColumn.TRUE_STRENGTH, 3);
    assertEquals(strength, figure(below, ComputedColumn.TRUE_STRENGTH, 11));
    assertEquals(strength, figure(above, ComputedColumn.TRUE_STRENGTH, 3));
    assertEquals(2, below.tables().size());
  }

  @Test
  void runsBelowEachOtherHaveSumsOfTheirOwn() {
    Filling filling = fill(PLUM + "\n\n" + PLUM);
    assertEquals(2, filling.tables().size());
    List<Double> last = new ArrayList<>();
    filling.columns().stream()
        .filter(c -> c.column() == ComputedColumn.PURE_SUM)
        .forEach(c -> last.add(c.patch().cells().number(c.table().lastRow())));
    assertEquals(last.get(0), last.get(1));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void fillingAFilledRunChangesNothing(Language language) {
    TestGrid grid = TestGrid.of("Run", PLUM.replace("| 66 |", "| |"));
    TestGrid once = grid.with(fill(grid, FillOptions.usual().in(language)).patch());
    TestGrid twice = once.with(fill(once, FillOptions.usual().in(language)).patch());
    assertEquals(once.all(), twice.all());
    assertEquals(grid.columnCount() + 7, once.columnCount());
  }

  @Test
  void headersAreInTheLogsLanguage() {
    Filling filling =
        fill(
            """
            Brand vom Herbst
            Glas | Menge mL | Vol.-% | Temp °C | Teil
            1 | 100 | 75 | 15 | Vorlauf
            2 | 500 | 74 | 16 | Mittellauf
            3 | 500 | 66 | 25 | Mittellauf
            4 | 500 | 42 | 25 | Nachlauf""");
    assertEquals("Wahre Stärke (% vol)", filling.patch().columns().get(0).header());
  }

  @Test
  void onlyTheNamedColumnsAreFilled() {
    TestGrid grid = TestGrid.of("Run", PLUM);
    Filling pure =
        fill(grid, new FillOptions(EnumSet.of(ComputedColumn.PURE_ALCOHOL), FormulaStyle.VALUES));
    assertEquals(1, pure.patch().columns().size());
    Filling ferment =
        fill(grid, new FillOptions(EnumSet.of(ComputedColumn.ABV), FormulaStyle.VALUES));
    assertEquals(List.of(), ferment.patch().columns());
  }

  @Test
  void formulasReferToTheLogsOwnCells() {
    TestGrid grid = TestGrid.of("Run", PLUM);
    Filling pack = fill(grid, new FillOptions(FillOptions.usual().columns(), FormulaStyle.PACK));
    assertEquals("WASHBOOK.TRUESTRENGTH(C4,D4)", formula(pack, ComputedColumn.TRUE_STRENGTH, 3));
    assertEquals(
        "WASHBOOK.PUREALCOHOL(B5/1000,G5,D5)", formula(pack, ComputedColumn.PURE_ALCOHOL, 4));
    assertEquals("IF(COUNT(H$4:H6)=3,SUM(H$4:H6),\"\")", formula(pack, ComputedColumn.PURE_SUM, 5));
    assertEquals(
        "IF(I6=\"\",\"\",100*I6/($B$2*$D$2/100))", formula(pack, ComputedColumn.CHARGE_SHARE, 5));
    assertEquals(
        "IF(COUNT(H5:H6)=2,SUM(H5:H6)/SUMPRODUCT(H5:H6/G5:G6),\"\")",
        formula(pack, ComputedColumn.CUT_STRENGTH, 5));
    assertEquals("WASHBOOK.HEADSTRENGTH(E4)", formula(pack, ComputedColumn.HEAD_STRENGTH, 3));
    Filling portable =
        fill(grid, new FillOptions(FillOptions.usual().columns(), FormulaStyle.PORTABLE));
    assertNotNull(formula(portable, ComputedColumn.TRUE_STRENGTH, 3));
    assertNotNull(formula(portable, ComputedColumn.PURE_ALCOHOL, 3));
    assertNull(formula(portable, ComputedColumn.HEAD_STRENGTH, 3), "it has no plain form");
  }

  private static String formula(Filling filling, ComputedColumn column, int row) {
    return column(filling, column).cells().formula(row);
  }
}
