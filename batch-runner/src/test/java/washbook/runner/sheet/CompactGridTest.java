package washbook.runner.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import washbook.log.sheet.Grid;
import washbook.runner.file.UnusableFileException;

class CompactGridTest {

  @Test
  void givesBackEveryCellThatWasPutIn() throws Exception {
    CompactGrid grid = new CompactGrid("Plum 3", new Texts());
    Random random = new Random(3);
    Map<Long, Object> expected = new HashMap<>();
    for (int i = 0; i < 20_000; i++) {
      int row = random.nextInt(3000);
      int column = random.nextInt(40);
      boolean formula = random.nextBoolean();
      Object value;
      switch (random.nextInt(3)) {
        case 0 -> {
          value = random.nextGaussian();
          grid.putNumber(row, column, (Double) value, formula);
        }
        case 1 -> {
          value = "text " + random.nextInt(500) + " \u00B0F \uD83C\uDF4E";
          grid.putText(row, column, (String) value, formula);
        }
        default -> {
          value = random.nextBoolean();
          grid.putLogical(row, column, (Boolean) value, formula);
        }
      }
      expected.put(row * 100L + column, formula ? new Object[] {value} : value);
    }
    assertTrue(expected.size() > 15_000);
    for (int row = 0; row < 3001; row++) {
      for (int column = 0; column < 41; column++) {
        Object value = expected.get(row * 100L + column);
        assertEquals(value instanceof Object[], grid.isFormula(row, column));
        if (value instanceof Object[] boxed) {
          value = boxed[0];
        }
        if (value == null) {
          assertEquals(Grid.Kind.BLANK, grid.kind(row, column));
        } else if (value instanceof Double number) {
          assertEquals(Grid.Kind.NUMBER, grid.kind(row, column));
          assertEquals(number, grid.number(row, column));
          assertEquals("", grid.text(row, column));
        } else if (value instanceof String text) {
          assertEquals(Grid.Kind.TEXT, grid.kind(row, column));
          assertEquals(text, grid.text(row, column));
          assertTrue(Double.isNaN(grid.number(row, column)));
        } else {
          assertEquals(Grid.Kind.LOGICAL, grid.kind(row, column));
          assertEquals((Boolean) value ? 1.0 : 0.0, grid.number(row, column));
        }
      }
    }
  }

  @Test
  void longColumnsGiveBackEveryCellBitForBit() throws Exception {
    Texts texts = new Texts();
    CompactGrid grid = new CompactGrid("Molasses 2", texts);
    Random random = new Random(5);
    List<IntFunction<Double>> columns =
        List.of(
            row -> 46000 + row / 4.0,
            row -> Math.round(1e4 * (1 + random.nextDouble() / 10)) / 1e4,
            row -> 46000 + row / 86400.0,
            row -> row % 2 == 0 ? 0.0 : -0.0,
            row -> row * 1e6,
            row -> row % 700 == 0 ? 1e300 : 20.5,
            row -> row % 300 == 0 ? Double.MIN_VALUE : 1e15 + row,
            row -> -row / 1000.0);
    int rows = 3000;
    double[][] expected = new double[columns.size()][rows];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns.size(); column++) {
        expected[column][row] = columns.get(column).apply(row);
        if (row % 11 != column) {
          grid.putNumber(row, column, expected[column][row], row % 13 == 0);
        }
      }
      grid.putText(row, 20, "batch " + row / 100, false);
      grid.putText(row, 21, "note " + random.nextInt(2000), false);
      grid.putText(row, 22, row % 3 == 0 ? "racked" : "", false);
    }
    for (int row = 0; row < rows; row += 7) {
      grid.putNumber(row, 20, row + 0.125, false);
      grid.putText(row, 0, "late " + row, false);
    }
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns.size(); column++) {
        boolean late = column == 0 && row % 7 == 0;
        boolean given = row % 11 != column && !late;
        assertEquals(
            late ? Grid.Kind.TEXT : given ? Grid.Kind.NUMBER : Grid.Kind.BLANK,
            grid.kind(row, column));
        assertEquals(
            Double.doubleToRawLongBits(given ? expected[column][row] : Double.NaN),
            Double.doubleToRawLongBits(grid.number(row, column)));
        assertEquals(late ? "late " + row : "", grid.text(row, column));
        assertEquals(given && row % 13 == 0, grid.isFormula(row, column));
      }
      assertEquals(row % 7 == 0 ? "" : "batch " + row / 100, grid.text(row, 20));
      assertEquals(row % 7 == 0 ? row + 0.125 : Double.NaN, grid.number(row, 20));
      assertTrue(grid.text(row, 21).startsWith("note "));
      assertEquals(row % 3 == 0 ? "racked" : "", grid.text(row, 22));
    }
  }

  @Test
  void emptyTextIsBlankUnlessAFormulaGaveIt() throws Exception {
    CompactGrid grid = new CompactGrid("Apple 7", new Texts());
    grid.putText(5, 2, "", false);
    assertEquals(0, grid.rowCount());
    grid.putText(5, 2, "", true);
    assertEquals(6, grid.rowCount());
    assertEquals(3, grid.columnCount());
    assertEquals(Grid.Kind.TEXT, grid.kind(5, 2));
  }

  @Test
  void numbersThatAreNotFiniteBecomeErrors() throws Exception {
    CompactGrid grid = new CompactGrid("Apple 7", new Texts());
    grid.putNumber(0, 0, Double.POSITIVE_INFINITY, false);
    assertEquals(Grid.Kind.ERROR, grid.kind(0, 0));
    assertTrue(Double.isNaN(grid.number(0, 0)));
  }

  @Test
  void refusesPlacesOutsideAnySheetAndTooMuchMemory() throws Exception {
    CompactGrid grid = new CompactGrid("Sugar 4", new Texts(new MemoryLimit(1_000_000)));
    assertThrows(UnusableFileException.class, () -> grid.putNumber(Integer.MAX_VALUE, 0, 1, false));
    assertThrows(UnusableFileException.class, () -> grid.putNumber(0, 20_000, 1, false));
    assertThrows(
        UnusableFileException.class,
        () -> {
          for (int i = 0; i < 1_000; i++) {
            grid.putNumber(i * 300, i, 1, false);
          }
        });
    assertFalse(grid.isFormula(-1, -1));
  }

  @Test
  void internsEqualTextsOnce() throws Exception {
    Texts texts = new Texts();
    for (int i = 0; i < 10_000; i++) {
      texts.intern("note " + i % 700);
    }
    assertEquals(700, texts.size());
    assertEquals("note 699", texts.get(699));
  }

  @Test
  void aSheetThatTakesTooMuchProcessorTimeIsGivenUp() throws Exception {
    CompactGrid grid = new CompactGrid("Log", new Texts(), new WorkLimit(1_000_000));
    grid.putNumber(0, 0, 1, false);
    assertThrows(
        WorkLimit.TooMuchWork.class,
        () -> {
          for (long i = 0; i < 1L << 32; i++) {
            grid.kind(0, 0);
          }
        });
  }
}
