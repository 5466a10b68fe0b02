package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.StatedWash;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.layout.KeyLines;
import washbook.log.sheet.TestGrid;
import washbook.log.words.ReadingScale;

/** What lines above a log state of original gravities, scales and the kind of wash. */
class StatedAboveLogsTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Cellar", text.replace('^', '|').replace(" ;", "\n"));
  }

  private static String told(String log) {
    Understanding sheet = SheetUnderstanding.understand(grid(log), LogMap.none());
    String batches =
        sheet.tables().stream()
            .flatMap(table -> table.batches().stream())
            .map(StatedAboveLogsTest::original)
            .collect(Collectors.joining(" "));
    String asks =
        sheet.doubts().stream()
            .map(d -> "asks " + d.cell() + " " + d.answers().get(0).lines().get(0))
            .collect(Collectors.joining(", "));
    return (batches + " " + asks).strip();
  }

  private static String original(Batch batch) {
    return batch.originalGravity().isPresent()
        ? Numbers.fixed(batch.originalGravity().getAsDouble(), 4)
        : "unknown";
  }

  private static final String LOG = " ; Day^SG^Temp C ; 0^1.08^20 ; 4^1.05^20 ; 8^1.01^20";

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "OG: 1.086 ! 1.0860",
        "OG^1.086 ! 1.0860",
        // its own temperature behind it, in a cell of its own
        "OG^1.086^at 30 C ! 1.0892",
        "OG^1.086^@^86 F ! 1.0892",
        "OG^1.086^30^°C ! 1.0892",
        "Densidad inicial^1.086^a^30 ºC ! 1.0892",
        "Anfangsdichte^1,086^bei^30 °C ! 1.0892",
        "OG^1.086^yeast pitched^30 C ! 1.0860",
        "OG^1.086^30 ! 1.0860",
        "OG: 1.086 ; OG: 1.084 ! 1.0840",
        // a gravity above the readings of which nobody says what it is
        "Tank 4 at 1.086 ! asks A1 original gravity = 1.086 SG",
        "Gravity^1.086 ! asks B1 original gravity = 1.086 SG",
        "Blorp^86^°Oe ! asks A1 original gravity = 1.086 SG",
        // no higher than the readings, or not an original by its words
        "Blorp^1.07 ! asks B1 original gravity = 1.07 SG",
        "Tank 4 at 1.07 ! 1.0800",
        "Target^1.086 ! 1.0800",
        "FG^1.086 ! 1.0800",
        "Target 1.086 ! 1.0800",
        "Blorp^1.02 ! 1.0800",
        "Blorp^1.21 ! 1.0800",
        // a form that is not read
        "OG: about 1.08 or 1.09 ! asks A1 original gravity = 1.085 SG",
        "OG: unknown ! 1.0800",
      })
  void theOriginalGravityIsStatedOrAskedAbout(String line, String told) {
    assertEquals(told, told(line + LOG));
  }

  private static Optional<OriginalsList.Entry> entry(String text, int topRow, String batch) {
    TestGrid grid = grid(text);
    return OriginalsList.of(grid, 0, topRow, 0, grid.columnCount() - 1).of(batch);
  }

  @Test
  void aListGivesTheOriginalGravityOfEachBatchInRows() {
    String list = "Batch^OG ; Plum 3^1.086 ; Apple 7^1.066 ; ; Pear 1^1.07 ; Date^SG";
    assertEquals(1.086, entry(list, 5, "Plum 3").orElseThrow().value());
    assertEquals("B2", entry(list, 5, "Plum 3").orElseThrow().cell());
    assertEquals(1.066, entry(list, 5, " apple 7").orElseThrow().value());
    assertEquals(Optional.empty(), entry(list, 5, "Pear 1"));
    assertEquals(Optional.empty(), entry(list, 5, "Plum"));
    assertEquals(Optional.empty(), entry(list.replace("Apple 7", "Plum 3"), 5, "Plum 3"));
    assertEquals(Optional.empty(), entry(list.replace("OG", "SG"), 5, "Plum 3"));
    assertEquals(Optional.empty(), entry(list, 5, "Plum 3").orElseThrow().scale());
    assertEquals(
        Optional.of(ReadingScale.OECHSLE),
        entry("Batch^OG °Oe ; Plum 3^86 ; ; Date^SG", 3, "Plum 3").orElseThrow().scale());
  }

  @Test
  void aListMayStandInOneRow() {
    String line = "WB1 1058^WB2: 1057.5^WB 3 = 1,06^yeast 12 ; Date^SG";
    assertEquals(1058, entry(line, 1, "WB1").orElseThrow().value());
    assertEquals(1057.5, entry(line, 1, "wb2").orElseThrow().value());
    assertEquals("B1", entry(line, 1, "wb2").orElseThrow().cell());
    assertEquals(1.06, entry(line, 1, "WB 3").orElseThrow().value());
    assertEquals(Optional.empty(), entry(line, 1, "yeast"));
    assertEquals(Optional.empty(), entry("WB1 1058^yeast ; Date^SG", 1, "WB1"));
    assertEquals(Optional.empty(), entry("WB1 1058^WB2 1015 ; Date^SG", 1, "WB1"));
    assertEquals(1020, entry("WB1 1058^WB2 1020 ; Date^SG", 1, "WB2").orElseThrow().value());
    assertEquals(1058, entry("x^WB1 1058^WB2 1066 ; Date^SG", 1, "WB1").orElseThrow().value());
  }

  private static String scale(String line) {
    TestGrid grid = grid(line + " ; x");
    return ScaleAbove.of(new KeyLines(grid).find(0, 0, 0, grid.columnCount() - 1))
        .map(Enum::name)
        .orElse("");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Readings in Brix ! BRIX",
        "Hydrometer: °Oe ! OECHSLE",
        "Gravity in °P ! PLATO",
        "Hydrometer shows potential alcohol ! POTENTIAL",
        "Density in g/L ! KGM3",
        "Start reading in Brix ! ''",
        "Target reading in Brix ! ''",
        "Refractometer reading in Brix ! ''",
        "all in Brix ! ''",
        "Readings in Brix^Readings in °Oe ! ''",
      })
  void theScaleOfTheReadingsMayStandAbove(String line, String scale) {
    assertEquals(scale, scale(line));
  }

  private static String scaleInTexts(String text, int headerRow) {
    return ScaleAbove.inTexts(grid(text), headerRow).map(Enum::name).orElse("");
  }

  @Test
  void aSentenceThatNamesTheInstrumentNamesItsScale() {
    assertEquals("BRIX", scaleInTexts("read with a Brix hydrometer ; x", 1));
    assertEquals("", scaleInTexts("read in Brix ; x", 1));
    assertEquals("", scaleInTexts("original Brix by hydrometer ; x", 1));
    assertEquals("", scaleInTexts("Brix hydrometer^Oechsle hydrometer ; x", 1));
    assertEquals("POTENTIAL", scaleInTexts("hydrometer for potential alcohol ; x", 1));
    assertEquals("", scaleInTexts("x ; Brix hydrometer", 1));
    assertEquals("BRIX", scaleInTexts("Brix hydrometer" + " ; x".repeat(8), 8));
    assertEquals("", scaleInTexts("Brix hydrometer" + " ; x".repeat(9), 9));
  }

  private static String wash(String text) {
    TestGrid grid = grid(text);
    StatedWash stated = WashAbove.stated(grid, 0, grid.rowCount() - 1, 0, grid.columnCount() - 1);
    return stated.isStated() ? stated.kind().word() + " " + stated.why().in(Language.EN) : "";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Sugar wash 4 ! SUGAR stated in A1",
        "x ; ^Molasses wash ! MOLASSES stated in B2",
        "Wash: honey ! HONEY stated in A1",
        "Wash = honey ! HONEY stated in A1",
        "Wash^plums ! FRUIT stated in A1",
        "Sugar wash ; Wash: honey ! HONEY stated in A2",
        "Wash: honey ; Sugar wash ! HONEY stated in A1",
        "Sugar wash ; Molasses wash ! ''",
        "Sugar wash ; Sugar wash ! SUGAR stated in A2",
        "Wash: honey ; Wash: sugar ! ''",
        "Wash: honey and sugar ! ''",
        "Honey ! ''",
        "Wash: ! ''",
        "Barrel: honey ! ''",
      })
  void theKindOfWashMayStandAbove(String text, String wash) {
    assertEquals(wash, wash(text));
  }

  @Test
  void onlyTheSixtyRowsAboveTellTheWash() {
    TestGrid grid = grid("Sugar wash" + " ; x".repeat(61));
    assertEquals(true, WashAbove.stated(grid, 0, 60, 0, 0).isStated());
    assertEquals(false, WashAbove.stated(grid, 0, 61, 0, 0).isStated());
    assertEquals(false, WashAbove.stated(grid, 1, 60, 0, 0).isStated());
    assertEquals(false, WashAbove.stated(grid("^Sugar wash"), 0, 0, 0, 0).isStated());
  }

  /**
   * A sheet that speaks of a ferment and holds figures that fall, but no header, is asked about.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "cider ; 1.085 ; 1.07 ; 1.05 ; 1.03 ; 1.01 ! A2 SG",
        "cider ; x^85 ; x^70 ; x^50 ; x^30 ; x^10 ! B2 OECHSLE",
        "cider ; 20 ; 16 ; 12 ; 8 ; 4 ! A2 BRIX",
        "cider, hydrometer in °P ; 20 ; 16 ; 12 ; 8 ; 4 ! A2 PLATO",
        "cider ; monday 1.085 ; tuesday 1.07 ; friday 1.05 ; sunday 1.03 ; monday 1.01 ! A2 SG",
        "shopping ; 1.085 ; 1.07 ; 1.05 ; 1.03 ; 1.01 ! ''",
        "cider ; salt ; 1.085 ; 1.07 ; 1.05 ; 1.03 ; 1.01 ! ''",
        "cider ; 1.085 ; 1.07 ; 1.05 ; 1.03 ! ''",
        "cider ; 1.085 ; 1.08 ; 1.07 ; 1.06 ; 1.055 ! ''",
        "cider ; 4.9 ; 4 ; 3 ; 2 ; 1 ! ''",
        "cider ; 5 ; 4 ; 3 ; 2 ; 1 ! A2 BRIX",
        "cider ; 20 ; 12 ; 16 ; 8 ; 4 ! ''",
        "cider ; 201 ; 160 ; 120 ; 80 ; 40 ! ''",
        "cider ; 1 ; 20 ; 16 ; 12 ; 8 ; 4 ! A3 BRIX",
      })
  void figuresThatFallWithoutAHeader(String log, String asks) {
    Understanding sheet = SheetUnderstanding.understand(grid(log), LogMap.none());
    String told =
        sheet.doubts().stream()
            .map(d -> d.cell() + " " + d.answers().get(0).lines().get(1).replaceAll(".* ", ""))
            .collect(Collectors.joining(", "));
    assertEquals(asks, told);
  }

  @Test
  void figuresThatFallAcrossAreAskedAboutBehindTheirWord() {
    Understanding sheet =
        SheetUnderstanding.understand(
            grid("cider ; x^1^2^3^4^5 ; Oechsle^85^70^50^30^10"), LogMap.none());
    assertEquals(List.of("B3"), sheet.doubts().stream().map(d -> d.cell()).toList());
  }

  @Test
  void aListOfOriginalsIsNotAskedAboutAgain() {
    TestGrid grid =
        TestGrid.of(
            "Lavados",
            """
            Lote | Litros | Densidad inicial (a 20 ºC) | Levadura
            L-07 | 400 | 1.078 | panadera
            L-08 | 400 | 1.081 | panadera
            |
            Lote | Fecha | Densidad | Temp ºC
            L-07 | #2026-01-12 | 1.072 | 30
            L-07 | #2026-01-13 | 1.039 | 31
            L-08 | #2026-01-13 | 1.075 | 29
            L-07 | #2026-01-15 | 1.011 | 30
            L-08 | #2026-01-15 | 1.020 | 30
            L-08 | #2026-01-17 | 1.012 | 30\
            """);
    var understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(List.of(), understood.doubts());
    List<Double> originals =
        understood.tables().get(0).batches().stream()
            .map(b -> b.originalGravity().orElseThrow())
            .toList();
    assertEquals(List.of(1.078, 1.081), originals);
  }

  @Test
  void anAbbreviationOverGravitiesIsAReadingUnderAGroupToo() {
    TestGrid grid =
        TestGrid.of(
                "Blancs",
                """
                Blancs 2025, trois cuves, densimètre 20°
                | Cuve A | | Cuve B |
                Date | D | T° | D | T°
                #2025-09-09 | 1.089 | 15 | 1.084 | 14
                #2025-09-11 | 1.081 | 16 | 1.077 | 16
                #2025-09-14 | 1.049 | 18 | 1.052 | 18
                #2025-09-17 | 1.010 | 18 | 1.017 | 18
                #2025-09-21 | 0.993 | 17 | 0.995 | 17\
                """)
            .merge(1, 1, 1, 2)
            .merge(1, 3, 1, 4);
    var understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(List.of(), understood.doubts());
    assertEquals(2, understood.tables().size());
  }

  @Test
  void figuresFromTheFirstRowOnWantAHeaderAboveThem() {
    TestGrid grid =
        TestGrid.of(
            "honingwijn linde",
            """
            #2024-06-02 | 1.102 | 19 | honing, gist
            #2024-06-06 | 1.090 | 20 |
            #2024-06-14 | 1.058 | 20 | gisting
            #2024-06-29 | 1.025 | 19 |
            #2024-07-14 | 1.012 | 18 |
            #2024-08-12 | 1.006 | 18 | helder\
            """);
    var understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(1, understood.doubts().size());
    assertEquals(List.of(), understood.doubts().get(0).answers());
  }

  @Test
  void whatALineBelowSaysOfTheResultsHolds() {
    TestGrid grid =
        TestGrid.of(
            "Brassin 112",
            """
            Date | °Plato | T cuve
            #2025-10-03 | 12.4 | 18
            #2025-10-05 | 7.8 | 20.5
            #2025-10-07 | 2.0 | 21
            #2025-10-11 | 0.4 | 14
            |
            °Plato : densimètre à tube oscillant du labo, résultat à 20 °C\
            """);
    var table = SheetUnderstanding.understand(grid, LogMap.none()).tables().get(0);
    assertTrue(table.settings().correctedAlready());
  }

  @Test
  void figuresWithoutHeadersAreOfferedWithTheirDatesAndTemperatures() {
    TestGrid grid =
        TestGrid.of(
            "Zwetschgen",
            """
            Zwetschgen blaues Fass, angesetzt 3.9., Spindel 20° | | |
            '3.9. | 1.071 | 19° | entsteint, Hefe
            '4.9. | 1.067 | " |
            '05.09 | 1.060 | 20° |
            '7.9. | 1.045 | 22° | Hut
            '9.9. | 1.032 | 21 Grad |
            '14.9. | 1.016 | 19 |
            '19.9. | 1.012 | 18 |\
            """);
    List<MapAnswer> answers =
        SheetUnderstanding.understand(grid, LogMap.none()).doubts().get(0).answers();
    LogMap map = LogMap.parse(String.join("\n", answers.get(0).lines()));
    Understanding answered = SheetUnderstanding.understand(grid, map);
    assertEquals(List.of(), answered.doubts());
    Batch batch = answered.tables().get(0).batches().get(0);
    assertEquals(7, batch.rows().length);
    assertEquals("B2", batch.original().cell());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R = Refraktometer (ATC) / S = Saccharometer 20° | R | S | true",
        "gemessen von R und S | R | S | false",
        "Zwetschgenmaische | Refr. | Spindel | true",
      })
  void lettersAreInstrumentsWhereALineSpeaksOfOne(
      String line, String one, String other, boolean instruments) {
    TestGrid grid =
        TestGrid.of(
            "Zwetschgenmaische",
            """
            Zwetschgenmaische | | | |
            %s | | | |
            Datum | Gerät | °Brix | °C | Notiz
            #2025-09-08 | %s | 17.8 | 21 | Hefe
            #2025-09-10 | %s | 15.8 | 24 |
            #2025-09-13 | %s | 10.6 | 23 |
            #2025-09-14 | %s | 5.2 | 23 |
            #2025-09-16 | %s | 3.1 | 21 |\
            """
                .formatted(line, one, one, one, other, other));
    LogTable table = SheetUnderstanding.understand(grid, LogMap.none()).tables().get(0);
    assertEquals(instruments, table.column(Role.INSTRUMENT).isPresent());
  }
}
