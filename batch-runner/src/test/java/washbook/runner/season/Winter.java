package washbook.runner.season;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A winter of 61 logs as three keepers write them: one a text table for each batch in German, one a
 * workbook for each batch in degrees Fahrenheit under a title, one a text table with two batches by
 * name. Nothing is random.
 */
final class Winter {
  static final int LOGS = 61;
  private static final int GERMAN = 20;
  private static final int WORKBOOKS = 21;
  private static final double SIXTY_F = (60 - 32) / 1.8;

  private static final String[] STATES = {
    "done", "stuck", "working", "slowing", "done", "lag", "done", "not falling"
  };

  private final LocalDate end;
  private final List<WinterBatch> batches = new ArrayList<>();
  private int made;

  /**
   * @param end the last day on which something is read
   */
  Winter(LocalDate end) {
    this.end = end;
  }

  /** Writes all logs below a folder; gives the batches by what is true of them. */
  List<WinterBatch> write(Path folder) throws IOException {
    for (int i = 1; i <= LOGS; i++) {
      if (i <= GERMAN) {
        german(Files.createDirectories(folder.resolve("cellar")), next("Pflaume " + i, "Plum"));
      } else if (i <= GERMAN + WORKBOOKS) {
        workbook(Files.createDirectories(folder.resolve("barn")), next("Apple " + i, "Apple"));
      } else {
        String kind = i % 2 == 0 ? "Sugar " : "Molasses ";
        byName(
            Files.createDirectories(folder.resolve("shed")),
            "book-" + i,
            List.of(next(kind + i + "a", kind), next(kind + i + "b", kind)));
      }
    }
    return batches;
  }

  private WinterBatch next(String name, String kind) {
    int number = made++;
    String kindOfCourse = STATES[number % STATES.length];
    // A table in which one of two batches never falls is asked about, as it should be.
    boolean alone = number < GERMAN + WORKBOOKS;
    String state = alone || !kindOfCourse.equals("not falling") ? kindOfCourse : "done";
    double original = 1.050 + number % 7 * 0.006;
    double dry = kind.startsWith("Molasses") ? 1.000 : 0.998;
    double ends =
        switch (state) {
          case "stuck" -> original - 0.030;
          case "not falling" -> original - 0.0005;
          default -> dry;
        };
    int days =
        switch (state) {
          case "done", "stuck" -> 15;
          case "working" -> 5;
          case "slowing" -> 7;
          case "lag" -> 2;
          default -> 6;
        };
    if (state.equals("lag")) {
      ends = original - 0.001;
    }
    String warning =
        switch (state) {
          case "stuck", "not falling" -> state;
          case "working" -> number % 16 == 2 ? "reading overdue" : "";
          case "done" -> number % 16 == 0 ? "too warm" : "";
          default -> "";
        };
    // Finished batches lie further back; the others were read on the last day.
    int back = state.equals("done") || state.equals("stuck") ? 5 + number : 0;
    back = warning.equals("reading overdue") ? 10 : back;
    LocalDate begin = end.minusDays(back + days);
    WinterBatch batch = new WinterBatch(name, begin, original, ends, days, state, warning);
    batches.add(batch);
    return batch;
  }

  private static void german(Path folder, WinterBatch batch) throws IOException {
    DateTimeFormatter date = DateTimeFormatter.ofPattern("dd.MM.yyyy");
    StringBuilder text = new StringBuilder("Datum;Maische;Spindel SG;Temperatur (\u00b0C);Notiz\n");
    for (int day = 0; day <= batch.lastDay(); day++) {
      text.append(batch.date(day).format(date)).append(';').append(batch.name()).append(';');
      text.append(
          String.format(
              Locale.GERMANY, "%.4f;%.1f;", batch.shown(day, 20), batch.temperatureC(day)));
      text.append(day == 0 ? "angesetzt" : "").append('\n');
    }
    Files.writeString(folder.resolve(batch.name() + ".csv"), text);
  }

  private static void workbook(Path folder, WinterBatch batch) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(folder.resolve(batch.name() + ".xlsx"))) {
      Sheet sheet = book.createSheet("Log");
      CellStyle dates = book.createCellStyle();
      dates.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
      sheet.createRow(0).createCell(0).setCellValue("Fermentation log: " + batch.name());
      sheet.createRow(1).createCell(0).setCellValue("Batch: " + batch.name());
      sheet.createRow(2).createCell(0).setCellValue("Hydrometer calibrated at 60 \u00b0F");
      Row heads = sheet.createRow(4);
      String[] words = {"Date", "Hydrometer (SG)", "Temp (\u00b0F)", "Notes"};
      for (int i = 0; i < words.length; i++) {
        heads.createCell(i).setCellValue(words[i]);
      }
      for (int day = 0; day <= batch.lastDay(); day++) {
        Row row = sheet.createRow(5 + day);
        row.createCell(0).setCellValue(batch.date(day));
        row.getCell(0).setCellStyle(dates);
        row.createCell(1).setCellValue(Math.rint(batch.shown(day, SIXTY_F) * 1e4) / 1e4);
        row.createCell(2).setCellValue(batch.temperatureC(day) * 1.8 + 32);
        if (day == 0) {
          row.createCell(3).setCellValue("pitched");
        }
      }
      book.write(out);
    }
  }

  private static void byName(Path folder, String name, List<WinterBatch> batches)
      throws IOException {
    StringBuilder text = new StringBuilder("Batch,Date,Gravity SG,Temp C,Remarks\n");
    for (WinterBatch batch : batches) {
      for (int day = 0; day <= batch.lastDay(); day++) {
        text.append(
            String.format(
                Locale.ROOT,
                "%s,%s,%.4f,%.1f,%s%n",
                batch.name(),
                batch.date(day),
                batch.shown(day, 20),
                batch.temperatureC(day),
                day == 0 ? "yeast in" : ""));
      }
    }
    Files.writeString(folder.resolve(name + ".csv"), text);
  }
}
