package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Understanding;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Where the runs of a sheet stand, what belongs to each, and what is asked or left alone. */
class RunsOfASheetTest {
  private static final String JARS =
      "Jar^mL^% vol^Temp C^Cut ; 1^200^74^18^heads ; 2^500^72^18^hearts ; 3^500^60^18^hearts"
          + " ; 4^500^40^18^tails";

  private static final String FERMENT = "Day^SG^Temp C ; 0^1.085^20 ; 4^1.04^20 ; 8^1.01^20";

  private static final String WEAK = "No^Volume mL^% vol ; 1^500^60 ; 2^500^50 ; 3^500^40";

  private static Understanding understood(String log, String map) {
    return SheetUnderstanding.understand(
        TestGrid.of(
            "Sheet1",
            log.replace("JARS", JARS)
                .replace("FERMENT", FERMENT)
                .replace("WEAK", WEAK)
                .replace('^', '|')
                .replace(" ;", "\n")),
        LogMap.parse(map == null ? "" : map.replace(" ;", "\n")));
  }

  private static String told(String log, String map) {
    Understanding sheet = understood(log, map);
    String runs =
        sheet.runs().stream()
            .map(run -> " run " + run.table().range())
            .collect(Collectors.joining());
    String tables =
        sheet.tables().stream().map(table -> " log " + table.range()).collect(Collectors.joining());
    String alone =
        sheet.leftAlone().stream().map(a -> " alone " + a.cell()).collect(Collectors.joining());
    String asks =
        sheet.doubts().stream()
            .map(d -> " asks " + d.cell() + " at " + d.headerRow())
            .collect(Collectors.joining());
    return (runs + tables + alone + asks).strip();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "JARS ! run A1:E5",
        "Plum 3 ; JARS ! run A2:E6",
        "JARS ; ; JARS ! run A1:E5 run A7:E11",
        "JARS ; JARS ! run A1:E5 run A6:E10",
        "JARS ; ; FERMENT ! run A1:E5 log A7:C10",
        "FERMENT ; ; JARS ! run A6:E10 log A1:C4",
        "FERMENT ; JARS ! run A5:E9 log A1:C4",
        "WEAK ! ''",
        "still ; WEAK ; ; JARS ! run A2:C5 run A7:E11 asks A2 at 1",
        "JARS ; ; still ; WEAK ! run A1:E5 run A8:C11 asks A8 at 7",
        "still ; WEAK ! alone A2",
        "shopping ! ''",
      })
  void runsAndLogsOfOneSheet(String log, String told) {
    assertEquals(told, told(log, ""));
  }

  /** What a map says holds before anything that the sheet says. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "JARS ! run = no ! ''",
        "WEAK ! run = yes ! run A1:C4",
        "still ; WEAK ; ; JARS ! header row = 2 ; run = no ! run A7:E11",
      })
  void aMapSaysWhatIsARun(String log, String map, String told) {
    assertEquals(told, told(log, map).replaceAll(" ?asks.*", ""));
  }

  private static String charges(String log) {
    return understood(log, "").runs().stream()
        .flatMap(run -> run.parts().stream())
        .map(part -> String.valueOf(part.charge().litres()))
        .collect(Collectors.joining(" "));
  }

  /** A line belongs to the next table below it, up to twelve rows above. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Charge: 25 L ; JARS ! 25.0",
        "Charge: 25 L ; ; JARS ! 25.0",
        "JARS ; ; Charge: 30 L ; JARS ! NaN 30.0",
        "Charge: 25 L ; JARS ; ; JARS ! 25.0 NaN",
        "Charge: 25 L ; JARS ; ; Charge: 30 L ; JARS ! 25.0 30.0",
        // readings of another table end what can speak of this one
        "Charge: 25 L ; 1^2 ; JARS ! NaN",
        "Charge: 25 L ; 1^x ; JARS ! 25.0",
        "Charge: 25 L ; 1^2^x ; JARS ! 25.0",
        "Charge: 25 L ; 1^2^3^x ; JARS ! NaN",
        "Charge: 25 L ; 1^2^3^x^y ; JARS ! 25.0",
        "Charge: 25 L ; #2025-10-01^1 ; JARS ! NaN",
        "Charge: 25 L ; #2025-10-01^x ; JARS ! 25.0",
        "Charge: 25 L ; 1 ; JARS ! 25.0",
        "Charge: 25 L ; '1^'2 ; JARS ! NaN",
      })
  void linesAboveARun(String log, String litres) {
    assertEquals(litres, charges(log));
  }

  @ParameterizedTest
  @CsvSource({"11, 25.0", "12, NaN"})
  void onlyTheTwelveRowsAboveSpeakOfIt(int between, String litres) {
    assertEquals(litres, charges("Charge: 25 L" + " ; x".repeat(between) + " ; JARS"));
  }

  /** The lines that stand right above a run are no part of the log above them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "FERMENT ; Volume: 20 L ; JARS ! NaN",
        "Volume: 20 L ; FERMENT ; ; JARS ! 20.0",
        "Volume: 20 L ; JARS ; ; FERMENT ! NaN",
        "JARS ; ; Volume: 20 L ; FERMENT ! 20.0",
      })
  void theLinesOfARunAreItsOwn(String log, String litres) {
    assertEquals(
        litres,
        understood(log, "").tables().stream()
            .map(table -> String.valueOf(table.settings().volumeL()))
            .collect(Collectors.joining(" ")));
  }

  /** What is left of a sheet without its runs is as it was; the runs are blank. */
  @Test
  void theRestOfASheetIsAsItWas() {
    TestGrid all =
        TestGrid.of(
                "Sheet1",
                "x|1|#2025-10-01|y\nx|2|#2025-10-02|y\nx|3|#2025-10-03|y\nx|4|#2025-10-04|y")
            .merge(0, 0, 0, 1)
            .draw(3, 3, 3, 3);
    GridWithoutRuns rest = new GridWithoutRuns(all, List.of(new Grid.Area(1, 1, 2, 2)));
    for (int row = 0; row < 4; row++) {
      for (int column = 0; column < 4; column++) {
        boolean run = row >= 1 && row <= 2 && column >= 1 && column <= 2;
        assertEquals(run ? Grid.Kind.BLANK : all.kind(row, column), rest.kind(row, column));
        assertEquals(run ? Double.NaN : all.number(row, column), rest.number(row, column));
        assertEquals(run ? "" : all.text(row, column), rest.text(row, column));
        assertEquals(false, rest.isFormula(row, column));
      }
    }
    assertEquals("Sheet1", rest.name());
    assertEquals(4, rest.rowCount());
    assertEquals(4, rest.columnCount());
    assertEquals(4, rest.columnsUsed(0));
    assertEquals(all.merged(), rest.merged());
    assertEquals(all.drawings(), rest.drawings());
    assertEquals(all.fileName(), rest.fileName());
  }
}
