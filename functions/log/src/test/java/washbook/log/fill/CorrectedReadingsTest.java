package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Understanding;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Readings that are corrected already are not corrected again. */
class CorrectedReadingsTest {
  private static final String ROWS = " | Temp C\n0 | 1.085 | 30\n3 | 1.040 | 31\n6 | 1.010 | 29";

  private static List<Double> corrected(String text, String map) {
    TestGrid grid = TestGrid.of("Plum 3", text);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.parse(map));
    assertEquals(List.of(), understood.doubts());
    ColumnPatch patch =
        LogFiller.fill(grid, understood, FillOptions.usual()).patch().columns().get(0);
    return List.of(
        Math.round(1e4 * patch.cells().number(patch.firstRow())) / 1e4,
        Math.round(1e4 * patch.cells().number(patch.firstRow() + 2)) / 1e4);
  }

  private static final List<Double> AS_THEY_STAND = List.of(1.085, 1.01);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "SG corrected",
        "SG (temp corrected)",
        "Corrected gravity",
        "Dichte korrigiert",
        "Densit\u00e9 corrig\u00e9e",
        "Densidad corregida",
        "Densit\u00e0 corretta",
        "Densidade corrigida",
        "Dichtheid gecorrigeerd",
        "Digtheid gekorrigeer",
        "SG corr. 20 C"
      })
  void aHeaderThatSaysCorrectedHoldsBesideATemperatureColumn(String header) {
    assertEquals(AS_THEY_STAND, corrected("Day | " + header + ROWS, ""));
    assertEquals(AS_THEY_STAND, corrected("Day | " + header + ROWS, "column B = GRAVITY in SG"));
    assertEquals(AS_THEY_STAND, corrected("Day | " + header + ROWS, "corrected = yes"));
  }

  @Test
  void aKeyLineOrAMapThatSaysSoHoldsToo() {
    assertEquals(AS_THEY_STAND, corrected("All readings corrected\nDay | SG" + ROWS, ""));
    assertEquals(AS_THEY_STAND, corrected("Day | SG" + ROWS, "corrected = yes"));
  }

  @Test
  void theTwoAnswersToItsQuestionGiveDifferentNumbers() {
    String log = "Day | SG @ 20 C" + ROWS;
    TestGrid grid = TestGrid.of("Plum 3", log);
    assertEquals(1, SheetUnderstanding.understand(grid, LogMap.none()).doubts().size());
    assertEquals(AS_THEY_STAND, corrected(log, "corrected = yes"));
    assertEquals(List.of(1.0882, 1.0126), corrected(log, "corrected = no"));
  }

  /** Digits that no hydrometer shows, of a density relative to water at one temperature. */
  @ParameterizedTest
  @CsvSource({
    "SG 20/20, 1.0612, true",
    "dens_rel_20_20, 1.0612, true",
    "SG 60F/60F, 1.0612, true",
    "SG 20/20, 1.0610, false",
    "SG 20/20, 1.0615, false",
    "SG, 1.0612, false",
    "SG 20/60, 1.0612, false",
  })
  void aMeterMayHaveAllowedForTheTemperature(String header, String value, boolean asked) {
    double first = Double.parseDouble(value);
    StringBuilder log = new StringBuilder("Cider ferment\nDate | " + header + " | Temp C\n");
    for (int day = 0; day < 6; day++) {
      log.append(
          String.format(Locale.ROOT, "#2025-10-0%d | %.4f | 25%n", day + 1, first - 0.01 * day));
    }
    boolean open =
        SheetUnderstanding.understand(TestGrid.of("Cider", log.toString()), LogMap.none())
            .doubts()
            .stream()
            .anyMatch(doubt -> doubt.question().contains("corrected = no"));
    assertEquals(asked, open);
  }
}
