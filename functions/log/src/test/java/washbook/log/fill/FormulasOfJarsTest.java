package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.ComputedColumn;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/**
 * The formulas beside jars: from the log's own cells, and none where a cell is not just a number.
 */
class FormulasOfJarsTest {
  private static Filling fill(String log, FormulaStyle style, ComputedColumn... columns) {
    TestGrid grid = TestGrid.of("Run", log);
    return LogFiller.fill(
        grid,
        SheetUnderstanding.understand(grid, LogMap.none()),
        new FillOptions(EnumSet.copyOf(List.of(columns)), style));
  }

  /** The formula of a column in a row of the sheet as people count them. */
  private static String formula(Filling filling, ComputedColumn column, int row) {
    String formula =
        filling.columns().stream()
            .filter(c -> c.column() == column)
            .findFirst()
            .orElseThrow()
            .patch()
            .cells()
            .formula(row - 1);
    return formula == null ? null : formula.replace("WASHBOOK.", "");
  }

  private static final String MESSY =
      """
      % vol | mL | Temp C | Head F | Cut
      75 | 100 | 15 | 184 | heads
      74 | 500 | 16 | 185 | hearts
      '66,5 | 500 | 25 | ~188 | hearts
      42 | 500 | ~25 | 195 | tails\
      """;

  private static final ComputedColumn[] ALL = {
    ComputedColumn.TRUE_STRENGTH,
    ComputedColumn.VOLUME_AT_20,
    ComputedColumn.PURE_ALCOHOL,
    ComputedColumn.PURE_SUM,
    ComputedColumn.CUT_STRENGTH,
    ComputedColumn.HEAD_STRENGTH
  };

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      nullValues = "none",
      value = {
        "TRUE_STRENGTH; 2; TRUESTRENGTH(A2,C2)",
        "TRUE_STRENGTH; 4; none",
        "TRUE_STRENGTH; 5; none",
        "VOLUME_AT_20; 3; VOLUMEAT20(B3/1000,C3,F3)",
        "VOLUME_AT_20; 5; IF(H5=\"\",\"\",100*H5/F5)",
        "PURE_ALCOHOL; 4; PUREALCOHOL(B4/1000,F4,C4)",
        "PURE_ALCOHOL; 5; none",
        "PURE_SUM; 2; IF(COUNT(H$2:H2)=1,SUM(H$2:H2),\"\")",
        "PURE_SUM; 5; IF(COUNT(H$2:H5)=4,SUM(H$2:H5),\"\")",
        "CUT_STRENGTH; 2; IF(COUNT(H2:H2)=1,SUM(H2:H2)/SUMPRODUCT(H2:H2/F2:F2),\"\")",
        "CUT_STRENGTH; 3; none",
        "CUT_STRENGTH; 4; IF(COUNT(H3:H4)=2,SUM(H3:H4)/SUMPRODUCT(H3:H4/F3:F4),\"\")",
        "HEAD_STRENGTH; 2; HEADSTRENGTH(CONVERT(D2,\"F\",\"C\"))",
        "HEAD_STRENGTH; 4; none",
      })
  void aFormulaStandsWhereTheCellsAreNumbers(ComputedColumn column, int row, String formula) {
    assertEquals(formula, formula(fill(MESSY, FormulaStyle.PACK, ALL), column, row));
  }

  /** A sum, a share, a mean is a formula of the columns it is made of, if they are written. */
  @ParameterizedTest
  @CsvSource({"PURE_SUM", "CUT_STRENGTH", "VOLUME_AT_20"})
  void withoutTheColumnItIsMadeOfThereIsNoFormula(ComputedColumn column) {
    Filling filling = fill(MESSY, FormulaStyle.PACK, column);
    assertNull(formula(filling, column, 4));
    double figure = filling.patch().columns().get(0).cells().number(3);
    assertEquals(true, figure > 0, "but a figure");
  }

  @Test
  void pureAlcoholAloneIsMadeOfTheStrengthThatWasRead() {
    assertEquals(
        "PUREALCOHOL(B2/1000,TRUESTRENGTH(A2,C2),C2)",
        formula(
            fill(MESSY, FormulaStyle.PACK, ComputedColumn.PURE_ALCOHOL),
            ComputedColumn.PURE_ALCOHOL,
            2));
  }

  private static final String RUN =
      """
      Plum 3, spirit run | | | | |
      Charge | 10 | L | 30 | %% vol |
      Jar | %s | %s | Temp C
      1 | %s | 75 | 15
      2 | %s | 74 | 16
      3 | %s | 66 | 25
      4 | %s | 42 | 25\
      """;

  /** The first jar is its total, the next what the total has grown by. */
  @Test
  void aRunningTotalGoesInAsTheDifference() {
    String log = RUN.formatted("mL so far", "% vol", 200, 700, 1200, 1700);
    Filling filling =
        fill(log, FormulaStyle.PACK, ComputedColumn.TRUE_STRENGTH, ComputedColumn.PURE_ALCOHOL);
    assertEquals("PUREALCOHOL(B4/1000,E4,D4)", formula(filling, ComputedColumn.PURE_ALCOHOL, 4));
    assertEquals(
        "PUREALCOHOL((B5-B4)/1000,E5,D5)", formula(filling, ComputedColumn.PURE_ALCOHOL, 5));
  }

  @Test
  void ukProofIsFourSeventhsAsLongAsItIsAFormula() {
    String log =
        RUN.formatted("mL", "proof UK", 500, 500, 500, 500)
            .replace("Plum 3,", "Plum 3, hydrometer calibrated at 60 F,");
    Filling filling = fill(log, FormulaStyle.PACK, ComputedColumn.TRUE_STRENGTH);
    assertTrue(
        formula(filling, ComputedColumn.TRUE_STRENGTH, 4)
            .startsWith("TRUESTRENGTH(C4*4/7,D4,15.5"));
  }

  @ParameterizedTest
  @CsvSource({
    "mL, 500, B4/1000",
    "L, 0.5, B4",
    "cL, 50, B4/100",
    "dL, 5, B4/10",
    "US gal, 0.13, B4*3.785411784",
  })
  void volumesGoInAsLitres(String unit, String volume, String litres) {
    String log = RUN.formatted(unit, "% vol", volume, volume, volume, volume);
    Filling filling =
        fill(log, FormulaStyle.PACK, ComputedColumn.TRUE_STRENGTH, ComputedColumn.PURE_ALCOHOL);
    String formula = formula(filling, ComputedColumn.PURE_ALCOHOL, 4);
    assertEquals("PUREALCOHOL(" + litres + ",E4,D4)", formula);
  }

  @Test
  void proofIsHalvedAndFahrenheitConverted() {
    String log =
        """
        Still run; hydrometer true at 68 F
        Jar | mL | US proof | Temp F
        1 | 100 | 150 | 59
        2 | 500 | 148 | 60.8
        3 | 500 | 132 | 77
        4 | 500 | 84 | 77\
        """;
    Filling filling =
        fill(log, FormulaStyle.PACK, ComputedColumn.TRUE_STRENGTH, ComputedColumn.PURE_ALCOHOL);
    assertEquals(
        "TRUESTRENGTH(C3/2,CONVERT(D3,\"F\",\"C\"))",
        formula(filling, ComputedColumn.TRUE_STRENGTH, 3));
  }

  @Test
  void strengthsAndVolumesAt20AreTakenAsTheyStand() {
    String log =
        """
        Still run
        Volumes at 20 °C, strengths corrected
        Jar | L | True % vol | Head C
        1 | 0.1 | 75 | 84
        2 | 0.5 | 74 | 85
        3 | 0.5 | 66 | 88
        4 | 0.5 | 42 | 95\
        """;
    Filling filling = fill(log, FormulaStyle.PACK, ALL);
    assertEquals("IF(C4=\"\",\"\",C4)", formula(filling, ComputedColumn.TRUE_STRENGTH, 4));
    assertEquals("IF(E4=\"\",\"\",B4)", formula(filling, ComputedColumn.VOLUME_AT_20, 4));
    assertEquals("PUREALCOHOL(B4,E4)", formula(filling, ComputedColumn.PURE_ALCOHOL, 4));
    assertEquals("HEADSTRENGTH(D4)", formula(filling, ComputedColumn.HEAD_STRENGTH, 4));
  }

  /** What has no plain form is made of what has one. */
  @Test
  void aPlainVolumeAt20IsMadeOfAlcoholAndStrength() {
    String log = RUN.formatted("mL", "% vol", "100", "500", "500", "500");
    Filling filling =
        fill(
            log,
            FormulaStyle.PORTABLE,
            ComputedColumn.TRUE_STRENGTH,
            ComputedColumn.VOLUME_AT_20,
            ComputedColumn.PURE_ALCOHOL);
    assertEquals("IF(G4=\"\",\"\",100*G4/E4)", formula(filling, ComputedColumn.VOLUME_AT_20, 4));
  }

  @Test
  void runsBelowEachOtherAddUpTheirOwnJars() {
    String run = RUN.formatted("mL", "% vol", "100", "500", "500", "500");
    Filling filling =
        fill(
            run + "\n\n" + run.replace("Plum 3", "Apple 7"),
            FormulaStyle.PACK,
            ComputedColumn.PURE_ALCOHOL,
            ComputedColumn.PURE_SUM,
            ComputedColumn.CHARGE_SHARE);
    List<FilledColumn> sums =
        filling.columns().stream().filter(c -> c.column() == ComputedColumn.PURE_SUM).toList();
    assertEquals(2, sums.size());
    assertEquals("IF(COUNT(E$4:E5)=2,SUM(E$4:E5),\"\")", sums.get(0).patch().cells().formula(4));
    assertEquals(
        "IF(COUNT(E$12:E13)=2,SUM(E$12:E13),\"\")", sums.get(1).patch().cells().formula(12));
  }

  /** Of the charge's own cells where they hold just the numbers, else of its litres of alcohol. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Charge | 10 | L | 30 | % vol |; IF(G4=\"\",\"\",100*G4/($B$2*$D$2/100))",
        "Charge | 10 | L at 30 % vol | | |; IF(G4=\"\",\"\",100*G4/3)",
        "Charge: 10 L at 30 % vol | | | | |; IF(G4=\"\",\"\",100*G4/3)",
      })
  void theShareIsThatOfTheCharge(String line, String share) {
    String log =
        RUN.formatted("mL", "% vol", 500, 500, 500, 500)
            .replace("Charge | 10 | L | 30 | % vol |", line);
    Filling filling =
        fill(
            log,
            FormulaStyle.PACK,
            ComputedColumn.TRUE_STRENGTH,
            ComputedColumn.PURE_ALCOHOL,
            ComputedColumn.PURE_SUM,
            ComputedColumn.CHARGE_SHARE);
    assertEquals(share, formula(filling, ComputedColumn.CHARGE_SHARE, 4));
    Filling alone = fill(log, FormulaStyle.PACK, ComputedColumn.CHARGE_SHARE);
    assertNull(formula(alone, ComputedColumn.CHARGE_SHARE, 4));
  }

  /** A temperature that a line states for all jars goes into each formula as a number. */
  @Test
  void aStatedTemperatureStandsInTheFormula() {
    String log =
        "Plum 3, spirit run\nall read at 17 °C\nJar | mL | % vol\n1 | 500 | 75\n2 | 500 | 74\n"
            + "3 | 500 | 66\n4 | 500 | 42";
    Filling filling =
        fill(log, FormulaStyle.PACK, ComputedColumn.TRUE_STRENGTH, ComputedColumn.PURE_ALCOHOL);
    assertEquals("TRUESTRENGTH(C4,17)", formula(filling, ComputedColumn.TRUE_STRENGTH, 4));
    assertEquals("PUREALCOHOL(B4/1000,D4,17)", formula(filling, ComputedColumn.PURE_ALCOHOL, 4));
  }
}
