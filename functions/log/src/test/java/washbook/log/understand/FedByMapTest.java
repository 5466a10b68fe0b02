package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Numbers;
import washbook.functions.ferment.Feeding;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;
import washbook.functions.reading.Refractometer;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.Doubt;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.Understanding;
import washbook.log.fill.ComputedTable;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;

/** Sugar that only a rise of the readings or a note tells of, answered by a map. */
class FedByMapTest {
  private static final double ORIGINAL = 1.062;
  private static final double BEFORE = 1.022;
  private static final double LITRES = 20;

  /** What the same wash of malt shows when sugar has gone in. */
  private static double fedWith(double kilograms) {
    double original = original(kilograms);
    double extract = SucroseSolution.brix(ORIGINAL);
    double alcohol =
        WashKind.MALT.alcoholByMass(
            extract, FermentingWash.trueExtract(extract, BEFORE, WashKind.MALT));
    double mass = Feeding.mass(LITRES, ORIGINAL) / (1 + WashKind.MALT.fall() * alcohol);
    double diluted = alcohol * mass / (mass + kilograms);
    double everything = SucroseSolution.brix(original);
    return FermentingWash.gravity(everything, WashKind.MALT.trueExtract(everything, diluted));
  }

  private static double original(double kilograms) {
    return Feeding.original(
        new double[] {LITRES}, new double[] {ORIGINAL}, new double[] {kilograms});
  }

  private static TestGrid log(double kilograms) {
    return TestGrid.of(
        "Sugar 4",
        """
        Day | SG | Temp C | Notes
        0 | %s | 20 |
        2 | 1.050 | 20 |
        4 | %s | 20 |
        4.1 | %s | 20 |
        6 | 1.020 | 20 |
        9 | 1.001 | 20 |\
        """
            .formatted(ORIGINAL, BEFORE, Numbers.show(fedWith(kilograms))));
  }

  private static List<Double> alcohol(TestGrid grid, String map) {
    Understanding sheet = SheetUnderstanding.understand(grid, LogMap.parse(map));
    LogTable table = sheet.tables().get(0);
    ComputedTable filled = new ComputedTable(grid, table, EnumSet.of(ComputedColumn.ABV));
    return Stream.iterate(table.firstRow(), row -> row <= table.lastRow(), row -> row + 1)
        .map(row -> filled.number(ComputedColumn.ABV, row))
        .toList();
  }

  private static void assertSame(List<Double> wanted, List<Double> found, double within) {
    assertEquals(wanted.size(), found.size());
    for (int i = 0; i < wanted.size(); i++) {
      assertEquals(wanted.get(i), found.get(i), within, "row " + i);
    }
  }

  @ParameterizedTest
  @CsvSource({"0.2", "0.5", "1", "2.5"})
  void theRiseTellsWhatTheAmountTells(double kilograms) {
    TestGrid grid = log(kilograms);
    List<Double> told =
        alcohol(grid, "sugar added at row 5 = " + Numbers.show(kilograms) + " KG\nvolume = 20 L");
    List<Double> risen = alcohol(grid, "sugar added at row 5 = by the rise");
    assertFalse(told.contains(Double.NaN), told.toString());
    assertSame(told, risen, 1e-6);
    assertSame(told, alcohol(grid, "sugar added at row 4 = by the rise"), 1e-6);
  }

  @Test
  void theAlcoholIsOnlyDilutedByTheFeed() {
    List<Double> filled = alcohol(log(1), "sugar added at row 5 = by the rise");
    assertTrue(filled.get(3) < filled.get(2) && filled.get(3) > 0.9 * filled.get(2));
  }

  @Test
  void anAmountInAMapIsAsOneInAColumn() {
    String rows =
        """
        0 | 1.062 | 20 |
        2 | 1.030 | 20 |%s
        4 | 1.045 | 20 |
        8 | 1.002 | 20 |\
        """;
    TestGrid bare =
        TestGrid.of("Sugar 4", "Volume: 20 L\nDay | SG | Temp C\n" + rows.formatted(""));
    TestGrid column =
        TestGrid.of(
            "Sugar 4",
            "Volume: 20 L\nDay | SG | Temp C | Sugar added (kg)\n" + rows.formatted(" 1.5"));
    assertEquals(alcohol(column, ""), alcohol(bare, "sugar added at row 4 = 1.5 KG"));
    assertEquals(alcohol(column, ""), alcohol(bare, "sugar added at row 5 = 1.5 KG"));
  }

  @Test
  void anAmountAfterARiseGoesIntoAllThatThereIsThen() {
    String end = "7 | 1.010 | 20 |\n7.1 | 1.030 | 20 |\n9 | 1.004 | 20 |";
    TestGrid grid = log(1);
    TestGrid longer =
        TestGrid.of(
            "Sugar 4",
            "Day | SG | Temp C | Notes\n0 | %s | 20 |\n4 | %s | 20 |\n4.1 | %s | 20 |\n"
                    .formatted(ORIGINAL, BEFORE, Numbers.show(fedWith(1)))
                + end);
    String second = "\nsugar added at row 6 = 0.8 KG\nvolume = 20 L";
    assertEquals(6, alcohol(grid, "").size());
    List<Double> told = alcohol(longer, "sugar added at row 4 = 1 KG" + second);
    assertFalse(told.contains(Double.NaN), told.toString());
    assertSame(told, alcohol(longer, "sugar added at row 4 = by the rise" + second), 1e-6);
  }

  @Test
  void rowsBeforeTheRiseStayAsTheyAreAndThoseAfterItWait() {
    List<Double> open = alcohol(log(1), "");
    List<Double> answered = alcohol(log(1), "sugar added at row 5 = by the rise");
    assertEquals(answered.subList(0, 3), open.subList(0, 3));
    assertTrue(open.subList(3, 6).stream().allMatch(abv -> Double.isNaN(abv)), open.toString());
  }

  @Test
  void aRiseThatTheMapCallsNoneIsASlipWhenItDoesNotLast() {
    String text =
        "Day | SG | Temp C\n0 | 1.062 | 20\n2 | 1.040 | 20\n3 | 1.052 | 20\n4 | 1.030 | 20\n8 |"
            + " 1.004 | 20";
    TestGrid grid = TestGrid.of("Plum 3", text);
    List<Double> filled = alcohol(grid, "sugar added at row 4 = 0 KG");
    assertTrue(Double.isNaN(filled.get(2)));
    List<Double> plain = alcohol(TestGrid.of("Plum 3", text.replace("3 | 1.052 | 20\n", "")), "");
    assertEquals(plain.subList(2, 4), filled.subList(3, 5));
    Understanding sheet =
        SheetUnderstanding.understand(grid, LogMap.parse("sugar added at row 4 = 0 KG"));
    assertEquals(List.of(), sheet.doubts());
    Filling filling = LogFiller.fill(grid, sheet, FillOptions.usual());
    assertEquals("B4", filling.refusals().get(0).cell());
    assertTrue(filling.refusals().get(0).reason().contains("the next one is low again"));
  }

  @Test
  void aRiseThatTheMapCallsNoneGoesOnWhenItLasts() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            "Day | SG | Temp C\n0 | 1.062 | 20\n2 | 1.030 | 20\n3 | 1.045 | 20\n4 | 1.040 | 20");
    List<Double> filled = alcohol(grid, "sugar added at row 4 = 0 KG");
    assertFalse(filled.contains(Double.NaN), filled.toString());
    assertTrue(filled.get(2) < filled.get(1));
  }

  @Test
  void anotherBatchThatBeginsAtTheRiseHasAnOriginalGravityOfItsOwn() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            "Day | SG | Temp C\n0 | 1.062 | 20\n6 | 1.004 | 20\n8 | 1.075 | 20\n11 | 1.030 | 20");
    List<Double> filled = alcohol(grid, "batch from row 4 = Apple 7\noriginal gravity = 1.062 SG");
    assertEquals(0, filled.get(2), 1e-9);
    List<Batch> batches =
        SheetUnderstanding.understand(grid, LogMap.parse("batch from row 4 = Apple 7"))
            .tables()
            .get(0)
            .batches();
    assertEquals(List.of("Plum 3", "Apple 7"), batches.stream().map(Batch::name).toList());
    assertEquals(1.075, batches.get(1).originalGravity().orElseThrow(), 1e-3);
  }

  @Test
  void theRowsOfANamedBatchGoOnUnderTheNewName() {
    TestGrid grid =
        TestGrid.of(
            "Log",
            """
            Batch | Day | SG | Temp C
            Plum 3 | 0 | 1.062 | 20
            Apple 7 | 0 | 1.050 | 20
            Plum 3 | 6 | 1.004 | 20
            Plum 3 | 8 | 1.075 | 20
            Apple 7 | 9 | 1.002 | 20
            Plum 3 | 12 | 1.020 | 20\
            """);
    List<Batch> batches =
        SheetUnderstanding.understand(grid, LogMap.parse("batch from row 5 = Sugar 4"))
            .tables()
            .get(0)
            .batches();
    assertEquals(
        List.of("Plum 3", "Sugar 4", "Apple 7"), batches.stream().map(Batch::name).toList());
    assertEquals(List.of(4, 6), Arrays.stream(batches.get(1).rows()).boxed().toList());
  }

  @Test
  void aRefractometerReadsOnFromWhatItWouldHaveShown() {
    double brix = 20;
    double fed =
        Feeding.original(
            new double[] {LITRES}, new double[] {SucroseSolution.gravity(brix)}, new double[] {1});
    double fedBrix = SucroseSolution.brix(fed);
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            "Day | Refractometer (Brix) | Notes\n0 | 20 |\n3 | 14 |\n3.1 | %s |\n6 | 9.5 |"
                .formatted(Numbers.show(shownAfter(brix, 14, 1, fedBrix))));
    List<Double> told = alcohol(grid, "sugar added at row 4 = 1 KG\nvolume = 20 L");
    assertFalse(told.contains(Double.NaN), told.toString());
    assertSame(told, alcohol(grid, "sugar added at row 4 = by the rise"), 1e-5);
    double end = Refractometer.gravity(fedBrix, 9.5, 1);
    assertEquals(
        FermentingWash.percentVolume(
            fedBrix, FermentingWash.trueExtract(fedBrix, end), end, WashKind.MALT),
        told.get(3),
        1e-6);
  }

  /** What a refractometer shows once sugar is in: found by halving, as its reading is one way. */
  private static double shownAfter(double brix, double shown, double kilograms, double fedBrix) {
    double before = Refractometer.gravity(brix, shown, 1);
    double alcohol = FermentingWash.alcoholByMass(brix, FermentingWash.trueExtract(brix, before));
    double mass =
        Feeding.mass(LITRES, SucroseSolution.gravity(brix)) / (1 + WashKind.MALT.fall() * alcohol);
    double diluted = alcohol * mass / (mass + kilograms);
    double low = shown;
    double high = fedBrix;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      double gravity = Refractometer.gravity(fedBrix, middle, 1);
      boolean less =
          FermentingWash.alcoholByMass(fedBrix, FermentingWash.trueExtract(fedBrix, gravity))
              < diluted;
      low = less ? low : middle;
      high = less ? middle : high;
    }
    return low;
  }

  @Test
  void readingsDaysApartDoNotTellHowMuch() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            "Day | SG | Temp C\n0 | 1.062 | 20\n2 | 1.030 | 20\n5 | 1.045 | 20\n8 | 1.004 | 20");
    Doubt asked =
        SheetUnderstanding.understand(grid, LogMap.parse("sugar added at row 4 = by the rise"))
            .doubts()
            .get(0);
    assertTrue(
        asked.asked().in(Language.EN).startsWith("How much sugar was added at row 4?"),
        asked.asked().in(Language.EN));
    Doubt rise = SheetUnderstanding.understand(grid, LogMap.none()).doubts().get(0);
    assertFalse(rise.question().contains("by the rise"), rise.question());
  }

  @Test
  void aSmallRiseThatLastsIsAskedAbout() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            "Day | SG | Temp C\n0 | 1.062 | 20\n2 | 1.030 | 20\n3 | 1.0352 | 20\n4 | 1.034 | 20");
    List<Doubt> doubts = SheetUnderstanding.understand(grid, LogMap.none()).doubts();
    assertEquals(List.of("B4"), doubts.stream().map(Doubt::cell).toList());
  }

  @Test
  void aRiseAboveTheOriginalGravityIsAskedAboutWhereItBegins() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            "Day | SG | Temp C\n0 | 1.050 | 20\n3 | 1.020 | 20\n3.5 | 1.066 | 20\n4 | 1.061 | 20");
    List<Doubt> doubts = SheetUnderstanding.understand(grid, LogMap.none()).doubts();
    assertEquals(List.of("B4"), doubts.stream().map(Doubt::cell).toList());
    assertFalse(alcohol(grid, "sugar added at row 4 = by the rise").contains(Double.NaN));
  }

  @Test
  void aLogThatOnlyRisesIsNotAskedAboutSugar() {
    TestGrid grid =
        TestGrid.of("Plum 3", "Day | SG | Temp C\n0 | 1.009 | 20\n1 | 1.014 | 20\n2 | 1.028 | 20");
    assertTrue(
        SheetUnderstanding.understand(grid, LogMap.none()).doubts().stream()
            .noneMatch(doubt -> doubt.asked().in(Language.EN).startsWith("Was sugar added")));
  }

  @Test
  void anAmountInANoteIsOfferedAndHoneyCountsForLess() {
    TestGrid grid =
        TestGrid.of(
            "Honey in 15 L",
            """
            Day | SG | Temp C | Notes
            0 | 1.080 | 20 | made up to 15 L
            5 | 1.031 | 22 | before feeding
            5 | 1.060 | 22 | 1.2 kg honey, stirred
            9 | 1.028 | 22 | added 450 g sugar
            9 | 1.040 | 22 |
            20 | 1.020 | 20 |\
            """);
    LogMap map = LogMap.none();
    List<Doubt> doubts = SheetUnderstanding.understand(grid, map).doubts();
    assertEquals(List.of("D4"), doubts.stream().map(Doubt::cell).toList(), "one at a time");
    assertEquals(
        List.of("sugar added at row 4 = 0.96 KG", "volume = 15 L"),
        doubts.get(0).answers().get(1).lines());
    map = map.with(grid.name(), doubts.get(0), doubts.get(0).answers().get(0).lines());
    doubts = SheetUnderstanding.understand(grid, map).doubts();
    assertEquals(List.of("D5"), doubts.stream().map(Doubt::cell).toList());
    MapAnswer second = doubts.get(0).answers().get(1);
    assertEquals("sugar added at row 5 = 0.45 KG", second.lines().get(0));
    map = map.with(grid.name(), doubts.get(0), doubts.get(0).answers().get(0).lines());
    assertEquals(List.of(), SheetUnderstanding.understand(grid, map).doubts());
    assertFalse(alcohol(grid, map.print()).contains(Double.NaN));
    assertEquals(map, LogMap.parse(map.print()));
  }

  @Test
  void whatWasWrittenIntoTheLogIsNoNoteOfItsKeeper() {
    TestGrid grid = log(1);
    Understanding open = SheetUnderstanding.understand(grid, LogMap.none());
    TestGrid filled = grid.with(LogFiller.fill(grid, open, FillOptions.usual()).patch());
    assertEquals(open.doubts(), SheetUnderstanding.understand(filled, LogMap.none()).doubts());
  }

  @Test
  void formulasTakeTheOriginalGravityOfEverything() {
    TestGrid grid = log(1);
    Understanding sheet =
        SheetUnderstanding.understand(grid, LogMap.parse("sugar added at row 5 = by the rise"));
    double original = sheet.tables().get(0).batches().get(0).originalGravity().orElseThrow();
    assertEquals(original(1), original, 1e-6);
    for (FormulaStyle style : List.of(FormulaStyle.PACK, FormulaStyle.PORTABLE)) {
      Filling filling =
          LogFiller.fill(grid, sheet, new FillOptions(FillOptions.usual().columns(), style));
      String formula =
          filling
              .column(sheet.tables().get(0), ComputedColumn.ABV)
              .orElseThrow()
              .patch()
              .cells()
              .formula(5);
      assertTrue(formula.contains(Numbers.show(original).substring(0, 12)), formula);
    }
  }

  @Test
  void aMapThatIsToBeEditedShowsTheAnswersAsComments() {
    TestGrid grid = log(1);
    String written = LogMap.write(List.of(SheetUnderstanding.understand(grid, LogMap.none())));
    assertTrue(written.contains("\n# sugar added at row 5 = by the rise\n"), written);
    assertTrue(written.contains("\n# batch from row 5 = "), written);
  }

  @Test
  void aRowThatIsNoReadingIsAskedAbout() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3", "Day | SG | Temp C\n0 | 1.062 | 20\n2 | 1.030 | 20\n | | \n4 | 1.010 | 20");
    Understanding sheet =
        SheetUnderstanding.understand(grid, LogMap.parse("sugar added at row 4 = 1 KG"));
    assertTrue(sheet.doubts().get(0).asked().in(Language.EN).startsWith("Which row is meant?"));
  }
}
