package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Path;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.log.sheet.Grid;
import washbook.runner.FileFormats;

/** Looks whether a filled {@link BigLog} holds what the single functions give. */
final class Answers {
  private Answers() {}

  /**
   * Every row of every sheet has to be filled; every hundredth, and the eighth, is calculated
   * again.
   */
  static void check(Path target, int rows) throws IOException {
    for (Grid grid : FileFormats.of(target).reader().read(target)) {
      check(grid, rows);
    }
  }

  private static void check(Grid grid, int rows) {
    if (!grid.text(0, 9).equals("Alcohol to date (% vol)") || grid.columnCount() != 12) {
      throw new AssertionError("the columns are not where they should be");
    }
    for (int row = 0; row < rows; row++) {
      for (int column = 8; column < 12; column++) {
        if (grid.kind(row + 1, column) != Grid.Kind.NUMBER) {
          throw new AssertionError("row " + (row + 2) + " is not filled");
        }
      }
    }
    for (int row = 7; row < rows; row += 100) {
      int firstRow = row - row % BigLog.ROWS_OF_BATCH;
      double original = grid.number(firstRow + 1, 8);
      double gravity = grid.number(row + 1, 8);
      near(
          gravity,
          call("CORRECTEDGRAVITY", BigLog.gravity(row), BigLog.temperatureC(row), null, original));
      near(grid.number(row + 1, 9), call("ABV", original, gravity));
      near(grid.number(row + 1, 10), call("APPARENTATTENUATION", original, gravity));
      near(grid.number(row + 1, 11), call("REALATTENUATION", original, gravity));
    }
  }

  private static double call(String function, Object... arguments) {
    Answer answer = Catalogue.get(function).call(arguments);
    if (answer instanceof Answer.Number number) {
      return number.value();
    }
    throw new AssertionError(function + " gives no number: " + answer);
  }

  private static void near(double filled, double expected) {
    if (!(Math.abs(filled - expected) < 1e-9)) {
      throw new AssertionError(filled + " is filled in, not " + expected);
    }
  }
}
