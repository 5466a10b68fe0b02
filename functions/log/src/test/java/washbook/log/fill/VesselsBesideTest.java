package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.UnusualLogsTest.original;
import static washbook.log.fill.UnusualLogsTest.understand;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.LogTable;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.answer.AnswerTrial;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;

/** Vessels side by side that share the column of dates, and what is said of each of them. */
class VesselsBesideTest {
  @Test
  void namesMayStandAboveWhatIsSaidOfEachVessel() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "wk 23",
                """
                Washback log,,,,,
                 | | WB4 | | WB5 |
                OG (corrected to 20C) | | 1061.5 | | 1060.0 |
                Pitching temp | | 19 | | 20 |

                Hrs | Shift | Grav corr 20C | C | Grav corr 20C | C
                4 | back | 1061.0 | 20.5 | 1059.2 | 21
                16 | day | 1045.2 | 28.5 | 1040.5 | 29
                28 | night | 1018.2 | 33 | 1014.0 | 33.5
                40 | back | 1003.5 | 32.5 | 1001.5 | 32.5\
                """));
    assertEquals(List.of("WB4", "WB5"), names(sheet));
    assertEquals(1.0615, original(sheet.tables().get(0)), 1e-9);
    assertEquals(1.06, original(sheet.tables().get(1)), 1e-9);
  }

  @Test
  void aVesselReadByAnotherInstrumentKeepsItToItself() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Practical 4",
                """
                Grape juice, hydrometers 20 °C, group 3 with a refractometer (ATC) | | | | |
                Day | Group 1 | | Group 2 | | Group 3
                | SG | °C | SG | °F | °Bx refr.
                0 | 1.069 | 24 | 1.067 | 75 | 17.0
                2 | 1.050 | 25 | 1.050 | 77 | 14.5
                3 | 1.034 | 25 | | 77 | 12.0
                4 | 1.018 | 24 | 1.021 | 75 | 9.5
                7 | 0.995 | 23 | 0.996 | 73 | 5.5\
                """));
    assertEquals(List.of("Group 1", "Group 2", "Group 3"), names(sheet));
    for (LogTable group : sheet.tables().subList(0, 2)) {
      assertTrue(group.column(Role.REFRACTOMETER).isEmpty(), group.range());
    }
    assertTrue(sheet.tables().get(2).column(Role.REFRACTOMETER).isPresent());
  }

  @Test
  void oneOriginalGravityInALineOfVesselsIsThatOfItsColumn() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Met",
                """
                Ballon | | LINDE | WALD |
                Volumen | | 5 L | 5,2 L |
                Stammwürze | | | 1.103 |
                Datum | Temp (°C) | SG Linde | SG Wald | Notizen
                14.01.2023 | 20 | 1.098 | 1.101 | Hefe
                18.01.2023 | 20 | 1.080 | 1.084 |
                25.01.2023 | 20 | 1.031 | 1.038 |
                06.02.2023 | 20 | 1.006 | 1.014 |\
                """));
    assertEquals(List.of("LINDE", "WALD"), names(sheet));
    assertTrue(
        sheet.tables().get(0).batches().get(0).original() instanceof OriginalGravity.FirstReading);
    assertEquals(1.103, original(sheet.tables().get(1)), 1e-9);
  }

  @Test
  void degreesOfTwoJarsAreOnTheScaleOfTheInstrumentNamedAbove() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Talhas",
                """
                Talhas | mostímetro: álcool provável % vol., aferido a 20 ºC
                dia | T1 grau | T1 temp | T2 grau | T2 temp | chuva
                #2024-09-07 | 12.4 | 23 | 12.9 | 22 | não
                #2024-09-09 | 10.8 | 27 | 12.2 | 24 | não
                #2024-09-11 | 7.0 | 30 | 9.1 | 28 |
                #2024-09-14 | 2.9 | 27 | 4.7 | 28 |
                #2024-09-19 | 0.5 | 23 | 1.1 | 24 |
                #2024-09-23 | 0.3 | 21 | 0.4 | 22 |\
                """));
    assertEquals(List.of("T1", "T2"), names(sheet));
    for (LogTable table : sheet.tables()) {
      assertEquals("POTENTIAL", table.column(Role.GRAVITY).orElseThrow().unit());
    }
  }

  /** Its readings stand apart, but it began once. */
  @Test
  void morningAndAfternoonAreOneVessel() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Lagar",
                """
                Controlo de fermentação | | Lagar 3 | |
                 | Manhã | | Tarde |
                Dia | densidade | ºC | densidade | ºC
                #2024-09-21 | 1.096 | 20 | 1.094 | 20
                #2024-09-22 | 1.090 | 20 | 1.085 | 20
                #2024-09-24 | 1.047 | 20 | 1.035 | 20
                #2024-09-26 | 1.002 | 20 | 0.999 | 20\
                """));
    assertEquals(List.of("Manhã", "Tarde"), names(sheet));
    assertEquals(
        List.of(1.096, 1.096),
        sheet.tables().stream()
            .map(t -> t.batches().get(0).originalGravity().orElseThrow())
            .map(og -> Math.rint(og * 1e4) / 1e4)
            .toList());
  }

  private static List<String> names(Understanding sheet) {
    return sheet.tables().stream().map(t -> t.batches().get(0).name()).toList();
  }

  @Test
  void aMapSaysThatTwoColumnsAreVesselsOfTheirOwn() {
    TestGrid grid =
        TestGrid.of(
            "Mead",
            """
            Date | SG Anna | SG Ben | Temp C | Notes
            #2024-09-21 | 1.096 | 1.070 | 20 | yeast
            #2024-09-23 | 1.080 | 1.050 | 20 |
            #2024-09-26 | 1.040 | 1.020 | 20 |
            #2024-09-30 | 1.010 | 1.004 | 20 |\
            """);
    Understanding open = understand(grid);
    assertEquals(1, open.doubts().size());
    List<String> lines = List.of("column B = GRAVITY", "column C = GRAVITY");
    assertTrue(open.doubts().get(0).answers().stream().anyMatch(a -> a.lines().equals(lines)));
    AnswerTrial trial = AnswerTrial.of(grid, LogMap.none(), open.doubts().get(0), lines);
    assertEquals(8, trial.filled());
    assertEquals(0, trial.questions());
  }
}
