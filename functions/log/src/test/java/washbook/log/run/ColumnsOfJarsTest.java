package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Which column of a table of jars holds what, in which unit, and what stands above the table. */
class ColumnsOfJarsTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Still", text.replace('^', '|').replace(" ;", "\n"));
  }

  private static Understanding understand(String text, String map) {
    return SheetUnderstanding.understand(grid(text), LogMap.parse(map));
  }

  private static String told(Understanding found) {
    String columns =
        found.runs().get(0).table().columns().stream()
            .filter(c -> c.role() != Role.OTHER)
            .map(c -> (CellAddress.letters(c.column()) + " " + c.role() + " " + c.unit()).strip())
            .collect(Collectors.joining(", "));
    String asks =
        found.doubts().stream().map(d -> " asks " + d.cell()).collect(Collectors.joining());
    return columns.replace("TEMPERATURE", "TEMP") + asks;
  }

  /** Each column with its four values. */
  private static String columns(String columns) {
    String[] each = columns.split("\\^");
    StringBuilder text = new StringBuilder("Still run");
    for (int row = 0; row < 5; row++) {
      text.append("\n");
      for (int column = 0; column < each.length; column++) {
        String[] cells = each[column].split(":");
        String[] values = cells[1].strip().split(" ");
        String cell = row == 0 ? cells[0] : values[row - 1].replace('_', ' ').replace("-", "");
        text.append(column == 0 ? "" : "^").append(cell.strip());
      }
    }
    return told(understand(text.toString(), ""));
  }

  private static final String JARS = "Jar: 1 2 3 4^mL: 200 500 500 500^";

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "ABV: 74 72 60 40^Temp C: 18 18 19 19 ! C STRENGTH ABV, D TEMP C",
        "ABV: 74 72 60 40^Temp C: 18 18 19 19^Pure alcohol L: 1 1 1 1"
            + " ! C STRENGTH ABV, D TEMP C, E OWN_PURE_ALCOHOL",
        "ABV: 74 72 60 40^Temp C: 18 18 19 19^Time: 9 10 11 12 ! C STRENGTH ABV, D TEMP C, E TIME",
        "ABV: 74 72 60 40^Temp C: 18 18 19 19^Cut: heads hearts hearts tails"
            + " ! C STRENGTH ABV, D TEMP C, E CUT",
        // strengths as read and at 20 °C
        "ABV read: 74 72 60 40^ABV at 20 °C: 75 73 61 41^Temp C: 18 18 19 19"
            + " ! C STRENGTH ABV, D OWN_TRUE_STRENGTH ABV, E TEMP C",
        "ABV read: 74 72 60 40^ABV at 20 °C: 75 73 61 41^Room C: 18 18 19 19"
            + " ! D STRENGTH ABV asks A2",
        "ABV: 74 72 60 40^Proof: 148 144 120 80^Temp C: 18 18 19 19 ! C STRENGTH ABV, E TEMP C",
        "Proof: 148 144 120 80^ABV: 74 72 60 40^Temp C: 18 18 19 19 ! D STRENGTH ABV, E TEMP C",
        "ABV: 75 73 61 41^ABV read: 74 72 60 40^Temp C: 18 18 19 19 ! D STRENGTH ABV, E TEMP C",
        "ABV 1: 74 72 60 40^ABV 2: 75 73 61 41^Temp C: 18 18 19 19"
            + " ! C STRENGTH ABV, E TEMP C asks C2",
        "ABV: 0.74 0.72 0.6 0.4^Temp C: 18 18 19 19^Cut: heads hearts hearts tails"
            + " ! C STRENGTH SHARE, D TEMP C, E CUT",
        "ABV: 0.14 0.12 0.1 0.04^Temp C: 18 18 19 19^Cut: heads hearts hearts tails"
            + " ! C STRENGTH ABV, D TEMP C, E CUT asks C2",
        "ABV: 74 72 60 40^Grad: 18 18 19 19 ! C STRENGTH ABV, D TEMP C",
        "ABV: 74 72 60 40^Grad: 18 18 19 40 ! C STRENGTH ABV, D TEMP C",
        // temperatures of the spirit, of the head, of the room
        "ABV: 74 72 60 40^Head C: 84 85 88 95^Temp C: 18 18 19 19"
            + " ! C STRENGTH ABV, D HEAD_TEMP C, E TEMP C",
        "ABV: 74 72 60 40^Head F: 183 185 190 203^Temp F: 65 65 66 66"
            + " ! C STRENGTH ABV, D HEAD_TEMP F, E TEMP F",
        "ABV: 74 72 60 40^°C: 84 85 88 95^Temp C: 18 18 19 19"
            + " ! C STRENGTH ABV, D HEAD_TEMP C, E TEMP C",
        "ABV: 74 72 60 40^T1: 84 85 88 95^T2: 14 14 15 15"
            + " ! C STRENGTH ABV, D HEAD_TEMP C, E TEMP C",
        "ABV (alcoholom. at 20 °C): 74 72 60 40^Temp C: 18 18 19 19 ! C STRENGTH ABV, D TEMP C",
        "ABV: 74 72 60 40^Temp C: 18 18 19 19^T1: 5 10 15 20^T2: 1 2 3 4"
            + " ! C STRENGTH ABV, D TEMP C",
        "ABV: 74 72 60 40^Room C: 15 15 15 15^Temp C: 18 18 19 19 ! C STRENGTH ABV, E TEMP C",
        "ABV: 74 72 60 40^Temp C: 15 15 15 15^Spirit C: 18 18 19 19 ! C STRENGTH ABV, E TEMP C",
        "ABV: 74 72 60 40^Temp C: 15 15 15 15^Temp C: 18 18 19 19"
            + " ! C STRENGTH ABV, D TEMP C asks D2",
        // °C or °F by the values
        "ABV: 74 72 60 40^Temp: 18 18 19 40 ! C STRENGTH ABV, D TEMP C",
        "ABV: 74 72 60 40^Temp: 18 18 19 41 ! C STRENGTH ABV, D TEMP asks D2",
        "ABV: 74 72 60 40^Temp: 41 50 55 60 ! C STRENGTH ABV, D TEMP F",
        "ABV: 74 72 60 40^Temp: 40 50 55 60 ! C STRENGTH ABV, D TEMP asks D2",
        "ABV: 74 72 60 40^Temp: 41 50 55 66 ! C STRENGTH ABV, D TEMP asks D2",
        "ABV: 74 72 60 40^Temp: 42 50 55 66 ! C STRENGTH ABV, D TEMP F",
        "ABV: 74 72 60 40^Temp: 18_°C 18_°C 19_°C 19_°C ! C STRENGTH ABV, D TEMP C",
        "ABV: 74 72 60 40^Temp: 65_°F 65_°F 66_°F 66_°F ! C STRENGTH ABV, D TEMP F",
        "ABV: 74 72 60 40^Temp F: 18 18 19 40 ! C STRENGTH ABV, D TEMP asks D2",
        "ABV: 74 72 60 40^Temp F: 38 39 39 41 ! C STRENGTH ABV, D TEMP F",
      })
  void strengthsAndTemperatures(String columns, String told) {
    assertEquals("A JAR, B VOLUME ML, " + told, columns(JARS + columns));
  }

  private static final String STRONG = "^ABV: 74 72 60 40^Temp C: 18 18 19 19";

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "mL: 200 500 500 500 ! B VOLUME ML",
        "cL: 20 50 50 50 ! B VOLUME CL",
        "dL: 2 5 5 5 ! B VOLUME DL",
        "Litres: 0.2 0.5 0.5 0.5 ! B VOLUME L",
        "US gal: 0.2 0.5 0.5 0.5 ! B VOLUME GALUS",
        "gal: 0.2 0.5 0.5 0.5 ! B VOLUME asks B2",
        "pint: 1 2 2 2 ! B VOLUME asks B2",
        "Volume: 200 500 500 500 ! B VOLUME asks B2",
        "Volume: 200_ml 500_ml 500_ml 500_ml ! B VOLUME ML",
        "Volume: 200_ml 500 500_ml 500_ml ! B VOLUME ML",
        "Volume: 200_ml 0.5 500_ml 500_ml ! B VOLUME asks B2",
        // sums beside or instead of the volumes
        "mL: 200 500 500 500^mL so far: 200 700 1200 1700 ! B VOLUME ML",
        "mL so far: 200 700 1200 1700^mL: 200 500 500 500 ! C VOLUME ML",
        "mL: 200 500 500 500^Volume mL: 200 700 1200 1700 ! B VOLUME ML",
        "Volume mL: 200 700 1200 1700^mL: 200 500 500 500 ! C VOLUME ML",
        "mL: 200 700 1200 1700 ! B VOLUME ML asks B2",
        "mL so far: 200 700 1200 1700 ! B VOLUME_SO_FAR ML",
        "mL: 200 500 500 500^mL at 20 °C: 201 501 501 501 ! B VOLUME ML",
        "mL: 200 500 500 500^Volume mL: 300 400 300 400 ! B VOLUME ML asks B2",
      })
  void volumes(String columns, String told) {
    String found = columns("Jar: 1 2 3 4^" + columns + STRONG);
    String volumes = found.replace("A JAR, ", "").replaceAll(", [A-Z] (STRENGTH ABV|TEMP C)", "");
    assertEquals(told, volumes);
  }

  private static final String PLAIN =
      "Still run ; Jar^mL^ABV^Other ABV^Temp C ; 1^200^74^75^18 ; 2^500^72^73^18"
          + " ; 3^500^60^61^19 ; 4^500^40^41^19";

  @Test
  void whatAMapSaysOfAColumnHolds() {
    assertEquals(
        "A JAR, B VOLUME ML, D STRENGTH ABV, E TEMP C",
        told(understand(PLAIN, "header row = 2\nrun = yes\ncolumn D = STRENGTH")));
    assertEquals(
        "A JAR, B VOLUME CL, C STRENGTH ABV, E TEMP C",
        told(
            understand(
                PLAIN, "header row = 2\ncolumn B = VOLUME in CL\ncolumn C = STRENGTH in ABV")));
  }

  private static StillRun run(String above) {
    return understand(
            above + " ; Jar^mL^ABV^Temp C ; 1^200^74^18 ; 2^500^72^18 ; 3^500^60^19 ; 4^500^40^19",
            "")
        .runs()
        .get(0);
  }

  private static double charged(String above) {
    return run(above).parts().get(0).charge().litres();
  }

  /** Twelve lines above a table may speak of it, down from a row of readings. */
  @Test
  void linesAboveUpToAnotherTableSpeakOfTheRun() {
    assertEquals(10, charged("Charge 10 L of 30 %"));
    assertEquals(10, charged("Charge 10 L of 30 %" + " ; x".repeat(11)));
    assertEquals(Double.NaN, charged("Charge 10 L of 30 %" + " ; x".repeat(12)));
    assertEquals(10, charged("Charge 10 L of 30 % ; ; "));
    assertEquals(10, charged("Charge 10 L of 30 % ; a^1^2"));
    assertEquals(Double.NaN, charged("Charge 10 L of 30 % ; 1^2"));
    assertEquals(Double.NaN, charged("Charge 10 L of 30 % ; a^1^2^3"));
    assertEquals(Double.NaN, charged("Charge 10 L of 30 % ; #2025-11-04^2"));
    assertEquals(10, charged("Charge 10 L of 30 % ; #2025-11-04"));
    assertEquals(10, charged("Charge 10 L of 30 % ; a^b^1^2^3"));
  }

  @Test
  void theRestOfTheSheetIsWhatStandsAroundTheRun() {
    TestGrid grid =
        grid(
            "cellar ; ; Still run ; Jar^mL^ABV^Temp C ; 1^200^74^18 ; 2^500^72^18 ; 3^500^60^19"
                + " ; 4^500^40^19 ; ; below");
    StillRuns runs = StillRuns.in(grid, (top, bottom, first, last) -> RunMap.none());
    Grid rest = runs.rest();
    StringBuilder kinds = new StringBuilder();
    for (int row = 0; row < rest.rowCount(); row++) {
      kinds.append(rest.kind(row, 0).name().charAt(0));
    }
    assertEquals("TBBBBBBBBT", kinds.toString());
    assertEquals(1, runs.runs().size());
    TestGrid none = grid("cellar ; x");
    assertEquals(none, StillRuns.in(none, (t, b, f, l) -> RunMap.none()).rest());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Plum 3 run ! strengths are taken as read at the spirit's temperature; alcoholometer"
            + " calibrated at 20 °C ! no charge stated, so no share of it",
        "Plum 3 run ; Charge 10 L of 30 % ! calibrated at 20 °C"
            + " ! charge of 10 L of 30 % vol, stated in A2",
        "Plum 3 run ; Charge 10 L ! calibrated at 20 °C"
            + " ! the charge stated in A2 lacks litres or strength, so no share of it",
        "Plum 3 run ; alcoholometer calibrated at 15 °C ! calibrated at 15 °C"
            + " ! no charge stated, so no share of it",
        "Plum 3 run ; strength corrected to 20 °C ! strengths are taken as true ones at 20 °C"
            + " ! no charge stated, so no share of it",
      })
  void remarksTellHowTheJarsAreTaken(String above, String strengths, String charge) {
    List<String> remarks =
        run(above).table().remarks().stream().map(r -> r.in(Language.EN)).toList();
    assertEquals(3, remarks.size());
    assertTrue(remarks.get(0).endsWith(strengths), remarks.get(0));
    assertTrue(remarks.get(1).startsWith("volumes are taken as read"), remarks.get(1));
    int first = above.contains(" ;") ? 4 : 3;
    assertEquals(
        "run Plum 3 run, rows " + first + "-" + (first + 3) + ": " + charge, remarks.get(2));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Charge^10^L ; Pure alcohol in the charge^3^L ! 10 ! 30",
        "Charge^10^L ; Pure alcohol in the charge^13^L ! 10 ! NaN",
        "Pure alcohol in the charge^3^L ; Charge^10^L ! 10 ! NaN",
        "Charge: 10 L with 3 L of pure alcohol ; note ! 10 ! NaN",
        "Charge 10 L of 28 % ; Pure alcohol in the charge^3^L ! 10 ! 28",
      })
  void pureAlcoholIsNotTheLitresOfTheCharge(String above, double litres, double strength) {
    StillRun.Charge charge = run("Plum 3 run ; " + above).parts().get(0).charge();
    assertEquals(litres, charge.litres());
    assertEquals(strength, charge.percentVolume(), 1e-9);
  }

  @Test
  void volumesPressureAndOneTemperatureAreRemarkedOnToo() {
    List<String> remarks =
        run("Still run, strength corrected to 20 °C, volumes also; 950 hPa")
            .table()
            .remarks()
            .stream()
            .map(r -> r.in(Language.EN))
            .toList();
    assertEquals("volumes are taken as those at 20 °C", remarks.get(1));
    assertEquals("air pressure 950 hPa", remarks.get(2));
    String one =
        understand(
                "Still run; spirit read at 15 °C ; Jar^mL^ABV ; 1^200^74 ; 2^500^72 ; 3^500^60",
                "header row = 2\nrun = yes")
            .runs()
            .get(0)
            .table()
            .remarks()
            .get(0)
            .in(Language.EN);
    assertTrue(one.contains("15 °C for all jars"), one);
  }
}
