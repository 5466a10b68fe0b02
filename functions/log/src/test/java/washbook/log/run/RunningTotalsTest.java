package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.StringJoiner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Jars whose volumes are told by what was collected so far. */
class RunningTotalsTest {
  private static TestGrid grid(String header, String... totals) {
    StringBuilder text = new StringBuilder("Still run\nJar|" + header + "|ABV|Temp C");
    double strength = 80;
    int jar = 1;
    for (String total : totals) {
      boolean start = total.startsWith("start");
      String figures = start ? "||" : "|" + strength + "|20";
      text.append("\n" + (start ? "start" : jar) + "|" + total.replace("start ", "") + figures);
      strength -= start ? 0 : 4;
      jar += start ? 0 : 1;
    }
    return TestGrid.of("Run", text.toString());
  }

  private static Understanding understand(TestGrid grid, String map) {
    return SheetUnderstanding.understand(grid, LogMap.parse(map));
  }

  /** Millilitres of each jar, - where it is refused. */
  private static String volumes(TestGrid grid, String map) {
    StringJoiner told = new StringJoiner(" ");
    for (StillRun run : understand(grid, map).runs()) {
      JarRows rows = new JarRows(grid, run);
      for (StillRun.Part part : run.parts()) {
        for (int row : part.rows()) {
          told.add(rows.read(row) ? String.valueOf(Math.round(rows.readLitres * 1000)) : "-");
        }
      }
    }
    return told.toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "200 700 1200 1700 2200; 200 500 500 500 500",
        "start_1000 1200 1700 2200 2700; 200 500 500 500",
        "start_0 200 700 1200 1700; 200 500 500 500",
        // a total that is missing
        "200 700 ? 1700 2200; 200 500 - - 500",
        // one that fell below the two before it is wrong itself
        "200 700 1200 170 2200 2700 3200; 200 500 500 - - 500 500",
        // one too high or too low: either may be wrong
        "200 700 12000 1700 2200 2700 3200; 200 500 - - - 500 500",
        "200 700 1200 1200 2200 2700 3200; 200 500 - - - 500 500",
        // a counter whose start nobody wrote down
        "9200 9700 10200 10700 11200; - 500 500 500 500",
      })
  void aJarIsTheDifferenceToTheTotalBefore(String totals, String volumes) {
    String[] each = totals.split(" ");
    for (int i = 0; i < each.length; i++) {
      each[i] = each[i].replace('_', ' ');
    }
    assertEquals(volumes, volumes(grid("mL so far", each), ""));
  }

  @ParameterizedTest
  @CsvSource({
    "Volume so far mL",
    "Total mL",
    "Running total mL",
    "Summe ml",
    "Volumen laufend ml",
    "Volume cumulé ml",
    "Volumen acumulado ml",
    "Volume progressivo ml",
    "Volume totale ml",
    "Volume tot nu toe ml",
  })
  void theHeaderSaysSo(String header) {
    TestGrid grid = grid(header, "200", "700", "1200", "1700");
    assertEquals("200 500 500 500", volumes(grid, ""));
    assertEquals(List.of(), understand(grid, "").doubts());
  }

  @Test
  void aLineSaysSo() {
    TestGrid grid =
        TestGrid.of(
            "Run",
            "Still run\nvolume is the running total\nJar|mL|ABV|Temp C\n1|200|80|20\n2|700|76|20"
                + "\n3|1200|72|20\n4|1700|60|20");
    assertEquals("200 500 500 500", volumes(grid, ""));
  }

  @Test
  void nobodySaysSoAndEitherAnswerFills() {
    TestGrid grid = grid("mL", "200", "700", "1200", "1700");
    Understanding open = understand(grid, "");
    assertEquals("", volumes(grid, ""));
    Doubt doubt = open.doubts().get(0);
    assertEquals(
        List.of("column B = VOLUME_SO_FAR in ML", "column B = VOLUME in ML"),
        doubt.answers().stream().map(MapAnswer::lines).map(l -> l.get(0)).toList());
    String header = "header row = 2\n";
    assertEquals("200 500 500 500", volumes(grid, header + "column B = VOLUME_SO_FAR in ML"));
    assertEquals("200 700 1200 1700", volumes(grid, header + "column B = VOLUME in ML"));
  }

  @Test
  void theJarsOwnVolumeGoesBeforeATotalBesideIt() {
    TestGrid grid =
        TestGrid.of(
            "Run",
            "Still run\nJar|so far mL|mL|ABV|Temp C\n1|200|200|80|20\n2|700|500|76|20"
                + "\n3|1200|500|72|20\n4|9|500|60|20");
    assertEquals("200 500 500 500", volumes(grid, ""));
  }

  @Test
  void eachRunBeginsAnew() {
    TestGrid grid =
        TestGrid.of(
            "Run",
            "Still run\nRun|Jar|mL so far|ABV|Temp C\nA|1|200|80|20\n|2|700|70|20\n|3|1200|60|20"
                + "\n|4|1700|50|20\nB|1|300|80|20\n|2|800|70|20\n|3|1300|60|20\n|4|1800|50|20");
    assertEquals("200 500 500 500 300 500 500 500", volumes(grid, ""));
    assertEquals(2, understand(grid, "").runs().get(0).parts().size());
  }

  @Test
  void aRefusalSaysWhyAndLeavesTheStrength() {
    TestGrid grid = grid("mL so far", "200", "700", "", "1700", "2200");
    StillRun run = understand(grid, "").runs().get(0);
    assertEquals(Role.VOLUME_SO_FAR, run.table().columns().get(1).role());
    JarRows rows = new JarRows(grid, run);
    rows.read(5);
    assertEquals("B6", rows.refusal.cell());
    String why = rows.refusal.reason(Language.EN);
    assertTrue(why.contains("running total 1700 does not tell the volume"), why);
    assertEquals(68, rows.trueStrength, 1e-9);
  }

  @Test
  void volumesInGallonsAskWhichUnlessTheLogSaysIt() {
    String jars = "\nJar|gallons|ABV|Temp C\n1|0.2|80|20\n2|0.5|76|20\n3|0.5|72|20\n4|0.5|60|20";
    Understanding open = understand(TestGrid.of("Run", "Still run" + jars), "");
    assertEquals(
        List.of("column B = VOLUME in GALUS", "column B = VOLUME in GALUK"),
        open.doubts().get(0).answers().stream().map(a -> a.lines().get(0)).toList());
    TestGrid imperial = TestGrid.of("Run", "Still run, charge 9 gallons (imperial)" + jars);
    assertEquals("909 2273 2273 2273", volumes(imperial, ""));
    TestGrid us = TestGrid.of("Run", "Still run, charge 9 US gallons" + jars);
    assertEquals("757 1893 1893 1893", volumes(us, ""));
  }
}
