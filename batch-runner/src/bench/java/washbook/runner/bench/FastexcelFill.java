package washbook.runner.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/**
 * The same job by fastexcel: its reader gives rows as a stream, its writer writes them into a new
 * workbook. The columns are known beforehand.
 */
final class FastexcelFill {
  private static final int FLUSHED_ROWS = 1_000;

  private FastexcelFill() {}

  /** Number of threads, folder of the logs, folder of the results. */
  public static void main(String[] arguments) throws Exception {
    EachFile.in(
        Path.of(arguments[1]),
        Path.of(arguments[2]),
        Integer.parseInt(arguments[0]),
        FastexcelFill::fill);
  }

  private static void fill(Path source, Path target) throws IOException {
    try (ReadableWorkbook book = new ReadableWorkbook(source.toFile());
        OutputStream out = new BufferedOutputStream(Files.newOutputStream(target), 1 << 16);
        Workbook result = new Workbook(out, "Bench", "1.0")) {
      result.setCompressionLevel(KnownColumns.DEFLATE_LEVEL);
      for (Sheet sheet : book.getSheets().toList()) {
        Worksheet to = result.newWorksheet(sheet.getName());
        try (Stream<Row> rows = sheet.openStream()) {
          copy(rows.iterator(), to);
        }
        to.finish();
      }
    }
  }

  private static void copy(Iterator<Row> rows, Worksheet to) throws IOException {
    KnownColumns columns = new KnownColumns();
    while (rows.hasNext()) {
      Row row = rows.next();
      int number = row.getRowNum() - 1;
      for (Cell cell : row) {
        put(cell, to, number);
      }
      int column = KnownColumns.FIRST_NEW;
      if (number == 0) {
        for (String header : KnownColumns.NEW_HEADERS) {
          to.value(0, column++, header);
        }
      } else {
        for (double filled :
            columns.fill(
                row.getCell(KnownColumns.BATCH).asString(),
                row.getCell(KnownColumns.GRAVITY).asNumber().doubleValue(),
                row.getCell(KnownColumns.TEMPERATURE).asNumber().doubleValue())) {
          to.value(number, column++, filled);
        }
      }
      if (number % FLUSHED_ROWS == 0) {
        to.flush();
      }
    }
  }

  private static void put(Cell cell, Worksheet to, int row) {
    if (cell == null || cell.getType() == CellType.EMPTY) {
      return;
    }
    int column = cell.getColumnIndex();
    if (cell.getType() == CellType.STRING) {
      to.value(row, column, cell.asString());
    } else {
      to.value(row, column, cell.asNumber());
      if (column == KnownColumns.DATE) {
        to.style(row, column).format(KnownColumns.DATE_FORMAT).set();
      }
    }
  }
}
