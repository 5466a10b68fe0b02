package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Understanding;
import washbook.log.language.Language;

/**
 * What came into a wash after its first reading: the original gravity from each position on, why
 * none is known, and what is asked. The tables are in feeds.csv: lines of a map (divided by +),
 * rows of a log (by a semicolon, their cells by ^), and what is understood.
 */
class FeedsAndRisesTest {
  @ParameterizedTest
  @CsvFileSource(
      resources = "feeds.csv",
      delimiter = '!',
      quoteCharacter = '`',
      maxCharsPerColumn = 10000)
  void whatIsPutInCountsFromItsReadingOn(String map, String log, String told) {
    Understanding sheet = TabledLogs.understood(map, log);
    String batches =
        sheet.tables().stream()
            .flatMap(table -> table.batches().stream())
            .map(FeedsAndRisesTest::batch)
            .collect(Collectors.joining(", "));
    assertEquals(told, (batches + TabledLogs.asksWithRemarks(sheet)).strip());
  }

  private static String batch(Batch batch) {
    return batch.name()
        + " "
        + figure(batch.originalGravity(), 4, "unknown")
        + batch.steps().stream().map(FeedsAndRisesTest::step).collect(Collectors.joining());
  }

  private static String step(Batch.Step step) {
    String from = " " + step.fromPosition() + ":";
    if (step.isSlip()) {
      return from + "slip";
    }
    String brix = figure(step.originalBrix(), 2, "");
    return step.originalGravity().isEmpty()
        ? from + "unknown (" + step.missing().in(Language.EN) + ")"
        : from + figure(step.originalGravity(), 4, "") + (brix.isEmpty() ? "" : "/" + brix);
  }

  private static String figure(OptionalDouble figure, int digits, String none) {
    return figure.isPresent() ? Numbers.fixed(figure.getAsDouble(), digits) : none;
  }
}
