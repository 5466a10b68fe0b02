package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** What is told for one run stands for that run alone. */
class SeveralRunsTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Run", text.replace('^', '|').replace(" ;", "\n"));
  }

  private static Understanding understand(String text, String map) {
    return SheetUnderstanding.understand(grid(text), LogMap.parse(map));
  }

  /** Temperatures at which jars were read, of the tables one after the other; - for none. */
  private static String temperatures(String text) {
    StringJoiner told = new StringJoiner(" ");
    for (StillRun run : understand(text, "").runs()) {
      JarRows rows = new JarRows(grid(text), run);
      for (StillRun.Part part : run.parts()) {
        for (int row : part.rows()) {
          boolean read = rows.read(row);
          told.add(
              read
                  ? String.format(Locale.ROOT, "%.0f", rows.temperatureC)
                  : "-" + rows.refusal.code());
        }
      }
    }
    return told.toString();
  }

  private static final String THREE =
      " ; run^jar^ml^abv"
          + " ; P1^1^500^60 ; P1^2^500^50 ; P1^3^500^40 ; P1^4^500^30"
          + " ; P2^1^500^62 ; P2^2^500^52 ; P2^3^500^42 ; P2^4^500^32"
          + " ; P3^1^500^64 ; P3^2^500^54";

  @Test
  void aLineOfOneRunTellsItsTemperatureAndNoOthers() {
    assertEquals(
        "17 17 17 17 19 19 19 19 -BLANK -BLANK",
        temperatures(
            "Still ; P1: all read at 17 °C ; P2: all read at 19 °C ; P3: not noted" + THREE));
  }

  @Test
  void temperaturesThatDifferAreOfNoRunThatTheyDoNotName() {
    Understanding understood =
        understand("Still ; read at 17 °C ; later read at 19 °C" + THREE, "");
    assertEquals("ask.strengthTemperature", understood.doubts().get(0).asked().key());
  }

  @Test
  void aNoteOfAllJarsHoldsForTheRestOfItsRunAndABlankIsRefused() {
    String text =
        "Still, read with a hydrometer (20 °C)"
            + " ; jar^ml^abv^spirit °C^note"
            + " ; 1^500^60^17^ ; 2^500^50^^dropped it ; 3^500^40^17^ ; 4^500^30^17^"
            + " ; 1^500^62^^all jars at 21 °C ; 2^500^52^^ ; 3^500^42^^";
    assertEquals("17 -BLANK 17 17 21 21 21", temperatures(text));
  }

  @Test
  void aNoteBesideOneJarHoldsWhereTheLinesSayThatSomeDiffer() {
    String jars =
        " ; jar^ml^abv^note ; 1^500^60^ ; 2^500^50^still warm, 19 °C ; 3^500^40^ ; 4^500^30^";
    assertEquals(
        "14 19 14 14", temperatures("Still, spirit at 14 °C except where noted otherwise" + jars));
    assertEquals("14 14 14 14", temperatures("Still, spirit at 14 °C" + jars));
  }

  @Test
  void oneAlcoholometerReadsTheLaterRunsToo() {
    String first = "Still run, alcoholometer calibrated at 15 °C ; Jar^mL^ABV^Temp C ; ";
    String jars = "1^200^74^18 ; 2^500^70^18 ; 3^500^60^19 ; 4^500^40^19 ; ; ";
    String second = "Second still run ; Jar^mL^ABV^Temp C ; " + jars;
    assertEquals("15 15", calibrations(first + jars + second));
    assertEquals("20 20", calibrations(second + second));
    assertEquals("20 15", calibrations(second + first + jars));
    assertEquals(
        "15 20",
        calibrations(
            first + jars + second.replace("run", "run, alcoholometer calibrated at 20 °C")));
  }

  private static String calibrations(String text) {
    StringJoiner told = new StringJoiner(" ");
    understand(text, "")
        .runs()
        .forEach(
            run -> told.add(String.format(Locale.ROOT, "%.0f", run.settings().calibrationC())));
    return told.toString();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "40 L low wines 19 %^cooling water cold: spirit always at 12 °C",
        "40 L low wines 19 %^spirit 12 °C",
        "cooling water cold: spirit 12 °C",
      })
  void aCellOfALineOrWhatFollowsAColonSpeaksForItself(String line) {
    String jars = " ; jar^ml^abv ; 1^500^60 ; 2^500^50 ; 3^500^40 ; 4^500^30";
    assertEquals("12 12 12 12", temperatures("Still run ; " + line + jars));
  }

  @Test
  void aTemperatureThatMayBeTheSpiritsIsOfferedAsAnAnswer() {
    Understanding understood =
        understand(
            "Still run ; in the cellar the spirit came off at 18 degrees"
                + " ; jar^ml^abv ; 1^500^60 ; 2^500^50 ; 3^500^40 ; 4^500^30",
            "");
    assertEquals(
        List.of("temperature = 18 C"), understood.doubts().get(0).answers().get(0).lines());
    assertTrue(!understood.doubts().get(0).answers().get(0).isExample());
  }

  /** The same header twice without a column between is two tables, each of its own rows. */
  @Test
  void tablesSideBySideNeedNoBlankColumn() {
    Understanding understood =
        understand(
            "Still runs, all abv corrected to 20 °C"
                + " ; Run A^^^Run B"
                + " ; Jar^ml^abv^Jar^ml^abv"
                + " ; 1^500^60^1^400^70 ; 2^500^50^2^400^62 ; 3^500^40^3^400^51 ; 4^500^30^^^",
            "volumes at 20 = yes");
    assertEquals(2, understood.runs().size());
    assertEquals(4, understood.runs().get(0).parts().get(0).rows().length);
    assertEquals(3, understood.runs().get(1).parts().get(0).rows().length);
    assertTrue(understood.runs().stream().allMatch(run -> run.settings().corrected()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Run A^^^^Run B, corrected to 20 °C; false true",
        "Run A, corrected to 20 °C^^^^Run B; true false",
      })
  void aLineOverOneOfThemIsOfThatOneAlone(String line, String corrected) {
    Understanding understood =
        understand(
            "Still"
                + " ; "
                + line
                + " ; Jar^ml^abv^^Jar^ml^abv"
                + " ; 1^500^60^^1^400^70 ; 2^500^50^^2^400^62 ; 3^500^40^^3^400^51",
            "");
    StringJoiner told = new StringJoiner(" ");
    understood.runs().forEach(run -> told.add(String.valueOf(run.settings().corrected())));
    assertEquals(corrected, told.toString());
  }
}
