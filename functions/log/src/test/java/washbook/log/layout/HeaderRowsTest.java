package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.TestGrid;

/** Which rows of a sheet are headers of logs, and what their columns are called. */
class HeaderRowsTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Log", text.replace('^', '|').replace(" ;", "\n"));
  }

  static String told(List<Header> headers) {
    return headers.stream()
        .map(
            h ->
                (h.topRow() + 1)
                    + (h.bottomRow() == h.topRow() ? "" : "-" + (h.bottomRow() + 1))
                    + h.cells().stream()
                        .map(c -> " " + CellAddress.letters(c.column()) + " " + shown(c.role()))
                        .collect(Collectors.joining()))
        .collect(Collectors.joining(", "));
  }

  private static String shown(Role role) {
    return switch (role) {
      case GRAVITY -> "SG";
      case TEMPERATURE -> "TEMP";
      case ORIGINAL_GRAVITY -> "OG";
      case OWN_CORRECTED_GRAVITY -> "CORRECTED";
      default -> role.name();
    };
  }

  private static String found(TestGrid grid) {
    return told(new Headers(grid).find());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // two cells that name something of a log, one of them a reading
        "Date^SG^Temp C ; #2025-11-04^1.085^20 ! 1 A DATE B SG C TEMP",
        "Plum 3 ; ; Date^SG ; #2025-11-04^1.085 ! 3 A DATE B SG",
        "SG ; 1.085 ! ''",
        "Colour^SG ; red^1.085 ! ''",
        "Date^Temp C ; #2025-11-04^20 ! ''",
        "SG^SG ; 1.085^1.080 ! ''",
        "Date^SG^ABV^Corrected gravity (SG, Washbook) ; #2025-11-04^1.085^0^1.085"
            + " ! 1 A DATE B SG C OWN_ABV D COMPUTED",
        // at most one cell between them
        "Date^^SG ; #2025-11-04^^1.085 ! 1 A DATE C SG",
        "Date^^^SG ; #2025-11-04^^^1.085 ! ''",
        "SG^Temp C^^Note ; 1.085^20^^x ! 1 A SG B TEMP D NOTE",
        "SG^Temp C^^^Note ; 1.085^20^^^x ! 1 A SG B TEMP",
        // tables side by side
        "Date^SG^^Date^SG ; #2025-11-04^1.085^^#2025-11-04^1.060 ! 1 A DATE B SG, 1 D DATE E SG",
        "Date^SG^Date^SG ; #2025-11-04^1.085^#2025-11-04^1.060 ! 1 A DATE B SG, 1 C DATE D SG",
        "Day^SG^Day^SG^Day^SG ; 1^1.085^1^1.06^1^1.07"
            + " ! 1 A DAY B SG, 1 C DAY D SG, 1 E DAY F SG",
        "Date^Temp C^Date^SG ; #2025-11-04^20^#2025-11-04^1.060 ! 1 A DATE B TEMP C DATE D SG",
        "Temp C^SG^Temp C^SG ; 20^1.085^20^1.060 ! 1 A TEMP B SG C TEMP D SG",
        // one below the other
        "Date^SG ; #2025-11-04^1.085 ; ; Date^SG ; #2025-11-04^1.060 ! 1 A DATE B SG, 4 A DATE B SG",
        // a label with its value and a unit after it
        "OG^1.085^SG ; yeast ! ''",
      })
  void aHeaderNamesAReadingAndSomethingElse(String text, String headers) {
    assertEquals(headers, found(grid(text)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "^Gravity^Temperature ; Date^SG^°C ; #2025-11-04^1.085^20 ! 1-2 A DATE B SG C TEMP",
        "Day^Hydrometer^Temp ; ^SG^°C ; 0^1.085^20 ! 1-2 A DAY B SG C TEMP",
        "Day^Hydrometer^Temp ; -^SG^°C ; 0^1.085^20 ! 1-2 A DAY B SG C TEMP",
        "Day^Hydrometer^Temp ; ^SG^ ; 0^1.085^20 ! 1-2 A DAY B SG C TEMP",
        "Day^Hydrometer^Temp ; 1^SG^ ; 0^1.085^20 ! 1 A DAY B SG C TEMP",
        "Day^Hydrometer^Temp ; x^SG^ ; 0^1.085^20 ! 1 A DAY B SG C TEMP",
        "Day^Hydrometer^Temp ; ^^ ; 0^1.085^20 ! 1 A DAY B SG C TEMP",
        // labels with their values above the header are no part of it
        "Volume^15 l^Spindle^20 °C ; Date^SG^Temp C^Note ; #2025-11-04^1.085^20^"
            + " ! 2 A DATE B SG C TEMP D NOTE",
        "Volume^15 l^Spindle^20 °C ; yeast ! ''",
        // one says something of the instrument
        "^Temperature^Hydrometer ; Date^SG^Temp C ; #2025-11-04^1.085^20 ! 2 A DATE B SG C TEMP",
      })
  void aHeaderMayHaveTwoRows(String text, String headers) {
    assertEquals(headers, found(grid(text)));
  }

  @Test
  void aCellMergedOverSomeColumnsCountsForEachOfThem() {
    String log = "^Corrected^ ; Date^SG^Temp C ; #2025-11-04^1.085^20";
    assertEquals("1-2 A DATE B CORRECTED C TEMP", found(grid(log).merge(0, 1, 0, 2)));
    assertEquals("2 A DATE B SG C TEMP", found(grid(log)));
  }

  @Test
  void aTitleMergedOverAllColumnsIsNoPartOfTheHeader() {
    String log = "Corrected^^ ; Date^SG^Temp C ; #2025-11-04^1.085^20";
    assertEquals("2 A DATE B SG C TEMP", found(grid(log).merge(0, 0, 0, 2)));
  }

  @Test
  void aHeaderMergedOverTwoRowsIsOneText() {
    String log = "Date^Gravity^Temperature ; ^SG^°C ; #2025-11-04^1.085^20";
    assertEquals("1-2 A DATE B SG C TEMP", found(grid(log).merge(0, 0, 1, 0)));
  }

  /** A row of words below a header is a row of readings where a value stands with them. */
  @Test
  void wordsBesideAReadingAreNoHeader() {
    assertEquals(
        "1 A DAY B SG C TEMP D NOTE E TIME",
        found(grid("Day^SG^Temp C^Note^Time ; Mon^1.085^20^SG^Date ; Tue^1.08^20^^")));
    assertEquals(
        "1 A DAY B SG C TEMP D NOTE E TIME",
        found(grid("Day^SG^Temp C^Note^Time ; Mon^'1.085 SG^20^SG^Date ; Tue^1.08^20^^")));
  }

  /** Dates in each of the three rows below tell what a word above them means. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "#2025-11-04 ; #2025-11-05 ; #2025-11-06 ! DATE",
        "4.11.2025 ; 5.11.2025 ; 6.11.2025 ! DATE",
        "#2025-11-04 ; #2025-11-05 ; x ! OTHER",
        "x ; #2025-11-05 ; #2025-11-06 ! OTHER",
        "#2025-11-04 ; #2025-11-05 ! OTHER",
      })
  void anUnknownWordOverDatesIsADate(String dates, String role) {
    StringBuilder log = new StringBuilder("Blorp^SG^Temp C");
    for (String date : dates.split(" ; ")) {
      log.append("\n" + date + "^1.085^20");
    }
    assertEquals("1 A " + role + " B SG C TEMP", found(grid(log.toString())));
  }

  /**
   * A value, points or a potential stand in many tables: their company must speak for a ferment.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Date^Value ! 1.085 1.07 1.05 1.02 1.01 ! 1 A DATE B SG",
        "Date^Value ! 85 70 50 20 10 ! ''",
        "Date^Value ! 1.085 1.07 1.05 1.02 7 ! 1 A DATE B SG",
        "Date^Value ! 1.085 1.07 1.05 8 7 ! ''",
        "Date^Value ! 1 1 1 1 1 ! ''",
        "Temp C^Value ! 85 70 50 20 10 ! 1 A TEMP B SG",
        "Date^Points ! 85 70 50 20 10 ! 1 A DATE B SG",
        "Note^Points ! 85 70 50 20 10 ! ''",
        "Date^SG ! 85 70 50 20 10 ! 1 A DATE B SG",
        // beside words of other things
        "Salt^Hydrometer^Temp C ! 85 70 50 20 10 ! ''",
        "Salt^SG^Temp C ! 85 70 50 20 10 ! 1 A OTHER B SG C TEMP",
        "Salt^Hydrometer^Temp C ! 1.085 1.07 1.05 1.02 1.01 ! 1 A OTHER B SG C TEMP",
      })
  void theCompanyOfACommonWordTells(String header, String values, String headers) {
    StringBuilder log = new StringBuilder(header);
    for (String value : values.split(" ")) {
      log.append("\n20^" + value + "^20");
    }
    assertEquals(headers, found(grid(log.toString())));
  }

  /** Values and statements have no meaning as headers. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Temp C ! TEMPERATURE",
        " SG  ! GRAVITY",
        "T tank ! TEMPERATURE",
        "T. sample ! TEMPERATURE",
        "SG (start 1.090) ! GRAVITY",
        "SG: 1.085 ! OTHER",
        "SG = 1.085 ! OTHER",
        "SG: ! GRAVITY",
        "SG 2 ! OTHER",
        "SG #2 ! OTHER",
        "SG two ! GRAVITY",
        "20 °C ! OTHER",
        "-5 °C ! OTHER",
        "~20 °C ! OTHER",
        "+20 °C ! OTHER",
      })
  void oneCellSaysByItself(String text, Role role) {
    assertEquals(role, HeaderWords.judge(text).role());
  }

  @Test
  void aWordBeginsWithALetterAndIsNoDate() {
    assertEquals(true, HeaderWords.isWord(" plum"));
    assertEquals(false, HeaderWords.isWord("3 plums"));
    assertEquals(false, HeaderWords.isWord("  "));
    assertEquals(true, HeaderWords.isValue("3 plums"));
    assertEquals(true, HeaderWords.isValue("-3"));
    assertEquals(false, HeaderWords.isValue("-"));
    assertEquals(false, HeaderWords.isValue("plum 3"));
    assertEquals(Role.OTHER, HeaderWords.judge("  ").role());
  }
}
