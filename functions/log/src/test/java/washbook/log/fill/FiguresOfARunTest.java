package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Numbers;
import washbook.log.ComputedColumn;
import washbook.log.RowAccount;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Sums, shares and means of a still run, jar by jar; all jars are read at 20 °C. */
class FiguresOfARunTest {
  private static final String HEAD = "Jar|mL|% vol|Temp C|Cut\n";

  private static final String JARS =
      "1|100|80|20|heads\n2|500|70|20|hearts\n3|500|60|20|hearts\n4|500|40|20|tails";

  private static ComputedRun computed(String log) {
    TestGrid grid = TestGrid.of("Run", log);
    return new ComputedRun(grid, run(grid));
  }

  private static StillRun run(TestGrid grid) {
    return SheetUnderstanding.understand(grid, LogMap.none()).runs().get(0);
  }

  private static String shown(ComputedRun run, ComputedColumn column) {
    return IntStream.rangeClosed(run.table().firstRow(), run.table().lastRow())
        .mapToObj(row -> Numbers.show(Math.rint(1e4 * run.number(column, row)) / 1e4))
        .collect(Collectors.joining(" "));
  }

  /** 80 mL, 350 mL, 300 mL and 200 mL of pure alcohol, of 3 L that were charged. */
  @ParameterizedTest
  @CsvSource({
    "TRUE_STRENGTH, 80 70 60 40",
    "VOLUME_AT_20, 0.1 0.5 0.5 0.5",
    "PURE_ALCOHOL, 0.08 0.35 0.3 0.2",
    "PURE_SUM, 0.08 0.43 0.73 0.93",
    "CHARGE_SHARE, 2.6667 14.3333 24.3333 31",
    "CUT_STRENGTH, 80 NaN 65 40",
    "HEAD_STRENGTH, NaN NaN NaN NaN",
    "ABV, NaN NaN NaN NaN",
  })
  void aRunHasItsFigures(ComputedColumn column, String figures) {
    ComputedRun run = computed("Charge: 10 L at 30 % vol\n" + HEAD + JARS);
    assertEquals(figures, shown(run, column));
    assertFalse(run.hasRefusals());
    assertEquals(List.of(), run.refusals());
    assertNull(run.text(ComputedColumn.NOTE, run.table().firstRow(), Language.EN));
    assertNull(run.text(ComputedColumn.ABV, run.table().firstRow(), Language.EN));
    Filling.BatchCount count = run.count().batches().get(0);
    assertEquals(4, count.rows());
    assertEquals(4, count.filled());
    assertEquals(0, count.refused());
  }

  /** From a jar that is refused on there is no sum, no share, no mean of its cut. */
  @ParameterizedTest
  @CsvSource({
    "PURE_ALCOHOL, 0.08 NaN 0.3 0.2",
    "PURE_SUM, 0.08 NaN NaN NaN",
    "CHARGE_SHARE, 2.6667 NaN NaN NaN",
    "CUT_STRENGTH, 80 NaN NaN 40",
  })
  void aRefusedJarEndsTheSums(ComputedColumn column, String figures) {
    ComputedRun run =
        computed("Charge: 10 L at 30 % vol\n" + HEAD + JARS.replace("2|500|70", "2|500|foam"));
    assertEquals(figures, shown(run, column));
    assertTrue(run.hasRefusals());
    assertEquals(1, run.refusedRows());
    assertEquals(1, run.refusals().size());
    assertEquals("C4", run.refusals().get(0).cell());
    int first = run.table().firstRow();
    assertNull(run.text(ComputedColumn.NOTE, first, Language.EN));
    String refused = run.text(ComputedColumn.NOTE, first + 1, Language.EN);
    assertTrue(refused.startsWith("C4: "), refused);
    String after = run.text(ComputedColumn.NOTE, first + 2, Language.EN);
    assertTrue(after.contains("C4") && !after.startsWith("C4: "), after);
    Filling.BatchCount count = run.count().batches().get(0);
    assertEquals(4, count.rows());
    assertEquals(3, count.filled());
    assertEquals(1, count.refused());
    assertEquals(4, run.jars().cardinality());
  }

  /** Two refused jars: the first is named where a sum is missing. */
  @Test
  void theFirstRefusedJarIsNamed() {
    ComputedRun run =
        computed(
            "Still run\n"
                + HEAD
                + JARS.replace("2|500|70", "2|500|foam").replace("3|500|60", "3|500|foam")
                + "\n5|500|30|20|tails\n6|500|20|20|tails");
    int last = run.table().lastRow();
    assertTrue(run.text(ComputedColumn.NOTE, last, Language.EN).contains("C4"));
    assertEquals(2, run.refusedRows());
  }

  /** More alcohol than the charge held: there is no share, and the charge is refused. */
  @ParameterizedTest
  @CsvSource({"9.1, false", "9, true", "5, true"})
  void noMoreComesOutThanWentIn(double percent, boolean refused) {
    ComputedRun run = computed("Charge: 10 L at " + percent + " % vol\n" + HEAD + JARS);
    assertEquals(refused, shown(run, ComputedColumn.CHARGE_SHARE).equals("NaN NaN NaN NaN"));
    assertEquals(refused ? 1 : 0, run.refusals().size());
    assertFalse(run.hasRefusals(), "no jar is");
    assertEquals("0.08 0.43 0.73 0.93", shown(run, ComputedColumn.PURE_SUM));
    if (refused) {
      assertEquals("A1", run.refusals().get(0).cell());
      String reason = run.refusals().get(0).reason(Language.EN);
      String share = percent == 9 ? "103 %" : "186 %";
      assertTrue(reason.startsWith("the jars hold " + share), reason);
    }
  }

  /** Columns that would be blank in all rows are not written. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; Cut; PURE_ALCOHOL CUT_STRENGTH",
        "''; Mark; PURE_ALCOHOL",
        "Charge: 10 L at 30 % vol; Cut; PURE_ALCOHOL CHARGE_SHARE CUT_STRENGTH",
        "Charge: 10 L; Cut; PURE_ALCOHOL CUT_STRENGTH",
        "''; Head C; PURE_ALCOHOL HEAD_STRENGTH",
      })
  void emptyColumnsAreLeftOut(String line, String header, String left) {
    String jars =
        header.equals("Cut")
            ? JARS
            : JARS.replaceAll("heads|hearts|tails", header.equals("Mark") ? "" : "85");
    TestGrid grid =
        TestGrid.of(
            "Run",
            "Still run\n"
                + (line.isEmpty() ? "" : line + "\n")
                + HEAD.replace("Cut", header)
                + jars);
    Set<ComputedColumn> columns =
        EnumSet.of(
            ComputedColumn.PURE_ALCOHOL,
            ComputedColumn.CHARGE_SHARE,
            ComputedColumn.CUT_STRENGTH,
            ComputedColumn.HEAD_STRENGTH);
    ComputedRun.withoutEmpty(run(grid), columns);
    assertEquals(left, columns.stream().map(Enum::name).collect(Collectors.joining(" ")));
  }

  private static String passed(String log) {
    TestGrid grid = TestGrid.of("Log", log.replace('^', '|').replace(" ;", "\n"));
    Understanding understanding = SheetUnderstanding.understand(grid, LogMap.none());
    return LogFiller.fill(grid, understanding, FillOptions.usual()).accounts().values().stream()
        .map(RowAccount::told)
        .map(told -> told.in(Language.EN))
        .collect(Collectors.joining(" / "));
  }

  /** What stands in a row without a reading tells for what it is passed over. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "racked today^^^ ! notes: 3",
        "^^^ ! without a reading: 3",
        "2^^20^ ! without a reading: 3",
        "-^^^ ! without a reading: 3",
        "^^^smells good ! notes: 3",
        "^^^racked 20 L ! without a reading: 3",
      })
  void aRowWithoutAReadingIsPassedOver(String row, String why) {
    String told =
        passed("Day^SG^Temp C^Note ; 0^1.085^20^ ; " + row + " ; 4^1.04^20^ ; 8^1.01^20^");
    assertTrue(told.contains("(" + why) || told.contains(why + ")"), told);
  }

  /** In a table that waits for an answer a reading is what holds a figure. */
  @ParameterizedTest
  @ValueSource(strings = {"50", "foam", ""})
  void whatWaitsForAnAnswerIsRefused(String temperature) {
    String log = "Day^SG^Temp ; 0^1.085^50 ; 2^1.07^" + temperature + " ; 4^1.04^49 ; 8^1.01^51";
    assertTrue(passed(log).contains("refused: 4"), passed(log));
    assertTrue(passed(log.replace("1.07", "foam")).contains("refused: 3"));
    assertTrue(passed(log.replace("1.07", "'1.07 SG")).contains("refused: 4"));
  }
}
