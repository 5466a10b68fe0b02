package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.Doubt;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.fill.ComputedTable;
import washbook.log.sheet.TestGrid;

/** Logs whose readings hang together in ways that only a second column, row or note tells. */
class OneWashReadTwiceTest {
  private static TestGrid grid(String log) {
    return TestGrid.of("Cellar", log);
  }

  private static Understanding understood(String log) {
    return SheetUnderstanding.understand(grid(log), LogMap.none());
  }

  private static double alcohol(String log, int table, int row) {
    LogTable of = understood(log).tables().get(table);
    return new ComputedTable(
            grid(log), of, EnumSet.of(ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV))
        .number(ComputedColumn.ABV, row);
  }

  private static final String TWICE_A_DAY =
      """
      Cider ferment
      | morning | | evening | |
      Date | SG | T | SG | T | by
      3/10/2025 | 1.060 | 20 | 1.058 | 20 | R
      4/10/2025 | 1.050 | 20 | 1.046 | 20 | K
      5/10/2025 | 1.030 | 20 | 1.024 | 20 | K
      6/10/2025 | 1.012 | 20 | 1.008 | 20 | R
      7/10/2025 | 1.004 | 20 | 1.002 | 20 | R
      8/10/2025 | 1.000 | 20 | 1.000 | 20 | R""";

  /** Read in the morning and in the evening: the morning's first is the evening's original too. */
  @Test
  void eveningsHaveTheOriginalGravityOfTheFirstMorning() {
    Understanding seen = understood(TWICE_A_DAY);
    assertEquals(List.of(), seen.doubts());
    assertEquals(2, seen.tables().size());
    for (LogTable table : seen.tables()) {
      assertEquals(1.060, table.batches().get(0).originalGravity().orElseThrow(), 1e-4);
    }
    assertEquals(alcohol(TWICE_A_DAY, 0, 8), alcohol(TWICE_A_DAY, 1, 8), 1e-9);
    assertTrue(alcohol(TWICE_A_DAY, 1, 3) > 0.2);
  }

  /** Who began in the evening has the evening's first reading as the original of both. */
  @Test
  void aFirstEveningIsTheOriginalOfTheMornings() {
    String log = TWICE_A_DAY.replace("3/10/2025 | 1.060 | 20", "3/10/2025 | | ");
    for (LogTable table : understood(log).tables()) {
      assertEquals(1.058, table.batches().get(0).originalGravity().orElseThrow(), 1e-4);
    }
  }

  @Test
  void theTimesOfDayMayStandInTheHeadersThemselves() {
    String log =
        """
        Cidre en fermentation
        Date | densité matin | temp | densité soir | temp
        3/10/2025 | 1,060 | 20 | 1,058 | 20
        4/10/2025 | 1,050 | 20 | 1,046 | 20
        5/10/2025 | 1,030 | 20 | 1,024 | 20
        6/10/2025 | 1,012 | 20 | 1,008 | 20
        7/10/2025 | 1,004 | 20 | 1,002 | 20""";
    Understanding seen = understood(log);
    assertEquals(2, seen.tables().size());
    assertEquals(
        1.060, seen.tables().get(1).batches().get(0).originalGravity().orElseThrow(), 1e-4);
  }

  /** A column called by a letter is what the sheet itself says the letter means. */
  @Test
  void aLegendExplainsAHeader() {
    String log =
        """
        Wine, tank 2
        B = Balling (spindle, 20°); T = temperature
        Date | B | T | what
        3/10/2025 | 21.4 | 20 | yeast
        4/10/2025 | 19.9 | 20 |
        5/10/2025 | 15.8 | 20 |
        6/10/2025 | 11.6 | 20 |
        7/10/2025 | 7.7 | 20 |
        9/10/2025 | 3.2 | 20 |
        12/10/2025 | -0.2 | 20 |""";
    Understanding seen = understood(log);
    assertEquals(1, seen.tables().size(), seen::toString);
    assertEquals(1.0894, seen.tables().get(0).batches().get(0).originalGravity().orElse(0), 3e-4);
  }

  private static final String WEEKDAYS =
      """
      Fermentation
      jour | heure | densité | T °C
      lun 6 | 20h | 1.080 | 20
      mar 7 | 8h | 1.074 | 20
      mar 7 | 20h | 1.064 | 20
      mer 8 | 8h | 1.053 | 20
      mer 8 | 20h | 1.042 | 20
      jeu 9 | 8h | 1.033 | 20
      ven 10 | 20h | 1.017 | 20
      sam 11 | 20h | 1.005 | 20""";

  /** {@code mar 7} among lun, mer and jeu is a Tuesday and no day in March. */
  @Test
  void weekdaysCalledAsMonthsKeepTheirPlace() {
    LogTable table = understood(WEEKDAYS).tables().get(0);
    assertEquals(List.of(), understood(WEEKDAYS).doubts());
    int[] rows = table.batches().get(0).rows();
    for (int i = 1; i < rows.length; i++) {
      assertTrue(rows[i] > rows[i - 1]);
    }
  }

  /** The same mark under a temperature is the same temperature; under a blank it is none. */
  @ParameterizedTest
  @ValueSource(strings = {"\"", "\u201d", "\u3003", "ditto", "dto.", "idem", "id."})
  void aDittoMarkIsTheTemperatureAbove(String mark) {
    String log =
        "Cider ferment\nDate | SG | Temp C\n3/10/2025 | 1.060 | 30\n4/10/2025 | 1.050 | "
            + mark
            + "\n5/10/2025 | 1.030 | "
            + mark
            + "\n6/10/2025 | 1.012 | \n7/10/2025 | 1.004 | "
            + mark
            + "\n8/10/2025 | 1.000 | 20";
    String plain =
        log.replace("| " + mark + "\n5", "| 30\n5").replace("| " + mark + "\n6", "| 30\n6");
    assertEquals(alcohol(plain, 0, 3), alcohol(log, 0, 3), 1e-12);
    assertEquals(alcohol(plain, 0, 4), alcohol(log, 0, 4), 1e-12);
    assertTrue(Double.isNaN(alcohol(log, 0, 5)));
    assertTrue(Double.isNaN(alcohol(log, 0, 6)));
    assertTrue(alcohol(log, 0, 7) > 5);
  }

  private static final String POURED =
      """
      Perry
      Date | Vat | SG | T °C | notes
      20/9/2025 | red | 1.062 | 20 | yeast
      20/9/2025 | blue | 1.059 | 20 | yeast
      24/9/2025 | red | 1.046 | 20 |
      24/9/2025 | blue | 1.046 | 20 |
      30/9/2025 | red | 1.018 | 20 |
      30/9/2025 | blue | 1.023 | 20 | NOTE
      9/10/2025 | red | 1.003 | 20 |
      9/10/2025 | blue | 1.007 | 20 |""";

  private static List<Double> ofBlue(String note) {
    String log = POURED.replace("NOTE", note);
    return List.of(alcohol(log, 0, 7), alcohol(log, 0, 9));
  }

  /** From then on nobody knows what the wash began with. */
  @ParameterizedTest
  @CsvSource({
    "topped up from red, false, false",
    "after reading topped up with must from red, true, false",
    "topped up a little, true, true",
    "red smells better, true, true",
    "pumped some into red, true, true",
  })
  void aWashWithAnotherInItIsNotComputedAnyMore(String note, boolean there, boolean later) {
    List<Double> blue = ofBlue(note);
    assertEquals(there, !Double.isNaN(blue.get(0)), note);
    assertEquals(later, !Double.isNaN(blue.get(1)), note);
  }

  /** A note on the row of the vessel that gave tells of the one that received. */
  @Test
  void aNoteOfTheOtherVesselCounts() {
    String log =
        POURED.replace("1.018 | 20 |", "1.018 | 20 | all pumped into blue").replace("NOTE", "");
    assertTrue(alcohol(log, 0, 5) > 1);
    assertTrue(Double.isNaN(alcohol(log, 0, 9)));
    assertTrue(alcohol(log, 0, 8) > 5, "the vessel that gave has lost wash, not strength");
  }

  /** A part that begins lower than any wash is asked about with what it was parted from. */
  @Test
  void aLowPartOfAKnownWashIsAskedAbout() {
    String log =
        """
        Perry
        date | vessel | SG | T °C | note
        2/10/2025 | bin | 1.058 | 20 |
        5/10/2025 | bin | 1.052 | 20 |
        9/10/2025 | bin | 1.035 | 20 |
        11/10/2025 | bin | 1.027 | 20 | split into 2 today
        14/10/2025 | DJ1 | 1.020 | 20 |
        14/10/2025 | DJ2 | 1.021 | 20 |
        18/10/2025 | DJ1 | 1.014 | 20 |
        18/10/2025 | DJ2 | 1.018 | 20 |
        25/10/2025 | DJ1 | 1.004 | 20 |
        25/10/2025 | DJ2 | 1.004 | 20 |""";
    Understanding seen = understood(log);
    Batch part = seen.tables().get(0).batches().get(1);
    assertTrue(part.originalGravity().isEmpty());
    Doubt asked = seen.doubts().get(0);
    assertEquals(List.of("original gravity of DJ1 = 1.058 SG"), asked.answers().get(0).lines());
  }

  @ParameterizedTest
  @ValueSource(strings = {"O.G. 1.112", "O.G.: 1.112", "o.g. = 1.112 @ 68F", "OG 1.112"})
  void anAbbreviationWithPointsStatesTheOriginalGravity(String stated) {
    Understanding seen =
        understood(
            "Mead\n"
                + stated
                + "\n|\nDate | SG | temp F\n5/2/25 | 1.110 | 68\n5/7/25 | 1.084 | 68\n"
                + "5/16/25 | 1.047 | 68\n6/14/25 | 1.009 | 68\n7/20/25 | 1.003 | 68");
    assertEquals(List.of(), seen.doubts());
    assertEquals(1.112, seen.tables().get(0).batches().get(0).originalGravity().orElse(0), 1e-4);
  }
}
