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
}
