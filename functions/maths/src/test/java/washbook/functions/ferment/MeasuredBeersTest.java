package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;
import washbook.functions.liquid.Water;

/** The balance of malt against beers whose alcohol was measured. Nothing here is tuned. */
class MeasuredBeersTest {
  private static final double SIXTY_F = 140.0 / 9;

  /** 34 pairs of wort and beer with distilled alcohol: Tolman and Riley 1917. */
  @Test
  void alcoholMeetsTheMeasuredPairs() {
    List<Double> differences = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (Row row : ReferenceTable.read("tolman-riley-1917-wort-beer.csv", 34).rows()) {
      // Grams in 100 mL at 60 degF; both volumes of % vol are at 20 degC.
      double shrunk = Water.density(20) / Water.density(SIXTY_F);
      double measured =
          1000 * row.number("alcohol_g100cc") * shrunk / EthanolWater.ETHANOL_DENSITY_20;
      double og = at20(row.number("wort_sg"));
      double gravity = at20(row.number("beer_sg"));
      double difference = Calls.value("ABV", og, gravity) - measured;
      differences.add(difference);
      shares.add(difference / measured);
    }
    double bias = mean(differences);
    double scatter = deviation(differences);
    double relative = Math.sqrt(shares.stream().mapToDouble(s -> s * s).average().orElseThrow());
    System.out.printf(
        "34 pairs of wort and beer: bias %+.3f %% vol, scatter %.3f, %+.2f %% of the alcohol, root"
            + " mean square %.2f %%%n",
        bias, scatter, 100 * mean(shares), 100 * relative);
    assertEquals(0.107, bias, 0.02, "bias");
    assertEquals(0.132, scatter, 0.01, "scatter");
    assertTrue(relative <= WashKind.MALT.uncertainty(), "off by " + relative);
  }

  /** Five sets of 532 brews, their means: Cutaia, Reid and Speers 2009. */
  @Test
  void alcoholMeetsTheMeansOfModernBrews() {
    int brews = 0;
    double weighted = 0;
    for (Row row : ReferenceTable.read("brews-2009.csv", 5).rows()) {
      double original = row.number("original_extract");
      double gravity = SucroseSolution.gravity(row.number("apparent_extract"));
      double computed =
          FermentingWash.alcoholByMass(original, FermentingWash.trueExtract(original, gravity));
      double share = computed / row.number("alcohol_mass") - 1;
      System.out.printf(
          "%s, %.0f brews: %+.1f %% of the alcohol%n",
          row.text("set"), row.number("n"), 100 * share);
      assertTrue(Math.abs(share) <= WashKind.MALT.uncertainty(), row + ": " + share);
      brews += (int) row.number("n");
      weighted += row.number("n") * share;
    }
    assertEquals(532, brews);
    assertEquals(0, weighted / brews, 0.01);
  }

  /** 60/60 degF to 20/20 degC by the solution's own expansion; the glass is left out. */
  private static double at20(double gravity60) {
    double density = gravity60 * Water.density(SIXTY_F);
    return SucroseSolution.gravity(SucroseSolution.brixOfDensity(density, SIXTY_F));
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(v -> v).average().orElseThrow();
  }

  private static double deviation(List<Double> values) {
    double mean = mean(values);
    double squares = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(squares / (values.size() - 1));
  }
}
