package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Why a reading has no figures: the first of several reasons, in its own words. */
class ReasonsOfRefusalsTest {
  private static ComputedTable computed(String log, String map, ComputedColumn... columns) {
    TestGrid grid = TestGrid.of("Plum 3", log.replace('^', '|').replace(" ;", "\n"));
    LogTable table =
        SheetUnderstanding.understand(grid, LogMap.parse(map.replace(" ;", "\n"))).tables().get(0);
    return new ComputedTable(grid, table, EnumSet.copyOf(List.of(columns)));
  }

  private static String told(String log, String map) {
    return computed(log, map, ComputedColumn.ABV).refusals().stream()
        .map(r -> r.cell() + " " + r.reason(Language.EN))
        .collect(Collectors.joining(" | "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // that rises little by little
        "Day^SG^Temp C ; 0^1.085^20 ; 2^1.02^20 ; 3^1.0235^20 ; 4^1.027^20 ; 5^1.0305^20"
            + " ; 6^1.034^20 ; 7^1.0375^20 ; 8^1.041^20 ! header row = 1"
            + " ! B9 corrected reading 1.0410 is more than 0.02 SG above an earlier reading"
            + " of batch Plum 3 and no sugar was added: another batch, or one of them is wrong.",
        // of which a map says that nothing was added
        "Day^SG^Temp C ; 0^1.06^20 ; 3^1.03^20 ; 4^1.045^20 ; 5^1.02^20 ; 8^1.01^20"
            + " ! sugar added at row 4 = 0 KG"
            + " ! B4 the reading is higher than the one before it, nothing was added by the map,"
            + " and the next one is low again. Correct the reading.",
        // whose original gravity is not known
        "Day^SG^Temp C ; 0^1.02^20 ; 3^1.015^20 ! header row = 1 ! B2 the original gravity of"
            + " batch Plum 3 is not known",
      })
  void theReasonIsTold(String log, String map, String told) {
    String found = told(log, map);
    if (told.endsWith(".") || told.isEmpty()) {
      assertEquals(told, found);
    } else {
      assertTrue(found.startsWith(told), "found " + found);
    }
  }

  /** A reading a hair above the original gravity has fermented nothing; a clear one is refused. */
  @ParameterizedTest
  @CsvSource({"1.06, 0", "1.0604, NaN"})
  void aReadingAtTheOriginalGravityHasNoAlcohol(String gravity, double alcohol) {
    ComputedTable table =
        computed(
            "OG: 1.06 ; Day^SG^Temp C ; 0^" + gravity + "^20 ; 4^1.03^20 ; 8^1.01^20",
            "",
            ComputedColumn.ABV);
    double found = table.number(ComputedColumn.ABV, 2);
    assertTrue(Double.isNaN(alcohol) || found == alcohol, "" + found);
    assertTrue(table.number(ComputedColumn.ABV, 3) > 3.5);
  }

  @Test
  void aTableHasTheColumnsThatItWasMadeWith() {
    ComputedTable table =
        computed(
            "Day^SG^Temp C ; 0^1.085^20 ; 3^1.03^20 ; 8^1.01^20",
            "",
            ComputedColumn.ABV,
            ComputedColumn.NOTE);
    assertTrue(table.has(ComputedColumn.ABV));
    assertFalse(table.has(ComputedColumn.RATE));
    assertFalse(table.has(ComputedColumn.NOTE));
    assertTrue(Double.isNaN(table.number(ComputedColumn.RATE, 1)));
    assertFalse(table.hasRefusals());
    assertTrue(table.fillsAnyRow());
    assertEquals(3, table.read().cardinality());
    assertEquals(null, table.note(1, Language.EN));
  }

  @Test
  void aRowIsNotedWithItsCell() {
    ComputedTable table =
        computed(
            "Day^SG^Temp C ; 0^1.085^20 ; 3^1.03^ ; 8^1.01^20 ; 9^foam^20",
            "",
            ComputedColumn.ABV,
            ComputedColumn.STATE);
    assertEquals(null, table.note(1, Language.EN));
    assertTrue(table.note(2, Language.EN).startsWith("C3: "), table.note(2, Language.EN));
    assertEquals(null, table.note(3, Language.EN));
    assertTrue(table.note(4, Language.EN).startsWith("B5: "), table.note(4, Language.EN));
    assertEquals(2, table.refusedRows());
  }
}
