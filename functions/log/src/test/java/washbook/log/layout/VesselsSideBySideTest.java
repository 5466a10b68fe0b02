package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.TestGrid;
import washbook.log.words.Concept;

/** One table with several readings: vessels side by side, or several readings of one. */
class VesselsSideBySideTest {
  private static final String ROWS =
      "\n|1.085|1.065|1.085|1.065\n|1.05|1.04|1.05|1.04\n|1.02|1.02|1.02|1.02\n|1.01|1.01|1.01|1.01";

  private static TestGrid grid(String header) {
    return TestGrid.of("Log", header.replace('^', '|').replace(" ;", "\n") + ROWS);
  }

  static String told(TestGrid grid, Map<Integer, Role> said) {
    Header header = new Headers(grid).find().get(0);
    return Vessels.of(grid, header, said).stream()
        .map(
            h ->
                (h.vessel()
                        + " "
                        + h.cells().stream()
                            .map(c -> CellAddress.letters(c.column()))
                            .collect(Collectors.joining()))
                    .strip())
        .collect(Collectors.joining(", "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Date^SG^Temp C ! ABC",
        // names in the row above, each over one reading
        "^Plum 3^^Apple 7^ ; Date^SG^Temp C^SG^Temp C ! Plum 3 ABC, Apple 7 ADE",
        "^Plum 3^Apple 7^ ; Date^SG^SG^Note ! Plum 3 ABD, Apple 7 ACD",
        "Vessel^Plum 3^^Apple 7^ ; Date^SG^Temp C^SG^Temp C ! Plum 3 ABC, Apple 7 ADE",
        "^Plum 3^^^ ; Date^SG^Temp C^SG^Temp C ! ABCDE",
        "^Plum 3^^Plum 3^ ; Date^SG^Temp C^SG^Temp C ! ABCDE",
        "^Hydrometer^^Refractometer^ ; Date^SG^Temp C^SG^Temp C ! ABCDE",
        "^Monday^^Tuesday^ ; Date^SG^Temp C^SG^Temp C ! ABCDE",
        // or in the headers themselves
        "Date^SG A^SG B^Temp C ! A ABD, B ACD",
        "Date^Red group SG^Red temp^Blue group SG^Blue temp ! Red group ABC, Blue group ADE",
        "Date^Traditional SG^temp C^Blackberry SG^temp C ! ABCDE",
        "Date^Hydrometer SG^temp C^Corrected SG^temp C ! ABCDE",
        "Date^Traditional SG^Blackberry SG^temp C ! ABCD",
        "Date^SG 1^SG 2^Temp C ! 1 ABD, 2 ACD",
        "Date^SG tank 1^SG tank 2^Note ! tank 1 ABD, tank 2 ACD",
        "Date^Tank 1^Tank 2 ! Tank 1 AB, Tank 2 AC",
        "Date^Linde^Wald ! Linde AB, Wald AC",
        "Date^SG Linde^SG Wald ! ABC",
        "Date^SG A^SG A^Temp C ! ABCD",
        "Date^SG A^Temp C A^SG B^Temp C B ! A ABC, B ADE",
        // readings of one vessel
        "Date^SG morning^SG evening^Temp C ! SG morning ABD, SG evening ACD",
        "^morning^^evening^ ; Date^SG^Temp C^SG^Temp C ! morning ABC, evening ADE",
        "Date^SG^Brix^Temp C ! ABCD",
        "Date^SG corrected^SG uncorrected^Temp C ! ABCD",
      })
  void vesselsAreToldByTheirNames(String header, String vessels) {
    assertEquals(vessels, told(grid(header), Map.of()));
  }

  @Test
  void aNameIsNoSentence() {
    String name = "x".repeat(40);
    String header = "^" + name + "^^Apple 7^ ; Date^SG^Temp C^SG^Temp C";
    assertEquals(name + " ABC, Apple 7 ADE", told(grid(header), Map.of()));
    assertEquals("ABCDE", told(grid(header.replace(name, name + "x")), Map.of()));
  }

  @Test
  void aMapMakesEachReadingAVessel() {
    Map<Integer, Role> both = Map.of(1, Role.GRAVITY, 2, Role.GRAVITY);
    assertEquals("SG Linde ABD, SG Wald ACD", told(grid("Date^SG Linde^SG Wald^Temp C"), both));
    assertEquals("B ABD, C ACD", told(grid("Date^SG^SG^Temp C"), both));
    assertEquals("ABCD", told(grid("Date^SG^SG^Temp C"), Map.of(1, Role.GRAVITY)));
    assertEquals(
        "ABCD", told(grid("Date^SG^SG^Temp C"), Map.of(1, Role.GRAVITY, 2, Role.REFRACTOMETER)));
  }

  /** Names stand over lines that are said of the vessels, at most six above the header. */
  @Test
  void namesMayStandOverLinesAboutTheVessels() {
    String names = "^Plum 3^^Apple 7^";
    String lines = " ; Volume^25 L^^20 L^ ; OG^1.086^^1.066^";
    String header = " ; Date^SG^Temp C^SG^Temp C";
    assertEquals("Plum 3 ABC, Apple 7 ADE", told(grid(names + lines + header), Map.of()));
    String four = " ; yeast^x^^x^".repeat(5);
    assertEquals("Plum 3 ABC, Apple 7 ADE", told(grid(names + four + header), Map.of()));
    assertEquals("ABCDE", told(grid(names + four + " ; yeast^x^^x^" + header), Map.of()));
    assertEquals("ABCDE", told(grid(names.replace("Plum 3", "25 L") + lines + header), Map.of()));
  }

  private static final String SHARED =
      "OG^1.085^^1.065^ ; ^Plum 3^^Apple 7^ ; Date^SG^Temp C^SG^Temp C";

  @Test
  void whatIsSaidOfSeveralVesselsIsSaidOfEachInItsColumn() {
    TestGrid grid = grid(SHARED + " ; ");
    Header header = new Headers(grid).find().get(0);
    List<Header> vessels = Vessels.of(grid, header, Map.of());
    List<KeyLine> lines = new KeyLines(grid).find(0, 0, 0, 4);
    List<Double> originals = new ArrayList<>();
    for (Header vessel : vessels) {
      for (KeyLine line : new VesselLines(grid, vessel, vessels).of(lines)) {
        if (line.has(Concept.ORIGINALGRAVITY)) {
          originals.add(line.value());
        }
      }
    }
    assertEquals(List.of(1.085, 1.065), originals);
    assertEquals(lines, new VesselLines(grid, header, List.of(header)).of(lines));
  }

  @Test
  void aSentenceIsAboutAllVessels() {
    TestGrid grid = grid(SHARED.replace("OG^1.085^^1.065^", "^OG: 1.085^^^") + " ; ");
    List<Header> vessels = Vessels.of(grid, new Headers(grid).find().get(0), Map.of());
    List<KeyLine> lines = new KeyLines(grid).find(0, 0, 0, 4);
    for (Header vessel : vessels) {
      assertEquals(1.085, new VesselLines(grid, vessel, vessels).of(lines).get(0).value());
    }
  }

  @Test
  void columnsOfTheOtherVesselsAreThoseThatAreNotShared() {
    TestGrid grid = grid(SHARED);
    Header header = new Headers(grid).find().get(0);
    List<Header> vessels = Vessels.of(grid, header, Map.of());
    assertEquals(Set.of(3, 4), others(grid, vessels.get(0), vessels));
    assertEquals(Set.of(1, 2), others(grid, vessels.get(1), vessels));
    assertEquals(Set.of(), others(grid, header, List.of(header)));
    assertEquals(Set.of(), others(grid, vessels.get(0), List.of(vessels.get(0), header)));
  }

  private static Set<Integer> others(TestGrid grid, Header header, List<Header> headers) {
    return new TreeSet<>(new VesselLines(grid, header, headers).columnsOfOthers());
  }
}
