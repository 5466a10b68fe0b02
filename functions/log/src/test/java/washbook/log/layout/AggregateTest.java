package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;

/** A row below readings that sums them up, told by its figure. */
class AggregateTest {
  private static boolean sumsUp(String label, String figure, String... readings) {
    TestGrid grid = TestGrid.of("x", String.join("\n", readings) + "\n" + figure);
    int row = readings.length;
    return Aggregate.sumsUp(grid, label, new int[] {0}, 0, row, new BitSet());
  }

  @ParameterizedTest
  @CsvSource({
    // mean of the three is 1.05, to the digits that are shown
    "average, 1.05, true",
    "average, 1.0500, true",
    "average, 1.051, false",
    "average, 1.049, false",
    "average, 1050, true",
    "mean, 1.050, true",
    // the middle one is 1.06
    "median, 1.06, true",
    // sum, and how many
    "total, 3.15, true",
    "total, 3.16, false",
    "count, 3, true",
    "count, 4, false",
    "max, 1.08, true",
    "Maximum, 1.07, false",
    "massimo, 1.08, true",
    "máx, 1.08, true",
    "min, 1.01, true",
    "mín, 1.02, false",
    "minimum, 1.01, true",
    "min, 1.05, false",
  })
  void aFigureIsWhatItsLabelSays(String label, String figure, boolean sumsUp) {
    assertEquals(sumsUp, sumsUp(label, figure, "1.08", "1.06", "1.01"));
  }

  @Test
  void aFigureRoundedToItsDigitsAgrees() {
    // mean 1.0466...
    assertEquals(true, sumsUp("average", "1.047", "1.08", "1.05", "1.01"));
    assertEquals(true, sumsUp("average", "1.05", "1.08", "1.05", "1.01"));
    assertEquals(false, sumsUp("average", "1.046", "1.08", "1.05", "1.01"));
  }

  @Test
  void theMedianOfFourIsBetweenTheMiddleTwo() {
    assertEquals(true, sumsUp("median", "1.04", "1.08", "1.07", "1.01", "1.00"));
    assertEquals(false, sumsUp("median", "1.07", "1.09", "1.07", "1.00", "1.00"));
  }

  @Test
  void blanksAndZerosAreNoReadings() {
    assertEquals(true, sumsUp("average", "1.06", "1.08", "0", "", "1.04"));
    assertEquals(false, sumsUp("average", "1.06"));
    assertEquals(false, sumsUp("average", "", "1.08", "1.04"));
  }

  @Test
  void aSecondAverageMayBeOfTheRowsSinceTheFirst() {
    TestGrid grid = TestGrid.of("x", "1.09\n1.07\n1.08\n1.03\n1.01\n1.02");
    BitSet skipped = new BitSet();
    skipped.set(2);
    assertEquals(true, Aggregate.sumsUp(grid, "average", new int[] {0}, 0, 5, skipped));
    assertEquals(false, Aggregate.sumsUp(grid, "average", new int[] {0}, 0, 5, new BitSet()));
  }

  @Test
  void readingsWithAUnitOrInThousandthsCount() {
    assertEquals(true, sumsUp("average", "1.06", "1080", "1.04 SG"));
  }
}
