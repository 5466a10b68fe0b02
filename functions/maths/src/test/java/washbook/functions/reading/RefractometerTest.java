package washbook.functions.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.RefractiveIndex;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;

class RefractometerTest {
  /** OIV-MA-AS2-02 table II (French order of 14 September 2011, annex IV). */
  @Test
  void indexMeetsTheMustTable() {
    ReferenceTable.read("oiv-must.csv", 41)
        .rows()
        .forEach(
            row ->
                assertEquals(
                    row.number("refractive_index_20c"),
                    RefractiveIndex.WATER + RefractiveIndex.ofSucrose(row.number("brix")),
                    1e-5,
                    row.toString()));
  }

  /** ICUMSA table of 1974, refractive index of sucrose solutions at 20 °C; from memory. */
  @ParameterizedTest
  @CsvSource({
    "0, 1.33299", "1, 1.33442", "2, 1.33586", "3, 1.33732", "4, 1.33879", "5, 1.34026",
    "6, 1.34175", "7, 1.34325", "8, 1.34476", "9, 1.34629", "31, 1.38296", "32, 1.38478",
    "33, 1.38661", "34, 1.38846", "35, 1.39032", "36, 1.39220", "37, 1.39409", "38, 1.39600",
    "39, 1.39792", "40, 1.39986"
  })
  void indexMeetsTheSugarTable(double brix, double index) {
    assertEquals(index, RefractiveIndex.WATER + RefractiveIndex.ofSucrose(brix), 1.05e-5);
  }

  /**
   * CRC Handbook of Chemistry and Physics, concentrative properties of aqueous solutions: ethanol;
   * from memory. Its figures are rounded to 5e-5.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1.3336",
    "2, 1.3342",
    "3, 1.3348",
    "4, 1.3354",
    "5, 1.3360",
    "6, 1.3367",
    "7, 1.3374",
    "8, 1.3381",
    "9, 1.3388",
    "10, 1.3395",
    "12, 1.3410",
    "14, 1.3425",
    "16, 1.3440",
    "18, 1.3455",
    "20, 1.3469"
  })
  void indexMeetsTheEthanolTable(double percentMass, double index) {
    assertEquals(index, RefractiveIndex.WATER + RefractiveIndex.ofEthanol(percentMass), 6e-5);
  }

  /**
   * A wash without any sugar left is ethanol-water, of which the handbook gives the index (from
   * memory) and OIML R 22 the gravity and % vol: both functions must find those.
   */
  @ParameterizedTest
  @CsvSource({"5, 1.3360", "7, 1.3374", "10, 1.3395"})
  void aDryWashIsEthanolAndWater(double percentMass, double index) {
    double brix =
        Solve.root(b -> RefractiveIndex.WATER + RefractiveIndex.ofSucrose(b) - index, 4, 0, 40);
    double gravity = EthanolWater.gravity(percentMass / 100);
    double percentVolume = EthanolWater.percentVolume(percentMass / 100);
    assertEquals(percentVolume, Calls.value("REFRACTOMETERABV", brix, gravity), 0.06);
    double originalBrix = 2.0665 * percentMass / (1 + 0.010665 * percentMass);
    assertEquals(gravity, Calls.value("REFRACTOMETERGRAVITY", originalBrix, brix), 0.0004);
  }

  @Test
  void theTwoFunctionsAgreeOnWhatBallingsBalanceMakes() {
    int checked = 0;
    for (double original = 5; original <= 35; original += 0.5) {
      for (double present = 3; present <= original; present += 0.5) {
        if (isPossible(original, present)) {
          double gravity = Calls.value("REFRACTOMETERGRAVITY", original, present);
          double og = SucroseSolution.gravity(original);
          if (gravity < 0.9801 || og > 1.19) {
            continue;
          }
          double abv = Calls.value("ABV", og, Math.min(og, gravity));
          assertEquals(abv, Calls.value("REFRACTOMETERABV", present, gravity), 1e-8);
          checked++;
        }
      }
    }
    assertTrue(checked > 500, "compared " + checked);
  }

  private static boolean isPossible(double original, double present) {
    return Catalogue.get("REFRACTOMETERGRAVITY").call(original, present) instanceof Answer.Number;
  }

  @Test
  void theFactorIsTakenOutOfBothReadings() {
    assertEquals(
        Calls.value("REFRACTOMETERGRAVITY", 20.0, 10.0),
        Calls.value("REFRACTOMETERGRAVITY", 20.8, 10.4, 1.04),
        1e-12);
  }

  @Test
  void nothingFermentedIsTheSugarsOwnGravity() {
    for (double brix = 1; brix <= 40; brix++) {
      assertEquals(
          SucroseSolution.gravity(brix), Calls.value("REFRACTOMETERGRAVITY", brix, brix), 1e-12);
    }
  }
}
