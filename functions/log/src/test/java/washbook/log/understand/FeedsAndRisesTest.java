package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;

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
    Understanding sheet =
        SheetUnderstanding.understand(
            TestGrid.of("Cellar", log.replace('^', '|').replace(" ;", "\n")),
            LogMap.parse(map == null ? "" : map.replace(" + ", "\n")));
    String batches =
        sheet.tables().stream()
            .flatMap(table -> table.batches().stream())
            .map(FeedsAndRisesTest::batch)
            .collect(Collectors.joining(", "));
    String asked =
        sheet.doubts().stream().map(FeedsAndRisesTest::asked).collect(Collectors.joining());
    assertEquals(told, (batches + asked).strip());
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

  private static String asked(Doubt doubt) {
    return " asks "
        + doubt.cell()
        + " "
        + doubt.answers().stream()
            .map(FeedsAndRisesTest::answer)
            .collect(Collectors.joining(" or "));
  }

  private static String answer(MapAnswer answer) {
    String remark = answer.remark().in(Language.EN);
    return String.join("+", answer.lines()) + (remark.isEmpty() ? "" : " (" + remark + ")");
  }
}
