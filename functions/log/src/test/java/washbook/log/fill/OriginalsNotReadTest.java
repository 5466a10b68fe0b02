package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.UnusualLogsTest.original;
import static washbook.log.fill.UnusualLogsTest.table;
import static washbook.log.fill.UnusualLogsTest.understand;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Batch;
import washbook.log.OriginalGravity.Unknown;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Logs whose original gravity is not their first reading, though nothing states it plainly. */
class OriginalsNotReadTest {
  private static final String FALLS =
      """
      Date | SG | Temp C
      #2025-10-05 | 1.049 | 20
      #2025-10-08 | 1.030 | 20
      #2025-10-12 | 1.012 | 20
      #2025-10-20 | 1.003 | 20\
      """;

  private static boolean isUnknown(Understanding sheet, String batch) {
    return sheet.tables().stream()
        .flatMap(t -> t.batches().stream())
        .filter(b -> b.name().equals(batch))
        .allMatch(b -> b.original() instanceof Unknown);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Mead - started measuring on day 6",
        "Started 4 May, the hydrometer came on 13 May so no first figure",
        "Apfelwein, keine erste Messung",
        "Cider wash, readings from day 5 only",
        "Aufzeichnung erst ab 5. Tag, vorher keine Spindel",
        "Cidre, mesures notées seulement à partir du jour 4",
        "Mosto: anotado solo desde el día 6",
        "Mosto, misurato solo dal giorno 4",
        "Mosto, medido só a partir do dia 5",
        "pas op 14e dag begonnen met meten",
        "Mos: gemeet eers vanaf dag 5",
        "Cider, OG not taken",
        "Apfelwein, Anfangsdichte vergessen",
        "Cidre, densité initiale non notée",
        "Sidra, no tengo apuntada la densidad inicial",
        "Sidro, densità iniziale dimenticata",
        "Sidra, densidade inicial não anotada",
        "Cider (begin-SG niet genoteerd, stom)",
        "Sider, begin SG nie aangeteken"
      })
  void aLogThatSaysThatItBeginsLateIsAskedForTheOriginalGravity(String line) {
    TestGrid grid = TestGrid.of("Cider", line + "\n" + FALLS);
    Understanding sheet = understand(grid);
    assertTrue(sheet.tables().get(0).batches().get(0).original() instanceof Unknown, line);
    assertEquals(1, sheet.doubts().size());
    Understanding answered =
        SheetUnderstanding.understand(
            grid,
            LogMap.none()
                .with(grid.name(), sheet.doubts().get(0), List.of("original gravity = 1.058 SG")));
    assertEquals(List.of(), answered.doubts());
    assertEquals(1.058, original(answered.tables().get(0)), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Cider: OG is the first reading",
        "Cider, read from the first day on",
        "Cider - log from 5 October",
        "Notes of our cider, started on 5 October, 12 litres",
        "Apfelwein, Messung ab dem 1. Tag"
      })
  void aLogFromTheBeginningIsNotAsked(String line) {
    assertEquals(1.049, original(table(TestGrid.of("Cider", line + "\n" + FALLS))), 1e-9);
  }

  @Test
  void aCountOfDaysThatBeginsLateIsAskedAbout() {
    String log =
        """
        Cider
        Day | SG | Temp C
        %d | 1.044 | 20
        8 | 1.029 | 20
        12 | 1.016 | 20
        20 | 1.006 | 20\
        """;
    assertFalse(understand(TestGrid.of("Cider", log.formatted(5))).doubts().isEmpty());
    assertEquals(1.044, original(table(TestGrid.of("Cider", log.formatted(1)))), 1e-9);
  }

  @Test
  void whatStandsBesideAPartedBatchIsAskedForItsOwnOriginal() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Sidro",
                """
                contenitore | data | SG | temp C
                Tino | #2025-10-05 | 1.049 | 20
                Tino | #2025-10-08 | 1.046 | 20
                Tino | #2025-10-13 | 1.026 | 20
                Dam. A | #2025-10-13 | 1.026 | 20
                Dam. B | #2025-10-13 | 1.046 | 20
                Dam. A | #2025-10-16 | 1.013 | 20
                Dam. B | #2025-10-16 | 1.037 | 20
                Dam. A | #2025-10-20 | 1.004 | 20
                Dam. B | #2025-10-20 | 1.019 | 20\
                """));
    assertFalse(isUnknown(sheet, "Tino"));
    assertTrue(isUnknown(sheet, "Dam. A"));
    assertTrue(isUnknown(sheet, "Dam. B"));
  }

  @Test
  void whatBeginsBetweenTheEndsOfTwoWasPutTogetherOfThem() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Hidromiel",
                """
                lote | fecha | SG | temp C
                L1 | #2024-04-06 | 1.095 | 20
                L2 | #2024-04-06 | 1.118 | 20
                L1 | #2024-04-15 | 1.055 | 20
                L2 | #2024-04-15 | 1.089 | 20
                L1 | #2024-04-30 | 1.011 | 20
                L2 | #2024-04-30 | 1.047 | 20
                L3 | #2024-04-30 | 1.029 | 20
                L3 | #2024-05-07 | 1.017 | 20
                L3 | #2024-05-16 | 1.010 | 20\
                """));
    assertFalse(isUnknown(sheet, "L1"));
    assertFalse(isUnknown(sheet, "L2"));
    assertTrue(isUnknown(sheet, "L3"));
  }

  @Test
  void aLabelWithARemarkStatesTheOriginalGravityOfTheNextCell() {
    String log =
        """
        %s | 1.052
        Giorno | Densità | Temp C
        1 | 1.049 | 20
        4 | 1.015 | 20
        9 | 1.011 | 20\
        """;
    for (String label : List.of("OG (a 20 °C, densimetro)", "OG (20 °C)", "OG [corrected]")) {
      assertEquals(1.052, original(table(TestGrid.of("Birra", log.formatted(label)))), 1e-4);
    }
    double warm = original(table(TestGrid.of("Birra", log.formatted("OG (at 30 °C)"))));
    assertEquals(1.0545, warm, 0.0005);
  }

  @Test
  void aHigherGravityBehindAnyWordsIsAskedAbout() {
    TestGrid grid =
        TestGrid.of(
            "Beer",
            """
            Wort at pitching | 1052
            Day | Density | Temp C
            1 | 1049 | 20
            4 | 1015 | 20
            9 | 1011 | 20\
            """);
    assertEquals(1, understand(grid).doubts().size(), understand(grid).doubts().toString());
  }

  @Test
  void originalsOfSeveralVesselsInOneLineAreThoseOfTheVessels() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Tun room",
                """
                Set gravities (already at 20): | WB1 1058.0 | WB2 1057.5
                Washback | Hours | Temp C | Gravity
                WB1 | 2 | 20 | 1057.9
                WB2 | 2 | 20 | 1057.3
                WB1 | 16 | 29 | 1027.9
                WB2 | 16 | 29 | 1027.5
                WB1 | 36 | 33 | 1001.5
                WB2 | 36 | 33 | 1001.2\
                """));
    assertEquals(List.of(), sheet.doubts());
    List<Batch> batches = sheet.tables().get(0).batches();
    assertEquals(List.of("WB1", "WB2"), batches.stream().map(Batch::name).toList());
    assertEquals(1.058, batches.get(0).originalGravity().orElseThrow(), 1e-9);
    assertEquals(1.0575, batches.get(1).originalGravity().orElseThrow(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "SPLIT tonight: 2 carboys",
        "20 L overgepompt naar vat B",
        "diviso in 2 damigiane",
        "in zwei Ballons geteilt"
      })
  void whatANotePartsIsAskedForItsOriginalHoweverHighItBegins(String note) {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Ice cider",
                """
                Date | Vessel | SG | Temp C | Notes
                #2025-01-18 | barrel | 1.150 | 20 | yeast
                #2025-01-30 | barrel | 1.138 | 20 |
                #2025-02-17 | barrel | 1.092 | 20 | %s
                #2025-02-20 | carboy | 1.084 | 20 |
                #2025-02-24 | carboy | 1.080 | 20 |
                #2025-03-01 | carboy | 1.072 | 20 |
                #2025-03-09 | carboy | 1.064 | 20 |\
                """
                    .formatted(note)));
    assertFalse(isUnknown(sheet, "barrel"));
    assertTrue(isUnknown(sheet, "carboy"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "gärt schon tüchtig",
        "achetée déjà partie, on n'a pas la densité du début",
        "already fermenting when I got it"
      })
  void aFirstReadingThatIsSaidToFermentIsAskedFor(String note) {
    TestGrid grid =
        TestGrid.of(
            "Wine",
            """
            Date | SG | Temp C | Notes
            #2025-10-05 | 1.049 | 20 | %s
            #2025-10-08 | 1.030 | 20 |
            #2025-10-12 | 1.012 | 20 |
            #2025-10-20 | 1.003 | 20 |\
            """
                .formatted(note));
    assertEquals(1, understand(grid).doubts().size());
  }
}
