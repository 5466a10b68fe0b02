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
 * A formula takes what the log holds from its cells, wherever they stand, and what is not in a cell
 * of its own as a number; only what can be sorted is looked for.
 */
class FormulasOfUnusualLogsTest {
  private static final ComputedColumn GRAVITY = ComputedColumn.CORRECTED_GRAVITY;

  private static Filling fill(String log, ComputedColumn... columns) {
    TestGrid grid = TestGrid.of("Plum 3", log);
    return LogFiller.fill(
        grid,
        SheetUnderstanding.understand(grid, LogMap.none()),
        new FillOptions(EnumSet.copyOf(List.of(columns)), FormulaStyle.PACK));
  }

  /** The formula of a column in a row of the sheet as people count them. */
  private static String formula(Filling filling, ComputedColumn column, int row) {
    return filling.columns().stream()
        .filter(c -> c.column() == column)
        .findFirst()
        .orElseThrow()
        .patch()
        .cells()
        .formula(row - 1);
  }

  private static String formula(String log, ComputedColumn column, int row) {
    return formula(fill(log, GRAVITY, ComputedColumn.ABV, column), column, row)
        .replace("WASHBOOK.", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Day|SG|Temp C; 0|1.085|22; 3|1.05|20; CORRECTEDGRAVITY(B2,C2)",
        "Temp C|Day|SG; 22|0|1.085; 20|3|1.05; CORRECTEDGRAVITY(C2,A2)",
        "Day|SG|Temp C; 0|1.085|'22 C; 3|1.05|20; CORRECTEDGRAVITY(B2,22)",
        "Day|SG|Temp C; 0|1.085 SG|22; 3|1.05|20; CORRECTEDGRAVITY(1.085,C2)",
        "SG|Day|Temp F; 1.085|0|68; 1.05|3|68; CORRECTEDGRAVITY(A2,CONVERT(C2,\"F\",\"C\"))",
        "Day|SG|Temp C; 0|1085|22; 3|1050|20; CORRECTEDGRAVITY(B2/1000,C2)",
        "OG|Day|SG|Temp C; 1.085|0|1.084|22; |3|1.05|20; CORRECTEDGRAVITY(C2,D2,20,A2)",
      })
  void aFirstReadingIsTakenFromItsCells(String head, String first, String second, String formula) {
    String log = head + "\n" + first + "\n" + second;
    ComputedColumn column = first.contains("1085") ? ComputedColumn.SPECIFIC_GRAVITY : GRAVITY;
    assertEquals(formula, formula(log, column, 2));
  }

  @Test
  void aCalibrationIsNamedFromTheFirstReadingOn() {
    String log = "Hydrometer calibrated at 15 °C\nDay|SG|Temp C\n0|1.085|22\n3|1.05|20";
    assertEquals("CORRECTEDGRAVITY(B3,C3,15)", formula(log, GRAVITY, 3));
    assertEquals("CORRECTEDGRAVITY(B4,C4,15,MAX($F$2:$F$204))", formula(log, GRAVITY, 4));
  }

  @Test
  void readingsCorrectedAlreadyAreTakenAtTheirReference() {
    String log = "Readings corrected to 20 °C\nDay|SG|Temp C\n0|1.085|24\n3|1.05|26";
    assertEquals("CORRECTEDGRAVITY(B3,20)", formula(log, GRAVITY, 3));
    assertEquals("CORRECTEDGRAVITY(B4,20,20,MAX($F$2:$F$204))", formula(log, GRAVITY, 4));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "2; REFRACTOMETERGRAVITY(B2,B2)",
        "3; REFRACTOMETERGRAVITY(20.5,B3)",
        "4; REFRACTOMETERGRAVITY(20.5,9.5)"
      })
  void aRefractometersReadingGoesWithTheOneThatItBeganWith(int row, String formula) {
    String log = "Day|Refractometer Brix|Temp C\n0|20.5|20\n3|12|20\n5|'9,5|20";
    assertEquals(formula, formula(log, ComputedColumn.SPECIFIC_GRAVITY, row));
  }

  @Test
  void theRefractometersFactorIsNamedWhereThereIsOne() {
    String log = "Refractometer factor 1.04\nDay|Refractometer Brix\n0|20.5\n3|12";
    ComputedColumn column = ComputedColumn.SPECIFIC_GRAVITY;
    assertEquals("REFRACTOMETERGRAVITY(B3,B3,1.04)", formula(log, column, 3));
    assertEquals("REFRACTOMETERGRAVITY(20.5,B4,1.04)", formula(log, column, 4));
  }

  /** Readings above a stated original by no more than they can err are "no ferment yet". */
  @Test
  void aReadingBeforeTheFermentHasNoAlcohol() {
    String log = "OG|1.085\nDay|SG|Temp C\n0|1.086|20\n1|1.0855|20\n3|1.05|20";
    assertEquals("CORRECTEDGRAVITY(B4,C4)", formula(log, GRAVITY, 4));
    assertEquals("ABV($B$1,MIN($B$1,D4))", formula(log, ComputedColumn.ABV, 4));
    assertEquals("ABV($B$1,D5)", formula(log, ComputedColumn.ABV, 5));
    Filling alone = fill(log, ComputedColumn.ABV);
    assertNull(formula(alone, ComputedColumn.ABV, 4));
    assertEquals(0, alone.patch().columns().get(0).cells().number(3));
    assertTrue(formula(alone, ComputedColumn.ABV, 5).startsWith("WASHBOOK.ABV($B$1,WASHBOOK.C"));
  }

  @Test
  void theKindOfWashStandsAtItsOwnPlace() {
    String log = "Sugar wash\nDay|SG|Temp C\n0|1.085|20\n3|1.05|20";
    assertEquals("ABV(D3,D3,\"SUGAR\")", formula(log, ComputedColumn.ABV, 3));
    assertEquals("ABVPLUSMINUS(D3,D3,,,\"SUGAR\")", formula(log, ComputedColumn.PLUS_MINUS, 3));
  }

  @Test
  void otherScalesAreWrittenFromTheSpecificGravity() {
    String thousands = "Day|SG|Temp C\n0|1085|20\n3|1050|20";
    assertEquals("IF(G2=\"\",\"\",G2*1000)", formula(thousands, GRAVITY, 2));
    String density = "Day|Density (g/cm3)|Temp C\n0|1.0834|20\n3|1.05|20";
    assertEquals("IF(G2=\"\",\"\",CONVERT(G2,\"SG\",\"KGM3\")/1000)", formula(density, GRAVITY, 2));
    assertEquals(
        "CORRECTEDGRAVITY(CONVERT(B2*1000,\"KGM3\",\"SG\"),C2)",
        formula(density, ComputedColumn.SPECIFIC_GRAVITY, 2));
    String brix = "Day|Brix (hydrometer)|Temp C\n0|20.5|20\n3|12|20";
    assertEquals("CONVERT(G2,\"SG\",\"BRIX\")", formula(brix, GRAVITY, 2));
  }

  @Test
  void rateAndStateHaveNoFormulaForTheyAreOfManyRows() {
    Filling filling =
        fill(
            "Day|SG|Temp C\n0|1.085|22\n3|1.05|20\n5|1.03|20\n7|1.02|20",
            ComputedColumn.RATE,
            ComputedColumn.STATE,
            ComputedColumn.SUGAR_LEFT);
    assertTrue(filling.patch().columns().get(1).cells().number(4) > 1);
    assertNull(formula(filling, ComputedColumn.RATE, 5));
    assertNull(formula(filling, ComputedColumn.STATE, 5));
    assertEquals("slowing", filling.patch().columns().get(2).cells().text(4));
  }

  private static String batches(String names) {
    String[] name = names.split(",", -1);
    return "Batch|Day|SG|Temp C\n%s|0|1.085|22\n%s|3|1.05|20\n%s|0|1.06|20\n%s|3|1.03|20"
        .formatted((Object[]) name);
  }

  /**
   * Names that a spreadsheet takes for patterns, or for parts of others, are compared as a whole.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Plum 3,Plum 3,Apple 7,Apple 7; SUMIF($A$1:$A$205,A3,$H$1:$H$205)",
        "3,3,7,7; SUMIF($A$1:$A$205,A3,$H$1:$H$205)",
        "Plum*,Plum*,Apple 7,Apple 7; SUMPRODUCT(($A$1:$A$205=A3)*1,$H$1:$H$205)",
        "Plum?,Plum?,Apple 7,Apple 7; SUMPRODUCT(($A$1:$A$205=A3)*1,$H$1:$H$205)",
        "3,3,31,31; SUMPRODUCT(($A$1:$A$205=A3)*1,$H$1:$H$205)",
        "31,31,3,3; SUMIF($A$1:$A$205,A3,$H$1:$H$205)",
        "Plum 3,,Apple 7,; $H$2",
      })
  void theOriginalGravityOfABatchIsLookedForByItsName(String names, String formula) {
    assertEquals(formula, formula(batches(names), ComputedColumn.ORIGINAL_GRAVITY, 3));
  }

  @Test
  void whatIsStatedOnceForABatchIsLookedForOnceARow() {
    String log =
        "Batch|OG|Day|SG|Temp C\nPlum 3|1.085|0|1.084|22\nPlum 3||3|1.05|20\n"
            + "Apple 7|1.061|0|1.06|20\nApple 7|%s|3|1.03|20";
    ComputedColumn original = ComputedColumn.ORIGINAL_GRAVITY;
    String gaps = log.formatted("");
    assertEquals("B2", formula(gaps, original, 2));
    assertEquals(
        "SUMIF($A$1:$A$205,A5,$B$1:$B$205)/COUNTIFS($A$1:$A$205,A5,$B$1:$B$205,\">0\")",
        formula(gaps, original, 5));
    assertEquals("ABV(H3,F3)", formula(gaps, ComputedColumn.ABV, 3));
    String full = gaps.replace("Plum 3||3", "Plum 3|1.085|3").replace("7||3", "7|1.061|3");
    assertEquals("ABV(B3,F3)", formula(full, ComputedColumn.ABV, 3));
    assertEquals(2, fill(full, GRAVITY, ComputedColumn.ABV).patch().columns().size());
  }

  @Test
  void severalStatementsForANameThatIsPartOfAnotherAreCountedAsAWhole() {
    String log =
        "Batch|OG|Day|SG|Temp C\n"
            + "3|1.085|0|1.084|22\n"
            + "3||3|1.05|20\n"
            + "31|1.061|0|1.06|20\n"
            + "31||3|1.03|20";
    assertEquals(
        "SUMPRODUCT(($A$1:$A$205=A3)*1,$B$1:$B$205)/SUMPRODUCT(($A$1:$A$205=A3)*($B$1:$B$205>0))",
        formula(log, ComputedColumn.ORIGINAL_GRAVITY, 3));
  }

  /** Readings still to come belong to a look-up, what else stands below does not. */
  @Test
  void aLookUpEndsBeforeWhatStandsBelow() {
    String log = "Day|SG|Temp C\n0|1.085|22\n3|1.05|20\n||\n";
    ComputedColumn alcohol = ComputedColumn.ABV;
    assertEquals("ABV(MAX($F$1:$F$203),D3)", formula(log, alcohol, 3));
    assertEquals("ABV(MAX($F$1:$F$4),D3)", formula(log + "|||||bottled\n||", alcohol, 3));
    assertEquals("ABV(MAX($F$1:$F$203),D3)", formula(log + "||||||bottled\n||", alcohol, 3));
    assertEquals(
        "ABV(MAX($F$1:$F$5),D3)",
        formula(log + "Apple 7\nDay|SG|Temp C\n0|1.06|20\n3|1.04|20", alcohol, 3));
  }

  @Test
  void inALongTableEachRowLooksOnce() {
    assertEquals("ABV(MAX($F$1:$F$1201),D3)", formula(rows(1000), ComputedColumn.ABV, 3));
    String more = rows(1001);
    assertEquals("ABV(F3,D3)", formula(more, ComputedColumn.ABV, 3));
    assertEquals("MAX($G$1:$G$1202)", formula(more, ComputedColumn.ORIGINAL_GRAVITY, 3));
  }

  private static String rows(int count) {
    StringBuilder log = new StringBuilder("Day|SG|Temp C");
    for (int i = 0; i < count; i++) {
      log.append("\n" + i * 0.03125 + "|" + (1.085 - 0.00005 * i) + "|20");
    }
    return log.toString();
  }
}
