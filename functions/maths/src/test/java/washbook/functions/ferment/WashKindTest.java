package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;

/** What ferments in a wash: balances built on published yields. */
class WashKindTest {
  /** A mass balance made outside the project with the same yields; % vol from 1.085 to 0.998. */
  @ParameterizedTest
  @CsvSource({
    "SUGAR, 12.15, 0.04",
    "90, 11.98, 0.04",
    "95, 12.46, 0.06",
    "85, 11.43, 0.04",
    "FRUIT, 11.55, 0.01",
    "MALT, 11.65, 0.005",
  })
  void alcoholMeetsAMassBalanceWithPublishedYields(String kind, double balance, double tolerance) {
    assertEquals(balance, Calls.value("ABV", 1.085, 0.998, argument(kind)), tolerance);
  }

  private static Object argument(String kind) {
    return Character.isDigit(kind.charAt(0)) ? (Object) Double.valueOf(kind) : kind;
  }

  /** 1.085 to 1.040: a plain sucrose balance says 6.3 % vol, all sucrose inverted 6.6. */
  @Test
  void inMidCourseSucroseIsPartlyInverted() {
    double alcohol = Calls.value("ABV", 1.085, 1.040, "SUGAR");
    assertTrue(alcohol > 6.3 && alcohol < 6.6, "alcohol " + alcohol);
    assertEquals(0, Calls.value("ABV", 1.085, 1.085, "SUGAR"));
  }

  /** OIV: 16.83 g of hexose per litre for each % vol, that is 46.90 g of ethanol for 100 g. */
  @Test
  void fruitHasTheYieldOfTheOiv() {
    WashKind fruit = WashKind.FRUIT;
    double ethanol = (1 - fruit.byProducts()) / fruit.extractPerEthanol();
    assertEquals(7.8924 / 16.83, ethanol, 0.0001);
    assertEquals(2.071, fruit.extractPerEthanol(), 0.001);
    assertEquals(0.00987, fruit.fall(), 0.00001);
  }

  /** Pasteur: 48.46 g of ethanol and 46.67 g of carbon dioxide from 100 g of glucose. */
  @Test
  void atPasteursYieldTheBalanceIsPasteurs() {
    WashKind pasteur = WashKind.ofYield(94.76);
    double ethanol = (1 - pasteur.byProducts()) / pasteur.extractPerEthanol();
    assertEquals(0.4846, ethanol, 0.0001);
    assertEquals(0.4667, ethanol * pasteur.co2PerExtract(), 0.004);
    assertEquals(0.4667 + 0.0103, ethanol * pasteur.fall() * 100, 0.004);
    assertEquals(0.60 * 0.0323 + 0.78 * 0.0061, pasteur.byProducts(), 0.0001);
  }

  /** Nothing comes out of a gram of sugar that was not in it. */
  @Test
  void noYieldMakesMass() {
    for (double yield = WashKind.LOWEST_YIELD; yield <= WashKind.HIGHEST_YIELD; yield++) {
      WashKind kind = WashKind.ofYield(yield);
      double ethanol = (1 - kind.byProducts()) / kind.extractPerEthanol();
      double out = ethanol * kind.fall() * 100 + ethanol + kind.byProducts() / 0.60;
      assertTrue(out < 1.001, yield + " % makes " + out);
    }
  }

  /** A dry sucrose wash at 85 to 95 % of theory: 0.990 of OG 1.048, 0.984 to 0.987 of 1.083. */
  @Test
  void dryWashesEndWherePublishedYieldsPutThem() {
    assertEquals(0.990, Calls.value("FINALGRAVITY", 1.048), 0.001);
    assertEquals(0.9855, Calls.value("FINALGRAVITY", 1.083), 0.0015);
    for (Object yield : Arrays.<Object>asList(85.0, 95.0)) {
      assertEquals(0.9855, Calls.value("FINALGRAVITY", 1.083, "SUCROSE", yield), 0.0018);
    }
    // Molasses ends between 1.003 and 1.052.
    assertTrue(Calls.value("FINALGRAVITY", 1.061, 0.80, "MOLASSES") > 1.003);
    assertTrue(Calls.value("FINALGRAVITY", 1.110, 0.58, "MOLASSES") < 1.052);
  }

  @Test
  void theEndIsAsUnsureAsItsYield() {
    double low = Calls.value("FINALGRAVITY", 1.083, "SUCROSE", 85.0);
    double high = Calls.value("FINALGRAVITY", 1.083, "SUCROSE", 95.0);
    double end = Calls.value("FINALGRAVITY", 1.083);
    double plusMinus = Calls.value("FINALGRAVITYPLUSMINUS", 1.083);
    assertTrue(2 * plusMinus >= Math.max(low - end, end - high), "only " + plusMinus);
    double poor = Calls.value("FINALGRAVITY", 1.083, 0.58, "MOLASSES");
    double rich = Calls.value("FINALGRAVITY", 1.083, 0.80, "MOLASSES");
    double molasses = Calls.value("FINALGRAVITYPLUSMINUS", 1.083, "MOLASSES");
    assertTrue(4 * molasses >= poor - rich, "only " + molasses);
  }

  /** Two standard deviations of a kind cover the lowest and the highest published yield. */
  @Test
  void eachKindIsAsWideAsThePublishedYields() {
    for (Row row : ReferenceTable.read("yields-by-kind.csv", 4).rows()) {
      WashKind kind = WashKind.of(row.text("kind"));
      double ethanol = (1 - kind.byProducts()) / kind.extractPerEthanol();
      double yield = ethanol / (2 * 46.0684 / 180.156) * 100;
      double widest = Math.max(row.number("highest") / yield - 1, 1 - row.number("lowest") / yield);
      System.out.printf(
          "%s: %.1f %% of theory, published %s to %s, one standard deviation %.1f %%%n",
          kind.word(), yield, row.text("lowest"), row.text("highest"), 100 * kind.uncertainty());
      assertTrue(2 * kind.uncertainty() >= widest, row + ": " + widest);
    }
  }

  /**
   * Densities add up in 6,497 wines (Cortez et al. 2009): the extract that is left when alcohol's
   * lightness and the sugar are taken off has the range known of wines.
   */
  @Test
  void extractOfWinesWithoutSugarIsThatOfWines() {
    for (String colour : new String[] {"red", "white"}) {
      double[] extracts =
          ReferenceTable.read("uci-wines.csv", 6497).rows().stream()
              .filter(row -> row.text("colour").equals(colour))
              .mapToDouble(WashKindTest::extractWithoutSugar)
              .sorted()
              .toArray();
      double median = extracts[extracts.length / 2];
      double low = extracts[extracts.length / 20];
      double high = extracts[extracts.length * 19 / 20];
      System.out.printf(
          "%d %s wines: extract without sugar %.1f g/L, 5 to 95 %% of them %.1f to %.1f%n",
          extracts.length, colour, median, low, high);
      assertEquals(colour.equals("red") ? 29.4 : 19.0, median, 0.3);
      assertEquals(colour.equals("red") ? 24.8 : 16.3, low, 0.3);
      assertEquals(colour.equals("red") ? 37.0 : 23.6, high, 0.3);
    }
  }

  private static double extractWithoutSugar(Row row) {
    double p = EthanolWater.massFraction(row.number("alcohol"));
    double gravity = row.number("density") * 1000 / EthanolWater.density(0, 20);
    double sugarSolution = gravity - EthanolWater.gravity(p) + 1;
    double brix = SucroseSolution.brix(sugarSolution);
    return brix * sugarSolution * 9.982 - row.number("sugar");
  }
}
