package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.PassedOver;
import washbook.log.sheet.TestGrid;

/** Which rows below a header of jars hold jars, and what the others are. */
class RowsOfJarsTest {
  private static final String HEADER = "Jar | mL | ABV | Temp C\n";

  private static RunRows rows(String jars) {
    TestGrid grid = TestGrid.of("Run", HEADER + jars.replace('^', '|').replace(" ;", "\n"));
    RunHeader header = new RunHeaders(grid).find().get(0);
    return new RunRows(grid, header, 1, 2, false, "", grid.rowCount());
  }

  private static String numbers(List<Integer> rows) {
    return rows.stream().map(String::valueOf).collect(Collectors.joining(" "));
  }

  private static String told(Map<Integer, PassedOver> aside) {
    return new TreeMap<>(aside)
        .entrySet().stream()
            .map(e -> e.getKey() + " " + e.getValue())
            .collect(Collectors.joining(", "));
  }

  /** Rows are counted from the header, which is row 0. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // a row without a figure is a jar where something stands for the figures
        "1^200^74^18 ; 2^500^72^18 ; 3^500^60^19 ! 1 2 3 ! ''",
        "1^200^74^18 ; 2^500^^18 ; 3^500^60^19 ! 1 2 3 ! ''",
        "1^200^74^18 ; 2^^72^18 ; 3^500^60^19 ! 1 2 3 ! ''",
        "1^200^74^18 ; 2^^^ ; 3^500^60^19 ! 1 2 3 ! ''",
        "jar 1^200^74^18 ; jar 2^^^ ; jar 3^500^60^19 ! 1 2 3 ! ''",
        "1^200^74^18 ; 2^lost^lost^ ; 3^500^60^19 ! 1 2 3 ! ''",
        "a^200^74^18 ; b^the jar fell and broke at once^^ ; c^500^60^19 ! 1 3 ! 2 NOTE",
        "a^200^74^18 ; b^broken as it was carried^^ ; c^500^60^19 ! 1 2 3 ! ''",
        "a^200^74^18 ; b^broken as it was carried.^^ ; c^500^60^19 ! 1 3 ! 2 NOTE",
        "a^200^74^18 ; b^^broken as it was carried.^ ; c^500^60^19 ! 1 3 ! 2 NOTE",
        "a^200^74^18 ; b^^^18 ; c^500^60^19 ! 1 2 3 ! ''",
        "a^200^74^18 ; b^^^#2025-11-04 ; c^500^60^19 ! 1 3 ! 2 NOTE",
        // blank rows
        "1^200^74^18 ; ; 2^500^72^18 ; 3^500^60^19 ! 1 3 4 ! ''",
        "1^200^74^18 ; 2^500^72^18 ; ; 3^500^^ ! 1 2 ! 4 NOTE",
        "1^200^74^18 ; 2^500^72^18 ; ; x^12^^ ; 3^500^60^19 ! 1 2 ! 4 NOTE",
        // totals and means
        "1^200^74^18 ; 2^500^72^18 ; Total^700^^ ! 1 2 ! 3 AVERAGE",
        "1^200^74^18 ; 2^500^72^18 ; Total^700^72.6^ ! 1 2 ! 3 AVERAGE",
        "1^200^74^18 ; 2^500^40^18 ; Average^350^57^ ! 1 2 ! 3 AVERAGE",
        "1^200^74^18 ; 2^500^40^18 ; Mean^350^42^ ! 1 2 3 ! ''",
        "1^200^74^18 ; 2^500^40^18 ; ^700^^ ! 1 2 ! ''",
        "1^200^74^18 ; 2^500^40^18 ; ^703^^ ! 1 2 ! ''",
        "1^200^74^18 ; 2^500^40^18 ; ^704^^ ! 1 2 3 ! ''",
        "1^200^74^18 ; 2^500^40^18 ; 3^^^ ; 4^^^ ! 1 2 ! ''",
        // lines between
        "heads^^^ ; 1^200^74^18 ; hearts^^^ ; 2^500^72^18 ! 2 4 ! 1 HEADING, 3 HEADING",
        "1^200^74^18 ; ^^^racked ; 2^500^72^18 ! 1 3 ! 2 HEADING",
      })
  void jarsAndOtherRows(String text, String jars, String aside) {
    RunRows rows = rows(text);
    assertEquals(jars, numbers(rows.jars));
    assertEquals(aside, told(rows.setAside));
  }

  @Test
  void eachJarHasTheTextOfTheLineOverItsGroup() {
    RunRows rows =
        rows("1^200^74^18 ; hearts^^^ ; 2^500^72^18 ; 3^500^70^18 ; tails^^^ ; 4^500^40^18");
    assertEquals(List.of("", "hearts", "hearts", "tails"), rows.groups);
    assertEquals(List.of(), rows.begun);
  }

  @Test
  void aLineThatNamesNoCutMayBeginAnotherRun() {
    RunRows rows = rows("1^200^74^18 ; 2^500^40^18 ; Apple 7^^^ ; 1^500^72^18 ; 2^500^40^18");
    assertEquals(List.of(4), rows.begun);
    assertEquals(List.of("", "", "Apple 7", "Apple 7"), rows.groups);
    assertEquals(List.of(), rows("Apple 7^^^ ; 1^500^72^18 ; 2^500^40^18").begun);
  }

  @Test
  void noRowFromTheNextTableOnIsAJar() {
    TestGrid grid = TestGrid.of("Run", HEADER + "1|200|74|18\n2|500|72|18\n3|500|60|19");
    RunHeader header = new RunHeaders(grid).find().get(0);
    assertEquals(List.of(1, 2), new RunRows(grid, header, 1, 2, false, "", 3).jars);
    assertEquals(List.of(1, 2, 3), new RunRows(grid, header, 1, 2, false, "", 99).jars);
  }
}
