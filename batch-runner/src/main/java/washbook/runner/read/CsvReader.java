package washbook.runner.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import washbook.log.sheet.Grid;
import washbook.runner.file.ReadFile;
import washbook.runner.sheet.CompactGrid;
import washbook.runner.sheet.SheetReader;
import washbook.runner.sheet.Texts;

/**
 * Reads a text table as one sheet, named as its file. Numbers become numbers; dates, times and all
 * else stay texts, and nothing is ever a formula.
 */
public final class CsvReader implements SheetReader {

  @Override
  public List<Grid> read(Path file) throws IOException {
    CsvDialect dialect = CsvDetector.detect(file);
    CompactGrid grid = new CompactGrid(CompactGrid.withoutEnding(file), new Texts());
    try (InputStream in = ReadFile.stream(file)) {
      in.skipNBytes(dialect.prefixLength());
      CsvScanner scanner = new CsvScanner(in, dialect.charset(), dialect.separator());
      for (int row = 0; scanner.next(); row++) {
        for (int column = 0; column < scanner.fieldCount(); column++) {
          String text = scanner.text(column);
          double number = dialect.number(text);
          if (!Double.isNaN(number)) {
            grid.putNumber(row, column, number, false);
          } else if (!text.isBlank()) {
            grid.putText(row, column, text, false);
          }
        }
      }
    }
    return List.of(grid);
  }
}
