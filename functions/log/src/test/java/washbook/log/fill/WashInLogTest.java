package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.StatedWash;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** The kind of wash by which a log is filled, and what people are told of it. */
class WashInLogTest {
  private static TestGrid log(String above) {
    return TestGrid.of(
        "Sugar 4", above + "\nDay | SG | Temp C\n0 | 1.085 | 20\n4 | 1.040 | 20\n9 | 0.998 | 20");
  }

  private static LogTable table(TestGrid grid, LogMap map) {
    return SheetUnderstanding.understand(grid, map).tables().get(0);
  }

  private static double alcohol(TestGrid grid, LogMap map) {
    return calc(grid, map, 4);
  }

  private static double calc(TestGrid grid, LogMap map, int column) {
    Understanding understood = SheetUnderstanding.understand(grid, map);
    TestGrid filled = grid.with(LogFiller.fill(grid, understood, FillOptions.usual()).patch());
    return filled.number(filled.rowCount() - 1, column);
  }

  @ParameterizedTest
  @CsvSource({
    "Sugar wash in the blue drum, SUGAR",
    "Wash: sugar, SUGAR",
    "Kind of wash | molasses, MOLASSES",
    "Maische: Zucker, SUGAR",
    "Zuckermaische im Keller, SUGAR",
    "Pflaumenmaische, FRUIT",
    "Hydromel, HONEY",
    "Tipo de mosto | azúcar, SUGAR",
    "Idromele d'acacia, HONEY",
    "Mosto: uva, FRUIT",
    "Suikerbeslag, SUGAR",
    "Beslag: heuning, HONEY",
    "Beer for the cellar, MALT",
  })
  void wordsAboveTheTableDecide(String above, String kind) {
    TestGrid grid = log(above);
    StatedWash wash = table(grid, LogMap.none()).settings().wash();
    assertEquals(kind, wash.kind().word());
    assertEquals("stated in A1", wash.why().in(Language.EN).replace("B1", "A1"));
    assertEquals(calc("ABV", 1.085, 0.998, kind), alcohol(grid, LogMap.none()), 1e-12);
  }

  /** Names of batches and sheets, notes and two kinds at once decide nothing. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Plum 3",
        "Molasses 2 (blackstrap and raw sugar)",
        "Sugar 4",
        "Sugar added: 4 kg",
        "Beer yeast in a sugar wash",
        "Cider apple, winter pressing"
      })
  void otherWordsDecideNothing(String above) {
    TestGrid grid = log(above);
    LogTable table = table(grid, LogMap.none());
    assertTrue(!table.settings().wash().isStated(), table.settings().wash().why().in(Language.EN));
    assertEquals(calc("ABV", 1.085, 0.998), alcohol(grid, LogMap.none()), 1e-12);
    String remark = table.remarks().get(1).in(Language.EN);
    assertTrue(
        remark.startsWith("kind of wash not stated, taken as MALT; from 1.085 to 1"), remark);
    String sugar = String.format(Locale.ROOT, "SUGAR %.1f", calc("ABV", 1.085, 1.0, "SUGAR"));
    assertTrue(remark.contains(sugar), remark);
  }

  @Test
  void aMapDecidesBeforeTheLog() {
    TestGrid grid = log("Sugar wash");
    LogMap map = LogMap.parse("wash = honey");
    assertEquals(calc("ABV", 1.085, 0.998, "HONEY"), alcohol(grid, map), 1e-12);
    assertEquals(
        "kind of wash HONEY: by the map", table(grid, map).remarks().get(1).in(Language.EN));
    assertTrue(map.print().contains("wash = HONEY"), map.print());
    LogMap yield = LogMap.parse("wash = 90");
    assertEquals(calc("ABV", 1.085, 0.998, 90.0), alcohol(grid, yield), 1e-12);
    assertTrue(yield.print().contains("wash = 90"), yield.print());
  }

  @ParameterizedTest
  @ValueSource(strings = {"wash = tea", "wash = 60"})
  void aMapRefusesWhatIsNoKind(String line) {
    String why =
        Assertions.assertThrows(IllegalArgumentException.class, () -> LogMap.parse(line))
            .getMessage();
    assertTrue(why.startsWith("line 1 of the map: "), why);
  }

  @Test
  void formulasNameTheKind() {
    TestGrid grid = log("Sugar wash");
    Filling filling =
        LogFiller.fill(
            grid,
            SheetUnderstanding.understand(grid, LogMap.none()),
            new FillOptions(
                EnumSet.of(
                    ComputedColumn.ABV,
                    ComputedColumn.APPARENT_ATTENUATION,
                    ComputedColumn.PLUS_MINUS),
                FormulaStyle.PACK));
    List<String> formulas =
        filling.patch().columns().stream().map(c -> String.valueOf(c.cells().formula(4))).toList();
    assertTrue(formulas.toString().contains(",\"SUGAR\")"), formulas.toString());
    assertTrue(formulas.toString().contains(",,,\"SUGAR\")"), formulas.toString());
    assertTrue(
        formulas.stream().anyMatch(f -> f.startsWith("WASHBOOK.APPARENT") && !f.contains("SUGAR")),
        formulas.toString());
  }

  /** A Brix hydrometer for 60 degF has one answer: the function's, the log's and CONVERT's. */
  @Test
  void brixReadAt60FIsWhatCorrectedBrixSays() {
    TestGrid grid =
        TestGrid.of(
            "Sugar 4",
            "Hydrometer calibrated at 60 F\nDay | Brix | Temp C\n0 | 19.3 | 15\n4 | 10 | 22");
    TestGrid filled =
        grid.with(
            LogFiller.fill(
                    grid, SheetUnderstanding.understand(grid, LogMap.none()), FillOptions.usual())
                .patch());
    double brix = SimpleLogTest.calc("CORRECTEDBRIX", 19.3, 15.0, 140.0 / 9);
    assertEquals(SimpleLogTest.calc("CONVERT", brix, "BRIX", "SG"), gravity(filled), 2e-7);
  }

  private static double gravity(TestGrid filled) {
    return filled.number(2, 3) > 2
        ? SimpleLogTest.calc("CONVERT", filled.number(2, 3), "BRIX", "SG")
        : filled.number(2, 3);
  }

  private static double calc(String name, Object... arguments) {
    return SimpleLogTest.calc(name, arguments);
  }
}
