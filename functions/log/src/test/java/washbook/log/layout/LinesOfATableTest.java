package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.TestGrid;
import washbook.log.words.Concept;

/** Which lines around a table speak of it, and which of several readings is their mean. */
class LinesOfATableTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Log", text.replace('^', '|').replace(" ;", "\n"));
  }

  private static TableLines lines(TestGrid grid, int table, int above) {
    List<Header> headers = new Headers(grid).find();
    Header header = headers.get(table);
    int end = header.nextBelow(header.bottomRow(), headers, grid.rowCount());
    TableRows rows = new TableRows(grid, header, end, new BitSet());
    return new TableLines(grid, header, rows, headers, above);
  }

  /** The cells of the lines that speak of a table. */
  private static String told(TestGrid grid, int table, int above) {
    return lines(grid, table, above).all().stream()
        .map(line -> CellAddress.of(line.row(), line.column()))
        .distinct()
        .collect(Collectors.joining(" "));
  }

  private static final String LOG =
      "Day^SG^Temp C ; 0^1.085^20 ; 2^1.07^20 ; 4^1.05^20 ; 8^1.01^20";

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // above
        "Volume: 25 L ; LOG ! 0 ! A1",
        "Volume: 25 L ; OG: 1.09 ; LOG ! 0 ! A1 A2",
        "Volume: 25 L ; OG: 1.09 ; LOG ! 1 ! A2",
        "LOG ! 0 ! ''",
        // below, of the instrument only, and only where nothing above speaks of one
        "LOG ; ; hydrometer calibrated at 15 C ! 0 ! A7",
        "LOG ; ; Volume: 25 L ! 0 ! ''",
        "calibrated at 20 C ; LOG ; ; hydrometer calibrated at 15 C ! 0 ! A1",
        "all readings corrected ; LOG ; ; hydrometer calibrated at 15 C ! 0 ! A1",
        "refractometer ; LOG ; ; hydrometer calibrated at 15 C ! 0 ! A1",
        "Volume: 25 L ; LOG ; ; hydrometer calibrated at 15 C ! 0 ! A1 A8",
        // but not what stands right over the next table
        "LOG ; ; White ; hydrometer calibrated at 15 C ; LOG ! 0 ! ''",
        "LOG ; ; hydrometer calibrated at 15 C ; ; White ; LOG ! 0 ! A7",
        "LOG ; hydrometer calibrated at 15 C ; ; White ; LOG ! 0 ! A6",
        // between header and first reading
        "Day^SG^Temp C ; hydrometer calibrated at 15 C^^ ; 0^1.085^20 ; 4^1.05^20 ; 8^1.01^20"
            + " ! 0 ! A2",
        // what is said to be uncorrected is not corrected
        "readings not corrected ; readings corrected to 20 C ; LOG ! 0 ! A1",
        // what is said beside an original gravity is said of that one
        "OG: 1.09^corrected ; LOG ! 0 ! A1",
        "OG: 1.09^^^corrected ; LOG ! 0 ! A1",
        "OG: 1.09^^^^corrected ; LOG ! 0 ! A1 E1",
        "OG: 1.09 ; corrected ; LOG ! 0 ! A1 A2",
        "OG: 1.09^readings corrected ; LOG ! 0 ! A1 B1",
      })
  void linesSpeakOfTheTableBesideThem(String log, int above, String cells) {
    assertEquals(cells, told(grid(log.replace("LOG", LOG)), 0, above));
  }

  @ParameterizedTest
  @CsvSource({"20, A25", "21, ''"})
  void remarksBelowStandWithinTwentyRows(int rows, String cell) {
    String log = LOG + " ; ".repeat(rows) + "hydrometer calibrated at 15 C";
    assertEquals(cell, told(grid(log), 0, 0));
  }

  /** What stands above the first table of the sheet holds for the others too. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "hydrometer calibrated at 15 C ; LOG ; ; LOG ! A1",
        "hydrometer calibrated at 15 C ; LOG ; ; calibrated at 20 C ; LOG ! A8",
        "Volume: 25 L ; LOG ; ; LOG ! ''",
        "hydrometer ; LOG ; ; LOG ! A1",
        "LOG ; ; LOG ; ; hydrometer calibrated at 15 C ! A13",
        "LOG ; ; hydrometer calibrated at 15 C ; LOG ! A7",
      })
  void whatIsSaidOfTheSheetHoldsForEachTable(String log, String cells) {
    TestGrid grid = grid(log.replace("LOG", LOG));
    int above = log.startsWith("LOG") ? 5 : 6;
    assertEquals(cells, told(grid, 1, above));
  }

  /** Of a line that begins a table with its litres only the calibration is taken over. */
  @Test
  void theInstrumentOfOneBatchIsThatOfItsTable() {
    String log = LOG + " ; ; " + LOG;
    TestGrid all = grid("refractometer, 25 L ; " + log);
    assertEquals(
        List.of(false), lines(all, 1, 6).all().stream().map(l -> isRefractometer(l)).toList());
    TestGrid sheet = grid("refractometer ; " + log);
    assertEquals(
        List.of(true), lines(sheet, 1, 6).all().stream().map(l -> isRefractometer(l)).toList());
  }

  private static boolean isRefractometer(KeyLine line) {
    return line.has(Concept.REFRACTOMETER);
  }

  /** Of tables side by side each has the lines over its own columns. */
  @Test
  void tablesSideBySideHaveTheirOwnLines() {
    TestGrid grid =
        grid(
            "Volume: 25 L^^^^Volume: 20 L ; Day^SG^Temp C^^Day^SG^Temp C"
                + " ; 0^1.085^20^^0^1.065^20 ; 4^1.05^20^^4^1.04^20 ; 8^1.01^20^^8^1.01^20");
    assertEquals("A1", told(grid, 0, 0));
    assertEquals("E1", told(grid, 1, 0));
    assertArrayEquals(new int[] {0, 3}, lines(grid, 0, 0).columnsAbove());
    assertArrayEquals(new int[] {4, 6}, lines(grid, 1, 0).columnsAbove());
    assertEquals(5, lines(grid, 0, 0).nextTable());
    TestGrid below = grid(LOG + " ; ; " + LOG);
    assertEquals(6, lines(below, 0, 0).nextTable());
    assertArrayEquals(new int[] {0, 2}, lines(below, 0, 0).columnsAbove());
  }

  private static String mean(String header, String rows) {
    TestGrid grid = grid(header + " ; " + rows);
    Header found = new Headers(grid).find().get(0);
    TableRows table = new TableRows(grid, found, grid.rowCount(), new BitSet());
    List<Header.HeaderCell> readings = new ArrayList<>();
    List<Header.HeaderCell> others = new ArrayList<>();
    for (Header.HeaderCell cell : found.cells()) {
      if (cell.column() > 0) {
        (cell.role() == Role.GRAVITY ? readings : others).add(cell);
      }
    }
    return new Replicates(grid, table)
        .mean(readings, others)
        .map(
            c -> CellAddress.letters(c.column()) + (c.meanings().contains(Concept.SG) ? " SG" : ""))
        .orElse("none");
  }

  /** One sample read twice, and the mean of both: within rounding, in three rows at least. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "1.085^1.086^1.0855 ; 1.05^1.05^1.05 ; 1.01^1.012^1.011 ! true",
        "1.085^1.086^1.086 ; 1.05^1.05^1.05 ; 1.01^1.012^1.011 ! true",
        "1.085^1.086^1.0865 ; 1.05^1.05^1.05 ; 1.01^1.012^1.011 ! false",
        "1.085^1.086^1.0855 ; 1.05^1.05^1.05 ! false",
        "1.085^1.086^1.0855 ; 1.05^1.05^1.05 ; 1.01^^1.01 ! false",
        "1.085^1.086^1.0855 ; 1.05^1.05^1.05 ; 1.01^1.012^ ; 1.01^1.012^1.011 ! true",
        "1.085^1.045^1.065 ; 1.05^1.03^1.04 ; 1.01^1.012^1.011 ! false",
        "1.085^1.045^1.065 ; 1.05^1.05^1.05 ; 1.01^1.012^1.011 ; 1.01^1.01^1.01 ; 1.005^1.005^1.005"
            + " ! true",
        "1085^1087^1086 ; 1050^1050^1050 ; 1010^1012^1011 ! true",
        "1085^1095^1090 ; 1050^1060^1055 ; 1010^1012^1011 ! false",
      })
  void theMeanOfTwoReadings(String rows, boolean found) {
    StringBuilder log = new StringBuilder();
    int day = 0;
    for (String row : rows.split(" ; ")) {
      log.append(log.isEmpty() ? "" : " ; ").append(day++).append('^').append(row);
    }
    assertEquals(found ? "D SG" : "none", mean("Day^SG^SG^Mean", log.toString()));
    assertEquals("none", mean("Day^SG^SG^Best", log.toString()));
  }
}
