package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Headers of jars that take two rows, stand beside another or leave a column to its cells. */
class TwoRowHeadersOfJarsTest {
  private static Understanding understand(String text, String map) {
    TestGrid grid = TestGrid.of("Run", text.replace('^', '|').replace(" ;", "\n"));
    return SheetUnderstanding.understand(grid, LogMap.parse(map));
  }

  private static String told(StillRun run) {
    return run.table().columns().stream()
        .filter(c -> c.role() != Role.OTHER)
        .map(c -> CellAddress.letters(c.column()) + " " + c.role())
        .collect(Collectors.joining(", "));
  }

  private static final String JARS =
      " ; 1^200^74^18^80 ; 2^500^72^18^82 ; 3^500^60^19^86 ; 4^500^40^19^92";

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "^Volume^Strength^Temp^Temp ; jar^ml^read^spirit^head",
        "^Volume^Strength^Temp ; jar^ml^% vol^spirit^head",
        "Jar^mL^ABV^Temperature °C ; ^^^spirit^head",
        "^what runs^^Temperatures °C ; jar^ml^% vol^spirit^head",
        "Still^hydrometer 20 °C ; jar^ml^% vol^°C spirit^°C head",
      })
  void bothRowsTellWhatAColumnHolds(String header) {
    StillRun run = understand("Still run ; " + header + JARS, "").runs().get(0);
    String found = told(run).replace("A JAR, ", "");
    assertEquals("B VOLUME, C STRENGTH, D TEMPERATURE, E HEAD_TEMPERATURE", found);
    assertEquals(2, run.table().headerRow());
    assertEquals(false, run.settings().volumesAt20());
  }

  @Test
  void theUnitsInTheCellsTellWhatNoWordTells() {
    String text =
        "Still run ; Jar^amount^mark^warm^smell ; heads^^^^ ; 1^150 ml^81 %^15 °C^glue"
            + " ; hearts^^^^ ; 2^0,5 L^79 %^15 °C^plum ; 3^0,5 L^77,5 %^16 °C^plum"
            + " ; 4^0,5 L^60 %^16 °C^ ; 5^0,5 L^40 %^16 °C^";
    StillRun run = understand(text, "").runs().get(0);
    assertEquals("A JAR, B VOLUME, C STRENGTH, D TEMPERATURE", told(run));
    assertEquals(5, run.parts().get(0).rows().length);
  }

  /** A map tells tables by their rows, so of two side by side only a column tells one. */
  @Test
  void trueStrengthsOfOneTableBesideAnotherAreSaidByTheirColumn() {
    String text =
        "Still run ; Jar^mL^ABV^Temp C^^Jar^mL^ABV^Head C ; 1^200^74^18^^1^200^74^80"
            + " ; 2^500^72^18^^2^500^72^82 ; 3^500^60^19^^3^500^60^86 ; 4^500^40^19^^4^500^40^92";
    Doubt doubt = understand(text, "").doubts().get(0);
    assertEquals("F2", doubt.cell());
    List<String> lines = doubt.answers().stream().map(a -> a.lines().get(0)).toList();
    assertEquals(List.of("temperature = 15 C", "column H = OWN_TRUE_STRENGTH"), lines);
    Understanding answered =
        understand(text, "header row = 2\ncolumn H = OWN_TRUE_STRENGTH\nvolumes at 20 = yes");
    assertEquals(
        List.of(false, true),
        answered.runs().stream().map(run -> run.settings().corrected()).toList());
    assertEquals(List.of(), answered.doubts());
  }

  @Test
  void whetherATableIsARunIsAnsweredToo() {
    String text = "Jar^mL^ABV^Temp C ; 1^200^74^18 ; 2^500^72^18 ; 3^500^60^19 ; 4^500^40^19";
    Understanding found = understand(text, "");
    for (Doubt doubt : found.doubts()) {
      List<String> lines =
          doubt.answers().stream().map(MapAnswer::lines).map(l -> l.get(0)).toList();
      assertEquals(List.of("run = yes", "run = no"), lines);
    }
  }
}
