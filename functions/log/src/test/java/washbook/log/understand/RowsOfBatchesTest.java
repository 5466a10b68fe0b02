package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Understanding;

/**
 * Which rows make a batch, in which order, and what is asked. The tables are in batches.csv: lines
 * of a map (divided by +), rows of a log (by a semicolon, their cells by ^), and the batches with
 * their rows as the sheet counts them.
 */
class RowsOfBatchesTest {
  @ParameterizedTest
  @CsvFileSource(
      resources = "batches.csv",
      delimiter = '!',
      quoteCharacter = '`',
      maxCharsPerColumn = 10000)
  void aBatchIsMadeOfItsRowsInTheOrderOfTime(String map, String log, String told) {
    assertEquals(told, told(map == null ? "" : map, log));
  }

  static String told(String map, String log) {
    Understanding sheet = TabledLogs.understood(map, log);
    String batches =
        sheet.tables().stream()
            .flatMap(table -> table.batches().stream())
            .map(RowsOfBatchesTest::told)
            .collect(Collectors.joining(", "));
    return (batches + TabledLogs.asks(sheet)).strip();
  }

  private static String told(Batch batch) {
    String original =
        batch.originalGravity().isPresent()
            ? Numbers.fixed(batch.originalGravity().getAsDouble(), 4)
            : "unknown";
    return batch.name()
        + " "
        + original
        + " ["
        + Arrays.stream(batch.rows())
            .mapToObj(row -> String.valueOf(row + 1))
            .collect(Collectors.joining(" "))
        + "]";
  }
}
