package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/**
 * Which original gravity each batch has, by what stands above a log and by how late it begins, and
 * all that is asked. The tables are in originals.csv: lines of a map, rows of a log (divided by a
 * semicolon, their cells by ^), and what is understood.
 */
class OriginalsAndLateStartsTest {
  @ParameterizedTest
  @CsvFileSource(
      resources = "originals.csv",
      delimiter = '!',
      quoteCharacter = '`',
      maxCharsPerColumn = 10000)
  void anOriginalGravityIsKnownUnknownOrAskedFor(String map, String log, String told) {
    Understanding sheet =
        SheetUnderstanding.understand(
            TestGrid.of("Cellar", log.replace('^', '|').replace(" ;", "\n")),
            LogMap.parse(map == null ? "" : map));
    String batches =
        sheet.tables().stream()
            .flatMap(table -> table.batches().stream())
            .map(batch -> batch.name() + " " + original(batch))
            .collect(Collectors.joining(", "));
    String asks =
        sheet.doubts().stream()
            .map(
                doubt ->
                    " asks "
                        + doubt.cell()
                        + " "
                        + doubt.answers().stream()
                            .map(answer -> String.join("+", answer.lines()))
                            .collect(Collectors.joining(" or ")))
            .collect(Collectors.joining());
    assertEquals(told, (batches + asks).strip());
  }

  private static String original(Batch batch) {
    return batch.originalGravity().isPresent()
        ? Numbers.fixed(batch.originalGravity().getAsDouble(), 4)
        : "unknown";
  }
}
