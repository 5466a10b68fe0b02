package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Role;
import washbook.log.sheet.TestGrid;

/** What vessels side by side are called, and which columns each of them has. */
class NamesOfVesselsTest {
  private static String told(String header, Map<Integer, Role> said) {
    String rows = "\n0|1.085|20|1.065|20\n3|1.05|20|1.04|20\n6|1.02|20|1.02|20\n8|1.01|20|1.01|20";
    if (header.contains("SG^SG") || header.matches("(?s).*SG [^^]+\\^SG.*")) {
      rows = "\n0|1.085|1.065|20|20\n3|1.05|1.04|20|20\n6|1.02|1.02|20|20\n8|1.01|1.01|20|20";
    }
    TestGrid grid = TestGrid.of("Log", header.replace('^', '|').replace(" ;", "\n") + rows);
    return VesselsSideBySideTest.told(grid, said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // temperatures by a letter and the vessel's name
        "Day^SG A^T A^SG B^T B ! A ABC, B ADE",
        "Day^Plum SG^Plum T^Pear SG^Pear T ! Plum ABC, Pear ADE",
        "Day^SG A^SG B^Temp C A^Temp C B ! A ABD, B ACE",
        "Day^SG A^SG B^Temp C ! A ABD, B ACD",
        // remarks at the end are about all, unless each has its own
        "^Plum 3^^Apple 7^ ; Day^SG^Temp C^SG^Note ! Plum 3 ABCE, Apple 7 ADE",
        "^Plum 3^^Apple 7^ ; Day^SG^Note^SG^Note ! Plum 3 ABC, Apple 7 ADE",
        // what stands in brackets is said of the vessel
        "^Plum 3 (corrected)^^Apple 7 (old)^ ; Day^SG^Temp C^SG^Temp C !"
            + " Plum 3 (corrected) ABC, Apple 7 (old) ADE",
        "^corrected^^uncorrected^ ; Day^SG^Temp C^SG^Temp C ! ABCDE",
        "^Batch Monday^^Batch Tuesday^ ; Day^SG^Temp C^SG^Temp C !"
            + " Batch Monday ABC, Batch Tuesday ADE",
        // by another instrument
        "^Plum 3^^Apple 7^^Pear 1 ; Day^SG^Temp C^SG^Temp C^Refractometer !"
            + " Plum 3 ABC, Apple 7 ADE, Pear 1 AF",
        // the same name again belongs to its block
        "^Plum 3^Plum 3^Apple 7^Apple 7 ; Day^SG^Temp C^SG^Temp C ! Plum 3 ABC, Apple 7 ADE",
        "^Plum 3^^Plum 3^ ; Day^SG^Temp C^SG^Temp C ! ABCDE",
        // times of the day
        "Day^SG morning^SG evening^Temp C ! SG morning ABD, SG evening ACD",
        "^morning^^evening^ ; Day^SG^Temp C^SG^Temp C ! morning ABC, evening ADE",
        "^morning^^^ ; Day^SG^Temp C^SG^Temp C ! ABCDE",
        // on two scales they are of one vessel
        "Day^SG^Temp C^Brix^Temp C ! ABCDE",
        "^Plum 3^^Apple 7^ ; Day^SG^Temp C^Brix^Temp C ! ABCDE",
      })
  void eachVesselHasItsNameAndItsColumns(String header, String vessels) {
    assertEquals(vessels, told(header, Map.of()));
  }

  /** A name of its own has few words, in a header that speaks of a reading three at most. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Day^SG tank 1^SG tank 2^Temp C ! tank 1 ABD, tank 2 ACD",
        "Day^SG 1 xo yu lo^SG 2 ze wu ku^Temp C ! ABCD",
        "Day^SG 1 xo yu^SG 2 ze wu^Temp C ! 1 xo yu ABD, 2 ze wu ACD",
        "Day^SG^SG B^Temp C ! ABCD",
        "Day^SG AB^SG CD^Temp C ! AB ABD, CD ACD",
        "Day^SG ABC^SG CDE^Temp C ! ABCD",
        "Day^SG plum^SG apple^Temp C ! plum ABD, apple ACD",
      })
  void aNameIsThePartInWhichHeadersDiffer(String header, String vessels) {
    assertEquals(vessels, told(header, Map.of()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Day^SG^SG^Temp C ! GRAVITY ! GRAVITY ! B ABD, C ACD",
        "Day^SG^SG^Temp C ! REFRACTOMETER ! REFRACTOMETER ! B ABD, C ACD",
        "Day^SG^SG^Temp C ! GRAVITY ! REFRACTOMETER ! ABCD",
        "Day^SG x^SG y^Temp C ! GRAVITY ! GRAVITY ! x ABD, y ACD",
        "Day^SG abc^SG xyz^Temp C ! GRAVITY ! GRAVITY ! SG abc ABD, SG xyz ACD",
      })
  void aMapMakesEachReadingAVessel(String header, Role one, Role other, String vessels) {
    assertEquals(vessels, told(header, Map.of(1, one, 2, other)));
  }
}
