package washbook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.log.UnderstandingText.Rows;
import washbook.log.UnderstandingText.Section;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/**
 * How it is told what was made of a sheet: each column, each batch, each question, what is left.
 */
class UnderstandingTextTest {
  private static Understanding understood(String sheet, String log) {
    return SheetUnderstanding.understand(TestGrid.of(sheet, log), LogMap.none());
  }

  private static List<Section> told(String log) {
    return UnderstandingText.of(understood("Plum 3", log), Map.of(), Language.EN);
  }

  private static final String LOG =
      "Day|SG of   the wash|Temp F|Who|pH\n0|1.085|68|her|3.4\n4|1.04|68|him|3.4\n8|1.01|68||3.3";

  @Test
  void eachColumnHasALetterAHeaderAMeaningAndAReason() {
    Section table = told(LOG).get(0);
    assertTrue(table.heading().contains("A1:E4"), table.heading());
    assertTrue(table.heading().contains("Plum 3"), table.heading());
    Rows columns = table.rows().get(0);
    assertEquals(
        List.of("A", "B", "C", "D", "E"), columns.cells().stream().map(c -> c.get(0)).toList());
    List<String> reading = columns.cells().get(1);
    assertEquals("SG of the wash", reading.get(1));
    assertTrue(reading.get(2).contains("SG"), reading.get(2));
    assertFalse(reading.get(3).isEmpty());
    assertTrue(columns.cells().get(2).get(2).contains("F"));
    assertEquals("", columns.cells().get(4).get(3));
    assertEquals(4, columns.columns().size());
    assertFalse(columns.columns().get(1).title(Language.EN).isEmpty());
  }

  @Test
  void eachBatchHasItsRowsAndItsOriginalGravity() {
    List<List<String>> batches = told(LOG).get(0).rows().get(1).cells();
    assertEquals(1, batches.size());
    assertEquals(List.of("Plum 3", "2-4", "1.0850"), batches.get(0).subList(0, 3));
    assertFalse(batches.get(0).get(3).isEmpty());
    List<Section> german = UnderstandingText.of(understood("Plum 3", LOG), Map.of(), Language.DE);
    assertEquals("1,0850", german.get(0).rows().get(1).cells().get(0).get(2));
    assertEquals(1, german.size());
  }

  /** Rows as a person counts them, runs of them together. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Plum 3,Plum 3,Plum 3; 2-4",
        "Plum 3,Apple 7,Plum 3; 2, 4",
        "Plum 3,Plum 3,Apple 7,Plum 3; 2-3, 5",
        "Plum 3,Apple 7,Plum 3,Plum 3; 2, 4-5",
      })
  void rowsAreToldAsRuns(String names, String rows) {
    StringBuilder log = new StringBuilder("Batch|Day|SG|Temp C");
    String[] name = names.split(",");
    for (int i = 0; i < name.length; i++) {
      log.append("\n" + name[i] + "|" + 2 * i + "|" + (1.085 - 0.01 * i) + "|20");
    }
    assertEquals(rows, told(log.toString()).get(0).rows().get(1).cells().get(0).get(1));
  }

  @Test
  void ofManyScatteredRowsTheFirstAreToldAndHowManyThereAre() {
    StringBuilder log = new StringBuilder("Batch|Day|SG|Temp C");
    for (int i = 0; i < 40; i++) {
      log.append("\n" + (i % 2 == 0 ? "Plum 3" : "Apple 7"));
      log.append("|" + i / 2 + "|" + (1.085 - 0.002 * (i / 2)) + "|20");
    }
    String rows = told(log.toString()).get(0).rows().get(1).cells().get(0).get(1);
    assertTrue(rows.startsWith("2, 4, 6, 8, "), rows);
    assertTrue(rows.endsWith("... (20)"), rows);
    assertTrue(rows.length() < 60, rows);
  }

  @Test
  void anUnknownOriginalGravityIsCalledSo() {
    List<String> batch =
        told("Day|SG|Temp C\n5|1.045|20\n7|1.03|20\n9|1.02|20\n12|1.01|20")
            .get(0)
            .rows()
            .get(1)
            .cells()
            .get(0);
    assertFalse(batch.get(2).contains("1.0"), batch.get(2));
    assertFalse(batch.get(2).isEmpty());
  }

  @Test
  void questionsStandUnderAHeadingOfTheirOwnWithTheirCells() {
    Understanding open = understood("Log", "Day|SG|Temp\n0|1.085|50\n4|1.04|49\n8|1.01|51");
    List<Section> sections = UnderstandingText.of(open, Map.of(), Language.EN);
    assertEquals(2, sections.size());
    List<String> questions = sections.get(1).sentences();
    assertEquals(1, questions.size());
    assertTrue(questions.get(0).startsWith("C1"), questions.get(0));
    assertTrue(questions.get(0).contains(open.doubts().get(0).question()), questions.get(0));
    assertFalse(sections.get(0).sentences().isEmpty(), "that it is not filled");
    String lines = UnderstandingText.lines(open);
    assertTrue(lines.contains("\n  A: "), lines);
    assertTrue(lines.contains(questions.get(0)), lines);
    assertEquals(sections.get(0).heading(), lines.lines().findFirst().orElseThrow());
  }

  @Test
  void whatIsLeftAloneIsToldWithItsCell() {
    String brine = "Brine tank\nDate|Density|Temp C\n1 Oct 2025|1.085|20\n4 Oct 2025|1.084|20";
    List<Section> alone = told(brine);
    assertEquals(1, alone.size());
    assertTrue(alone.get(0).sentences().get(0).startsWith("A2"), "" + alone);
    List<Section> beside = told("Plum 3\n" + LOG + "\n\n\n" + brine);
    assertEquals(2, beside.size());
    assertEquals(1, beside.get(1).sentences().size());
    assertEquals(1, told("Shopping list\nyeast\nsugar").size());
  }

  @Test
  void aStillRunIsToldWithItsColumns() {
    List<Section> run =
        told(
            "Plum 3, spirit run\nJar|mL|% vol|Temp C\n1|100|75|15\n2|500|74|16\n3|500|66|25\n"
                + "4|500|42|25");
    assertEquals(4, run.get(0).rows().get(0).cells().size());
    assertTrue(run.get(0).heading().contains("A2:D6"), run.get(0).heading());
    assertEquals(1, run.get(0).rows().size());
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void itIsToldInEveryLanguage(Language language) {
    String lines = UnderstandingText.lines(understood("Plum 3", LOG), Map.of(), language);
    assertTrue(lines.lines().filter(l -> l.startsWith("  ")).count() >= 6, lines);
    assertFalse(lines.contains("{"), lines);
    assertEquals(
        language == Language.EN, lines.equals(UnderstandingText.lines(understood("Plum 3", LOG))));
  }

  private static final String ACROSS =
      "Plum 3\n|\nDay|0|4|8|12\nSG|1.085|1.04|1.02|1.01\nTemp C|20|20|20|20";

  /** What are columns in a log that runs down are rows in one that runs across. */
  @Test
  void aLogThatRunsAcrossIsToldByItsRowsAndColumns() {
    Section log = told(ACROSS).get(0);
    assertEquals("Sheet Plum 3, table A3:E5", log.heading());
    List<List<String>> rows = log.rows().get(0).cells();
    assertEquals(List.of("3", "4", "5"), rows.stream().map(c -> c.get(0)).toList());
    assertEquals(List.of("Day", "SG", "Temp C"), rows.stream().map(c -> c.get(1)).toList());
    Rows batches = log.rows().get(1);
    assertEquals("B-E", batches.cells().get(0).get(1));
    assertEquals("Columns", batches.columns().get(1).title(Language.EN));
    assertEquals(
        "The dates of the log are side by side: its figures go into rows below it, as values.",
        log.sentences().get(0));
    assertTrue(
        UnderstandingText.lines(understood("Plum 3", ACROSS)).contains("columns B-E, original"));
    assertEquals("Rows", told(LOG).get(0).rows().get(1).columns().get(1).title(Language.EN));
  }

  /** Without columns each cell says what it is, and an empty one says nothing. */
  @Test
  void theLineOfABatchSaysWhatItsFiguresAre() {
    List<String> lines = UnderstandingText.lines(understood("Plum 3", LOG)).lines().toList();
    assertEquals("Sheet Plum 3, table A1:E4", lines.get(0));
    assertTrue(
        lines.contains("  Plum 3: rows 2-4, original gravity 1.0850, first reading, B2, corrected"),
        lines.toString());
    List<String> unnamed =
        told("Day|SG|Temp C||\n0|1.085|20||x\n4|1.04|20||\n8|1.01|20||")
            .get(0)
            .rows()
            .get(0)
            .cells()
            .get(0);
    assertEquals("A", unnamed.get(0));
  }

  @Test
  void theAccountOfATableStandsAfterItsRemarks() {
    Understanding sheet = understood("Plum 3", LOG);
    LogTable table = sheet.tables().get(0);
    List<String> without = UnderstandingText.of(sheet, Map.of(), Language.EN).get(0).sentences();
    List<String> with =
        UnderstandingText.of(sheet, Map.of(table, RowAccount.of(3, 1, Map.of())), Language.EN)
            .get(0)
            .sentences();
    assertEquals(table.remarks().size(), without.size());
    assertEquals(without.size() + 1, with.size());
    assertEquals(
        "Rows: 4; filled: 3; refused: 1; passed over: 0", with.get(table.remarks().size()));
  }

  @Test
  void aBatchWithoutReadingsHasNoRows() {
    Understanding sheet = understood("Plum 3", LOG);
    Batch none = Batch.unknown("Apple 7", new int[0], "A1", PartsOfALogTest.said("why"));
    Understanding empty =
        new Understanding(
            "Plum 3", List.of(sheet.tables().get(0).with(List.of(none))), List.of(), List.of());
    assertEquals(
        List.of("Apple 7", "none", "unknown", "why"),
        UnderstandingText.of(empty, Map.of(), Language.EN).get(0).rows().get(1).cells().get(0));
    Understanding across = understood("Plum 3", ACROSS);
    Understanding emptyAcross =
        new Understanding(
            "Plum 3",
            List.of(across.tables().get(0).with(List.of(none))),
            List.of(),
            List.of(),
            List.of(),
            across.across());
    assertEquals(
        List.of("Apple 7", "", "unknown", "why"),
        UnderstandingText.of(emptyAcross, Map.of(), Language.EN)
            .get(0)
            .rows()
            .get(1)
            .cells()
            .get(0));
  }

  @Test
  void aSheetWithoutALogSaysSo() {
    Section none = told("Shopping list\nyeast\nsugar").get(0);
    assertEquals("Sheet Plum 3: no log found.", none.heading());
    assertEquals(List.of(), none.rows());
    assertEquals(
        "Sheet Plum 3: no log found.\n",
        UnderstandingText.lines(understood("Plum 3", "Shopping list\nyeast\nsugar")));
  }
}
