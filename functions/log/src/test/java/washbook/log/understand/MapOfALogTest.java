package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;

/** The map that is written of a log: everything that was understood, to be edited. */
class MapOfALogTest {
  private static Understanding understood(String log) {
    return SheetUnderstanding.understand(
        TestGrid.of("Cellar", log.replace('^', '|').replace(" ;", "\n")), LogMap.none());
  }

  /** Without its comments, the statements in one line. */
  private static String statements(String log) {
    String map = LogMap.write(List.of(understood(log)), Language.EN);
    return String.join(
        ", ", map.lines().filter(l -> !l.isEmpty() && !l.startsWith("# Washbook")).toList());
  }

  private static final String HEAD =
      "# A line that begins with # says nothing; edit, and hand it back with --map., [table],"
          + " sheet = Cellar, header row = ";

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Day^SG^Temp C ; 0^1.085^20 ; 4^1.04^20 ; 8^1.01^20 ! 1, column A = DAY,"
            + " column B = GRAVITY in SG, column C = TEMPERATURE in C, calibration = 20 C,"
            + " # original gravity of Cellar = 1.085 SG",
        "Temperature: 20 C ; Day^SG ; 0^1.085 ; 4^1.04 ; 8^1.01 ! 2, column A = DAY,"
            + " column B = GRAVITY in SG, temperature = 20 C, calibration = 20 C,"
            + " # original gravity of Cellar = 1.085 SG",
        "Readings corrected to 20 C ; Day^SG ; 0^1.085 ; 4^1.04 ; 8^1.01 ! 2, column A = DAY,"
            + " column B = GRAVITY in SG, temperature = 20 C, corrected = yes,"
            + " calibration = 20 C, # original gravity of Cellar = 1.085 SG",
        "Offset: 0.002 ; Volume: 25 L ; Sugar wash ; OG: 1.09 ; Day^SG^Temp C"
            + " ; 0^1.085^20 ; 4^1.04^20 ; 8^1.01^20 ! 5, column A = DAY,"
            + " column B = GRAVITY in SG, column C = TEMPERATURE in C, calibration = 20 C,"
            + " offset = 0.002, volume = 25 L, wash = SUGAR,"
            + " # original gravity of Cellar = 1.09 SG",
        "Refractometer factor: 1.04 ; Day^Refractometer Brix ; 0^20 ; 4^12 ; 8^8 ! 2,"
            + " column A = DAY, column B = REFRACTOMETER in BRIX, calibration = 20 C,"
            + " refractometer factor = 1.04, # original gravity of Cellar = 1.07951 SG",
        "x ; ; Day^0^4^8^12 ; SG^1.085^1.04^1.02^1.01 ; Temp C^20^20^20^20 ! 3, row 3 = DAY,"
            + " row 4 = GRAVITY in SG, row 5 = TEMPERATURE in C, calibration = 20 C,"
            + " # original gravity of Cellar = 1.085 SG",
      })
  void aMapSaysWhatWasUnderstood(String log, String statements) {
    assertEquals(HEAD + statements, statements(log));
  }

  @Test
  void anOpenQuestionStandsAboveAndItsTableIsOnlyProposed() {
    String map =
        LogMap.write(
            List.of(understood("Day^SG^Temp ; 0^1.085^50 ; 4^1.04^49 ; 8^1.01^51")), Language.EN);
    assertTrue(map.contains("\n# Question, sheet Cellar, C1: "), map);
    assertTrue(map.contains("\n# Not settled; take away the # where a line is right:\n"), map);
    assertTrue(map.contains("\n# column B = GRAVITY in SG\n"), map);
    assertTrue(map.contains("\nheader row = 1\n"), map);
  }

  @Test
  void aStillRunIsWrittenWithItsSettings() {
    assertEquals(
        HEAD
            + "3, column A = JAR, column B = VOLUME in ML, column C = STRENGTH in ABV,"
            + " column D = TEMPERATURE in C, run = yes, corrected = no, volumes at 20 = no,"
            + " calibration = 20 C, charge = 25 L, charge strength = 10 ABV",
        statements(
            "Plum 3, spirit run ; Charge: 25 L at 10 % vol ; Jar^mL^% vol^Temp C ; 1^100^75^15"
                + " ; 2^500^74^16 ; 3^500^66^25 ; 4^500^42^25"));
  }

  private static String names(String log) {
    return String.join(
        ", ",
        understood(log).tables().stream()
            .flatMap(t -> t.batches().stream())
            .map(washbook.log.Batch::name)
            .toList());
  }

  private static final String LOG = " ; Day^SG^Temp C ; 0^1.085^20 ; 4^1.04^20 ; 8^1.01^20";

  /** By a line that names it, a title, its vessel, else the sheet. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "x ! Cellar",
        "Batch: Plum 3 ! Plum 3",
        "Batch^12 ! 12",
        "Batch: Plum 3 ; Batch: Apple 7 ! Apple 7",
        "Batch 9 ! 9",
        "Vessel: barrel 2 ! barrel 2",
        "Vessel: barrel 2 ; Batch: Plum 3 ! Plum 3",
        "Vessel: barrel 2 ; Batch 9 ! 9",
        "Batch: 0123456789012345678901234567890123456789 !"
            + " 0123456789012345678901234567890123456789",
        "Batch: 01234567890123456789012345678901234567890 ! Cellar",
        "The plums ! Cellar",
      })
  void aBatchHasItsNameFromAbove(String line, String name) {
    assertEquals(name, names(line + LOG));
  }

  /** Of several tables a title that stands alone right above is the name. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "The plums ! The plums",
        "the plums ! Cellar",
        "The plums. ! Cellar",
        "The plums of our old tree ! Cellar",
        "The plums of ours ! The plums of ours",
        "Plums: good ! Cellar",
        "The plums^red ! Cellar",
        "The plums ; ! The plums",
        "The plums ; from Monday on they stand ! Cellar",
        "Abcdefghi jklmnopqrs tuvwxyzabc defghijkl ! Cellar",
        "Abcdefghi jklmnopqrs tuvwxyzabc defghijk ! Abcdefghi jklmnopqrs tuvwxyzabc defghijk",
      })
  void aTitleRightAboveOneOfSeveralTablesIsItsName(String title, String name) {
    assertEquals("Pears, " + name, names("Pears" + LOG + " ; ; " + title + LOG));
  }
}
