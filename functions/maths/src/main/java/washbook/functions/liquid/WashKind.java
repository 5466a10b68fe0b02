package washbook.functions.liquid;

import java.util.List;
import washbook.functions.Numbers;

/**
 * What ferments in a wash, as the two constants of a balance of Balling's form: {@code A = (OE -
 * RE) / (ke - m OE / 100)}, all in % by mass.
 *
 * <p>Of each gram of sugar that ferments come e of ethanol, c = 0.9553 e of carbon dioxide (molar
 * masses 44.0095 and 46.0684), b of cells, which settle, and by-products, which stay and weigh on
 * the hydrometer as the share l of a gram of sucrose (glycerol as 0.60, succinic acid as 0.78).
 * Then ke = (1 - l) / e and m = (c + b) / e. Malt has Balling's own figures.
 *
 * <p>Sucrose takes up water when yeast inverts it, and 100 g then weigh on the hydrometer as 104.95
 * g. How fast that goes in a wash is an inference, not a measured figure: early, so that the share
 * {@code 1 - (RE/OE)^2} of it is inverted, half of it when three tenths of the extract are gone.
 * The alcohol of a finished wash does not depend on it.
 *
 * @param word its name among the arguments of functions, or the yield
 * @param extractPerEthanol ke, g
 * @param fall m / 100, for each % of original extract
 * @param byProducts l, g of apparent extract that stay for each gram of sugar fermented
 * @param inverted what inversion adds to the original extract, as a share of it
 * @param co2PerExtract carbon dioxide for ke grams of extract, g
 * @param degreePerExtract how the degree of fermentation grows with each % of true extract
 * @param uncertainty one standard deviation of the alcohol, as a share of it
 */
public record WashKind(
    String word,
    double extractPerEthanol,
    double fall,
    double byProducts,
    double inverted,
    double co2PerExtract,
    double degreePerExtract,
    double uncertainty) {

  /** Lowest and highest yield that a wash's sugar can have, % of theory. */
  public static final double LOWEST_YIELD = 80;

  public static final double HIGHEST_YIELD = 95;

  /** Ethanol from 100 g of hexose if all went that way, g: 2 x 46.0684 / 180.156. */
  private static final double THEORY = 2 * 46.0684 / 180.156;

  private static final double CO2_PER_ETHANOL = 44.0095 / 46.0684;

  /** What 100 g of sucrose weigh on the hydrometer more when inverted: 105.26 g as 0.997 each. */
  private static final double INVERSION = 0.0495;

  /**
   * By-products at a yield: % of theory, l, b; between them a parabola. OIV's 16.83 g/L for each %
   * vol: 46.90 g of ethanol from 100 g of hexose; 8 g of glycerol with 100 g of ethanol
   * (Ribereau-Gayon et al., Handbook of Enology 1, 2.3.2). Pasteur's balance (Encyclopedia
   * Americana, article Wine): 48.46 g of ethanol, 3.23 of glycerol, 0.61 of succinic acid, 1.03 of
   * cells for 100 g of glucose. The first row continues them: not measured.
   */
  private static final double[][] BY_PRODUCTS = {
    {85, 0.0358, 0.0286}, {91.71, 0.0287, 0.0149}, {94.76, 0.0241, 0.0103}
  };

  /**
   * Balling's balance: 2.0665 g of extract give 1 g of ethanol, 0.9565 g of carbon dioxide and 0.11
   * g of yeast. Uncertainty: 34 wort and beer pairs (Tolman and Riley 1917) and five sets of 532
   * brews (Cutaia, Reid, Speers 2009).
   */
  public static final WashKind MALT =
      new WashKind("MALT", 2.0665, 0.010665, 0, 0, 0.9565, 0.005161, 0.035);

  /** Hexoses at the OIV's yield. Must solids that are no sugar fall out, hence the uncertainty. */
  public static final WashKind FRUIT = ofYield("FRUIT", 91.71, 0, 0.05);

  /** Sucrose at the yield of cane plants, 92 % (printed), near to the OIV's 91.7 %. */
  public static final WashKind SUGAR = ofYield("SUGAR", 92, 1, 0.03);

  /** Hexoses at 90 to 92 %; 0.845 to 0.951 of honey's solids are sugars (White's means). */
  public static final WashKind HONEY = ofYield("HONEY", 91, 0, 0.04);

  /** Cane molasses: 36.70 % sucrose in 81.18 % solids; yields of 83 to 93 % are published. */
  public static final WashKind MOLASSES = ofYield("MOLASSES", 88, 36.70 / 81.18, 0.05);

  private static final List<WashKind> ALL = List.of(MALT, FRUIT, SUGAR, HONEY, MOLASSES);

  /** Uncertainty left when the yield itself is stated: by-products and inversion. */
  private static final double OF_STATED_YIELD = 0.015;

  public static List<String> words() {
    return ALL.stream().map(WashKind::word).toList();
  }

  /** The kind of that word, upper case. */
  public static WashKind of(String word) {
    return ALL.stream()
        .filter(kind -> kind.word.equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no kind of wash " + word));
  }

  /** A sucrose wash with a yield in % of theory (53.83 g of ethanol for 100 g of sucrose). */
  public static WashKind ofYield(double percentOfTheory) {
    return ofYield(Numbers.show(percentOfTheory), percentOfTheory, 1, OF_STATED_YIELD);
  }

  private static WashKind ofYield(
      String word, double percentOfTheory, double sucrose, double uncertainty) {
    double ethanol = percentOfTheory / 100 * THEORY;
    double byProducts = byProducts(percentOfTheory, 1);
    double cells = byProducts(percentOfTheory, 2);
    double extractPerEthanol = (1 - byProducts) / ethanol;
    double fall = (CO2_PER_ETHANOL + cells / ethanol) / 100;
    return new WashKind(
        word,
        extractPerEthanol,
        fall,
        byProducts,
        INVERSION * sucrose,
        CO2_PER_ETHANOL,
        fall / extractPerEthanol,
        uncertainty);
  }

  private static double byProducts(double percentOfTheory, int column) {
    double sum = 0;
    for (double[] row : BY_PRODUCTS) {
      double weight = row[column];
      for (double[] other : BY_PRODUCTS) {
        weight *= other == row ? 1 : (percentOfTheory - other[0]) / (row[0] - other[0]);
      }
      sum += weight;
    }
    return sum;
  }

  /** Written out: Java takes long over the first hash that it makes of a record itself. */
  @Override
  public int hashCode() {
    return word.hashCode();
  }

  /** Original extract with the water that inversion has taken up by then, % by mass. */
  public double countedExtract(double originalExtract, double trueExtract) {
    return inverted == 0
        ? originalExtract
        : originalExtract
            + inverted * (originalExtract - trueExtract * trueExtract / originalExtract);
  }

  /** Ethanol in % by mass when an original extract has fermented down to a true extract. */
  public double alcoholByMass(double originalExtract, double trueExtract) {
    double counted = countedExtract(originalExtract, trueExtract);
    return (counted - trueExtract) / perEthanol(counted);
  }

  /** Fall of the true extract for each % of ethanol made there: the slope of the balance. */
  double extractPerEthanolAt(double originalExtract, double trueExtract) {
    if (inverted == 0) {
      return perEthanol(originalExtract);
    }
    double counted = countedExtract(originalExtract, trueExtract);
    double slope = -2 * inverted * trueExtract / originalExtract;
    double divisor = perEthanol(counted);
    return divisor * divisor / ((1 - slope) * divisor - (counted - trueExtract) * fall * slope);
  }

  private double perEthanol(double countedExtract) {
    return extractPerEthanol - fall * countedExtract;
  }

  /** True extract, % by mass, of a wash that holds that much ethanol in % by mass. */
  public double trueExtract(double originalExtract, double alcohol) {
    return Solve.root(
        re -> alcoholByMass(originalExtract, re) - alcohol,
        re -> -1 / extractPerEthanolAt(originalExtract, re),
        originalExtract - alcohol * perEthanol(originalExtract),
        2 * FermentingWash.LOWEST_TRUE_EXTRACT,
        originalExtract + 1);
  }

  /** Original extract, % by mass, of a wash with that ethanol and true extract in % by mass. */
  public double originalExtract(double alcohol, double trueExtract) {
    double counted = (extractPerEthanol * alcohol + trueExtract) / (1 + fall * alcohol);
    if (inverted == 0) {
      return counted;
    }
    double square = counted * counted + 4 * (1 + inverted) * inverted * trueExtract * trueExtract;
    return (counted + Math.sqrt(square)) / (2 * (1 + inverted));
  }

  /**
   * True extract, % by mass, when the share {@code fermentable} of the extract has fermented: what
   * does not ferment and the by-products, in a wash that gas and cells have left.
   */
  public double extractLeft(double originalExtract, double fermentable) {
    double share = fermentable + inverted;
    double gone = fall * originalExtract * share * (1 - byProducts) / extractPerEthanol;
    return (originalExtract * (1 - fermentable) + byProducts * originalExtract * share)
        / (1 - gone);
  }
}
