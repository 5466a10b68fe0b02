package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.WashKind;

class BalanceTest {
  /**
   * The straight line between apparent and real extract that brewing tables are computed with: RE =
   * 0.1808 OE + 0.8192 AE (Balling's factor for usual worts; from memory). Good to 0.1 % by mass
   * for original extracts near 12 %.
   */
  @ParameterizedTest
  @CsvSource({"10, 1.5", "11, 2", "12, 2.5", "12, 4", "13, 3", "14, 3.5"})
  void meetsTheLineOfBrewingTables(double originalExtract, double apparentExtract) {
    double og = Calls.value("CONVERT", originalExtract, "PLATO", "SG");
    double gravity = Calls.value("CONVERT", apparentExtract, "PLATO", "SG");
    double published = 0.1808 * originalExtract + 0.8192 * apparentExtract;
    assertEquals(published, Calls.value("TRUEEXTRACT", og, gravity), 0.1);
    assertEquals(10 * published * gravity, Calls.value("SUGARLEFT", og, gravity), 1.2);
    double real = 100 * (1 - published / originalExtract);
    assertEquals(real, Calls.value("REALATTENUATION", og, gravity), 0.9);
    assertEquals(
        real / (1 - 0.005161 * published), Calls.value("FERMENTATIONDEGREE", og, gravity), 1.0);
    assertEquals(
        100 * (1 - apparentExtract / originalExtract),
        Calls.value("APPARENTATTENUATION", og, gravity),
        1e-6);
  }

  /** OIML R 22:1975, table IVa: a wash without sugar left is a mixture of its strength. */
  @Test
  void aDryWashIsEthanolAndWater() {
    ReferenceTable.read("oiml-r22-density20.csv", 10)
        .rows()
        .forEach(
            row -> {
              double strength = row.number("percent_volume");
              if (strength > 10) {
                return;
              }
              double alcohol = strength * 789.24 / row.number("density_kg_m3");
              double extract = 2.0665 * alcohol / (1 + 0.010665 * alcohol);
              double og = Calls.value("CONVERT", extract, "PLATO", "SG");
              double dry = row.number("density_kg_m3") / EthanolWater.density(0, 20);
              assertEquals(dry, Calls.value("FINALGRAVITY", og, 1.0, "MALT"), 1e-5);
              assertEquals(strength, Calls.value("ABV", og, dry), 0.01);
              assertEquals(strength, Calls.value("POTENTIALABV", og, "DRY"), 0.01);
            });
  }

  /** Malt worts end at 75 to 82 % apparent attenuation: common practice, no source. */
  @Test
  void maltEndsWhereMaltEnds() {
    double end = Calls.value("FINALGRAVITY", 1.050, "DRYMALT");
    double apparent = Calls.value("APPARENTATTENUATION", 1.050, end);
    assertTrue(apparent > 75 && apparent < 82, "apparent " + apparent);
    assertEquals(65, Calls.value("FERMENTATIONDEGREE", 1.050, end), 0.1);
  }

  /** C6H12O6 gives 2 x 46.069 g of ethanol and 2 x 44.009 g of carbon dioxide (IUPAC masses). */
  @Test
  void gasAndAlcoholAreInTheProportionOfTheReaction() {
    for (double og = 1.03; og < 1.12; og += 0.01) {
      double litres = 20;
      double gas = Calls.value("CARBONDIOXIDE", og, 1.0, litres);
      double ethanol = gas * 46.069 / 44.009;
      // Mass of the wash now: gas and Balling's yeast have left it.
      double mass = litres * og * 998.2 - gas * (1 + 0.11 / 0.9565);
      double percentVolume = 100 * ethanol / mass * 998.2 / 789.24;
      assertEquals(1, percentVolume / Calls.value("ABV", og, 1.0), 0.003, "OG " + og);
      assertEquals(1, percentVolume / Calls.value("ABVFROMWEIGHTLOSS", og, gas, litres), 0.003);
    }
  }

  /** JCGM 101:2008, propagation by trial: readings with Gaussian error, many times. */
  @ParameterizedTest
  @CsvSource({"1.085, 0.998, 0.001, 1", "1.050, 1.010, 0.001, 0", "1.110, 1.030, 0.0005, 2"})
  void plusMinusMeetsAMonteCarloTrial(
      double og, double gravity, double readingError, double temperatureError) {
    Random random = new Random(7);
    int trials = 40_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < trials; i++) {
      double originalNow = read(random, og, readingError, temperatureError, null);
      double gravityNow = read(random, gravity, readingError, temperatureError, og);
      double balance = 1 + WashKind.MALT.uncertainty() * random.nextGaussian();
      double abv = balance * Calls.value("ABV", originalNow, gravityNow);
      sum += abv;
      squares += abv * abv;
    }
    double deviation = Math.sqrt(squares / trials - sum / trials * sum / trials);
    assertEquals(
        1,
        Calls.value("ABVPLUSMINUS", og, gravity, readingError, temperatureError) / deviation,
        0.03);
  }

  /** Before the ferment begins it is as sure as after the first day: no gravity is left out. */
  @Test
  void plusMinusHasAnAnswerAtEveryFirstReading() {
    for (int i = 0; i <= 1889; i++) {
      double og = 1.001 + i * 1e-4;
      assertEquals(0.2, Calls.value("ABVPLUSMINUS", og, og), 0.05, "OG " + og);
    }
  }

  private static double read(
      Random random, double truth, double readingError, double temperatureError, Double original) {
    Answer answer =
        Catalogue.get("CORRECTEDGRAVITY")
            .call(
                truth + readingError * random.nextGaussian(),
                20 + temperatureError * random.nextGaussian(),
                20.0,
                original);
    return ((Answer.Number) answer).value();
  }
}
