package washbook.office.bench;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import washbook.office.testing.Book;
import washbook.office.testing.Office;

/**
 * What single edits of a log cost on the office's main thread, what the command for portable
 * workbooks costs, and what a million calls leave in memory. Prints lines of a table.
 */
public final class EditBench {
  private static final int EDITS = 21;

  private final Office office;

  private EditBench(Office office) {
    this.office = office;
  }

  /** Takes the packed extension. */
  public static void main(String[] arguments) throws Exception {
    try (Office office = Office.with(Path.of(arguments[0]))) {
      EditBench bench = new EditBench(office);
      bench.wholeColumns(1_000);
      bench.wholeColumns(10_000);
      bench.typing(10_000);
      bench.originalGravity(2_000);
    }
    try (Office office = Office.with(Path.of(arguments[0]))) {
      new EditBench(office).undone(20_000);
    }
    try (Office office = Office.with(Path.of(arguments[0]))) {
      new EditBench(office).portable(10_000);
    }
    try (Office office = Office.with(Path.of(arguments[0]))) {
      new EditBench(office).millionCalls();
    }
    System.exit(0);
  }

  private Book log(int rows) {
    Book book = office.newBook();
    Object[][] readings = new Object[rows + 1][];
    readings[0] = new Object[] {"Day", "SG", "Temp °C"};
    for (int i = 0; i < rows; i++) {
      readings[i + 1] = new Object[] {i / 10.0, 1.085 - 0.08 * i / rows, 18 + i % 60 / 10.0};
    }
    return book.data("A1:C" + (rows + 1), readings);
  }

  private void wholeColumns(int rows) {
    try (Book used = log(rows);
        Book whole = log(rows)) {
      int last = rows + 1;
      used.formula("F2", "=WASHBOOK.FERMENTRATE(A2:A" + last + ";B2:B" + last + ")");
      whole.formula("F2", "=WASHBOOK.FERMENTRATE(A:A;B:B)");
      double[][] millis = new double[2][EDITS];
      for (int i = 0; i < EDITS; i++) {
        millis[0][i] = edit(used, "B500", 1.07 + i * 1e-5);
        millis[1][i] = edit(whole, "B500", 1.07 + i * 1e-5);
        require(used.number("F2") == whole.number("F2"));
      }
      say("an edit, FERMENTRATE of %d rows, their range: %.1f ms", rows, median(millis[0]));
      say("an edit, FERMENTRATE of %d rows, whole columns: %.1f ms", rows, median(millis[1]));
    }
  }

  private void typing(int rows) {
    try (Book book = sixColumns(rows)) {
      double[] millis = new double[EDITS];
      for (int i = 0; i < EDITS; i++) {
        millis[i] = edit(book, "B" + (rows / 2 + i), 1.03 + i * 1e-4);
      }
      say("a reading typed, %d rows with 6 columns of functions: %.1f ms", rows, median(millis));
    }
    try (Book book = filled(rows)) {
      double[] millis = new double[EDITS];
      for (int i = 0; i < EDITS; i++) {
        millis[i] = edit(book, "B" + (rows / 2 + i), 1.03 + i * 1e-4);
      }
      say("a reading typed, %d rows filled with formulas: %.1f ms", rows, median(millis));
    }
  }

  private void originalGravity(int rows) {
    try (Book book = sixColumns(rows)) {
      gravityChanged(book, "E1", rows + " rows, 6 columns of functions, 3 with it");
    }
    try (Book book = filled(rows)) {
      gravityChanged(book, "B2", rows + " rows filled with formulas");
    }
  }

  private void gravityChanged(Book book, String cell, String what) {
    double[] millis = new double[EDITS];
    double[] cpu = new double[EDITS];
    for (int i = 0; i < EDITS; i++) {
      double before = cpuMillis();
      millis[i] = edit(book, cell, 1.085 + i * 1e-4);
      cpu[i] = cpuMillis() - before;
    }
    say(
        "original gravity changed, %s: %.0f ms, %.0f ms of processor time",
        what, median(millis), median(cpu));
  }

  /** The log with functions beside it, the original gravity in one cell. */
  private Book sixColumns(int rows) {
    Book book = log(rows);
    book.number("E1", 1.085);
    String[] formulas = {
      "=WASHBOOK.CORRECTEDGRAVITY(B2;C2)",
      "=WASHBOOK.ABV($E$1;B2)",
      "=WASHBOOK.ABVPLUSMINUS($E$1;B2)",
      "=WASHBOOK.APPARENTATTENUATION($E$1;B2)",
      "=WASHBOOK.CONVERT(B2;\"SG\";\"PLATO\")",
      "=WASHBOOK.CORRECTEDGRAVITY(B2;C2;15)"
    };
    for (int i = 0; i < formulas.length; i++) {
      char column = (char) ('F' + i);
      fillDown(book, column + "2", formulas[i], column + "2:" + column + (rows + 1));
      require(book.error(column + "2") == 0);
    }
    return book;
  }

  private Book filled(int rows) {
    Book book = log(rows);
    long start = System.nanoTime();
    String said = String.valueOf(book.dispatch("washbook.office:fill?ask=no&as=pack"));
    double seconds = (System.nanoTime() - start) / 1e9;
    require(book.cell("E3").getFormula().contains("WASHBOOK"));
    require(!said.isBlank());
    say("%d rows filled with formulas by the menu: %.1f s", rows, seconds);
    return book;
  }

  /**
   * Formulas that the menu has written are taken back and put back, then an edit calculates all.
   */
  private void undone(int rows) throws Exception {
    try (Book book = filled(rows)) {
      XUndoManager undo = book.as(XUndoManagerSupplier.class).getUndoManager();
      Object[][] before = book.data("D2:H" + (rows + 1));
      say("undo of %d rows of formulas: %s", rows, seconds(undo::undo));
      require(book.shown("E3").isEmpty());
      say("redo of %d rows of formulas: %s", rows, seconds(undo::redo));
      require(Arrays.deepEquals(before, book.data("D2:H" + (rows + 1))));
      double processor = cpuMillis();
      double millis = edit(book, "B2", 1.0851);
      say(
          "first reading changed after redo, %d rows: %.1f s, %.1f s of processor time",
          rows, millis / 1000, (cpuMillis() - processor) / 1000);
      require(!Arrays.deepEquals(before, book.data("D2:H" + (rows + 1))));
      say("a reading typed after redo: %.1f ms", edit(book, "B" + rows / 2, 1.03));
    }
  }

  private interface Step {
    void run() throws com.sun.star.uno.Exception;
  }

  private String seconds(Step step) {
    double processor = cpuMillis();
    long[] nanos = new long[1];
    office.onMainThread(
        () -> {
          long start = System.nanoTime();
          try {
            step.run();
          } catch (com.sun.star.uno.Exception e) {
            throw new IllegalStateException(e);
          }
          nanos[0] = System.nanoTime() - start;
        });
    return String.format(
        Locale.ROOT,
        "%.1f s, %.1f s of processor time",
        nanos[0] / 1e9,
        (cpuMillis() - processor) / 1e3);
  }

  private void portable(int rows) throws Exception {
    try (Book book = log(rows)) {
      book.number("E1", 1.085);
      String last = String.valueOf(rows + 1);
      fillDown(book, "F2", "=WASHBOOK.CORRECTEDGRAVITY(B2;C2)", "F2:F" + last);
      fillDown(book, "G2", "=WASHBOOK.ABV($E$1;B2)", "G2:G" + last);
      fillDown(book, "H2", "=WASHBOOK.ABV($E$1;F2)", "H2:H" + last);
      fillDown(book, "I2", "=WASHBOOK.APPARENTATTENUATION($E$1;B2)", "I2:I" + last);
      double before = residentMegabytes();
      long start = System.nanoTime();
      String said = String.valueOf(book.dispatch("washbook.office:portable?ask=no"));
      double seconds = (System.nanoTime() - start) / 1e9;
      double after = residentMegabytes();
      require(!book.cell("I" + last).getFormula().contains("WASHBOOK"));
      say(
          "portable, %d rows of 4 formulas: %.1f s, memory %.0f MB before, %.0f after, most %.0f",
          rows, seconds, before, after, mostMegabytes());
      say("  it said: %s", said.lines().findFirst().orElse(""));
    }
    pause(20);
    say("  20 s after the document was closed: %.0f MB", residentMegabytes());
  }

  private void millionCalls() throws Exception {
    int rows = 100_000;
    try (Book book = log(rows)) {
      fillDown(book, "F2", "=WASHBOOK.ABV(1.09;B2)", "F2:F" + (rows + 1));
      say("100,000 calls: %.0f MB; %s", residentMegabytes(), heap());
      for (int tens = 1; tens <= 3; tens++) {
        for (int i = 0; i < 10; i++) {
          office.onMainThread(book::recalculate);
        }
        say("%d,100,000 calls: %.0f MB; %s", tens, residentMegabytes(), heap());
      }
      pause(20);
      say("20 s later: %.0f MB; %s", residentMegabytes(), heap());
      jcmd("GC.run");
      say("all garbage collected: %.0f MB; %s", residentMegabytes(), heap());
    }
  }

  private static void fillDown(Book book, String first, String formula, String range) {
    book.formula(first, formula);
    UnoRuntime.queryInterface(XCellSeries.class, book.sheet().getCellRangeByName(range))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
  }

  /** Sets a cell and has what depends on it calculated, which else waits until it is shown. */
  private double edit(Book book, String cell, double value) {
    long[] nanos = new long[1];
    office.onMainThread(
        () -> {
          long start = System.nanoTime();
          book.number(cell, value);
          book.as(XCalculatable.class).calculate();
          nanos[0] = System.nanoTime() - start;
        });
    return nanos[0] / 1e6;
  }

  private ProcessHandle program() {
    return office.processes().stream()
        .filter(p -> p.info().command().orElse("").endsWith("soffice.bin"))
        .findFirst()
        .orElseThrow();
  }

  private double cpuMillis() {
    return program().info().totalCpuDuration().map(Duration::toMillis).orElseThrow();
  }

  private double residentMegabytes() throws IOException {
    return status("VmRSS");
  }

  private double mostMegabytes() throws IOException {
    return status("VmHWM");
  }

  private double status(String key) throws IOException {
    return Files.readAllLines(Path.of("/proc/" + program().pid() + "/status")).stream()
        .filter(line -> line.startsWith(key + ":"))
        .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
        .findFirst()
        .orElseThrow();
  }

  private String heap() throws Exception {
    return jcmd("GC.heap_info")
        .lines()
        .filter(l -> l.contains("heap"))
        .findFirst()
        .orElse("?")
        .strip();
  }

  private String jcmd(String command) throws Exception {
    Process process =
        new ProcessBuilder("jcmd", String.valueOf(program().pid()), command)
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return said;
  }

  private static void pause(int seconds) throws InterruptedException {
    TimeUnit.SECONDS.sleep(seconds);
  }

  private static double median(double... values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static void say(String line, Object... values) {
    System.out.printf(Locale.ROOT, line + "%n", values);
  }

  private static void require(boolean condition) {
    if (!condition) {
      throw new IllegalStateException("the result is wrong");
    }
  }
}
