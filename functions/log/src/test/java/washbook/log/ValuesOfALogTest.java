package washbook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.PartsOfALogTest.column;
import static washbook.log.PartsOfALogTest.said;
import static washbook.log.PartsOfALogTest.table;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.TestGrid;
import washbook.log.words.ReadingScale;

/** Values of a log: original gravities, steps of fed washes, runs, scales and our own titles. */
class ValuesOfALogTest {
  @Test
  void originalGravitiesSayWhereTheyComeFrom() {
    OriginalGravity first = new OriginalGravity.FirstReading(1.085, "B4", 3);
    assertEquals(1.085, first.gravity().orElseThrow());
    assertEquals("first reading, B4, corrected", first.why().in(Language.EN));
    assertEquals("B4", first.cell());
    OriginalGravity unknown = new OriginalGravity.Unknown("B1", said("why"));
    assertEquals(OptionalDouble.empty(), unknown.gravity());
    assertEquals(said("why"), unknown.why());
    Batch batch = new Batch("Plum 3", new int[] {3}, first, OptionalDouble.empty());
    Batch without = batch.withoutOriginal("B9", said("lost"));
    assertEquals(OptionalDouble.empty(), without.originalGravity());
    assertEquals("lost", without.originalGravityWhy().in(Language.EN));
    assertEquals("Plum 3", without.name());
    assertEquals("B9", without.original().cell());
  }

  /** In a fed ferment the refractometer's reading of everything put in counts too. */
  @Test
  void stepsOfAFedFermentKnowBrixAndSlips() {
    Batch fed =
        new Batch(
                "Plum 3",
                new int[] {3, 4, 6},
                new OriginalGravity.FirstReading(1.065, "B4", 3),
                OptionalDouble.of(16))
            .fed(
                List.of(
                    new Batch.Step(
                        1, OptionalDouble.of(1.08), OptionalDouble.of(20), Message.NONE, false),
                    Batch.Step.slip(2, said("slip"))));
    assertEquals(16, fed.originalBrix(0).orElseThrow());
    assertEquals(20, fed.originalBrix(1).orElseThrow());
    assertEquals(OptionalDouble.empty(), fed.originalBrix(2));
    assertFalse(fed.isSlip(0));
    assertFalse(fed.isSlip(1));
    assertTrue(fed.isSlip(2));
    assertEquals(OptionalDouble.empty(), fed.originalGravity(2));
    assertEquals(said("slip"), fed.originalGravityMissing(2));
    assertEquals(
        OptionalDouble.empty(),
        new Batch.Step(1, OptionalDouble.of(1.08), Message.NONE).originalBrix());
  }

  @Test
  void aSheetWithoutTablesAndRunsIsEmpty() {
    Understanding none = new Understanding("Log", List.of(), List.of(), List.of());
    assertTrue(none.isEmpty());
    LogTable table = table(column(1, Role.GRAVITY));
    Understanding one = new Understanding("Log", List.of(table), List.of(), List.of());
    assertFalse(one.isEmpty());
    assertEquals("B3:E10", one.range(table));
    TestGrid grid = TestGrid.of("Log", "x");
    assertSame(grid, one.seen(grid));
    Understanding run =
        new Understanding(
            "Log",
            List.of(),
            List.of(),
            List.of(),
            List.of(
                new StillRun(
                    table, List.of(), new StillRun.Settings(20, true, true, 20, Double.NaN))));
    assertFalse(run.isEmpty());
  }

  @Test
  void aChargeHoldsItsShareOfAlcohol() {
    assertEquals(3, new StillRun.Charge(10, 30, "", "", "A1").pureAlcohol().orElseThrow(), 1e-12);
    assertTrue(new StillRun.Charge(10, Double.NaN, "", "", "A1").pureAlcohol().isEmpty());
    assertTrue(StillRun.Charge.none().pureAlcohol().isEmpty());
  }

  @Test
  void statementsAboutRowsCountThemAsTheSheetDoes() {
    assertEquals("sugar added at row 4 = 2.5 KG", RowStatement.sugar(3, "2.5"));
    assertEquals("sugar added at row 4 = by the rise", RowStatement.sugarByTheRise(3));
    assertEquals("batch from row 4 = Plum 9", RowStatement.batch(3, "Plum 9"));
  }

  @Test
  void scalesAreNamedByTheirWords() {
    assertEquals(ReadingScale.BRIX, WrittenScale.named(" brix ").orElseThrow().scale());
    assertTrue(WrittenScale.words().startsWith("SG, "), WrittenScale.words());
    assertTrue(WrittenScale.words().contains("BRIX"), WrittenScale.words());
    assertEquals(1.0, WrittenScale.named("KGM3").orElseThrow().change(0.001), 0.01);
  }

  /** Titles that earlier versions wrote are still read as ours. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Suiwer alkohol tot nou toe (L, Washbook); PURE_SUM; true",
        "Suiwer alkohol tot nou toe (L); PURE_SUM; false",
        "Titre moyen de la coupe (% vol, Washbook); CUT_STRENGTH; true",
        "Resterend extract (g/L); SUGAR_LEFT; false",
        "Teor real (% vol); TRUE_STRENGTH; false",
      })
  void earlierTitlesAreRead(String text, ComputedColumn column, boolean marked) {
    ComputedHeader header = ComputedHeader.read(text).orElseThrow();
    assertEquals(column, header.column());
    assertEquals(marked, header.isMarked());
    assertEquals("", header.label());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Washbook",
        "my Washbook column",
        "Fancy figure (Washbook)",
        "Fancy figure, Plum 3 (Washbook)",
        "Fancy figure (% vol, Washbook), Plum 3",
        "Corrected gravity (Washbook",
      })
  void otherTextsWithOurNameAreNotOurs(String text) {
    assertTrue(ComputedHeader.read(text).isEmpty());
  }

  @Test
  void columnsOfRunsAndFermentsKeepNoCompany() {
    Map<Integer, String> texts = new HashMap<>();
    for (ComputedColumn column :
        List.of(
            ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV, ComputedColumn.PURE_ALCOHOL)) {
      texts.put(texts.size(), ComputedHeader.title(column, WrittenScale.SG, Language.EN));
    }
    assertTrue(new ComputedHeaders(texts).columns().isEmpty());
    texts.put(3, ComputedHeader.title(ComputedColumn.NOTE, WrittenScale.SG, Language.EN));
    assertEquals(Set.of(3), new ComputedHeaders(texts).columns());
  }

  @Test
  void gravityBesideAnotherScaleIsOursLeftOfANote() {
    Map<Integer, String> texts = new HashMap<>();
    WrittenScale brix = WrittenScale.named("BRIX").orElseThrow();
    texts.put(0, "SG");
    texts.put(1, ComputedHeader.title(ComputedColumn.CORRECTED_GRAVITY, brix, Language.EN));
    texts.put(
        2, ComputedHeader.title(ComputedColumn.CORRECTED_GRAVITY, WrittenScale.SG, Language.EN));
    texts.put(3, ComputedHeader.title(ComputedColumn.NOTE, WrittenScale.SG, Language.EN));
    assertEquals(Set.of(1, 2, 3), new ComputedHeaders(texts).columns());
    texts.put(1, "Brix");
    assertEquals(Set.of(2, 3), new ComputedHeaders(texts).columns());
  }

  @Test
  void theRowOfASheetGivesItsTextsByColumn() {
    TestGrid grid = TestGrid.of("Log", "x|y\nDate||SG|3");
    assertEquals(Map.of(0, "Date", 2, "SG", 3, ""), ComputedHeaders.texts(grid, 1));
  }
}
