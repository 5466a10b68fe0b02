package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;

/** Figures, units and cuts in the cells of a table of jars. */
class CellsOfJarsTest {
  private static TestGrid column(String... cells) {
    return TestGrid.of("Run", String.join("\n", cells));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "74; 74",
        "74 %; 74",
        "74,5 %; 74.5",
        "74 % vol; 74",
        "74 %vol.; 74",
        "74 vol; 74",
        "74°; 74",
        "74 grad; 74",
        "200 ml; 200",
        "plum; NaN",
        "plum %; NaN",
      })
  void aFigureIsReadWithTheSignBehindIt(String cell, double number) {
    assertEquals(number, RunCells.number(column(cell), 0, 0));
  }

  @Test
  void aBlankCellHoldsNoFigure() {
    assertEquals(Double.NaN, RunCells.number(column("", "1"), 0, 0));
  }

  @ParameterizedTest
  @CsvSource({
    "200 ml, ML",
    "20 cl, CL",
    "2 dl, DL",
    "0.5 l, L",
    "2 litres, L",
    "200, ''",
    "74 %, ''",
    "1 gal, ''",
  })
  void theUnitOfAVolumeMayStandInItsCell(String cell, String unit) {
    assertEquals(unit, RunCells.volumeUnit(column(cell), 0, 0).map(RunVolumeUnit::name).orElse(""));
  }

  @ParameterizedTest
  @CsvSource({"18 °C, C", "65 F, F", "18, ''", "'''18', ''", "200 ml, ''"})
  void theUnitOfATemperatureMayStandInItsCell(String cell, String unit) {
    assertEquals(unit, RunCells.temperatureUnit(column(cell), 0, 0).map(Enum::name).orElse(""));
  }

  @Test
  void anotherUnitThanTheColumnsIsSeen() {
    Set<RunWord> strengths = Set.of(RunWord.STRENGTH);
    assertTrue(RunCells.hasOtherUnit(column("74 ml"), 0, 0, strengths));
    assertTrue(RunCells.hasOtherUnit(column("74 plums"), 0, 0, strengths));
    assertFalse(RunCells.hasOtherUnit(column("74 abv"), 0, 0, strengths));
    assertFalse(RunCells.hasOtherUnit(column("74 GL"), 0, 0, strengths));
    assertFalse(RunCells.hasOtherUnit(column("74,5 °GL"), 0, 0, strengths));
    assertFalse(RunCells.hasOtherUnit(column("'74"), 0, 0, strengths));
    assertFalse(RunCells.hasOtherUnit(column("74"), 0, 0, strengths));
  }

  /** 1 US gallon is 3.785411784 L: NIST Handbook 44, Appendix C. */
  @ParameterizedTest
  @CsvSource({
    "ML, 200, 0.2, B5/1000",
    "CL, 20, 0.2, B5/100",
    "DL, 2, 0.2, B5/10",
    "L, 0.2, 0.2, B5",
    "GALUS, 2, 7.570823568, B5*3.785411784",
  })
  void aVolumeIsTurnedIntoLitres(String unit, double volume, double litres, String formula) {
    RunVolumeUnit of = RunVolumeUnit.of(unit).orElseThrow();
    assertEquals(litres, of.toLitres(volume), 1e-12);
    assertEquals(formula, of.formula("B5"));
  }

  @Test
  void otherUnitsOfVolumeAreNotKnown() {
    assertEquals(Optional.empty(), RunVolumeUnit.of("PINT"));
  }

  @ParameterizedTest
  @CsvSource({
    "heads, HEADS",
    "Foreshots, HEADS",
    "hearts (plum), HEARTS",
    "Mittellauf, HEARTS",
    "feints, TAILS",
    "queues, TAILS",
    "heads and tails, ",
    "smells of plum, ",
  })
  void aTextNamesOneCutOrNone(String text, RunCut cut) {
    assertEquals(cut, RunCut.of(text));
  }

  @ParameterizedTest
  @CsvSource({"V., HEADS", "' m ', HEARTS", "H, HEARTS", "Q, TAILS", "n, TAILS", "x, ", "heads, "})
  void aCutHasShortForms(String text, RunCut cut) {
    assertEquals(cut, RunCut.ofLetter(text));
  }

  private static boolean isColumn(String... cells) {
    return RunCuts.isColumn(column(cells), 0, cells.length, RunHeader.Cell.of(0, "part"));
  }

  @Test
  void aColumnOfCutsNamesAtLeastTwoOfThemAndNearlyNothingElse() {
    assertTrue(isColumn("heads", "hearts", "tails"));
    assertTrue(isColumn("heads", "hearts", "hearts", "tails", "plum"));
    assertTrue(isColumn("heads", "\"", "hearts", "\""));
    assertTrue(isColumn("", "heads", "", "hearts", "hearts"));
    assertFalse(isColumn("heads", "hearts"));
    assertFalse(isColumn("hearts", "hearts", "hearts"));
    assertFalse(isColumn("heads", "hearts", "tails", "plum"));
    assertFalse(isColumn("plum", "glue", "stone"));
  }

  @Test
  void shortFormsAreCutsOnlyWhereNothingElseStands() {
    assertTrue(isColumn("v", "m", "m", "n"));
    assertTrue(isColumn("V", "v", "m", "\"", "n"));
    assertFalse(isColumn("v", "m", "x", "n"));
    assertFalse(isColumn("v", "m", "h", "c", "n"));
  }

  @Test
  void aDittoMarkRepeatsTheCutAbove() {
    TestGrid grid = column("heads", "\"", "m", "plum", "\"", "tails", "idem");
    assertEquals(
        List.of("HEADS", "HEADS", "HEARTS", "", "", "TAILS", "TAILS"),
        RunCuts.of(grid, List.of(0, 1, 2, 3, 4, 5, 6), 0));
    assertEquals(List.of("", "TAILS"), RunCuts.of(grid, List.of(3, 5), 0));
  }

  @Test
  void notesThatNameCutsAreCountedOncePerCut() {
    TestGrid grid = column("heads are sharp", "more heads", "hearts begin", "m", "tails");
    assertEquals(3, RunCuts.named(grid, 0, 5, 0));
    assertEquals(2, RunCuts.named(grid, 0, 4, 0));
    assertEquals(1, RunCuts.named(grid, 2, 4, 0));
    assertEquals(3, RunCuts.named(grid, 0, 99, 0));
  }

  private static RunFigures figures(TestGrid grid) {
    return new RunFigures(grid, 0, grid.rowCount());
  }

  @Test
  void theLeastAndTheGreatestFigureOfAColumn() {
    RunFigures figures = figures(column("74 %", "plum", "60", "72"));
    assertEquals(60, figures.min(0));
    assertEquals(74, figures.max(0));
    assertTrue(figures(column("plum")).min(0) > 1e300);
    assertTrue(figures(column("plum")).max(0) < -1e300);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1 2; true",
        "1 2 x; true",
        "1 2 x y; false",
        "1 2 3 x y; true",
        "1; false",
        "1 x; false",
      })
  void mostOfTheFilledCellsMustBeFiguresAndTwoOfThem(String cells, boolean numbers) {
    assertEquals(numbers, figures(column(cells.split(" "))).isMostlyNumbers(0));
  }

  private static boolean areSums(String... rows) {
    return figures(column(rows)).areSums(0, 1, 2);
  }

  @Test
  void sumsAgreeWithTheirPartsToHalfAPercent() {
    assertTrue(areSums("200|200|74", "700|500|60", "1200|500|40"));
    assertTrue(areSums("200|200|74", "700|500|60", "1205|500|40"));
    assertTrue(areSums("200|200|74", "700|500|60", "1195|500|40"));
    assertFalse(areSums("200|200|74", "700|500|60", "1207|500|40"));
    assertFalse(areSums("200|200|74", "700|500|60"));
    assertFalse(areSums("200|200|74", "500|500|60", "500|500|40"));
    assertFalse(areSums("200|200|74", "700|500|60", "1200||40"));
  }

  @Test
  void aTotalBelowWithoutAStrengthIsNoPartOfTheColumn() {
    assertTrue(areSums("200|200|74", "700|500|60", "1200|500|40", "1200|1200|"));
    assertEquals(
        List.of(200.0, 500.0),
        Arrays.stream(figures(column("200|74", "500|60", "700|")).besideStrengths(0, 1))
            .boxed()
            .toList());
  }

  /** V volume, S strength, P pure alcohol, T temperature, 20 what was brought to 20 °C. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "mL; V",
        "cL; V",
        "dL; V",
        "Litres; V",
        "US gal; V",
        "pint; V",
        "Volume; V",
        "Volume mL; V",
        "Volume at 20 °C; V20",
        "% vol; S",
        "ABV; S",
        "Proof; S",
        "Grad; S",
        "Strength read; S",
        "ABV at 20 °C; S20",
        "ABV20; S20",
        "True strength; S20",
        "ABV corrected; S20",
        "ABV not corrected; S",
        "Strength temperature; T",
        "Proof temperature; ST",
        "Pure alcohol; P",
        "Pure alcohol mL; P",
        "LAA; P",
        "Alcohol mL; P",
        "Temp; T",
        "Temp mL; T",
        "°C; T",
        "Head C; T",
        "Spirit F; T",
        "Room C; T",
        "C; ''",
        "Cut; ''",
        "Smell; ''",
      })
  void aHeaderSaysWhatItsColumnHolds(String header, String held) {
    RunHeader.Cell cell = RunHeader.Cell.of(0, header);
    String found =
        (cell.isVolume() ? "V" : "")
            + (cell.isStrength() ? "S" : "")
            + (cell.isPureAlcohol() ? "P" : "")
            + (cell.isTemperature() ? "T" : "")
            + (cell.isAt20() ? "20" : "");
    assertEquals(held, found);
  }
}
