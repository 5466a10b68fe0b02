package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.TestGrid;

/** Columns without a name, abbreviations that the sheet explains, lines about several vessels. */
class ColumnsAroundATableTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Log", text.replace('^', '|').replace(" ;", "\n"));
  }

  private static String told(Header header) {
    return header.cells().stream()
        .map(c -> CellAddress.letters(c.column()) + " " + c.role())
        .collect(Collectors.joining(", "));
  }

  private static String added(String text) {
    TestGrid grid = grid(text);
    return new UnnamedColumns(grid, new Headers(grid).find())
        .added().stream().map(ColumnsAroundATableTest::told).collect(Collectors.joining(" / "));
  }

  private static final String PLAIN = "B GRAVITY, C TEMPERATURE";

  /** Dates before the first column, three at least; remarks behind the last one. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "^SG^Temp C ; #2025-10-01^1.085^20 ; #2025-10-04^1.05^20 ; #2025-10-08^1.01^20"
            + " ! A DATE, B GRAVITY, C TEMPERATURE",
        "^SG^Temp C ; 1 Oct 2025^1.085^20 ; ^1.05^20 ; 4 Oct 2025^1.05^20 ; 8 Oct 2025^1.01^20"
            + " ! A DATE, B GRAVITY, C TEMPERATURE",
        "^SG^Temp C ; #2025-10-01^1.085^20 ; #2025-10-04^1.05^20 ; ^1.01^20 ! B GRAVITY,"
            + " C TEMPERATURE",
        "^SG^Temp C ; #2025-10-01^1.085^20 ; x^1.05^20 ; #2025-10-04^1.05^20 ; #2025-10-08^1.01^20"
            + " ! B GRAVITY, C TEMPERATURE",
        "Date^SG^Temp C ; #2025-10-01^1.085^20 ; #2025-10-04^1.05^20 ; #2025-10-08^1.01^20"
            + " ! A DATE, B GRAVITY, C TEMPERATURE",
        // remarks
        "^SG^Temp C^ ; 0^1.085^20^put in ; 1^1.05^20^ ; 2^1.01^20^ ! B GRAVITY, C TEMPERATURE,"
            + " D NOTE",
        "^SG^Temp C^ ; 0^1.085^20^x? ; 1^1.05^20^ab ; 2^1.01^20^ ! B GRAVITY, C TEMPERATURE",
        "^SG^Temp C^ ; 0^1.085^20^ab ; 1^1.05^20^abc ; 2^1.01^20^ ! B GRAVITY, C TEMPERATURE,"
            + " D NOTE",
        "^SG^Temp C^ ; 0^1.085^20^put in ; 1^1.05^20^3 ; 2^1.01^20^ ! B GRAVITY, C TEMPERATURE",
        "^SG^Temp C^ ; 0^1.085^20^ ; 1^1.05^20^ ; 2^1.01^20^ ! B GRAVITY, C TEMPERATURE",
        "^SG^Note^ ; 0^1.085^x^put in ; 1^1.05^y^ ; 2^1.01^z^ ! B GRAVITY, C NOTE",
        // behind a blank row the lines of the next table begin
        "^SG^Temp C^ ; 0^1.085^20^put in ; 1^1.01^20^ ; ^^^ ; ^^^about the next one"
            + " ! B GRAVITY, C TEMPERATURE",
        "^SG^Temp C^ ; 0^1.085^20^put in ; 1^1.01^20^ ; ^^^ ; ^1.01^20^"
            + " ! B GRAVITY, C TEMPERATURE, D NOTE",
        // a header of its own, or a neighbour right beside
        "^SG^Temp C^3 ; 0^1.085^20^put in ; 1^1.05^20^ ; 2^1.01^20^ ! B GRAVITY, C TEMPERATURE",
        "^SG^Temp C^^SG^Temp C ; 0^1.085^20^put in^1.065^20 ; 1^1.05^20^^1.04^20 ; 2^1.01^20^^1.01^20"
            + " ! B GRAVITY, C TEMPERATURE / E GRAVITY, F TEMPERATURE",
        "^SG^Temp C^^^SG^Temp C ; 0^1.085^20^put in^^1.065^20 ; 1^1.05^20^^^1.04^20"
            + " ; 2^1.01^20^^^1.01^20"
            + " ! B GRAVITY, C TEMPERATURE, D NOTE / F GRAVITY, G TEMPERATURE",
        "^SG^Temp C^^^SG^Temp C ; 0^1.085^20^^#2025-10-01^1.065^20 ; 1^1.05^20^^#2025-10-04^1.04^20"
            + " ; 2^1.01^20^^#2025-10-08^1.01^20"
            + " ! B GRAVITY, C TEMPERATURE / E DATE, F GRAVITY, G TEMPERATURE",
        "^SG^Temp C^Blorp ; 0^1.085^20^put in ; 1^1.05^20^ ; 2^1.01^20^ ! B GRAVITY,"
            + " C TEMPERATURE, D OTHER",
      })
  void columnsWithoutAName(String log, String columns) {
    assertEquals(columns, added(log));
  }

  /** What a sheet says its abbreviations mean, up to sixty rows down. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Zb = temperature ; Day^SG^Zb ! TEMPERATURE",
        "x, Zb = temperature, Yb = taste ; Day^SG^Zb ! TEMPERATURE",
        "x, Zb = temperature, Yb = taste ; Day^SG^Yb ! OTHER",
        "Zb. = temperature ; Day^SG^zb ! TEMPERATURE",
        "Zb : temperature ; Day^SG^Zb ! OTHER",
        "Zbzbzb = temperature ; Day^SG^Zbzbzb ! OTHER",
        "Zb = taste ; Zb = temperature ; Day^SG^Zb ! OTHER",
        "^^Zb = temperature ; Day^SG^Zb ! TEMPERATURE",
        "Zb = 3 ; Day^SG^Zb ! OTHER",
        "Note = temperature ; Day^SG^Note ! NOTE",
      })
  void anAbbreviationIsExplained(String log, String role) {
    TestGrid grid = grid(log + " ; 0^1.085^20 ; 4^1.05^20 ; 8^1.01^20");
    List<Header> headers = new Headers(grid).find();
    assertEquals(role, headers.get(0).cells().get(2).role().name());
  }

  @ParameterizedTest
  @CsvSource({"55, TEMPERATURE", "56, OTHER"})
  void explanationsStandInTheFirstSixtyRows(int between, String role) {
    String log = "Day^SG^Zb ; 0^1.085^20 ; 4^1.05^20 ; 8^1.01^20";
    TestGrid grid = grid(log + " ; x".repeat(between) + " ; Zb = temperature");
    assertEquals(role, new Headers(grid).find().get(0).cells().get(2).role().name());
  }

  private static final String TWO =
      " ; Day^SG^Temp C^SG^Temp C ; 0^1.085^20^1.065^20 ; 4^1.05^20^1.04^20 ; 8^1.01^20^1.01^20";

  private static List<Header> vessels(TestGrid grid) {
    Header header =
        new Headers(grid)
            .find().stream().filter(h -> h.cells().size() == 5).findFirst().orElseThrow();
    return Vessels.of(grid, header, Map.of());
  }

  /** The only original gravity over vessels of one wash, above the names, is that of all. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "OG 1.09, racked off into two barrels ; ^Plum 3^^Apple 7^ ! 1.09",
        "racked off into two barrels ; OG: 1.09 ; ^Plum 3^^Apple 7^ ! 1.09",
        "OG: 1.09 ; racked off into two barrels ; ^Plum 3^^Apple 7^ ! ''",
        "OG: 1.09 ; ^Plum 3^^Apple 7^ ! ''",
        "racked off into two barrels ; OG: 1.09 ; OG: 1.08 ; ^Plum 3^^Apple 7^ ! ''",
        "racked off into two barrels ; OG: foam ; ^Plum 3^^Apple 7^ ! ''",
        "racked off into two barrels ; Target: 1.09 ; ^Plum 3^^Apple 7^ ! ''",
        "racked off into two barrels ; ^Plum 3^^Apple 7^ ; OG: 1.09 ! ''",
      })
  void anOriginalGravityOfAllVessels(String lines, String value) {
    TestGrid grid = grid(lines + TWO);
    List<Header> vessels = vessels(grid);
    String told =
        new VesselLines(grid, vessels.get(0), vessels)
            .originalOfAll(0).stream()
                .map(line -> String.valueOf(line.value()))
                .collect(Collectors.joining(" "));
    assertEquals(value, told);
    assertEquals(
        List.of(), new VesselLines(grid, vessels.get(0), List.of(vessels.get(0))).originalOfAll(0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "^Plum 3^^Apple 7^ ! Plum 3, Apple 7 ! D, E",
        "x ! '' ! ''",
      })
  void eachVesselKnowsTheOthers(String line, String names, String others) {
    TestGrid grid = grid(line + TWO);
    List<Header> vessels = vessels(grid);
    VesselLines first = new VesselLines(grid, vessels.get(0), vessels);
    assertEquals(names, String.join(", ", first.names()));
    assertEquals(
        others,
        new TreeSet<>(first.columnsOfOthers())
            .stream().map(CellAddress::letters).collect(Collectors.joining(", ")));
  }

  /** The same words again are no new table where the readings go on below them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "1.02 ! Day^SG^Temp C ! '' ! 1",
        "1.0305 ! Day^SG^Temp C ! '' ! 1",
        "1.04 ! Day^SG^Temp C ! '' ! 2",
        "1020 ! Day^SG^Temp C ! '' ! 1",
        "1.02 ! Day^SG^Temp F ! '' ! 2",
        "1.02 ! Day^SG^Temp C ! Apple 7 ! 2",
        "1.02 ! Day^SG^Temp C ! ^Apple 7^ ! 2",
        "1.02 ! Day^SG^Temp C ! ^^Apple 7 ! 2",
        "1.02 ! Day^SG^Temp C ! week 2 ! 1",
        "1.02 ! Day^SG^Temp C ! Total ! 1",
        "1.02 ! Day^SG^Temp C ! 3 ! 1",
        "foam ! Day^SG^Temp C ! '' ! 1",
      })
  void aHeaderThatComesAgain(String next, String header, String between, int tables) {
    TestGrid grid =
        grid(
            "Day^SG^Temp C ; 0^1.085^20 ; 4^1.03^20 ; 5^^20 ; "
                + between
                + " ; "
                + header
                + " ; 6^"
                + next
                + "^20 ; 8^1.01^20");
    RepeatedHeaders repeated = new RepeatedHeaders(grid);
    List<Header> kept = repeated.without(new Headers(grid).find());
    assertEquals(tables, kept.size());
    assertEquals(tables == 1 ? "{5}" : "{}", repeated.of(kept.get(0)).toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // rows that are numbered begin with their date
        "No^Date^SG^Temp C ; 1^#2025-10-01^1.085^20 ; 2^#2025-10-04^1.05^20 ; ^Total^^ ! 4 AVERAGE",
        "No^Date^SG^Temp C ; 1^#2025-10-01^1.085^20 ; 2^#2025-10-04^1.05^20 ; 3^Total^^ ! ''",
        "No^Day^SG^Temp C ; 1^0^1.085^20 ; 2^4^1.05^20 ; ^Average^1.07^20 ! 4 AVERAGE",
        "No^Note^SG^Temp C ; 1^x^1.085^20 ; 2^y^1.05^20 ; ^Average^1.0675^20 ! ''",
        // a word for a total in the column of the batches may be a name
        "Batch^Day^SG^Temp C ; x^0^1.085^20 ; x^4^1.05^20 ; Total^^^ ! 4 AVERAGE",
        "Day^SG^Temp C ; 0^1.085^20 ; 4^1.05^20 ; 8 Oct 2025^1.01^20 ! ''",
      })
  void whatARowBeginsWith(String log, String aside) {
    TestGrid grid = grid(log + " ; 9^9^1.0^20");
    Header header = new Headers(grid).find().get(0);
    String told =
        new TreeMap<>(new TableRows(grid, header, grid.rowCount(), new BitSet()).setAside())
            .entrySet().stream()
                .map(e -> (e.getKey() + 1) + " " + e.getValue())
                .collect(Collectors.joining(", "));
    assertEquals(aside, told);
  }

  /** A reading that is only called a value wants company, and figures that are gravities. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Day^Reading^x ! 1.085,1.05,1.02 ! true",
        "Day^Reading^x ! 1.085 SG,1.05 SG,1.02 SG ! true",
        "Day^Reading^x ! 85 °Oe,50 °Oe,20 °Oe ! true",
        "Day^Reading^x ! 85,50,20 ! false",
        "Day^Reading^Temp C ! 85,50,20 ! true",
        "x^Reading^y ! 1.085,1.05,1.02 ! false",
        "Batch^Reading^x ! 1.085,1.05,1.02 ! true",
        "Day^Points^x ! 1.085,1.05,1.02 ! true",
        "Day^SG^Brine ! 1.085,1.05,1.02 ! true",
        "Day^Reading^Brine ! 85,50,20 ! false",
        "Day^Reading^x ! 1.085,1.05,1.02,1.01,,5,6,7,8,9 ! true",
        "Day^Reading^x ! 1.085,1.05,1.02,,5,6,7,8,9 ! false",
      })
  void aHeaderNeedsCompany(String header, String values, boolean found) {
    StringBuilder log = new StringBuilder(header);
    for (String value : values.split(",")) {
      log.append(" ; 0^").append(value).append("^20");
    }
    assertEquals(found, !new Headers(grid(log.toString())).find().isEmpty());
  }
}
