package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences in a log that say something about all its readings. */
class StatementTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "All readings corrected to 20 °C",
        "temperature corrected",
        "SG corrected",
        "Alle Werte korrigiert",
        "lectures corrigées",
        "metingen gecorrigeerd"
      })
  void readingsAreCorrectedAlready(String text) {
    assertTrue(Statement.saysCorrected(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Readings not corrected",
        "still to be corrected",
        "uncorrected readings",
        "nicht korrigiert",
        "raw, later corrected",
        "readings",
        ""
      })
  void readingsAreNotCorrectedYet(String text) {
    assertFalse(Statement.saysCorrected(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "calibrated at 20 °C | 20",
        "calibrated at 60 F | 15.555555555555555",
        "calibrated at 60°F | 15.555555555555555",
        "bei 20 Grad C | 20",
        "15,5 °C | 15.5",
        "15.5 deg C | 15.5",
        "68 degrees F | 20",
        "20ºC | 20",
        "at 20 °C, not 15 °C | NaN",
        "60/60 | 15.555555555555555",
        "hydrometer (60/60F) | 15.555555555555555",
        "60 °F/60 °F | 15.555555555555555",
        "SG 20/20 | 20",
        "d 20 °C/4 °C | 20",
        "15/15 | 15",
        "60/60, must at 25 C | NaN",
        "20/21 | NaN",
        "wash of 12/4 | NaN",
        "begun 11/11 | NaN",
        "12/12/2024 | NaN",
        "20 | NaN",
        "20 cm | NaN",
        "no temperature | NaN",
      })
  void theOnlyTemperatureInASentence(String text, double celsius) {
    assertEquals(celsius, Statement.temperatureIn(text), 1e-12);
  }

  /** What an instrument shows in plain water, less 1, is what it shows too much. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Hydrometer reads 1.002 in water | 0.002",
        "hydrometer shows 0.998 in water at 20 C | -0.002",
        "Spindel zeigt 1,003 in Wasser | 0.003",
        "hydrometer in water: 1002 | 0.002",
        "hydrometer in water: 998 | -0.002",
        "hydrometer in water 1.010 | 0.010",
        "Hydrometer reads 1.050 in water | NaN",
        "hydrometer reads 1.002 | NaN",
        "water 1.002 | NaN",
        "hydrometer not yet tried in water | NaN",
      })
  void whatAHydrometerShowsInWater(String text, double offset) {
    assertEquals(offset, Statement.readingInWater(text), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "All samples read at 20 C | 20",
        "Samples are cooled to 68 °F | 20",
        "readings taken at 20 °C | 20",
        "Proben bei 20 °C | 20",
        "hydrometer reading at 20 C | NaN",
        "samples corrected to 20 C | NaN",
        "samples not at 20 C | NaN",
        "sample hydrometer calibrated at 20 C | NaN",
        "original sample at 20 C | NaN",
        "sample OG at 20 C | NaN",
        "sample final gravity at 20 C | NaN",
        "sample offset 20 C | NaN",
        "sample 1.002 at 20 C | NaN",
        "cellar 20 C | NaN",
      })
  void theTemperatureOfAllSamples(String text, double celsius) {
    assertEquals(celsius, Statement.samplesReadAt(text), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "target gravity 1.010, true",
    "expected FG 1.000, true",
    "Zieldichte 1.005, true",
    "final gravity 0.998, true",
    "original gravity 1.085, false",
    "cider, false",
  })
  void whatIsWantedIsNotWhatWasRead(String text, boolean target) {
    assertEquals(target, Statement.saysTarget(text));
  }

  /** ICUMSA SPS-4: SG 1.03998 at 10 °Bx, 1.08292 at 20 °Bx. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Plum 3 from 1.085 to 1.010 | SG | 1.085 1.01",
        "begin-SG 1,084 (4 nov) | SG | 1.084",
        "OG 1.0850 | SG | 1.085",
        "water is 1.000 | SG |",
        "at most 1.200 | SG |",
        "hydrometer 1.199 | SG | 1.199",
        "version 1.08 | SG |",
        "20 SG | SG |",
        "from 20 °Bx | SG |",
        "from 20 °Bx to 10 Brix | BRIX | 1.08292 1.03998",
        "from 20 °Bx | PLATO |",
        "20 °P, 12 kg | PLATO | 1.08292",
        "85 °Oe | OECHSLE | 1.085",
        "OG 1.085 | BRIX |",
        "20 | BRIX |",
      })
  void theGravitiesInATitle(String text, ReadingScale scale, String gravities) {
    double[] expected =
        Stream.ofNullable(gravities)
            .flatMap(g -> Stream.of(g.split(" ")))
            .mapToDouble(Double::parseDouble)
            .toArray();
    double[] found =
        Statement.figures(text, scale).stream().mapToDouble(Double::doubleValue).toArray();
    assertArrayEquals(expected, found, 5e-6);
  }
}
