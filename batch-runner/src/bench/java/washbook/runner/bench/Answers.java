package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Path;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.portable.PortableFormulas;
import washbook.log.sheet.Grid;
import washbook.runner.FileFormats;

/** Looks whether a filled {@link BigLog} holds what the single functions give. */
final class Answers {
  private static final double ROUNDING = 1e-9;
  private static final int STEP = 13;

  /** Whether the portable formulas' error is allowed. */
  private final boolean portable;

  private Answers(boolean portable) {
    this.portable = portable;
  }

  /**
   * Every row of every sheet has to be filled; every thirteenth, and the first of its batch, is
   * calculated again and has to have kept what was read.
   */
  static void check(Path target, int rows) throws IOException {
    check(target, rows, false);
  }

  /** The same where the maths may be the portable formulas: they may err as they are said to. */
  static void check(Path target, int rows, boolean portable) throws IOException {
    for (Grid grid : FileFormats.of(target).reader().read(target)) {
      new Answers(portable).check(grid, rows);
    }
  }

  private void check(Grid grid, int rows) {
    if (!grid.text(0, 9).equals("Alcohol to date (% vol)") || grid.columnCount() != 12) {
      throw new AssertionError("the columns are not where they should be");
    }
    if (grid.rowCount() != rows + 1) {
      throw new AssertionError((grid.rowCount() - 1) + " rows, not " + rows);
    }
    for (int row = 0; row < rows; row++) {
      for (int column = 8; column < 12; column++) {
        if (grid.kind(row + 1, column) != Grid.Kind.NUMBER) {
          throw new AssertionError("row " + (row + 2) + " is not filled");
        }
      }
    }
    for (int row = 0; row < rows; row += STEP) {
      kept(grid, row);
      int firstRow = row - row % BigLog.ROWS_OF_BATCH;
      double original = grid.number(firstRow + 1, 8);
      double gravity = grid.number(row + 1, 8);
      near(original, "CORRECTEDGRAVITY", BigLog.gravity(firstRow), BigLog.temperatureC(firstRow));
      near(
          gravity,
          "CORRECTEDGRAVITY",
          BigLog.gravity(row),
          BigLog.temperatureC(row),
          null,
          row == firstRow ? null : (Object) original);
      near(grid.number(row + 1, 9), "ABV", original, gravity);
      near(grid.number(row + 1, 10), "APPARENTATTENUATION", original, gravity);
      near(grid.number(row + 1, 11), "REALATTENUATION", original, gravity);
    }
  }

  private static void kept(Grid grid, int row) {
    if (grid.kind(row + 1, 0) != Grid.Kind.DATE
        || !grid.text(row + 1, 1).equals(BigLog.batch(row))
        || Math.abs(grid.number(row + 1, 2) - BigLog.gravity(row)) > ROUNDING
        || Math.abs(grid.number(row + 1, 3) - BigLog.temperatureC(row)) > ROUNDING
        || !grid.text(row + 1, 7).equals(BigLog.note(row))) {
      throw new AssertionError("row " + (row + 2) + " has not kept what was in it");
    }
  }

  private void near(double filled, String function, Object... arguments) {
    CatalogueFunction of = Catalogue.get(function);
    if (!(of.call(arguments) instanceof Answer.Number expected)) {
      throw new AssertionError(function + " gives no number");
    }
    double error = portable ? PortableFormulas.maximumError(of) : ROUNDING;
    if (!(Math.abs(filled - expected.value()) < error)) {
      throw new AssertionError(function + ": " + filled + " is filled in, not " + expected.value());
    }
  }
}
