package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Doubts;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;

/** Rows that can head a table of jars, and columns that need no header. */
class HeadersOfJarsTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Run", text.replace('^', '|').replace(" ;", "\n"));
  }

  private static String told(RunHeader header) {
    String columns =
        header.cells().stream()
            .map(c -> CellAddress.letters(c.column()))
            .collect(Collectors.joining());
    return (header.topRow() + 1)
        + "-"
        + (header.bottomRow() + 1)
        + " "
        + columns
        + (header.isMissing() ? " missing" : "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Jar^mL^ABV ; 1^200^74 ! 1-1 ABC",
        "Plum 3 ; Jar^mL^ABV ; 1^200^74 ! 2-2 ABC",
        // a volume and a strength must be there
        "Jar^mL^Temp C ; 1^200^18 ! ''",
        "Jar^ABV^Temp C ; 1^74^18 ! ''",
        "ABV ; 74 ! ''",
        // a scale of sugar makes it a ferment's
        "Day^mL^ABV^SG ; 1^200^4^1.050 ! ''",
        "Day^mL^ABV^Brix ; 1^200^4^12 ! ''",
        // a row of figures heads nothing
        "Jar^mL^ABV^20 ; 1^200^74^18 ! ''",
        "Jar^mL^ABV^20 C ; 1^200^74^18 ! ''",
        "Jar^mL^ABV^#2025-11-04 ; 1^200^74^18 ! ''",
        // units in a row of their own
        "Jar^Volume^Strength^Temp ; ^mL^%^°C ; 1^200^74^18 ! 1-2 ABCD",
        "Jar^Volume^Strength ; ^mL^ ; 1^200^74 ! 1-1 ABC",
        "Jar^Volume^Strength ; 1^mL^% ; 2^200^74 ! 1-1 ABC",
        "Jar^Volume^Strength ; ^20 mL^74 % ; 2^200^74 ! 1-1 ABC",
        // columns without a header, between and beside
        "^mL^^ABV^ ; 1^200^18^74^plum ; 2^500^18^72^ ! 1-1 ABCDE",
        "^mL^^ABV^ ; ^200^^74^ ; ^500^^72^ ! 1-1 BD",
        "^mL^^ABV^ ; ^200^^74^ ; ^^^^ ; ^^^^ ; ^500^18^72^ ! 1-1 BCD",
        "^mL^^ABV^ ; ^200^^74^ ; ^^^^ ; ^^^^ ; ^^^^ ; ^500^18^72^ ! 1-1 BD",
        // tables side by side
        "Jar^mL^ABV^^Jar^mL^ABV ; 1^200^74^^1^200^74 ! 1-1 ABC, 1-1 EFG",
        "Jar^mL^^ABV^Note ; 1^200^^74^x ! 1-1 ABDE",
        // one below the other
        "Jar^mL^ABV ; 1^200^74 ; ; Jar^mL^ABV ; 1^200^74 ! 1-1 ABC, 4-4 ABC",
      })
  void aHeaderNamesAVolumeAndAStrength(String text, String headers) {
    assertEquals(
        headers,
        new RunHeaders(grid(text))
            .find().stream().map(HeadersOfJarsTest::told).collect(Collectors.joining(", ")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Still run ; 200 ml^74 %^18 °C ; 500 ml^72 %^18 °C ; 500 ml^60 %^19 °C ; 500 ml^40 %^19 °C"
            + " ! 1-1 ABC missing",
        "Still run ; a^200 ml^74 % ; b^500 ml^72 % ; c^500 ml^60 % ; d^500 ml^40 % ; done"
            + " ! 1-1 ABC missing",
        "Still run ; 200 ml^74 % ; 500 ml^ ; 500 ml^60 % ; 500 ml^40 % ; 500 ml^20 %"
            + " ! 1-1 AB missing",
        "Still run ; 200 ml^74 % ; 500 ml^72 % ; 500 ml^60 % ! ''",
        "Still run ; 200 ml^74 % ; 500 ml^72 % ; none ; 500 ml^60 % ; 500 ml^40 % ! ''",
        "200 ml^74 % ; 500 ml^72 % ; 500 ml^60 % ; 500 ml^40 % ! ''",
        "Still run ; 200^74 % ; 500^72 % ; 500^60 % ; 500^40 % ! ''",
        "Still run ; 200 ml^74 ; 500 ml^72 ; 500 ml^60 ; 500 ml^40 ! ''",
      })
  void fourRowsOfValuesWithTheirUnitsNeedNoHeader(String text, String headers) {
    aHeaderNamesAVolumeAndAStrength(text, headers);
  }

  @Test
  void valuesWithUnitsTellTheirColumns() {
    RunHeader header =
        new RunHeaders(
                grid(
                    "Still run ; a^200 ml^74 %^18 °C ; b^500 ml^72 %^18 °C ; c^500 ml^60 %^19 °C"
                        + " ; d^500 ml^40 %^19 °C"))
            .find()
            .get(0);
    List<RunHeader.Cell> cells = header.cells();
    assertEquals(List.of(), List.copyOf(cells.get(0).words()));
    assertEquals(true, cells.get(1).isVolume() && cells.get(1).has(RunWord.ML));
    assertEquals(true, cells.get(2).isStrength());
    assertEquals(true, cells.get(3).isTemperature());
  }

  private static String asked(String text) {
    Doubts doubts = new Doubts();
    JarsAcross.askAbout(grid(text), doubts);
    return doubts.all().stream().map(d -> d.cell()).collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Jar^1^2^3^4 ; mL^200^500^500^500 ; ABV^74^72^60^40 ! A2",
        "Jar^1^2^3^4 ; ABV^74^72^60^40 ; mL^200^500^500^500 ! A2",
        "Still run ; ABV^74^72^60^40 ; Volume mL^200^500^500^500 ! A2",
        "mL^200^500^500^500 ; ABV^74^72^60^40 ; Charge 10 L ! A1",
        "mL^200^500^500^500 ; ABV^74^72^60^40 ! ''",
        "Jar^1^2^3 ; mL^200^500^500 ; ABV^74^72^60 ! ''",
        "Jar^1^2^3^4 ; mL^200^500^500^500 ; ABV^74^72^60 ! ''",
        "Jar^1^2^3^4 ; mL^200^500^500^500 ! ''",
        "Jar^1^2^3^4 ; ABV^74^72^60^40 ! ''",
      })
  void fourJarsSideBySideAreAskedAbout(String text, String cell) {
    assertEquals(cell, asked(text));
  }

  @Test
  void aSheetWithoutItsRunsIsBlankWhereTheyStand() {
    TestGrid grid = TestGrid.of("Run", "a|b|c|d\n1|2|3|4\ne|f|g|h\n5|6|7|8").draw(0, 0, 1, 1);
    Grid rest = new GridWithoutRuns(grid, List.of(new Grid.Area(1, 1, 2, 2)));
    StringBuilder kinds = new StringBuilder();
    for (int row = 0; row < rest.rowCount(); row++) {
      for (int column = 0; column < rest.columnCount(); column++) {
        kinds.append(rest.kind(row, column).name().charAt(0));
      }
    }
    assertEquals("TTTTNBBNTBBTNNNN", kinds.toString());
    assertEquals("", rest.text(2, 1));
    assertEquals("h", rest.text(2, 3));
    assertEquals(Double.NaN, rest.number(1, 2));
    assertEquals(4, rest.number(1, 3));
    assertEquals("Run", rest.name());
    assertEquals(grid.columnsUsed(1), rest.columnsUsed(1));
    assertEquals(grid.drawings(), rest.drawings());
    assertEquals(grid.merged(), rest.merged());
  }
}
