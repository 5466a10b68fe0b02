package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Doubt;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.TestGrid;

/** The text form of a map, and what a map changes. */
class LogMapTest {
  private static final String FULL =
      """
      # a comment
      sheet = Plum 3
      header row = 3
      last row = 40
      column A = DATE
      column B = GRAVITY in BRIX
      column AB = TEMPERATURE in F
      temperature = 68 F
      corrected = yes
      calibration = 60 F
      offset = 0.002
      refractometer factor = 1.04
      volume = 5 GALUS
      batch = Plum 3
      original gravity = 20.5 BRIX
      original gravity of Apple 7 = 1.062 SG
      sugar readings = after
      sugar added at row 10 = 1.2 KG
      sugar added at row 14 = by the rise
      sugar added at row 17 = 2 LB
      sugar added at row 19 = 0 KG
      batch from row 21 = Sugar 4

      [table]
      header row = 1
      ignore = yes
      """;

  @Test
  void printsWhatItReads() {
    LogMap map = LogMap.parse(FULL);
    assertEquals(2, map.tables().size());
    TableMap first = map.tables().get(0);
    assertEquals(2, first.headerRow());
    assertEquals(new TableMap.ColumnMap(Role.TEMPERATURE, "F"), first.columns().get(27));
    assertEquals(20, first.temperatureC(), 1e-12);
    assertEquals(18.92705892, first.volumeL(), 1e-8);
    assertEquals(1.2, first.feeds().sugar().get(9).kilograms().orElseThrow(), 1e-12);
    assertTrue(first.feeds().sugar().get(13).isByTheRise());
    assertEquals(0.90718474, first.feeds().sugar().get(16).kilograms().orElseThrow(), 1e-12);
    assertEquals(0, first.feeds().sugar().get(18).kilograms().orElseThrow());
    assertEquals("Sugar 4", first.feeds().batches().get(20));
    assertTrue(map.tables().get(1).ignored());
    LogMap again = LogMap.parse(map.print());
    assertEquals(map.print(), again.print());
    assertEquals(18.927, again.tables().get(0).volumeL());
    assertEquals(0.907, again.tables().get(0).feeds().sugar().get(16).kilograms().orElseThrow());
  }

  /** What was said in other units has no digits but those that a reading can have. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "temperature = 85 F | temperature = 29.44 C",
        "calibration = 60 F | calibration = 15.56 C",
        "calibration = 59 F | calibration = 15 C",
        "volume = 5 GALUS | volume = 18.927 L",
        "volume = 5 GALUK | volume = 22.73 L",
        "volume = 0.001 L | volume = 0.001 L",
        "charge = 5 GALUS | charge = 18.927 L",
        "charge strength = 17.123456 PROOFUS | charge strength = 8.59 ABV",
        "original gravity = 20 PLATO | original gravity = 1.08292 SG",
        "original gravity = 85 OECHSLE | original gravity = 1.085 SG",
        "offset = -0.0020000001 | offset = -0.002",
        "refractometer factor = 1.0399999999 | refractometer factor = 1.04",
        "pressure = 1013.2500001 | pressure = 1013.25",
        "sugar added at row 5 = 2 LB | sugar added at row 5 = 0.907 KG",
        "sugar added at row 5 = 3.3 LB | sugar added at row 5 = 1.497 KG",
      })
  void aWrittenMapShowsDigitsThatMeanSomething(String said, String written) {
    String text = LogMap.parse(said).print();
    assertTrue(text.endsWith(written + "\n"), text);
    assertFalse(text.matches("(?s).*\\d\\.\\d{6}.*"), text);
    assertEquals(text, LogMap.parse(text).print());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "temperature = 68 | line 1 of the map: '68' needs a number and its unit: C or F.",
        "temperature = 168 C | line 1 of the map: '168 C' must be 0 to 60 °C.",
        "column B = GRAVTY | line 1 of the map: 'GRAVTY' is no role",
        "column B = GRAVITY in STONES | line 1 of the map: 'STONES' is no unit",
        "colum B = GRAVITY | line 1 of the map: 'colum B' is no key of a map.",
        "corrected = perhaps | line 1 of the map: 'perhaps' must be yes or no.",
        "what | line 1 of the map: 'what' is no statement",
        "sugar added at row 5 = 2 L | line 1 of the map: '2 L' needs a number and its unit: KG or LB or by the rise",
        "sugar added at row 5 = some | line 1 of the map: 'some' needs a number and its unit",
        "sugar added at row 5 = -1 KG | line 1 of the map: '-1 KG' must be 0 to 1000000 kg",
        "sugar added at row B = 1 KG | line 1 of the map: 'b' is no row.",
        "batch from row 5 = | line 1 of the map: the batch needs a name.",
        "header row = 0 | line 1 of the map: '0' is no row.",
      })
  void refusesWithTheLine(String text, String message) {
    IllegalArgumentException wrong =
        assertThrows(IllegalArgumentException.class, () -> LogMap.parse(text));
    assertTrue(wrong.getMessage().startsWith(message), wrong.getMessage());
  }

  /** What a map says is printed again in the same words, alone and beside other statements. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "sheet = Cellar",
        "header row = 3",
        "last row = 9",
        "ignore = yes",
        "column B = GRAVITY in BRIX",
        "column C = NOTE",
        "row 3 = GRAVITY in BRIX",
        "temperature = 20 C",
        "corrected = yes",
        "corrected = no",
        "calibration = 15 C",
        "offset = -0.002",
        "refractometer factor = 1.04",
        "volume = 25 L",
        "batch = Plum 3",
        "original gravity = 1.085 SG",
        "original gravity of Plum 3 = 1.085 SG",
        "original gravity = first reading",
        "wash = MOLASSES",
        "sugar added at row 4 = 1.5 KG",
        "sugar added at row 4 = by the rise",
        "batch from row 4 = Plum 4",
        "language = de",
        "scale = OECHSLE",
        "warnings = no",
        "limit = warmest=30",
        "run = yes",
        "run = no",
        "volumes at 20 = no",
        "charge = 25 L",
        "charge strength = 8.5 ABV",
        "pressure = 1000",
        "sugar readings = before",
        "sugar readings = after",
      })
  void whatAMapSaysIsPrintedAgain(String statement) {
    String printed = LogMap.parse(statement).print();
    assertTrue(printed.endsWith("\n\n[table]\n" + statement + "\n"), printed);
    assertTrue(printed.startsWith("# "), printed);
    String beside = "batch = Pear 7\n" + statement + "\n[table]\nsheet = Other";
    assertTrue(LogMap.parse(beside).print().contains("\n" + statement + "\n"), beside);
  }

  private static final TestGrid UNCLEAR =
      TestGrid.of(
          "Sheet1",
          """
          Date | Reading | Temp C
          #2025-01-01 | 21.4 | 20
          #2025-01-03 | 12.0 | 21
          #2025-01-09 | 0.4 | 21\
          """);

  @Test
  void answersWhatTheSheetLeavesOpen() {
    Understanding open = SheetUnderstanding.understand(UNCLEAR, LogMap.none());
    assertEquals(1, open.doubts().size());
    assertEquals("B1", open.doubts().get(0).cell());
    assertEquals(0, LogFiller.fill(UNCLEAR, open, FillOptions.usual()).patch().columns().size());
    LogMap map = LogMap.parse("column B = GRAVITY in BRIX\nheader row = 1");
    Understanding clear = SheetUnderstanding.understand(UNCLEAR, map);
    assertEquals(List.of(), clear.doubts());
    assertEquals("BRIX", clear.tables().get(0).column(Role.GRAVITY).orElseThrow().unit());
    TestGrid filled = UNCLEAR.with(LogFiller.fill(UNCLEAR, clear, FillOptions.usual()).patch());
    assertEquals(21.4, filled.number(1, 3), 1e-12);
  }

  @Test
  void findsAHeaderThatOnlyTheMapKnows() {
    TestGrid grid =
        TestGrid.of(
            "s",
            """
            When seen | Stalk | Warmth
            #2025-01-01 | 1.080 | 20
            #2025-01-03 | 1.040 | 21\
            """);
    assertEquals(0, SheetUnderstanding.understand(grid, LogMap.none()).tables().size());
    LogMap map =
        LogMap.parse(
            "header row = 1\ncolumn A = DATE\ncolumn B = GRAVITY\ncolumn C = TEMPERATURE in C");
    LogTable table = SheetUnderstanding.understand(grid, map).tables().get(0);
    assertTrue(table.settled());
    assertEquals("SG", table.column(Role.GRAVITY).orElseThrow().unit());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "column B = GRAVITY in KG",
        "column B = TEMPERATURE in BRIX",
        "column B = SUGAR_ADDED in L",
        "column B = VOLUME in LB"
      })
  void aUnitThatDoesNotGoWithTheRoleIsRefused(String line) {
    IllegalArgumentException wrong =
        assertThrows(IllegalArgumentException.class, () -> LogMap.parse(line));
    assertTrue(wrong.getMessage().contains("is no unit of"), wrong.getMessage());
  }

  @Test
  void tablesSideBySideHaveStatementsOfTheirOwn() {
    TestGrid grid =
        TestGrid.of(
            "x",
            """
            Date | SG | | Date | SG
            #2025-01-01 | 1.085 | | #2025-01-01 | 1.060
            #2025-01-04 | 1.050 | | #2025-01-04 | 1.030\
            """);
    LogMap map =
        LogMap.parse(
            """
            header row = 1
            column B = GRAVITY in SG
            temperature = 20 C
            [table]
            header row = 1
            column E = GRAVITY in SG
            temperature = 25 C\
            """);
    List<LogTable> tables = SheetUnderstanding.understand(grid, map).tables();
    assertEquals(
        List.of(20.0, 25.0), tables.stream().map(t -> t.settings().temperatureC()).toList());
  }

  @Test
  void aMapWrittenDownSettlesNoDoubtByItself() {
    Understanding open = SheetUnderstanding.understand(UNCLEAR, LogMap.none());
    LogMap map = LogMap.parse(LogMap.write(List.of(open)));
    assertEquals(open.doubts(), SheetUnderstanding.understand(UNCLEAR, map).doubts());
  }

  @Test
  void whatWasUnderstoodComesBackAsAMapWithTheSameResult() {
    TestGrid grid =
        TestGrid.of(
            "Apple 7",
            """
            Hydrometer calibrated at | 60 F
            Original gravity | 1.060
            Day | Gravity | Temp F
            0 | 1.058 | 68
            2 | 1.045 | 70\
            """);
    Understanding told = SheetUnderstanding.understand(grid, LogMap.none());
    LogMap map = LogMap.parse(LogMap.write(List.of(told)));
    Understanding again = SheetUnderstanding.understand(grid, map);
    assertEquals(15.56, again.tables().get(0).settings().calibrationC());
    TestGrid first = grid.with(LogFiller.fill(grid, told, FillOptions.usual()).patch());
    TestGrid second = grid.with(LogFiller.fill(grid, again, FillOptions.usual()).patch());
    for (int row = 3; row < 5; row++) {
      assertEquals(first.number(row, 3), second.number(row, 3), 0.00005, "corrected gravity");
      assertEquals(first.number(row, 4), second.number(row, 4), 0.005, "% vol");
    }
  }

  @Test
  void aHeaderRowThatHeadsNothingIsAskedForAndSpoilsNothing() {
    TestGrid grid =
        TestGrid.of(
            "winter", "hydrometer is right at 60 F\n|\nSG | Temp C\n1.080 | 20\n1.050 | 21");
    LogMap map =
        LogMap.parse("header row = 2\ncolumn A = GRAVITY in SG\ncolumn B = TEMPERATURE in C");
    Understanding understood = SheetUnderstanding.understand(grid, map);
    assertEquals(List.of("A2"), understood.doubts().stream().map(Doubt::cell).toList());
    assertEquals("A3:B5", understood.tables().get(0).range());
    assertEquals(140.0 / 9, understood.tables().get(0).settings().calibrationC(), 1e-12);
  }

  private static final String LOG =
      "Day | SG | Temp °C\n0 | 1.085 | 20\n3 | 1.05 | 24\n6 | 1.0 | 21";

  private static List<String> questions(String sheet, String map) {
    return SheetUnderstanding.understand(TestGrid.of("Log", sheet), LogMap.parse(map))
        .doubts()
        .stream()
        .map(Doubt::question)
        .toList();
  }

  @Test
  void aLineOnARowOfNoTableIsAskedAboutAlsoWhereNoTableIsNamed() {
    assertEquals(List.of(), questions(LOG, ""));
    for (String line : List.of("sugar added at row 9 = 1 KG", "batch from row 9 = Plum 4")) {
      List<String> asked = questions(LOG, line);
      assertEquals(1, asked.size(), line);
      assertTrue(asked.get(0).contains("row 9"), asked.get(0));
      assertEquals(asked, questions(LOG, "sheet = Log\n" + line));
      assertEquals(List.of(), questions(LOG, "sheet = Another\n" + line));
      assertEquals(List.of(), questions("Shopping | sugar", line));
    }
  }

  @Test
  void aMapThatSaysNothingOfASheetLeavesItsQuestionsAsTheyAre() {
    String withoutHeaders =
        "Plum wine, fermentation log | \n1 | 1.085\n2 | 1.07\n3 | 1.05\n4 | 1.03\n5 | 1.01\n6 | 1.0";
    List<String> asked = questions(withoutHeaders, "");
    assertEquals(1, asked.size(), asked.toString());
    assertEquals(asked, questions(withoutHeaders, "[table]\n"));
    assertEquals(asked, questions(withoutHeaders, "sheet = Log\n"));
    assertEquals(
        asked, questions(withoutHeaders, "sheet = Another\nheader row = 1\ntemperature = 20 C"));
    assertTrue(LogMap.parse("[table]\n").isSilent());
    assertFalse(LogMap.parse("temperature = 20 C").isSilent());
  }
}
