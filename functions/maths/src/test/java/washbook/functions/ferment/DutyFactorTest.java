package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;

/**
 * UK HMRC Excise Notice 226: % vol = f x (OG - PG) in degrees of gravity. A factor holds up to its
 * upper limit; it is right near the middle of its step, so that is where it is compared.
 */
class DutyFactorTest {
  /** The factors are for finished beer, so that only usual final gravities are compared. */
  private static final double LOWEST_FINAL = 1.000;

  private static final double HIGHEST_FINAL = 1.0085;

  /** The notice's factors go in steps, so that at their edges it is off by more. */
  private static final double FARTHEST = 0.09;

  private static final List<Row> ROWS = ReferenceTable.read("uk-beer-duty-factor.csv", 11).rows();

  @Test
  void alcoholMeetsTheFactors() {
    int checked = 0;
    double from = 0;
    for (Row row : ROWS) {
      double upTo = row.number("difference_up_to");
      double difference = (from + upTo) / 2;
      for (double og = 1.030; og <= 1.1101; og += 0.001) {
        double present = og - difference / 1000;
        if (present < LOWEST_FINAL || present > HIGHEST_FINAL) {
          continue;
        }
        double published = row.number("factor") * difference;
        assertEquals(published, Calls.value("ABV", og, present), 0.07, og + " to " + present);
        assertEquals(
            published, 100 * Calls.value("CHARGEALCOHOL", 1.0, og, present), 0.07, "per litre");
        assertEquals(present, Calls.value("GRAVITYATABV", og, published), 0.0006);
        assertEquals(og, Calls.value("ORIGINALFORABV", published, present), 0.0006);
        checked++;
      }
      from = upTo;
    }
    assertTrue(checked >= 10, "compared " + checked);
  }

  /** Every pair of whole degrees, also at the edges of the steps. */
  @Test
  void alcoholIsNearTheFactorsEverywhere() {
    double farthest = 0;
    int beyond = 0;
    int checked = 0;
    for (int og = 1030; og <= 1110; og++) {
      for (int present = 1000; present <= 1008; present++) {
        double difference = og - present;
        Row row =
            ROWS.stream()
                .filter(r -> difference <= r.number("difference_up_to"))
                .findFirst()
                .orElse(null);
        if (row != null) {
          double computed = Calls.value("ABV", og / 1000.0, present / 1000.0);
          double off = Math.abs(computed - row.number("factor") * difference);
          farthest = Math.max(farthest, off);
          beyond += off > 0.07 ? 1 : 0;
          checked++;
        }
      }
    }
    System.out.printf(
        "duty factors: %d pairs, farthest %.4f %% vol, %d beyond 0.07%n",
        checked, farthest, beyond);
    assertTrue(checked > 600, "compared " + checked);
    assertTrue(farthest <= FARTHEST, "off by " + farthest);
  }
}
