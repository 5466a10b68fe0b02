package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/** Figures in the lines above a log that may be its original gravity: what is asked first. */
class FiguresAboveLogsTest {
  private static String original(Batch batch) {
    return batch.originalGravity().isPresent()
        ? Numbers.fixed(batch.originalGravity().getAsDouble(), 4)
        : "unknown";
  }

  private static String told(String log) {
    Understanding sheet =
        SheetUnderstanding.understand(
            TestGrid.of("Cellar", log.replace('^', '|').replace(" ;", "\n")), LogMap.none());
    String batches =
        sheet.tables().stream()
            .flatMap(table -> table.batches().stream())
            .map(FiguresAboveLogsTest::original)
            .collect(Collectors.joining(" "));
    String asks =
        sheet.doubts().stream()
            .limit(1)
            .map(
                d ->
                    "asks "
                        + d.cell()
                        + ": "
                        + d.answers().stream()
                            .map(a -> String.join("+", a.lines()))
                            .collect(Collectors.joining(" or ")))
            .collect(Collectors.joining(", "));
    return (batches + " " + asks).strip();
  }

  private static final String SG = " ; Day^SG^Temp C ; 0^1.08^20 ; 4^1.05^20 ; 8^1.01^20";
  private static final String OECHSLE = " ; Day^°Oe^Temp C ; 0^80^20 ; 4^50^20 ; 8^10^20";
  private static final String BRIX = " ; Day^Hydrometer Brix^Temp C ; 0^19^20 ; 4^12^20 ; 8^2^20";
  private static final String UNIT = " ; Day^SG^Temp C ; 0^1.08 SG^20 ; 4^1.05 SG^20 ; 8^1.01^20";

  /** A number alike and higher is asked about whatever stands before it; a target is none. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Blorp factor^1.09 ! asks A1: original gravity = 1.09 SG or original gravity = first reading",
        "Blorp correction^1.09 ! asks A1: original gravity = 1.09 SG or original gravity = first reading",
        "Alcohol^1.09 ! asks A1: original gravity = 1.09 SG or original gravity = first reading",
        "Attenuation^1.09 ! asks A1: original gravity = 1.09 SG or original gravity = first reading",
        "Blorp^1.09 ! asks B1: original gravity = 1.09 SG or original gravity = first reading",
        "Blorp^1.2 ! 1.0800",
        "Blorp^1.199 ! asks B1: original gravity = 1.199 SG or original gravity = first reading",
        "Blorp^1.0807 ! asks B1: original gravity = 1.0807 SG or original gravity = first reading",
        "Final gravity^1.09 ! 1.0800",
        "Blorp^90^°Oe ! asks A1: original gravity = 1.09 SG or original gravity = first reading",
        "Blorp^90 ! 1.0800",
        "Blorp^22^°Bx ! asks A1: original gravity = 1.0919 SG or original gravity = first reading",
        "target 1.09 on Monday ! 1.0800",
        "Blorp^^1.09 ! asks A1: original gravity = 1.09 SG or original gravity = first reading",
        "Target^^1.09 ! 1.0800",
      })
  void aFigureAboveGravities(String line, String told) {
    assertEquals(told, told(line + SG));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Start: 90 ! asks A1: original gravity = 1.09 SG or original gravity = first reading",
        "Blorp^90 ! 1.0800",
        "Start °Oe: 90 ! 1.0900",
        "OG: 90 °Oe ! 1.0900",
        "OG: 90 ! 1.0900",
        "OG: 1.09 ! 1.0900",
        "Barrel 4 at 90 °Oe ! asks A1: original gravity = 1.09 SG or original gravity = first"
            + " reading",
        "Barrel 4 at 79 °Oe ! 1.0800",
      })
  void aFigureAboveDegreesOechsle(String line, String told) {
    assertEquals(told, told(line + OECHSLE));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "OG: 22 ! 1.0919",
        "OG: 22 °Bx ! 1.0919",
        "OG: 1.09 ! 1.0900",
        "Barrel 4 at 22 °Bx ! asks A1: original gravity = 1.0919 SG or original gravity = first"
            + " reading",
      })
  void aFigureAboveBrix(String line, String told) {
    assertEquals(told, told(line + BRIX));
  }

  /** The highest of readings with their unit in the cell counts as well. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Blorp^1.09 ! asks B1: original gravity = 1.09 SG or original gravity = first reading",
        "x ! 1.0800",
      })
  void aFigureAboveReadingsWithTheirUnit(String line, String told) {
    assertEquals(told, told(line + UNIT));
  }
}
