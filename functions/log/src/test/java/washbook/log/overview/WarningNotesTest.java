package washbook.log.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.ComputedColumn;
import washbook.log.WarningLimits;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.language.ToldException;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Warnings in the log's own note column. */
class WarningNotesTest {
  private static final String PRACTICE = " (common practice, no source)";

  /** Stands still at 1.030, was at 33 °C on row 3 and has no temperature on row 5. */
  private static final String STUCK =
      """
      Date | SG | Temp (°C) | Note
      #2025-10-01 | 1.085 | 20 | pitched
      #2025-10-03 | 1.062 | 33 |
      #2025-10-05 | 1.040 | 20 |
      #2025-10-07 | 1.032 | |
      #2025-10-09 | 1.030 | 20 |
      #2025-10-12 | 1.030 | 20 |
      #2025-10-15 | 1.030 | 20 |""";

  private static final String WORKING =
      """
      Date | SG | Temp (°C) | Note
      #2025-10-01 | 1.085 | 20 | pitched
      #2025-10-03 | 1.062 | 20 |
      #2025-10-05 | 1.036 | 20 |""";

  @Test
  void eachWarningStandsOnceOnTheRowThatItIsAbout() {
    Map<String, String> notes = notes(STUCK, "2026-10-01", "");
    assertEquals(
        Map.of(
            "3", "C3: warning, too warm: 33.0 °C is above 32 °C." + PRACTICE,
            "5",
                "C5: temperature is blank; it must be 0 to 60 °C, or the log must say"
                    + " that its readings are corrected.",
            "8",
                "B8: warning, stuck: the gravity stands still at 1.0300, above its expected end of"
                    + " 1.000; 10.0 % by mass of extract are left."
                    + PRACTICE),
        notes);
  }

  @Test
  void anOverdueReadingIsToldTheSameFromDayToDayUntilTheLogCountsAsPutAway() {
    String note =
        "B4: warning, reading overdue: it was last read on 2025-10-05 and was working; the limit is"
            + " 4 days without a reading."
            + PRACTICE;
    assertEquals(Map.of(), notes(WORKING, "2025-10-09", ""));
    assertEquals(Map.of("4", note), notes(WORKING, "2025-10-10", ""));
    assertEquals(Map.of("4", note), notes(WORKING, "2025-12-10", ""));
    assertEquals(Map.of(), notes(WORKING, "2026-02-10", ""));
  }

  @Test
  void aReadingThatWasRefusedWasReadAllTheSame() {
    String refused =
        WORKING + "\n#2025-10-08 | 1.020 | |\n#2025-10-09 | 1.01? | 20 |\n#2025-10-12 | | 20 |";
    assertEquals(Set.of("5", "6"), notes(refused, "2025-10-13", "").keySet());
    String note = notes(refused, "2025-10-14", "").get("6");
    assertTrue(note.contains("B6: warning, reading overdue: it was last read on 2025-10-09"), note);
    assertFalse(notes(refused, "2025-10-14", "").containsKey("4"));
    String away = WORKING + "\n#2025-10-09 | away | 20 |";
    assertTrue(notes(away, "2025-10-14", "").get("4").contains("2025-10-05"));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void whatNeedsNoFittedCourseIsWarnedOfTheSame(int seed) {
    Random random = new Random(seed);
    int warned = 0;
    for (int log = 0; log < 60; log++) {
      TestGrid grid = TestGrid.of("Plum 3", course(random));
      Overviews overviews = overviews("2026-10-01", List.of());
      Filling filling = filling(grid, overviews, "", Language.EN);
      var understood = SheetUnderstanding.understand(grid, LogMap.none());
      Set<String> fitted =
          overviews.of(grid, understood, filling).get(0).warnings().stream()
              .map(warning -> warning.kind().name() + " " + warning.reason())
              .collect(Collectors.toSet());
      String notes = String.join("\n", notes(filling).values());
      assertEquals(fitted.size(), notes.split("warning, ", -1).length - 1, notes + fitted);
      warned += fitted.size();
    }
    assertTrue(warned >= 5, warned + " warnings");
  }

  /** Falls to an end, or stops before; one in four has a slip. */
  private static String course(Random random) {
    double end = random.nextInt(3) == 0 ? 1.020 : 0.996;
    double scale = 1 + 3 * random.nextDouble();
    int slip = random.nextInt(4) == 0 ? 1 + random.nextInt(8) : -1;
    StringBuilder log = new StringBuilder("Date | SG | Temp (°C)");
    int days = 6 + random.nextInt(9);
    for (int day = 0; day < days; day++) {
      double gravity =
          end
              + (1.085 - end) * Math.exp(-day / scale)
              + 0.0006 * random.nextGaussian()
              - (day == slip ? 0.02 : 0);
      log.append(String.format(Locale.ROOT, "%n#2025-10-%02d | %.4f | 20", day + 1, gravity));
    }
    return log.toString();
  }

  @Test
  void aMapSetsLimitsAndTurnsWarningsOff() {
    assertEquals(
        Set.of("4"), notes(WORKING, "2026-10-01", "limit = planned-abv=6, warmest=25").keySet());
    assertEquals(
        "C3: warning, too warm: 33.0 °C is above 25 °C. (limit as given)",
        notes(STUCK, "2026-10-01", "limit = planned-abv=20\nlimit = warmest=25").get("3"));
    assertEquals(
        Map.of(
            "5",
            "C5: temperature is blank; it must be 0 to 60 °C, or the log must say"
                + " that its readings are corrected."),
        notes(STUCK, "2026-10-01", "warnings = no"));
    assertEquals(Set.of("5", "8"), notes(STUCK, "2026-10-01", "limit = warmest=35").keySet());
    assertEquals(
        Set.of("5"),
        notes(STUCK, "2026-10-01", "limit = warmest=35, final-gravity=1.030").keySet());
  }

  @Test
  void whatIsAskedForNowGoesBeforeTheMap() {
    Overviews overviews = overviews("2025-10-10", List.of("overdue-days=10"));
    assertEquals(Map.of(), notes(WORKING, overviews, "limit = overdue-days=2", Language.EN));
    BatchOverview batch = overview(overviews("2025-10-10", List.of()), "limit = overdue-days=10");
    assertEquals(List.of(), batch.warnings());
    LocalDate later = LocalDate.parse("2025-10-16");
    assertEquals(1, batch.asOf(later, WarningLimits.usual(), Language.EN).warnings().size());
    assertEquals(
        0,
        batch
            .asOf(later, WarningLimits.parse(List.of("overdue-days=20")), Language.EN)
            .warnings()
            .size());
  }

  @Test
  void aMapWithALimitThatIsNoneIsRefusedWithItsLine() {
    ToldException wrong =
        assertThrows(ToldException.class, () -> LogMap.parse("sheet = A\nlimit = warmest=hot"));
    assertEquals(
        "line 2 of the map: 'warmest=hot' must be warmest=NUMBER, -20 to 60 °C.",
        wrong.getMessage());
    String text = "limit = warmest=28,planned-abv=12\nwarnings = no\n";
    LogMap map = LogMap.parse(text);
    assertEquals(map, LogMap.parse(map.print()));
  }

  @Test
  void theNoteIsInTheLogsLanguage() {
    assertEquals(
        Map.of(
            "4",
            "B4: Warnung, Messung überfällig: Zuletzt am 05.10.2025 gemessen; Stand damals: in"
                + " Gärung; Grenze ohne Messung: 4 Tage. (übliche Praxis, ohne Quelle)"),
        notes(WORKING, overviews("2025-10-12", List.of()), "", Language.DE));
  }

  @Test
  void aFilledLogIsFilledTheSameAgainAndLosesWhatNoLongerHolds() {
    TestGrid grid = TestGrid.of("Plum 3", STUCK);
    TestGrid once = grid.with(filling(grid, "2026-10-01", "").patch());
    TestGrid twice = once.with(filling(once, "2026-10-01", "").patch());
    assertEquals(notes(once, "2026-10-01", ""), notes(twice, "2026-10-01", ""));
    for (int row = 0; row < 8; row++) {
      for (int column = 0; column < once.columnCount(); column++) {
        assertEquals(once.text(row, column), twice.text(row, column));
      }
    }
    assertEquals(once.columnCount(), twice.columnCount());
    assertEquals(Set.of("5"), notes(twice, "2026-10-01", "warnings = no").keySet());
  }

  @Test
  void otherColumnsThanTheGravityAreWarnedOfTheSame() {
    TestGrid grid = TestGrid.of("Plum 3", STUCK);
    FillOptions rate =
        new FillOptions(EnumSet.of(ComputedColumn.RATE), FormulaStyle.VALUES)
            .noting(overviews("2026-10-01", List.of()));
    Filling filling =
        LogFiller.fill(grid, SheetUnderstanding.understand(grid, LogMap.none()), rate);
    assertEquals(Set.of("3", "5", "8"), notes(filling).keySet());
  }

  private static Map<String, String> notes(String log, String today, String map) {
    return notes(log, overviews(today, List.of()), map, Language.EN);
  }

  private static Map<String, String> notes(TestGrid grid, String today, String map) {
    return notes(filling(grid, today, map));
  }

  private static Filling filling(TestGrid grid, String today, String map) {
    return filling(grid, overviews(today, List.of()), map, Language.EN);
  }

  private static Map<String, String> notes(
      String log, Overviews overviews, String map, Language language) {
    return notes(filling(TestGrid.of("Plum 3", log), overviews, map, language));
  }

  private static BatchOverview overview(Overviews overviews, String map) {
    Grid grid = TestGrid.of("Plum 3", WORKING);
    var understood = SheetUnderstanding.understand(grid, LogMap.parse(map));
    return overviews
        .of(grid, understood, LogFiller.fill(grid, understood, FillOptions.usual()))
        .get(0);
  }

  private static Overviews overviews(String today, List<String> limits) {
    return new Overviews(WarningLimits.parse(limits), LocalDate.parse(today));
  }

  private static Filling filling(Grid grid, Overviews overviews, String map, Language language) {
    return LogFiller.fill(
        grid,
        SheetUnderstanding.understand(grid, LogMap.parse(map)),
        FillOptions.usual().in(language).noting(overviews));
  }

  /** The notes by the number of their row. */
  private static Map<String, String> notes(Filling filling) {
    Map<String, String> notes = new LinkedHashMap<>();
    filling.columns().stream()
        .filter(column -> column.column() == ComputedColumn.NOTE)
        .forEach(
            column -> {
              ColumnPatch patch = column.patch();
              for (int row = patch.firstRow(); row <= patch.lastRow(); row++) {
                if (patch.cells().text(row) != null) {
                  notes.put(String.valueOf(row + 1), patch.cells().text(row));
                }
              }
            });
    return notes;
  }
}
