package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;

/**
 * A row without a label whose figures are all least, all greatest or all means of their columns.
 */
class ColumnSumsTest {
  private static final String FOUR = "1.08|20\n1.06|24\n1.04|22\n1.02|18\n";

  private static boolean repeats(String rows, String figures, int... skipped) {
    TestGrid grid = TestGrid.of("x", rows + figures);
    BitSet skip = new BitSet();
    for (int row : skipped) {
      skip.set(row);
    }
    ColumnSums sums = new ColumnSums(grid, new int[] {0, 1}, 0, skip);
    return sums.areRepeatedIn(rows.split("\n").length);
  }

  @ParameterizedTest
  @CsvSource({
    "1.02|18, true",
    "1.08|24, true",
    "1.05|21, true",
    "1.050|21.0, true",
    "1050|21, true",
    "1.02|24, false",
    "1.08|18, false",
    "1.05|18, false",
    "1.05|22, false",
    "1.07|24, false",
    "1.03|18, false",
    "1.08|, false",
    "|24, false",
    "|, false",
    "1.02|cold, false",
  })
  void repeatsAllTheLeastOrAllTheGreatestOrAllTheMeans(String figures, boolean repeats) {
    assertEquals(repeats, repeats(FOUR, figures));
  }

  @Test
  void ofThreeReadingsNothingIsToldForTheyRepeatByChance() {
    assertFalse(repeats("1.08|20\n1.06|24\n1.04|22\n", "1.04|20"));
    assertTrue(repeats("1.08|20\n1.06|24\n1.04|22\n1.04|22\n", "1.04|20"));
    assertFalse(repeats("1.08|20\n1.06|24\n1.04|\n1.02|18\n", "1.02|18"));
  }

  @Test
  void blanksZerosAndRowsThatAreNoReadingsAreNotTakenIn() {
    assertTrue(repeats(FOUR + "0|0\n|\n", "1.05|21"));
    assertTrue(repeats(FOUR + "1.30|40\n", "1.05|21", 4));
    assertFalse(repeats(FOUR + "1.30|40\n", "1.05|21"));
  }

  @Test
  void readingsOfThousandthsAreTheSameGravities() {
    assertTrue(repeats("1080|20\n1060|24\n1040|22\n1020|18\n", "1.05|21"));
  }

  @Test
  void laterRowsAreTakenInAsTheyCome() {
    TestGrid grid = TestGrid.of("x", FOUR + "1.05|21\n1.00|30\n1.00|18\n1.08|30");
    BitSet skip = new BitSet();
    ColumnSums sums = new ColumnSums(grid, new int[] {0, 1}, 0, skip);
    assertTrue(sums.areRepeatedIn(4));
    skip.set(4);
    assertFalse(sums.areRepeatedIn(5));
    assertTrue(sums.areRepeatedIn(6));
    assertTrue(sums.areRepeatedIn(7));
  }
}
