package washbook.samples.bench;

import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.portable.FormulaRewriter;
import washbook.functions.portable.FormulaSyntax;
import washbook.office.testing.Book;
import washbook.office.testing.Office;

/**
 * Recalculates long columns in the office once with calls of the pack and once with the portable
 * formulas, in the same run, checks both and writes the times down. Takes the packed extension and
 * the page to write; the system property {@code rows} sets another number of rows.
 */
public final class RecalculationBench {
  private static final int ROWS = Integer.getInteger("rows", 100_000);
  private static final int ROUNDS = 5;
  private static final double ORIGINAL_GRAVITY = 1.12;

  private RecalculationBench() {}

  /** What the cells of one column must show. */
  private record Column(String formula, double bound, Exact exact) {}

  /** Columns from D on that are computed together. */
  private record Case(String title, List<Column> columns) {}

  /** The result for a row's reading, gravity and temperature. */
  private interface Exact {
    double of(double[] row);
  }

  private static final Column ABV =
      new Column("WASHBOOK.ABV($J$1,B1)", 0.02, row -> calc("ABV", ORIGINAL_GRAVITY, row[1]));
  private static final Column CORRECTED =
      new Column(
          "WASHBOOK.CORRECTEDGRAVITY(A1,C1)",
          0.0001,
          row -> calc("CORRECTEDGRAVITY", row[0], row[2]));
  private static final Column CORRECTED_IN_WASH =
      new Column(
          "WASHBOOK.CORRECTEDGRAVITY(A1,C1,20,$J$1)", 0.0001, RecalculationBench::gravityInWash);

  private static final List<Case> CASES =
      List.of(
          new Case("ABV", List.of(ABV)),
          new Case("CORRECTEDGRAVITY", List.of(CORRECTED)),
          new Case("CORRECTEDGRAVITY with the original gravity", List.of(CORRECTED_IN_WASH)),
          new Case(
              "a log's four usual columns",
              List.of(
                  CORRECTED_IN_WASH,
                  ofCorrected("ABV", 0.04),
                  ofCorrected("APPARENTATTENUATION", 0.2),
                  ofCorrected("REALATTENUATION", 0.2))));

  /** The bound holds the function's own and what the error of the corrected gravity brings. */
  private static Column ofCorrected(String function, double bound) {
    return new Column(
        "WASHBOOK." + function + "($J$1,D1)",
        bound,
        row -> calc(function, ORIGINAL_GRAVITY, gravityInWash(row)));
  }

  public static void main(String[] args) throws Exception {
    double[][] rows = rows();
    StringBuilder table = new StringBuilder();
    try (Office office = Office.with(Path.of(args[0]));
        Book book = office.newBook()) {
      book.data("A1:C" + ROWS, boxed(rows)).number("J1", ORIGINAL_GRAVITY);
      FormulaRewriter rewriter = new FormulaRewriter(FormulaSyntax.A1);
      for (Case one : CASES) {
        List<String> calls = one.columns().stream().map(Column::formula).toList();
        List<String> arithmetic =
            calls.stream().map(call -> rewriter.rewrite(call).text()).toList();
        double pack = measure(book, one, rows, calls, true);
        double portable = measure(book, one, rows, arithmetic, false);
        String line =
            String.format(
                Locale.ROOT,
                "| %s | %.2f | %.2f | %.2f | %d |%n",
                one.title(),
                pack,
                portable,
                portable / pack,
                arithmetic.stream().mapToInt(String::length).sum());
        System.out.print(line);
        table.append(line);
      }
    }
    write(Path.of(args[1]), table.toString());
    System.exit(0);
  }

  private static void write(Path page, String table) throws IOException {
    Files.writeString(
        page,
        """
        # What a recalculation costs in the office

        Measured on %s with %d processors, Java %s, by

            mvn -Pbench-samples -pl sample-sheets -am verify -DskipTests

        %,d rows in LibreOffice Calc with the extension installed, all recalculated at once; median of
        %d runs, pack calls and portable formulas in the same run. Every 97th result was compared with
        Java's before its figure was written here, a pack call's to 1e-9, a portable one's to its bound.

        | columns | pack, s | portable, s | portable / pack | characters |
        | --- | --- | --- | --- | --- |
        %s"""
            .formatted(
                LocalDate.now(),
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("java.version"),
                ROWS,
                ROUNDS,
                table));
  }

  private static double gravityInWash(double[] row) {
    return calc("CORRECTEDGRAVITY", row[0], row[2], 20.0, ORIGINAL_GRAVITY);
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
      Book book, Case one, double[][] rows, List<String> formulas, boolean exactly) {
    char last = (char) ('D' + formulas.size() - 1);
    for (int c = 0; c < formulas.size(); c++) {
      book.formula((char) ('D' + c) + "1", "=" + formulas.get(c).replace(',', ';'));
    }
    String area = "D1:" + last + ROWS;
    UnoRuntime.queryInterface(XCellSeries.class, book.sheet().getCellRangeByName(area))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
    double[] seconds = new double[ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      long start = System.nanoTime();
      book.recalculate();
      seconds[round] = (System.nanoTime() - start) / 1e9;
    }
    Object[][] values = book.data(area);
    for (int i = 0; i < ROWS; i += 97) {
      for (int c = 0; c < formulas.size(); c++) {
        Column column = one.columns().get(c);
        double exact = column.exact().of(rows[i]);
        double bound = exactly ? 1e-9 * Math.max(1, Math.abs(exact)) : column.bound();
        if (!(values[i][c] instanceof Double got) || !(Math.abs(got - exact) <= bound)) {
          throw new IllegalStateException(
              one.title()
                  + ", "
                  + formulas.get(c)
                  + ", row "
                  + (i + 1)
                  + ": "
                  + values[i][c]
                  + ", not "
                  + exact);
        }
      }
    }
    Arrays.sort(seconds);
    return seconds[ROUNDS / 2];
  }
}
