package washbook.samples.bench;

import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.portable.FormulaRewriter;
import washbook.functions.portable.FormulaSyntax;
import washbook.office.testing.Book;
import washbook.office.testing.Office;

/**
 * Recalculates a long column in the office once with calls of the pack and once with the portable
 * formulas, in the same run, checks both columns and prints the times. Takes the packed extension.
 */
public final class RecalculationBench {
  private static final int ROWS = 100_000;
  private static final int ROUNDS = 5;

  private RecalculationBench() {}

  private record Column(String title, String formula, double bound, Exact exact) {}

  private interface Exact {
    double of(double[] row);
  }

  public static void main(String[] args) throws Exception {
    List<Column> columns =
        List.of(
            new Column("ABV", "WASHBOOK.ABV($F$1,B1)", 0.02, row -> calc("ABV", 1.12, row[1])),
            new Column(
                "CORRECTEDGRAVITY",
                "WASHBOOK.CORRECTEDGRAVITY(A1,C1)",
                0.0001,
                row -> calc("CORRECTEDGRAVITY", row[0], row[2])),
            new Column(
                "CORRECTEDGRAVITY with the original gravity",
                "WASHBOOK.CORRECTEDGRAVITY(A1,C1,20,$F$1)",
                0.0001,
                row -> calc("CORRECTEDGRAVITY", row[0], row[2], 20.0, 1.12)));
    double[][] rows = rows();
    try (Office office = Office.with(Path.of(args[0]));
        Book book = office.newBook()) {
      book.data("A1:C" + ROWS, boxed(rows)).number("F1", 1.12);
      for (Column column : columns) {
        double pack = measure(book, column, rows, column.formula(), 1e-9);
        String portable = new FormulaRewriter(FormulaSyntax.A1).rewrite(column.formula()).text();
        double plain = measure(book, column, rows, portable, column.bound());
        System.out.printf(
            "%s, %d rows: pack %.2f s, portable %.2f s (%d characters), %.2f of the pack's time%n",
            column.title(), ROWS, pack, plain, portable.length(), plain / pack);
      }
    }
    System.exit(0);
  }

  private static double calc(String name, Object... arguments) {
    return ((Answer.Number) Catalogue.get(name).call(arguments)).value();
  }

  /** Reading, gravity and temperature of a wash of SG 1.120. */
  private static double[][] rows() {
    SplittableRandom random = new SplittableRandom(4);
    double[][] rows = new double[ROWS][];
    for (int i = 0; i < ROWS; i++) {
      double gravity = random.nextDouble(0.99, 1.11);
      rows[i] = new double[] {gravity, gravity, random.nextDouble(5, 40)};
    }
    return rows;
  }

  private static Object[][] boxed(double[][] rows) {
    return Arrays.stream(rows)
        .map(row -> Arrays.stream(row).boxed().toArray())
        .toArray(Object[][]::new);
  }

  /** Seconds of the middle round of several. */
  private static double measure(
      Book book, Column column, double[][] rows, String formula, double bound) {
    book.formula("D1", "=" + formula.replace(',', ';'));
    UnoRuntime.queryInterface(XCellSeries.class, book.sheet().getCellRangeByName("D1:D" + ROWS))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
    double[] seconds = new double[ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      long start = System.nanoTime();
      book.recalculate();
      seconds[round] = (System.nanoTime() - start) / 1e9;
    }
    Object[][] values = book.data("D1:D" + ROWS);
    for (int i = 0; i < ROWS; i += 97) {
      double exact = column.exact().of(rows[i]);
      if (!(values[i][0] instanceof Double got) || !(Math.abs(got - exact) <= bound)) {
        throw new IllegalStateException(
            column.title() + " row " + (i + 1) + ": " + values[i][0] + ", not " + exact);
      }
    }
    Arrays.sort(seconds);
    return seconds[ROUNDS / 2];
  }
}
