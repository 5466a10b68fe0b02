package washbook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.liquid.WashKind;
import washbook.log.language.Language;
import washbook.log.language.Message;

/** The parts of a log once it is understood: questions, answers, accounts, columns, settings. */
class PartsOfALogTest {
  static Message said(String text) {
    return Message.of("plain", text);
  }

  @Test
  void aQuestionIsToldWithItsAnswers() {
    Doubt bare = new Doubt("B1", -1, said("Which?"), List.of());
    assertEquals("Which?", bare.question());
    Doubt one = new Doubt("B1", -1, said("Which?"), List.of(MapAnswer.of("corrected = yes")));
    assertEquals("Which? In a map: corrected = yes", one.question());
    Doubt three =
        new Doubt(
            "B1",
            -1,
            said("Which?"),
            List.of(
                MapAnswer.of("a = 1", "b = 2"),
                MapAnswer.like("c = 3"),
                MapAnswer.of("d = 4").with(said("by the note"))));
    assertEquals(
        "Which? In a map: a = 1 with b = 2, or for example c = 3, or d = 4 (by the note)",
        three.question(Language.EN));
    assertNotEquals(three.question(), three.question(Language.DE));
  }

  @Test
  void anAnswerKeepsItsLinesWhateverFollowsFromIt() {
    MapAnswer example = MapAnswer.like("volume = 25 L").with(said("more"));
    assertEquals(List.of("volume = 25 L"), example.lines());
    assertTrue(example.isExample());
    assertFalse(MapAnswer.of("a = 1").isExample());
    assertEquals("for example volume = 25 L (more)", example.told().in(Language.EN));
  }

  @Test
  void questionsOfATableKnowItsHeader() {
    Doubts of = new Doubts();
    of.ask("B1", said("Column B or column C?"));
    of.ask("B2", said("Row 2?"), MapAnswer.of("corrected = yes"));
    Doubts all = new Doubts();
    all.takeOver(of, 3);
    assertEquals(List.of(3, 3), all.all().stream().map(Doubt::headerRow).toList());
    assertEquals(List.of("B1", "B2"), all.all().stream().map(Doubt::cell).toList());
    Doubts again = new Doubts();
    again.takeOver(all, 5);
    assertEquals(3, again.all().get(0).headerRow());
    assertEquals(0, new Doubt("B1", 0, said("x"), List.of()).below(4).headerRow());
    assertEquals(4, new Doubt("B1", -1, said("x"), List.of()).below(4).headerRow());
  }

  /** Tables that are alike are asked about once, whatever their columns are called. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Is column B in °C?; Is column D in °C?; 1",
        "Are columns B and C alike?; Are columns D and E alike?; 1",
        "Is 20.5 right?; Is 18 right?; 1",
        "Is column B in °C?; Is column D in °F?; 2",
        "Is column B a must?; Is column D a must?; 1",
      })
  void whatWasAskedOfAnotherTableIsNotAskedAgain(String first, String second, int questions) {
    Doubts all = new Doubts();
    all.ask("B1", said(first));
    Doubts others = new Doubts();
    others.ask("D1", said(second));
    all.takeOverNew(others, 2);
    assertEquals(questions, all.all().size());
    if (questions == 2) {
      assertEquals(2, all.all().get(1).headerRow());
    }
  }

  private static BitSet rows(int... rows) {
    BitSet set = new BitSet();
    for (int row : rows) {
      set.set(row);
    }
    return set;
  }

  @Test
  void anAccountAddsUp() {
    Map<PassedOver, BitSet> over = new HashMap<>();
    over.put(PassedOver.NOTE, rows(3, 4, 8));
    over.put(PassedOver.BLANK, rows(5));
    over.put(PassedOver.AVERAGE, rows());
    RowAccount account = RowAccount.of(6, 2, over);
    assertEquals(12, account.rows());
    assertEquals(4, account.passedOver());
    assertEquals(
        "Rows: 12; filled: 6; refused: 2; passed over: 4 (without a reading: 6; notes: 4-5, 9)",
        account.told().in(Language.EN));
    assertEquals("without a reading: 6; notes: 4-5, 9", account.toldOfPassed().in(Language.EN));
    assertSame(Message.NONE, RowAccount.of(6, 2, Map.of()).toldOfPassed());
    assertEquals(8, RowAccount.of(6, 2, Map.of()).rows());
  }

  @Test
  void rowsOfALogAcrossHaveOtherNamesButTheirCountStays() {
    BitSet scattered = new BitSet();
    for (int row = 0; row < 60; row += 2) {
      scattered.set(row);
    }
    RowAccount account = RowAccount.of(0, 0, Map.of(PassedOver.NOTE, scattered));
    String shown = account.passed().get(0).rows();
    assertTrue(shown.startsWith("1, 3, 5"), shown);
    assertTrue(shown.endsWith(" ... (30)"), shown);
    String named = account.shownBy(row -> "c" + row).passed().get(0).rows();
    assertTrue(named.startsWith("c0, c2, c4"), named);
    assertTrue(named.endsWith(" ... (30)"), named);
    assertEquals(account.rows(), account.shownBy(row -> "c" + row).rows());
    assertEquals(30, account.shownBy(row -> "c" + row).passed().get(0).count());
  }

  @ParameterizedTest
  @CsvSource({
    "3, 4",
    "'3,4', 4-5",
    "'3,4,5,8', '4-6, 9'",
    "'0,2,4', '1, 3, 5'",
    "'', ''",
  })
  void rowsAreShownAsTheSheetCountsThem(String rows, String shown) {
    BitSet set = new BitSet();
    for (String row : rows.split(",")) {
      if (!row.isEmpty()) {
        set.set(Integer.parseInt(row));
      }
    }
    assertEquals(shown, RowAccount.shown(set));
  }

  @Test
  void aStatedKindOfWashIsToldWithItsPlace() {
    StatedWash honey = new StatedWash(WashKind.HONEY, said("stated in A1"));
    assertTrue(honey.isStated());
    assertEquals(
        "kind of wash HONEY: stated in A1", honey.remark(OptionalDouble.of(1.1)).in(Language.EN));
    assertEquals("\"HONEY\"", honey.argument());
    assertEquals("90", new StatedWash(WashKind.ofYield(90), said("x")).argument());
  }

  /** What each kind would make of it is told, since nobody said which one it is. */
  @Test
  void anUnstatedKindIsMaltAndTheOthersAreCompared() {
    StatedWash none = StatedWash.none();
    assertFalse(none.isStated());
    assertEquals(WashKind.MALT, none.kind());
    String told = none.remark(OptionalDouble.of(1.06)).in(Language.EN);
    assertTrue(told.contains("taken as MALT; from 1.06 to 1 % vol are MALT "), told);
    assertTrue(told.endsWith("say in a map: wash = SUGAR"), told);
    for (String word : WashKind.words()) {
      assertTrue(told.contains(word + " "), told);
    }
    String usual = none.remark(OptionalDouble.empty()).in(Language.EN);
    assertTrue(usual.contains("from 1.08 to 1 % vol"), usual);
    assertEquals(usual, none.remark(OptionalDouble.of(1.0)).in(Language.EN));
    assertEquals(usual, none.remark(OptionalDouble.of(0.995)).in(Language.EN));
  }

  static LogTable table(LogColumn... columns) {
    return new LogTable(
        2,
        3,
        9,
        1,
        4,
        List.of(columns),
        List.of(),
        LogSettings.none(),
        List.of(said("remark")),
        true,
        Map.of(5, PassedOver.NOTE));
  }

  static LogColumn column(int column, Role role) {
    return new LogColumn(column, "SG", role, "SG", Message.NONE);
  }

  @Test
  void aTableIsNamedByItsCornersAndFindsItsFirstColumnOfARole() {
    LogTable table = table(column(1, Role.DATE), column(2, Role.GRAVITY), column(3, Role.GRAVITY));
    assertEquals("B3:E10", table.range());
    assertEquals(2, table.column(Role.GRAVITY).orElseThrow().column());
    assertTrue(table.column(Role.NOTE).isEmpty());
    Batch batch = Batch.unknown("Plum 3", new int[] {3}, "B4", said("why"));
    LogTable other = table.with(List.of(batch));
    assertEquals(List.of(batch), other.batches());
    assertEquals(table.columns(), other.columns());
    assertEquals(table.setAside(), other.setAside());
    assertEquals(table.range(), other.range());
    assertTrue(other.settled());
    assertNotEquals(table, other);
    assertEquals(table.hashCode(), other.hashCode());
    assertNotEquals(table.hashCode(), 0);
  }

  @Test
  void columnsAreEqualWhereAllOfThemIs() {
    LogColumn one = new LogColumn(1, "SG", Role.GRAVITY, "SG", said("why"));
    assertEquals(one, new LogColumn(1, "SG", Role.GRAVITY, "SG", said("why")));
    assertEquals(
        one.hashCode(), new LogColumn(1, "SG", Role.GRAVITY, "SG", said("why")).hashCode());
    for (LogColumn other :
        List.of(
            new LogColumn(2, "SG", Role.GRAVITY, "SG", said("why")),
            new LogColumn(1, "Sg", Role.GRAVITY, "SG", said("why")),
            new LogColumn(1, "SG", Role.REFRACTOMETER, "SG", said("why")),
            new LogColumn(1, "SG", Role.GRAVITY, "BRIX", said("why")),
            new LogColumn(1, "SG", Role.GRAVITY, "SG", said("other")))) {
      assertNotEquals(one, other);
    }
    assertFalse(one.equals(null));
    assertNotEquals(
        one.hashCode(), new LogColumn(2, "SG", Role.GRAVITY, "SG", said("why")).hashCode());
  }

  @Test
  void settingsAreWrittenOtherwiseWithoutAnyOtherChange() {
    WritingWish wish =
        new WritingWish(
            Optional.of(Language.DE), Optional.of(WrittenScale.SG), true, WarningLimits.usual());
    LogSettings settings = LogSettings.none().written(wish);
    assertEquals(wish, settings.writing());
    assertEquals(LogSettings.none(), settings.written(WritingWish.NONE));
    LogSettings warm =
        new LogSettings(
            20,
            said("x"),
            true,
            15,
            said("y"),
            0.001,
            1.04,
            25,
            LogSettings.SugarReadings.AFTER,
            StatedWash.none(),
            WritingWish.NONE);
    assertTrue(warm.hasTemperature());
    assertEquals(warm, warm.written(wish).written(WritingWish.NONE));
  }

  /** Which function of the catalogue gives a column, and in how many decimals it is shown. */
  @ParameterizedTest
  @CsvSource({
    "gravity, CORRECTED_GRAVITY, , 4, true, false",
    "abv, ABV, ABV, 2, true, false",
    "apparent, APPARENT_ATTENUATION, APPARENTATTENUATION, 1, true, false",
    "real, REAL_ATTENUATION, REALATTENUATION, 1, true, false",
    "extract, TRUE_EXTRACT, TRUEEXTRACT, 2, false, false",
    "sugar, SUGAR_LEFT, SUGARLEFT, 1, false, false",
    "plusminus, PLUS_MINUS, ABVPLUSMINUS, 2, false, false",
    "strength, TRUE_STRENGTH, , 2, true, true",
    "pure, PURE_ALCOHOL, , 4, true, true",
    "volume20, VOLUME_AT_20, , 4, false, true",
    "note, NOTE, , -1, false, false",
  })
  void aComputedColumnHasAWordAFunctionAndDecimals(
      String word,
      ComputedColumn column,
      String function,
      int decimals,
      boolean usual,
      boolean ofRun) {
    assertEquals(word, column.word());
    assertEquals(function, column.function());
    assertEquals(decimals, column.decimals());
    assertEquals(usual, column.byDefault());
    assertEquals(ofRun, column.isOfRun());
  }
}
