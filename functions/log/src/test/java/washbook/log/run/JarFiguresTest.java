package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.spirit.Spirit;
import washbook.log.StillRun;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** What is made of one jar, and why another is refused; the physics is that of the functions. */
class JarFiguresTest {
  /** The jar above four others. */
  private static JarRows rows(String title, String header, String jar) {
    StringBuilder text = new StringBuilder(title + "\n" + header + "\n" + jar);
    int factor = header.contains("Proof") ? 2 : 1;
    for (int i = 2; i <= 5; i++) {
      int strength = (80 - 10 * i) * factor;
      String temperature = header.contains("Temp F") ? "68" : "20";
      text.append("\n" + i + "^500^" + strength + "^" + temperature + "^" + (80 + 2 * i));
    }
    TestGrid grid = TestGrid.of("Run", text.toString().replace('^', '|'));
    StillRun run = SheetUnderstanding.understand(grid, LogMap.none()).runs().get(0);
    JarRows rows = new JarRows(grid, run);
    rows.read(2);
    return rows;
  }

  private static final String USUAL = "Jar^mL^ABV^Temp C^Head C";

  private static JarRows usual(String jar) {
    return rows("Still run", USUAL, jar);
  }

  @Test
  void aJarReadAtTwentyDegreesIsAsItStands() {
    JarRows jar = usual("1^500^72^20^84");
    assertEquals(72, jar.trueStrength, 1e-9);
    assertEquals(0.5, jar.volumeAt20, 1e-9);
    assertEquals(0.36, jar.pureAlcohol, 1e-9);
    assertTrue(jar.needsTemperature(2));
    assertEquals(Spirit.pureAlcohol(0.5, 72, 20), jar.pureAlcohol, 1e-12);
  }

  @Test
  void theUnitInACellHoldsBeforeThatOfTheColumn() {
    assertEquals(0.36, usual("1^50 cl^72^20^84").pureAlcohol, 1e-9);
    assertEquals(0.36, usual("1^5 dl^72^20^84").pureAlcohol, 1e-9);
    assertEquals(0.36, usual("1^500^72 % vol^20 °C^84").pureAlcohol, 1e-9);
  }

  @Test
  void usProofIsTwiceThePercentageByVolume() {
    JarRows jar = rows("Calibrated at 60 F", "Jar^mL^Proof US^Temp F^Head C", "1^500^144^60^84");
    assertEquals(72, jar.trueStrength, 0.5);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1^500^-1^20^84; C3; strength -1",
        "1^500^plum^20^84; C3; strength",
        "1^500^72 ml^20^84; C3; strength",
        "1^-1^72^20^84; B3; volume -1",
        "1^plum^72^20^84; B3; volume",
        "1^500 %^72^20^84; B3; volume",
        "1^500^72^-21^84; D3; temperature -21",
        "1^500^72^41^84; D3; temperature 41",
        "1^500^72^plum^84; D3; temperature",
        "1^500^72^20 ml^84; D3; temperature",
        "1^500^^20^84; C3; blank",
        "1^^72^20^84; B3; blank",
        "1^0^72^20^84; B3; blank",
        "1^500^72^^84; D3; blank",
      })
  void aFigureThatCannotBeIsRefusedWithItsCell(String jar, String cell, String reason) {
    JarRows rows = usual(jar);
    assertEquals(cell, rows.refusal.cell());
    String told = rows.refusal.reason(Language.EN);
    assertTrue(told.contains(reason), told);
    assertEquals(cell.startsWith("B"), !Double.isNaN(rows.trueStrength));
    assertTrue(Double.isNaN(rows.volumeAt20));
    assertTrue(Double.isNaN(rows.pureAlcohol));
  }

  private static String reason(String header, String jar) {
    return rows("Still run; calibrated at 60 F", header, jar).refusal.reason(Language.EN);
  }

  @ParameterizedTest
  @CsvSource({
    "Jar^mL^ABV^Temp C^Head C, 1^500^-1^20^84, 0.01 to 100 % vol",
    "Jar^mL^ABV^Temp C^Head C, 1^-1^72^20^84, 1 to 1000000000 mL",
    "Jar^Litres^ABV^Temp C^Head C, 1^-1^72^20^84, 0.001 to 1000000 L",
    "Jar^mL^ABV^Temp C^Head C, 1^500^72^41^84, -20 to 40 °C",
    "Jar^mL^ABV^Temp F^Head C, 1^500^72^105^84, -4 to 104 °F",
  })
  void aRefusalTellsTheRangeInTheUnitOfTheColumn(String header, String jar, String range) {
    String reason = reason(header, jar);
    assertTrue(reason.contains(range), reason);
  }

  @Test
  void oneTemperatureHoldsWhereNoColumnTellsAny() {
    TestGrid grid =
        TestGrid.of(
            "Run",
            "Still run; spirit read at 15 °C\nJar|mL|ABV\n1|500|72\n2|500|60\n3|500|50\n4|500|40");
    StillRun run = SheetUnderstanding.understand(grid, LogMap.none()).runs().get(0);
    JarRows rows = new JarRows(grid, run);
    assertTrue(rows.read(2));
    assertEquals(Spirit.pureAlcohol(0.5, rows.trueStrength, 15), rows.pureAlcohol, 1e-12);
    assertTrue(rows.trueStrength > 72.5);
  }

  @Test
  void aHeadThatIsNotReadRefusesNoJar() {
    JarRows jar = usual("1^500^72^20^");
    assertEquals(null, jar.refusal);
    assertTrue(Double.isNaN(jar.headStrength));
    assertFalse(Double.isNaN(usual("1^500^72^20^84").headStrength));
    assertFalse(Double.isNaN(usual("1^^72^20^84").headStrength));
  }

  @Test
  void theHeadTellsLessAtALowerPressure() {
    double usual = usual("1^500^72^20^84").headStrength;
    double lower = rows("Still run, 950 hPa", USUAL, "1^500^72^20^84").headStrength;
    assertTrue(lower < usual - 1, usual + " and " + lower);
  }

  @Test
  void oneTemperatureHoldsForJarsWithoutTheirOwn() {
    JarRows jar = rows("Still run; spirit read at 20 °C", USUAL, "1^500^72^^84");
    assertEquals(0.36, jar.pureAlcohol, 1e-9);
    JarRows own = rows("Still run; spirit read at 20 °C", USUAL, "1^500^72^15^84");
    assertTrue(own.trueStrength > 72.5);
  }

  @Test
  void strengthsAndVolumesAtTwentyDegreesNeedNoTemperature() {
    String title = "Still run, strength corrected to 20 °C, volumes also";
    JarRows jar = rows(title, "Jar^mL^ABV^Temp C^Head C", "1^500^72^^84");
    assertFalse(jar.needsTemperature(2));
    assertEquals(0.36, jar.pureAlcohol, 1e-9);
    JarRows strengths = rows("Still run, strength corrected to 20 °C", USUAL, "1^500^72^30^84");
    assertTrue(strengths.needsTemperature(2));
    assertEquals(72, strengths.trueStrength, 1e-9);
    assertEquals(Spirit.volumeAt20(0.5, 30, 72), strengths.volumeAt20, 1e-12);
    assertTrue(strengths.volumeAt20 < 0.5);
  }
}
