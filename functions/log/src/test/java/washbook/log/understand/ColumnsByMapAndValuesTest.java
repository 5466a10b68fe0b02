package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import washbook.log.LogColumn;
import washbook.log.Understanding;
import washbook.log.language.Language;

/**
 * What each column is taken for, why where it is not by its header, and what is asked. The tables
 * are in columns.csv: lines of a map (divided by +), rows of a log (by a semicolon, their cells by
 * ^), and what is understood.
 */
class ColumnsByMapAndValuesTest {
  @ParameterizedTest
  @CsvFileSource(
      resources = "columns.csv",
      delimiter = '!',
      quoteCharacter = '`',
      maxCharsPerColumn = 10000)
  void aColumnIsWhatMapHeaderAndValuesSay(String map, String log, String told) {
    Understanding sheet = TabledLogs.understood(map, log);
    String columns =
        sheet.tables().stream()
            .flatMap(table -> table.columns().stream())
            .map(ColumnsByMapAndValuesTest::told)
            .collect(Collectors.joining(", "));
    assertEquals(told, columns + TabledLogs.asksWithRemarks(sheet));
  }

  private static String told(LogColumn column) {
    String why = column.why().in(Language.EN);
    boolean usual = why.equals("by its header") || why.equals("its header names nothing of a log");
    return (column.role() + " " + column.unit()).strip() + (usual ? "" : ": " + why);
  }
}
