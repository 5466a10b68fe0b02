package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import washbook.functions.Numbers;
import washbook.functions.liquid.WashKind;
import washbook.log.Batch;
import washbook.log.Doubt;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.OriginalGravity;
import washbook.log.Understanding;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.TestGrid;

/**
 * Logs as people lay them out, with what a person makes of each: columns, batches with their rows
 * and original gravity, what is said above the table, and what has to be asked. They stand in
 * {@code understood-logs.txt}.
 */
class UnderstoodLogsTest {
  private static final String LOGS = "understood-logs.txt";

  static Stream<Arguments> logs() throws IOException {
    try (InputStream file = UnderstoodLogsTest.class.getResourceAsStream(LOGS)) {
      assertNotNull(file, LOGS);
      String all = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      return Arrays.stream(all.split("(?m)^== "))
          .skip(1)
          .map(UnderstoodLogsTest::log)
          .toList()
          .stream();
    }
  }

  private static Arguments log(String block) {
    int first = block.indexOf('\n');
    int told = block.indexOf("\n--\n");
    return Arguments.of(
        block.substring(0, first), block.substring(first + 1, told), block.substring(told + 4));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("logs")
  void isUnderstoodAsAPersonDoes(String name, String log, String expected) {
    assertEquals(
        expected.strip(),
        told(SheetUnderstanding.understand(TestGrid.of(name, log), LogMap.none())).strip(),
        name);
  }

  private static String told(Understanding sheet) {
    StringJoiner told = new StringJoiner("\n");
    for (LogTable table : sheet.tables()) {
      told.add(table.range() + (table.settled() ? "" : " open") + settings(table.settings()));
      for (LogColumn column : table.columns()) {
        told.add(
            (CellAddress.letters(column.column()) + " " + column.role() + " " + column.unit())
                .strip());
      }
      table.batches().forEach(batch -> told.add(batch(batch)));
    }
    sheet.doubts().forEach(doubt -> told.add(question(doubt)));
    sheet.leftAlone().forEach(alone -> told.add("left alone " + alone.cell()));
    return told.toString();
  }

  private static String settings(LogSettings settings) {
    StringJoiner told = new StringJoiner("");
    if (settings.correctedAlready()) {
      told.add(", corrected");
    } else if (!Double.isNaN(settings.temperatureC())) {
      told.add(", at " + Numbers.fixed(settings.temperatureC(), 1) + " °C");
    }
    if (settings.calibrationC() != LogSettings.USUAL_CALIBRATION) {
      told.add(", calibrated at " + Numbers.fixed(settings.calibrationC(), 2) + " °C");
    }
    if (settings.offset() != 0) {
      told.add(", offset " + settings.offset());
    }
    if (settings.refractometerFactor() != 1) {
      told.add(", factor " + settings.refractometerFactor());
    }
    if (!Double.isNaN(settings.volumeL())) {
      told.add(", volume " + Numbers.fixed(settings.volumeL(), 2) + " L");
    }
    if (!settings.wash().kind().equals(WashKind.MALT)) {
      told.add(", " + settings.wash().kind().word().toLowerCase(Locale.ROOT));
    }
    return told.toString();
  }

  private static String batch(Batch batch) {
    String rows =
        Arrays.stream(batch.rows()).mapToObj(r -> "" + (r + 1)).collect(Collectors.joining(" "));
    String original =
        batch.originalGravity().isPresent()
            ? Numbers.fixed(batch.originalGravity().getAsDouble(), 4)
            : "unknown";
    String from =
        batch.original() instanceof OriginalGravity.Stated
            ? "stated"
            : batch.original() instanceof OriginalGravity.FirstReading ? "first reading" : "";
    return ("batch " + batch.name() + ": rows " + rows + ", " + original + " " + from).strip()
        + (batch.isFed() ? ", fed" : "");
  }

  private static String question(Doubt doubt) {
    List<String> answers =
        doubt.answers().stream()
            .map(MapAnswer::lines)
            .map(lines -> String.join(" with ", lines))
            .toList();
    return ("asks " + doubt.cell() + ": " + String.join(" / ", answers)).strip();
  }
}
