package washbook.office.bench;

import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.Function;
import washbook.office.testing.Book;
import washbook.office.testing.Office;

/**
 * What a call from Calc costs, against a formula of Calc's own in the same run. Every result is
 * compared with Java's before a figure is written down.
 */
public final class CalcBench {
  private static final int ROWS = 100_000;
  private static final int RUNS = 3;
  private static final String LAST = String.valueOf(ROWS);
  private static final String NATIVE =
      "=1+A1*(0.1+A1*(0.2+A1*(0.3+B1*(0.4+B1*(0.5+A1*(0.6+B1*(0.7+A1*(0.8+B1*0.9))))))))";

  private final double[] gravities = new double[ROWS];
  private final double[] temperatures = new double[ROWS];
  private final StringBuilder table = new StringBuilder();
  private double nativeMicros;

  private CalcBench() {
    for (int i = 0; i < ROWS; i++) {
      gravities[i] = Math.round((1.0 + i * 0.0000008) * 1e7) / 1e7;
      temperatures[i] = 5 + i % 300 / 10.0;
    }
  }

  /** Takes the packed extension and the file to write. */
  public static void main(String[] arguments) throws IOException {
    CalcBench bench = new CalcBench();
    double first;
    try (Office office = Office.with(Path.of(arguments[0]))) {
      first = bench.firstCall(office);
      bench.run(office);
    }
    Files.writeString(Path.of(arguments[1]), bench.page(first));
    System.exit(0);
  }

  private double firstCall(Office office) {
    try (Book book = office.newBook()) {
      long start = System.nanoTime();
      book.formula("A1", "=WASHBOOK.ABV(1.085;1.01)");
      double seconds = (System.nanoTime() - start) / 1e9;
      require(book.number("A1") == java("ABV", 1.085, 1.01), "first call");
      return seconds;
    }
  }

  private void run(Office office) {
    nativeMicros = measure(office, "Calc's own, 19 terms", NATIVE, false, this::nativeFormula);
    row("Calc's own formula of 19 terms", nativeMicros);
    cells(office, "ABV, two gravities", "=WASHBOOK.ABV(1.09;A1)", this::abv);
    cells(
        office,
        "CORRECTEDGRAVITY, temperature tells blank from 0",
        "=WASHBOOK.CORRECTEDGRAVITY(A1;B1)",
        this::corrected);
    cells(
        office,
        "the same, temperature as a range of one cell",
        "=WASHBOOK.CORRECTEDGRAVITY(A1;B1:B1)",
        this::corrected);
    cells(
        office,
        "the same, guarded in the sheet",
        "=IF(COUNT(A1;B1)<2;\"\";WASHBOOK.CORRECTEDGRAVITY(A1;B1))",
        this::corrected);
    array(office, "ABV, one array formula", "=WASHBOOK.ABV(1.09;A1:A" + LAST + ")", this::abv);
    array(
        office,
        "CORRECTEDGRAVITY, one array formula",
        "=WASHBOOK.CORRECTEDGRAVITY(A1:A" + LAST + ";B1:B" + LAST + ")",
        this::corrected);
    inJava("ABV in Java alone", this::abv);
    inJava("CORRECTEDGRAVITY in Java alone", this::corrected);
  }

  private void cells(Office office, String what, String formula, Expected expected) {
    row(what, measure(office, what, formula, false, expected));
  }

  private void array(Office office, String what, String formula, Expected expected) {
    row(what, measure(office, what, formula, true, expected));
  }

  private double measure(
      Office office, String what, String formula, boolean array, Expected expected) {
    try (Book book = office.newBook()) {
      Object[][] data = new Object[ROWS][2];
      for (int i = 0; i < ROWS; i++) {
        data[i][0] = gravities[i];
        data[i][1] = temperatures[i];
      }
      book.data("A1:B" + LAST, data);
      String results = "C1:C" + LAST;
      if (array) {
        book.array(results, formula);
      } else {
        book.formula("C1", formula);
        UnoRuntime.queryInterface(XCellSeries.class, book.sheet().getCellRangeByName(results))
            .fillAuto(FillDirection.TO_BOTTOM, 1);
      }
      double[] micros = new double[RUNS];
      for (int run = 0; run < RUNS; run++) {
        long start = System.nanoTime();
        book.recalculate();
        micros[run] = (System.nanoTime() - start) / 1e3 / ROWS;
      }
      check(what, book.data(results), expected);
      Arrays.sort(micros);
      return micros[RUNS / 2];
    }
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
    Arrays.sort(micros);
    row(what, micros[RUNS / 2]);
  }

  private interface Expected {
    double value(double gravity, double temperature);
  }

  private final Function abv = Catalogue.get("ABV");
  private final Function corrected = Catalogue.get("CORRECTEDGRAVITY");

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

  private void row(String what, double micros) {
    String line =
        String.format(Locale.ROOT, "| %s | %.2f | %.1f |", what, micros, micros / nativeMicros);
    System.out.println(line);
    table.append(line).append('\n');
  }

  private String page(double firstCall) {
    return """
        # What a call from Calc costs

        Measured on %s with %d processors, Java %s, by

            mvn -Pbench-office -pl office-extension -am verify -DskipTests

        %,d rows, all recalculated at once; median of %d runs. Every result was compared with
        Java's, bit for bit, before its figure was written here. Other work on the machine counts
        in: compare the lines with each other.

        | formula | µs a row | times Calc's own |
        | --- | --- | --- |
        %s
        First call of a function in a new office, the start of Java included: %.2f s.
        """
        .formatted(
            LocalDate.now(),
            Runtime.getRuntime().availableProcessors(),
            System.getProperty("java.version"),
            ROWS,
            RUNS,
            table,
            firstCall);
  }
}
