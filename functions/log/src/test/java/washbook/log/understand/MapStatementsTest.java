package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.liquid.WashKind;
import washbook.log.Doubt;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/** Every statement of a map: how it is read, written down, and what it changes. */
class MapStatementsTest {
  private static TableMap only(String text) {
    List<TableMap> tables = LogMap.parse(text).tables();
    assertEquals(1, tables.size());
    return tables.get(0);
  }

  private static String statements(String text) {
    return MapPrinter.print(only(text)).strip();
  }

  /** A statement is written down as it is read, amounts in one unit each. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "sheet = Plum 3; sheet = Plum 3",
        "Header   Row = 1; header row = 1",
        "header row = 9999999; header row = 9999999",
        "last row = 40; last row = 40",
        "ignore = YES; ignore = yes",
        "column A = date; column A = DATE",
        "column AB = own abv; column AB = OWN_ABV",
        "column C = gravity in gcm3; column C = GRAVITY in GCM3",
        "column C = refractometer in brix; column C = REFRACTOMETER in BRIX",
        "column C = ORIGINAL_GRAVITY in PLATO; column C = ORIGINAL_GRAVITY in PLATO",
        "column C = STRENGTH in PROOFUS; column C = STRENGTH in PROOFUS",
        "column C = STRENGTH in ABV; column C = STRENGTH in ABV",
        "column C = HEAD_TEMPERATURE in F; column C = HEAD_TEMPERATURE in F",
        "column C = VOLUME in ML; column C = VOLUME in ML",
        "column C = VOLUME in GALUK; column C = VOLUME in GALUK",
        "column C = WATER_ADDED in L; column C = WATER_ADDED in L",
        "column C = SUGAR_ADDED in LB; column C = SUGAR_ADDED in LB",
        "temperature = 68 F; temperature = 20 C",
        "corrected = no; corrected = no",
        "calibration = 59 F; calibration = 15 C",
        "offset = -0.002; offset = -0.002",
        "refractometer factor = 1.04; refractometer factor = 1.04",
        "volume = 25 L; volume = 25 L",
        "batch = Apple 7; batch = Apple 7",
        "original gravity = 1.085 SG; original gravity = 1.085 SG",
        "original gravity of Apple 7 = 1.062 sg; original gravity of Apple 7 = 1.062 SG",
        "original gravity = First Reading; original gravity = first reading",
        "sugar readings = before; sugar readings = before",
        "sugar readings = After; sugar readings = after",
        "wash = sugar; wash = SUGAR",
        "language = de; language = de",
        "scale = oechsle; scale = OECHSLE",
        "run = yes; run = yes",
        "run = no; run = no",
        "volumes at 20 = no; volumes at 20 = no",
        "volumes at 20 = yes; volumes at 20 = yes",
        "charge = 25 L; charge = 25 L",
        "charge strength = 10 abv; charge strength = 10 ABV",
        "pressure = 950; pressure = 950",
        "sugar added at row 5 = 1.5 kg; sugar added at row 5 = 1.5 KG",
        "sugar added at row 5 = By the Rise; sugar added at row 5 = by the rise",
        "batch from row 7 = Plum 3 B; batch from row 7 = Plum 3 B",
      })
  void isWrittenDownAsItIsRead(String said, String written) {
    assertEquals(written, statements(said));
    assertEquals(LogMap.parse(said), LogMap.parse(LogMap.parse(said).print()));
  }

  @Test
  void aYieldIsTheKindOfAWash() {
    WashKind kind = only("wash = 90").wash();
    assertEquals(WashKind.ofYield(90).word(), kind.word());
    assertEquals(statements("wash = 90"), statements(statements("wash = 90")));
  }

  @Test
  void gallonsAreThoseThatTheyAreCalled() {
    assertEquals(18.92705892, only("volume = 5 GALUS").volumeL(), 1e-8);
    assertEquals(22.73045, only("volume = 5 GALUK").volumeL(), 1e-8);
    assertEquals(18.92705892, only("charge = 5 GALUS").run().chargeLitres(), 1e-8);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "column 7 = GRAVITY",
        "column = GRAVITY",
        "header row = x",
        "header row = 10000000",
        "header row = -1",
        "ignore = maybe",
        "temperature = 61 C",
        "temperature = warm C",
        "calibration = 200 F",
        "offset = 1",
        "offset = a little",
        "refractometer factor = 9",
        "volume = 25",
        "volume = 25 KG",
        "volume = -1 L",
        "original gravity = 1.3 SG",
        "original gravity = 1.085",
        "sugar readings = during",
        "wash = lemonade",
        "wash = 500",
        "language = xx",
        "scale = stones",
        "charge = 5 bottles",
        "charge strength = 101 ABV",
        "pressure = 5",
        "run = 1",
        "volumes at 20 = true",
        "column C = STRENGTH in BRIX",
        "column C = HEAD_TEMPERATURE in L",
        "column C = WATER_ADDED in KG",
        "column C = REFRACTOMETER in C",
        "sugar added at row 5 = 1.5",
        "sugar added at row 5 = 2 GALUS",
        "charge = 25 ABV",
      })
  void whatCannotBeIsRefusedWithItsLine(String statement) {
    IllegalArgumentException wrong =
        assertThrows(
            IllegalArgumentException.class, () -> LogMap.parse("# first\n\n" + statement + "\n"));
    assertTrue(wrong.getMessage().startsWith("line 3 of the map: "), wrong.getMessage());
  }

  @Test
  void commentsBlankLinesAndMarksOfEncodingsSayNothing() {
    assertTrue(LogMap.parse("").isSilent());
    assertTrue(LogMap.parse("\ufeff# only a comment\r\n\r\n[table]\n[TABLE]\n").isSilent());
    LogMap map = LogMap.parse("\ufeffsheet = A\r[table]\r\nsheet = B\n[table]\nignore = yes");
    assertFalse(map.isSilent());
    assertEquals(3, map.tables().size());
    assertEquals(List.of("A", "B"), map.sheets());
    assertEquals(
        List.of(), LogMap.parse("sheet = A\nignore = yes\n[table]\nignore = yes").sheets());
  }

  private static final String LOG = "Day|SG|Temp C\n0|1.085|22\n3|1.05|24\n6|1.02|23";

  private static LogTable understood(String sheet, String map) {
    return SheetUnderstanding.understand(TestGrid.of(sheet, LOG), LogMap.parse(map))
        .tables()
        .get(0);
  }

  /** What is said of the table counts more than what is said of its sheet, and that than of all. */
  @Test
  void theNearestStatementCounts() {
    String all = "volume = 10 L\n[table]\n";
    String sheet = "sheet = Log\nvolume = 20 L\n[table]\n";
    String table = "sheet = Log\nheader row = 1\nvolume = 30 L\n[table]\n";
    String other = "sheet = Other\nheader row = 1\nvolume = 40 L\n";
    assertEquals(10, understood("Log", all + other).settings().volumeL());
    assertEquals(20, understood("Log", all + sheet + other).settings().volumeL());
    assertEquals(20, understood("Log", sheet + all + other).settings().volumeL());
    assertEquals(30, understood("Log", table + sheet + all + other).settings().volumeL());
    assertEquals(30, understood("Log", all + sheet + table + other).settings().volumeL());
    assertEquals(10, understood("Elsewhere", all + sheet + table + other).settings().volumeL());
    assertEquals(10, understood("Log", all + "header row = 2\nvolume = 50 L").settings().volumeL());
  }

  @Test
  void whatIsSaidTakesThePlaceOfWhatTheSheetSays() {
    LogSettings said =
        understood(
                "Log",
                "temperature = 25 C\ncalibration = 15 C\noffset = 0.001\nvolume = 9 L\n"
                    + "wash = honey\nsugar readings = before\nbatch = Apple 7")
            .settings();
    assertEquals(25, said.temperatureC());
    assertEquals(15, said.calibrationC());
    assertEquals(0.001, said.offset());
    assertEquals(9, said.volumeL());
    assertEquals("HONEY", said.wash().kind().word());
    assertEquals(LogSettings.SugarReadings.BEFORE, said.sugarReadings());
    assertEquals("Apple 7", understood("Log", "batch = Apple 7").batches().get(0).name());
    LogSettings corrected = understood("Log", "corrected = yes").settings();
    assertTrue(corrected.correctedAlready());
    assertEquals(20, corrected.temperatureC());
    assertEquals(
        15, understood("Log", "corrected = yes\ncalibration = 15 C").settings().temperatureC());
    assertEquals(
        17, understood("Log", "corrected = yes\ntemperature = 17 C").settings().temperatureC());
  }

  @Test
  void aCorrectionThatTheSheetSpeaksOfCanBeDenied() {
    TestGrid grid = TestGrid.of("Log", "Corrected to 20 °C\nDay|SG|Temp C\n0|1.085|22\n3|1.05|24");
    LogTable told = SheetUnderstanding.understand(grid, LogMap.none()).tables().get(0);
    assertTrue(told.settings().correctedAlready());
    LogTable denied =
        SheetUnderstanding.understand(grid, LogMap.parse("corrected = no")).tables().get(0);
    assertFalse(denied.settings().correctedAlready());
    assertTrue(Double.isNaN(denied.settings().temperatureC()));
  }

  @Test
  void columnsRowsAndBatchesAreThoseOfTheMap() {
    LogTable table = understood("Log", "header row = 1\nlast row = 3\ncolumn C = OTHER");
    assertEquals(Role.OTHER, table.columns().get(2).role());
    assertEquals(2, table.lastRow());
    Understanding ignored =
        SheetUnderstanding.understand(
            TestGrid.of("Log", LOG), LogMap.parse("header row = 1\nignore = yes"));
    assertEquals(List.of(), ignored.tables());
    LogTable two = understood("Log", "batch from row 4 = Apple 7");
    assertEquals("Apple 7", two.batches().get(1).name());
    assertEquals(List.of(3), Arrays.stream(two.batches().get(1).rows()).boxed().toList());
  }

  @Test
  void aStatedOriginalGravityGivesWayToTheFirstReadingWhereTheMapSaysSo() {
    TestGrid grid = TestGrid.of("Log", "OG|1.090\n" + LOG);
    LogMap map = LogMap.parse("original gravity = first reading");
    OriginalGravity told =
        SheetUnderstanding.understand(grid, LogMap.none())
            .tables()
            .get(0)
            .batches()
            .get(0)
            .original();
    OriginalGravity said =
        SheetUnderstanding.understand(grid, map).tables().get(0).batches().get(0).original();
    assertEquals(1.09, told.gravity().orElseThrow());
    assertTrue(said instanceof OriginalGravity.FirstReading);
    assertEquals(
        1.07,
        understood("Log", "original gravity = 1.07 SG")
            .batches()
            .get(0)
            .originalGravity()
            .orElseThrow());
  }

  private static final String RUN =
      "Plum 3, spirit run\nJar|mL|% vol|Temp C\n1|100|75|15\n2|500|74|16\n3|500|66|25\n4|500|42|25";

  private static StillRun run(String map) {
    return SheetUnderstanding.understand(TestGrid.of("Run", RUN), LogMap.parse(map)).runs().get(0);
  }

  @Test
  void aStillRunIsToldByAMapToo() {
    StillRun said =
        run(
            "charge = 25 L\ncharge strength = 10 ABV\nvolumes at 20 = yes\ncalibration = 15 C\n"
                + "pressure = 950\ncorrected = yes\nbatch = Apple 7");
    assertEquals(25, said.parts().get(0).charge().litres());
    assertEquals(10, said.parts().get(0).charge().percentVolume());
    assertTrue(said.settings().volumesAt20());
    assertTrue(said.settings().corrected());
    assertEquals(15, said.settings().calibrationC());
    assertEquals(950, said.settings().pressureHPa());
    StillRun told = run("");
    assertFalse(told.settings().volumesAt20());
    assertFalse(told.settings().corrected());
    assertEquals(20, told.settings().calibrationC());
    assertTrue(Double.isNaN(told.settings().pressureHPa()));
    Understanding none =
        SheetUnderstanding.understand(TestGrid.of("Run", RUN), LogMap.parse("run = no"));
    assertEquals(List.of(), none.runs());
  }

  @Test
  void aRunThatWasUnderstoodComesBackAsAMap() {
    TestGrid grid = TestGrid.of("Run", RUN.replace("Jar|", "Charge|10|L|30|% vol\nJar|"));
    Understanding told = SheetUnderstanding.understand(grid, LogMap.none());
    String written = LogMap.write(List.of(told));
    for (String statement :
        List.of("run = yes", "charge = 10 L", "charge strength = 30 ABV", "corrected = no")) {
      assertTrue(written.contains("\n" + statement + "\n"), written);
    }
    StillRun again = SheetUnderstanding.understand(grid, LogMap.parse(written)).runs().get(0);
    assertEquals(told.runs().get(0).settings(), again.settings());
    assertEquals(told.runs().get(0).table().range(), again.table().range());
  }

  /** An answer is put to what the map says of the table already; everything else stays. */
  @Test
  void anAnswerIsPutToWhatIsSaidOfItsTable() {
    TestGrid grid = TestGrid.of("Log", "Day|SG|Temp\n0|1.085|50\n4|1.04|49\n8|1.01|51");
    Doubt doubt = SheetUnderstanding.understand(grid, LogMap.none()).doubts().get(0);
    String answer = "column C = TEMPERATURE in F";
    LogMap map =
        LogMap.parse("sheet = Other\nvolume = 1 L\n[table]\nvolume = 2 L")
            .with("Log", doubt, List.of(answer));
    assertEquals(3, map.tables().size());
    TableMap said = map.tables().get(2);
    assertEquals("Log", said.sheet());
    assertEquals(0, said.headerRow());
    assertEquals(2, said.volumeL(), "of every sheet, so of this one too");
    LogMap again = map.with("Log", doubt, List.of("volume = 5 L"));
    assertEquals(3, again.tables().size());
    assertEquals(5, again.tables().get(2).volumeL());
    assertEquals("F", again.tables().get(2).columns().get(2).unit());
    assertEquals(List.of(), SheetUnderstanding.understand(grid, map).doubts());
  }

  /** What was asked stands in the map as comments, with the answers of its row. */
  @Test
  void questionsStandInAWrittenMapAsComments() {
    TestGrid grid = TestGrid.of("Log", "Day|SG|Temp\n0|1.085|50\n4|1.04|49\n8|1.01|51");
    Understanding open = SheetUnderstanding.understand(grid, LogMap.none());
    String written = LogMap.write(List.of(open));
    assertTrue(written.contains("# column B = GRAVITY in SG\n"), written);
    assertTrue(written.lines().anyMatch(l -> l.startsWith("# ") && l.contains("C1")), written);
    TestGrid fed = TestGrid.of("Log", "Day|SG|Temp C\n0|1.06|20\n3|1.03|20\n4|1.05|20\n8|1.01|20");
    String rise = LogMap.write(List.of(SheetUnderstanding.understand(fed, LogMap.none())));
    assertTrue(rise.contains("\n# batch from row 4 = Log B\n"), rise);
    assertTrue(rise.contains("\n# sugar added at row 4 = 0 KG\n"), rise);
    assertFalse(rise.contains("\nsugar added"), rise);
  }
}
