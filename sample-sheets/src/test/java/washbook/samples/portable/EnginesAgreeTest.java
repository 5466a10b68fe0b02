package washbook.samples.portable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.functions.Answer;
import washbook.samples.Office;

/**
 * The very same portable formulas in three engines that are not ours: the office without the
 * extension, a Java library and a JavaScript library. Each must agree with what Java computes from
 * the formulas' own arithmetic, guards included.
 */
class EnginesAgreeTest {
  private static final double AGREEMENT = 1e-9;
  private static final int FORMULA = PortableCase.COLUMNS;

  @TempDir static Path folder;
  private static List<PortableCase> cases;
  private static Path workbook;

  @BeforeAll
  static void writeTheSheet() throws Exception {
    cases = PortableCase.all();
    workbook = folder.resolve("cases.xlsx");
    try (Workbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("cases");
      for (int r = 0; r < cases.size(); r++) {
        Row row = sheet.createRow(r);
        List<Object> cells = cases.get(r).cells();
        for (int c = 0; c < cells.size(); c++) {
          if (cells.get(c) instanceof Double number) {
            row.createCell(c).setCellValue(number);
          } else if (cells.get(c) instanceof String text) {
            row.createCell(c).setCellValue(text);
          }
        }
        row.createCell(FORMULA).setCellFormula(cases.get(r).formula());
      }
      try (OutputStream out = Files.newOutputStream(workbook)) {
        book.write(out);
      }
    }
  }

  @Test
  void thereAreCasesOfEveryKind() {
    long numbers = cases.stream().filter(c -> c.expected() instanceof Answer.Number).count();
    long blanks = cases.stream().filter(c -> c.expected() instanceof Answer.Text).count();
    long refused = cases.stream().filter(c -> c.expected() instanceof Answer.Refusal).count();
    assertTrue(
        numbers > 600 && blanks > 50 && refused > 100, numbers + " " + blanks + " " + refused);
  }

  @Test
  void theJavaLibraryAgrees() throws IOException {
    try (Workbook book = WorkbookFactory.create(workbook.toFile(), null, true)) {
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      compare(
          r -> {
            CellValue value = evaluator.evaluate(book.getSheetAt(0).getRow(r).getCell(FORMULA));
            return switch (value.getCellType()) {
              case NUMERIC -> value.getNumberValue();
              case STRING -> value.getStringValue();
              default -> FormulaError.forInt(value.getErrorValue()).getString();
            };
          });
    }
  }

  @Test
  void theOfficeWithoutTheExtensionAgrees() throws Exception {
    Path computed = Files.createDirectory(folder.resolve("office"));
    Office.convert(List.of(workbook), "xlsx", computed);
    try (Workbook book =
        WorkbookFactory.create(computed.resolve("cases.xlsx").toFile(), null, true)) {
      compare(
          r -> {
            Cell cell = book.getSheetAt(0).getRow(r).getCell(FORMULA);
            CellType type = cell.getCachedFormulaResultType();
            return switch (type) {
              case NUMERIC -> cell.getNumericCellValue();
              case STRING -> cell.getStringCellValue();
              default -> FormulaError.forInt(cell.getErrorCellValue()).getString();
            };
          });
    }
  }

  @Test
  void theScriptLibraryAgrees() throws Exception {
    Path engine = engine();
    List<List<Object>> rows = new ArrayList<>();
    for (PortableCase one : cases) {
      List<Object> row = new ArrayList<>(one.cells());
      row.add("=" + one.formula());
      rows.add(row);
    }
    Path given = folder.resolve("rows.json");
    Path got = folder.resolve("values.json");
    Files.writeString(given, new GsonBuilder().serializeNulls().create().toJson(rows));
    run(engine, "node", "evaluate.cjs", given.toString(), got.toString());
    JsonArray values = new Gson().fromJson(Files.readString(got), JsonArray.class);
    compare(
        r -> {
          JsonElement value = values.get(r).getAsJsonArray().get(FORMULA);
          if (value.isJsonObject()) {
            String error = value.getAsJsonObject().get("error").getAsString();
            return error.equals("NA") ? "#N/A" : error;
          }
          return value.getAsJsonPrimitive().isNumber()
              ? (Object) value.getAsDouble()
              : value.getAsString();
        });
  }

  /** Installs the pinned engine below target/, once. */
  private static Path engine() throws IOException, InterruptedException {
    Path engine = Path.of("target", "further-engine").toAbsolutePath();
    Files.createDirectories(engine);
    for (String name : List.of("package.json", "package-lock.json", "evaluate.cjs")) {
      Path from = Path.of("src/test/resources/portable", name);
      Files.copy(from, engine.resolve(name), StandardCopyOption.REPLACE_EXISTING);
    }
    if (!Files.isDirectory(engine.resolve("node_modules/hyperformula"))) {
      run(engine, "npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund");
    }
    return engine;
  }

  private static void run(Path where, String... command) throws IOException, InterruptedException {
    Path log = Files.createTempFile(folder, "run", ".log");
    Process process;
    try {
      process =
          new ProcessBuilder(command)
              .directory(where.toFile())
              .redirectErrorStream(true)
              .redirectOutput(log.toFile())
              .start();
    } catch (IOException e) {
      String lacks = command[0] + " is needed: apt-get install nodejs npm";
      if (System.getenv("CI") == null) {
        Assumptions.abort(lacks);
      }
      throw new IOException(lacks, e);
    }
    try {
      assertTrue(process.waitFor(4, TimeUnit.MINUTES), () -> command[0] + " does not end");
      assertEquals(0, process.exitValue(), () -> read(log));
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
  }

  private static String read(Path log) {
    try {
      return Files.readString(log);
    } catch (IOException e) {
      return "" + e;
    }
  }

  private interface Results {
    Object of(int row);
  }

  private static void compare(Results results) {
    List<String> wrong = new ArrayList<>();
    for (int r = 0; r < cases.size(); r++) {
      PortableCase one = cases.get(r);
      Object got = results.of(r);
      if (!agrees(one.expected(), got)) {
        wrong.add(
            one.cells()
                + " expected "
                + one.expected()
                + " got "
                + got
                + " from "
                + one.formula().substring(0, Math.min(200, one.formula().length())));
      }
    }
    assertTrue(
        wrong.isEmpty(),
        () ->
            wrong.size()
                + " rows differ, as "
                + String.join("\n", wrong.subList(0, Math.min(8, wrong.size()))));
  }

  private static boolean agrees(Answer expected, Object got) {
    if (expected instanceof Answer.Number number) {
      return got instanceof Double value
          && Math.abs(value - number.value()) <= AGREEMENT * Math.max(1, Math.abs(number.value()));
    }
    return got.equals(expected instanceof Answer.Text ? "" : "#N/A");
  }
}
