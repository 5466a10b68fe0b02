package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.OriginalGravity;
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.OriginalGravity.Stated;
import washbook.log.OriginalGravity.Unknown;
import washbook.log.Understanding;
import washbook.log.language.Language;

/**
 * Which original gravity each batch has, by what stands above a log and by how late it begins, and
 * all that is asked. The tables are in originals.csv: lines of a map (divided by +), rows of a log
 * (by a semicolon, their cells by ^), and what is understood.
 */
class OriginalsAndLateStartsTest {
  @ParameterizedTest
  @CsvFileSource(
      resources = "originals.csv",
      delimiter = '!',
      quoteCharacter = '`',
      maxCharsPerColumn = 10000)
  void anOriginalGravityIsKnownUnknownOrAskedFor(String map, String log, String told) {
    Understanding sheet = TabledLogs.understood(map, log);
    String batches =
        sheet.tables().stream()
            .flatMap(table -> table.batches().stream())
            .map(batch -> batch.name() + " " + original(batch))
            .collect(Collectors.joining(", "));
    assertEquals(told, (batches + TabledLogs.asks(sheet)).strip());
  }

  private static String original(Batch batch) {
    OptionalDouble brix = batch.originalBrix();
    return told(batch.original())
        + (brix.isEmpty() ? "" : ", " + Numbers.fixed(brix.getAsDouble(), 2) + " °Bx");
  }

  private static String told(OriginalGravity original) {
    if (original instanceof Stated stated) {
      String number =
          stated
              .number()
              .map(n -> " (" + Numbers.show(n.shown()) + " " + n.scale() + ")")
              .orElse("");
      return Numbers.fixed(stated.sg(), 4) + " " + stated.cell() + number;
    }
    return original instanceof FirstReading first
        ? Numbers.fixed(first.sg(), 4) + " read in " + first.cell()
        : "unknown " + why((Unknown) original);
  }

  private static String why(Unknown unknown) {
    return unknown.cell() + " (" + unknown.missing().in(Language.EN) + ")";
  }
}
