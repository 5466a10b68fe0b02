package washbook.office.bench;

import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.DoubleStream;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.office.testing.Book;
import washbook.office.testing.Office;

/**
 * What a call from Calc costs, against a formula of Calc's own in the same run: recalculated by
 * Calc on its main thread, as for a user; by the menu's command; and by Calc with an option for its
 * Java machine. The three take turns. Every result is compared with Java's before a figure is
 * written down.
 */
public final class CalcBench {
  private static final int ROWS = Integer.getInteger("washbook.bench.rows", 100_000);
  private static final int RUNS = Integer.getInteger("washbook.bench.runs", 5);
  private static final String LAST = String.valueOf(ROWS);
  private static final String OPTION =
      "-XX:+UnlockExperimentalVMOptions -XX:+DisablePrimordialThreadGuardPages";
  private static final String NATIVE =
      "=1+A1*(0.1+A1*(0.2+A1*(0.3+B1*(0.4+B1*(0.5+A1*(0.6+B1*(0.7+A1*(0.8+B1*0.9))))))))";

  private final double[] gravities = new double[ROWS];
  private final double[] temperatures = new double[ROWS];
  private final StringBuilder table = new StringBuilder();
  private final Office usual;
  private final Office tuned;

  private CalcBench(Office usual, Office tuned) {
    this.usual = usual;
    this.tuned = tuned;
    for (int i = 0; i < ROWS; i++) {
      gravities[i] = Math.round((1.0 + i * (0.08 / ROWS)) * 1e7) / 1e7;
      temperatures[i] = 5 + i % 300 / 10.0;
    }
  }

  /** Takes the packed extension and the file to write. */
  public static void main(String[] arguments) throws IOException {
    Path extension = Path.of(arguments[0]);
    try (Office usual = Office.with(extension);
        Office tuned = Office.with(extension, OPTION)) {
      CalcBench bench = new CalcBench(usual, tuned);
      double first = bench.firstCall();
      bench.run();
      Files.writeString(Path.of(arguments[1]), bench.page(first));
    }
    System.exit(0);
  }

  private double firstCall() {
    try (Book book = usual.newBook()) {
      long start = System.nanoTime();
      book.formula("A1", "=WASHBOOK.ABV(1.085;1.01)");
      double seconds = (System.nanoTime() - start) / 1e9;
      require(book.number("A1") == java("ABV", 1.085, 1.01), "first call");
      return seconds;
    }
  }

  private void run() {
    cells("Calc's own formula of 19 terms", NATIVE, this::nativeFormula);
    cells("ABV, two gravities", "=WASHBOOK.ABV(1.09;A1)", this::abv);
    cells(
        "CORRECTEDGRAVITY, temperature tells blank from 0",
        "=WASHBOOK.CORRECTEDGRAVITY(A1;B1)",
        this::corrected);
    cells(
        "the same, temperature as a range of one cell",
        "=WASHBOOK.CORRECTEDGRAVITY(A1;B1:B1)",
        this::corrected);
    cells(
        "the same, guarded in the sheet",
        "=IF(COUNT(A1;B1)<2;\"\";WASHBOOK.CORRECTEDGRAVITY(A1;B1))",
        this::corrected);
    array("ABV, one array formula", "=WASHBOOK.ABV(1.09;A1:A" + LAST + ")", this::abv);
    array(
        "CORRECTEDGRAVITY, one array formula",
        "=WASHBOOK.CORRECTEDGRAVITY(A1:A" + LAST + ";B1:B" + LAST + ")",
        this::corrected);
    inJava("ABV in Java alone", this::abv);
    inJava("CORRECTEDGRAVITY in Java alone", this::corrected);
  }

  private void cells(String what, String formula, Expected expected) {
    measure(what, formula, false, expected);
  }

  private void array(String what, String formula, Expected expected) {
    measure(what, formula, true, expected);
  }

  private void measure(String what, String formula, boolean array, Expected expected) {
    double[][] micros = new double[3][RUNS];
    try (Book book = sheet(usual, formula, array);
        Book other = sheet(tuned, formula, array)) {
      for (int run = 0; run < RUNS; run++) {
        micros[0][run] = time(usual, book, book::recalculate, expected);
        micros[1][run] = time(usual, book, () -> command(book), expected);
        micros[2][run] = time(tuned, other, other::recalculate, expected);
      }
      for (Book done : new Book[] {book, other}) {
        done.number("A1", gravities[0]).recalculate();
        check(what, done.data("C1:C" + LAST), expected);
      }
    }
    row(what, DoubleStream.of(median(micros[0]), median(micros[1]), median(micros[2])));
  }

  /** Calc recalculates nothing by itself in it. */
  private Book sheet(Office office, String formula, boolean array) {
    Book book = office.newBook();
    Object[][] data = new Object[ROWS][2];
    for (int i = 0; i < ROWS; i++) {
      data[i][0] = gravities[i];
      data[i][1] = temperatures[i];
    }
    book.data("A1:B" + LAST, data);
    book.as(XCalculatable.class).enableAutomaticCalculation(false);
    String results = "C1:C" + LAST;
    if (array) {
      book.array(results, formula);
    } else {
      book.formula("C1", formula);
      UnoRuntime.queryInterface(XCellSeries.class, book.sheet().getCellRangeByName(results))
          .fillAuto(FillDirection.TO_BOTTOM, 1);
    }
    return book;
  }

  private static void command(Book book) {
    book.dispatch("washbook.office:recalculate?ask=no");
  }

  /** Changes the first row so that only a recalculation brings the right result. */
  private double time(Office office, Book book, Runnable recalculation, Expected expected) {
    double changed = book.number("A1") == gravities[0] ? 1.07 : gravities[0];
    book.number("A1", changed);
    long start = System.nanoTime();
    office.onMainThread(recalculation);
    double micros = (System.nanoTime() - start) / 1e3 / ROWS;
    require(book.number("C1") == expected.value(changed, temperatures[0]), "not recalculated");
    return micros;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private void check(String what, Object[][] results, Expected expected) {
    for (int i = 0; i < ROWS; i++) {
      double value = expected.value(gravities[i], temperatures[i]);
      require(
          results[i][0] instanceof Double result && result == value,
          what + ", row " + (i + 1) + ": " + results[i][0] + " instead of " + value);
    }
  }

  private void inJava(String what, Expected expected) {
    double[] micros = new double[RUNS];
    double sum = 0;
    for (int run = 0; run < RUNS; run++) {
      long start = System.nanoTime();
      for (int i = 0; i < ROWS; i++) {
        sum += expected.value(gravities[i], temperatures[i]);
      }
      micros[run] = (System.nanoTime() - start) / 1e3 / ROWS;
    }
    require(sum > 0, what);
    row(what, DoubleStream.of(median(micros)));
  }

  private interface Expected {
    double value(double gravity, double temperature);
  }

  private final CatalogueFunction abv = Catalogue.get("ABV");
  private final CatalogueFunction corrected = Catalogue.get("CORRECTEDGRAVITY");

  private double abv(double gravity, double temperature) {
    return ((Answer.Number) abv.call(1.09, gravity)).value();
  }

  private double corrected(double gravity, double temperature) {
    return ((Answer.Number) corrected.call(gravity, temperature)).value();
  }

  private double nativeFormula(double a, double b) {
    return 1
        + a
            * (0.1
                + a
                    * (0.2
                        + a
                            * (0.3
                                + b
                                    * (0.4
                                        + b
                                            * (0.5
                                                + a * (0.6 + b * (0.7 + a * (0.8 + b * 0.9))))))));
  }

  private static double java(String name, Object... values) {
    return ((Answer.Number) Catalogue.get(name).call(values)).value();
  }

  private static void require(boolean right, String what) {
    if (!right) {
      throw new IllegalStateException("wrong answer: " + what);
    }
  }

  private void row(String what, DoubleStream micros) {
    StringBuilder line = new StringBuilder("| ").append(what).append(" |");
    micros.forEach(value -> line.append(String.format(Locale.ROOT, " %.2f |", value)));
    System.out.println(line);
    table.append(line).append('\n');
  }

  private String page(double firstCall) {
    return """
        # What a call from Calc costs

        Measured on %s with %d processors, Java %s, by

            mvn -Pbench-office -pl office-extension -am verify -DskipTests

        %,d rows, all recalculated at once on the office's main thread; microseconds a row,
        median of %d runs. The three ways took turns. Every result was compared with Java's, bit
        for bit, before its figure was written here. Other work on the machine counts in: compare
        the lines with each other.

        | formula | Calc recalculates | menu: Recalculate everything | Calc, with the option |
        | --- | --- | --- | --- |
        %s
        The option is `%s`,
        under Tools > Options > LibreOffice > Advanced > Parameters (one line each).

        First call of a function in a new office, the start of Java included: %.2f s.
        """
        .formatted(
            LocalDate.now(),
            Runtime.getRuntime().availableProcessors(),
            System.getProperty("java.version"),
            ROWS,
            RUNS,
            table,
            OPTION,
            firstCall);
  }
}
