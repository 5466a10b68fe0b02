package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import washbook.log.sheet.Grid;

final class MergedAreasTest {
  @Test
  void everyCellFindsItsArea() {
    Random random = new Random(3);
    for (int round = 0; round < 200; round++) {
      Grid.Area[][] owner = new Grid.Area[40][20];
      List<Grid.Area> areas = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        int row = random.nextInt(36);
        int column = random.nextInt(16);
        Grid.Area area =
            new Grid.Area(row, column, row + random.nextInt(4), column + random.nextInt(4));
        if (isFree(owner, area)) {
          areas.add(area);
          mark(owner, area);
        }
      }
      MergedAreas merged = new MergedAreas(areas);
      for (int row = 0; row < 40; row++) {
        boolean touched = false;
        for (int column = 0; column < 20; column++) {
          assertEquals(owner[row][column], merged.at(row, column), row + "," + column);
          touched |= owner[row][column] != null;
        }
        assertEquals(touched, merged.touches(row));
      }
    }
  }

  @Test
  void ofAreasThatOverlapTheUpperOneCounts() {
    Grid.Area upper = new Grid.Area(0, 0, 5, 1);
    MergedAreas merged = new MergedAreas(List.of(new Grid.Area(3, 1, 9, 2), upper));
    assertEquals(upper, merged.at(4, 1));
    assertNull(merged.at(8, 1));
    assertNull(new MergedAreas(List.of()).at(0, 0));
  }

  @Test
  void aHundredThousandTallAreasThatOverlapTakeNoTime() {
    List<Grid.Area> areas = new ArrayList<>();
    for (int i = 0; i < 100_000; i++) {
      areas.add(new Grid.Area(i % 50, i % 300, 1_000_000, i % 300 + 5));
    }
    assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () -> {
          MergedAreas merged = new MergedAreas(areas);
          for (int row = 0; row < 5000; row++) {
            assertTrue(merged.touches(row));
          }
        });
  }

  private static boolean isFree(Grid.Area[][] owner, Grid.Area area) {
    for (int row = area.firstRow(); row <= area.lastRow(); row++) {
      for (int column = area.firstColumn(); column <= area.lastColumn(); column++) {
        if (owner[row][column] != null) {
          return false;
        }
      }
    }
    return true;
  }

  private static void mark(Grid.Area[][] owner, Grid.Area area) {
    for (int row = area.firstRow(); row <= area.lastRow(); row++) {
      for (int column = area.firstColumn(); column <= area.lastColumn(); column++) {
        owner[row][column] = area;
      }
    }
  }
}
