package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.StillRun.Charge;
import washbook.log.sheet.TestGrid;

/** What lines above a table of jars say: the charge, and how the jars were read. */
class LinesAboveJarsTest {
  private static RunLines lines(String text) {
    TestGrid grid = TestGrid.of("Run", text.replace('^', '|').replace(" ;", "\n"));
    return new RunLines(grid, 0, grid.rowCount() - 1, 0, grid.columnCount() - 1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Charge ^ 14 ^ L ^ 27 ^ % vol ! 14 ! 27 ! B1 ! D1 ! A1",
        "Plum 3 ; Charge ^ 14 ^ L ^ 27 ^ % vol ! 14 ! 27 ! B2 ! D2 ! A2",
        "Charge 14 L of 27 % ! 14 ! 27 ! '' ! '' ! A1",
        "Charge: 14,5 litres, 27.5 % vol ! 14.5 ! 27.5 ! '' ! '' ! A1",
        "Charge ^ 27 ^ L ^ 27 ^ % ! 27 ! 27 ! '' ! '' ! A1",
        "Charge L ^ 14 ; Strength % ^ 27 ! 14 ! 27 ! B1 ! B2 ! A1",
        "Charge L ^ 14 ; yeast ; Strength % ^ 27 ! 14 ! NaN ! B1 ! '' ! A1",
        "Charge 14 L ! 14 ! NaN ! '' ! '' ! A1",
        "Charge 27 % ! NaN ! 27 ! '' ! '' ! A1",
        "Charge 14 L at 23° ! 14 ! 23 ! '' ! '' ! A1",
        "Charge 14 L ^ strength ^ 23 ! 14 ! 23 ! '' ! C1 ! A1",
        "Charge 14 L of 96 % ! 14 ! 96 ! '' ! '' ! A1",
        "Charge 14 L of 97 % ! 14 ! NaN ! '' ! '' ! A1",
        "Charge 14 L of 27 % ; Charge 9 L of 12 % ! 14 ! 27 ! '' ! '' ! A1",
        "Stripping run, 14 L of 9 % ! 14 ! 9 ! '' ! '' ! A1",
        "Stripping run, 14 L ! NaN ! NaN ! '' ! '' ! ''",
        "Bought 14 L of 9 % ! NaN ! NaN ! '' ! '' ! ''",
        "Carga ^ 25 ^ L ^ Álcool puro da carga ^ 2,5 ^ L ! 25 ! NaN ! B1 ! '' ! A1",
        "200 jars, charge 14 L of 27 % ! 14 ! 27 ! '' ! '' ! A1",
        "yeast 11 L ^ charge ^ 14 L ^ 27 % ! 14 ! 27 ! '' ! '' ! A1",
      })
  void theChargeAndTheCellsItStandsIn(
      String text, double litres, double percent, String l, String p, String cell) {
    Charge charge = lines(text).charge();
    assertEquals(new Charge(litres, percent, l, p, cell), charge);
  }

  /** 60 °F is 140/9 °C. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Spirit read at 18 C; 18",
        "spirit read at 18,5 °C; 18.5",
        "Jars measured at 60 F; 15.555555555555555",
        "Jars measured at 60 Fahrenheit; 15.555555555555555",
        "Distillate at 40 °C; 40",
        "Distillate at 41 °C; NaN",
        "Vapour read at 38 °C; NaN",
        "Room read at 18 °C; NaN",
        "18 °C; NaN",
        "Jars 18; NaN",
        "Jars not read at 18 °C; NaN",
      })
  void oneTemperatureOfTheSpirit(String line, double celsius) {
    assertEquals(celsius, lines(line).temperatures.ofAll(List.of()), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Alcoholometer calibrated at 15 °C; 15",
        "Alcoholometer calibrated at 60 F; 15.555555555555555",
        "Alcoholometer reads true at 20°; 20",
        "Spindel auf 15 Grad geeicht!!; 15",
        "Alcoomètre en °GL (15 °C); 15",
        "alcolometro a 20 gradi; 20",
        "25 L di flemma a 26 gradi; NaN",
        "Hydrometer off by 15 degrees; NaN",
        "Hydrometer calibrated for 10 degrees of proof; NaN",
        "Alcoomètre de 15 degrés à 20 degrés; NaN",
        "Aräometer geht bis 15 Grad; NaN",
        "Alcoholometer read at 15 °C; NaN",
      })
  void theCalibrationOfTheAlcoholometer(String line, double celsius) {
    assertEquals(celsius, lines(line).calibrationC, 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Air pressure 980 hPa; 980",
        "1013,25 mbar; 1013.25",
        "980; NaN",
        "980 hpas; NaN",
      })
  void theAirPressure(String line, double hectopascals) {
    assertEquals(hectopascals, lines(line).pressureHPa);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Strength corrected",
        "Strength corrected to 20 °C",
        "All corrected to 20 C",
        "corrected to 20 degrees",
        "abv20 in all jars"
      })
  void strengthsAreTrueStrengths(String line) {
    assertTrue(lines(line).corrected);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Strengths not corrected",
        "Strengths as read at 20 °C",
        "corrected to 15 °C",
        "Volumes corrected to 20 °C",
        "corrected"
      })
  void strengthsAreAsTheyWereRead(String line) {
    assertFalse(lines(line).corrected);
  }

  @Test
  void volumesAtTwentyDegreesAreSaidOrGoWithTheStrengths() {
    assertTrue(lines("Volumes at 20 °C").volumesAt20);
    assertTrue(lines("Strengths corrected to 20 °C, volumes also").volumesAt20);
    assertFalse(lines("Strengths corrected to 20 °C").volumesAt20);
    assertFalse(lines("Volumes also").volumesAt20);
    assertFalse(lines("Volumes at 15 °C").volumesAt20);
    assertFalse(lines("Volumes not at 20 °C").volumesAt20);
    assertFalse(lines("% vol at 20 °C").volumesAt20);
  }

  @Test
  void theTitleIsTheFirstTextThatIsNoTotal() {
    assertEquals("Plum 3", lines("Plum 3 ^ spirit run ; Apple 7").title);
    assertEquals("Plum 3", lines("Total ; Plum 3").title);
    assertEquals("Plum 3", lines("^ ; ^ Plum 3").title);
    assertEquals("", lines("^").title);
  }

  @Test
  void proseIsNoLine() {
    assertEquals(14, lines("Charge 14 L" + ", x".repeat(96)).litres);
    assertEquals(Double.NaN, lines("Charge 14 L" + ", x".repeat(97)).litres);
  }

  @Test
  void onlyTheRowsAndColumnsOfTheTableAreRead() {
    TestGrid grid = TestGrid.of("Run", "Charge 5 L\n|Charge 14 L|Charge 9 L\nCharge 8 L");
    RunLines lines = new RunLines(grid, 1, 1, 1, 1);
    assertEquals(14, lines.litres);
    assertEquals("Charge 14 L", lines.title);
    assertEquals("B2", lines.charge().cell());
  }
}
