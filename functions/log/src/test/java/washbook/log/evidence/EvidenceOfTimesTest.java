package washbook.log.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.TestGrid;

/** What times, headers beside the reading and words of both sides make of the same readings. */
class EvidenceOfTimesTest {
  /** Columns by their headers; what each is taken for stands behind a colon. */
  private static String told(String sheet, String above, String headers, String rows) {
    List<LogColumn> columns = new ArrayList<>();
    List<String> shown = new ArrayList<>();
    String[] headed = headers.split("\\^", -1);
    for (int i = 0; i < headed.length; i++) {
      String[] one = headed[i].split(":");
      shown.add(one[0]);
      if (one.length > 1) {
        Role role = Role.valueOf(one[1].toUpperCase(Locale.ROOT));
        String unit = role == Role.GRAVITY || role == Role.OWN_CORRECTED_GRAVITY ? "SG" : "";
        columns.add(new LogColumn(i, one[0], role, unit, Message.NONE));
      }
    }
    int top = above.isEmpty() ? 0 : 1;
    String[] lines = rows.split(" ; ");
    TestGrid grid =
        TestGrid.of(
            sheet,
            (above.isEmpty() ? "" : above + "\n")
                + String.join("|", shown)
                + "\n"
                + String.join("\n", lines).replace('^', '|'));
    LogTable table =
        new LogTable(
            top,
            top + 1,
            top + lines.length,
            0,
            headed.length - 1,
            columns,
            List.of(),
            LogSettings.none(),
            List.of(),
            true);
    Evidence evidence = Evidence.of(grid, table, 0, top, List.of());
    return evidence.mostly(false).key().replace("clue.", "")
        + "/"
        + evidence.mostly(true).key().replace("clue.", "")
        + " "
        + evidence.verdict();
  }

  /** What falls within a day is no ferment, unless a word says that it is one. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // a clock alone: on one day where it never goes back
        "Clock:time ! 8:00 ; 10:00 ; 12:00 ; 16:00 ; 20:00 ! false",
        "Clock:time ! 8:00 ; 10:00 ; 9:00 ; 16:00 ; 20:00 ! true",
        "Clock:time ! 8:00 ; 10:00 ;  ; 16:00 ; 20:00 ! false",
        "Clock:time ! 8:00 ; 8:00 ; 8:00 ; 8:00 ; 8:00 ! false",
        "Clock:time ! 8 ; 10 ; 12 ; 16 ; 24 ! false",
        "Clock:time ! 8 ; 10 ; 12 ; 16 ; 25 ! true",
        "Clock:time ! 8 ; 10 ; 12 ; 16 ; 4 ! true",
        // with a day: less than 0.7 days
        "Day:day^Clock:time ! 0^8:00 ; 0^10:00 ; 0^12:00 ; 0^16:00 ; 0^20:00 ! false",
        "Day:day^Clock:time ! 0^8:00 ; 0^10:00 ; 1^12:00 ; 2^16:00 ; 3^20:00 ! true",
        "Day:day ! 0 ; 2 ; 4 ; 6 ; 8 ! true",
        "Hours:hours^Clock:time ! 0^ ; 2^ ; 4^ ; 6^ ; 16^ ! false",
        "Hours:hours^Clock:time ! 0^ ; 24^ ; 48^ ; 72^ ; 96^ ! true",
      })
  void readingsOfHoursAreNoFerment(String headers, String times, boolean falls) {
    String[] gravities = {"1.085", "1.06", "1.03", "1.01", "1.005"};
    String[] time = times.split(" ; ");
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < time.length; i++) {
      rows.append(i == 0 ? "" : " ; ").append(time[i].strip()).append('^').append(gravities[i]);
    }
    String told = told("Sheet1", "", headers + "^Density:gravity", rows.toString());
    assertEquals(falls ? "COURSE/plain FERMENT" : "plain/plain OTHER", blank(told));
    String must = told("Sheet1", "Must", headers + "^Density:gravity", rows.toString());
    assertEquals("TRADE_WORD/plain FERMENT", blank(must));
  }

  private static String blank(String told) {
    return told.replace(Message.NONE.key(), "plain");
  }

  private static final String FALLS = "0^1.085 ; 2^1.06 ; 5^1.03 ; 8^1.01 ; 9^1.005";

  /** Words of both sides: what weighs most of each, and what follows from the sum. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Sheet1 ! Must ! TRADE_WORD/plain FERMENT",
        "Sheet1 ! Brine ! COURSE/OTHER_WORD OTHER",
        "Sheet1 ! Must and brine ! TRADE_WORD/OTHER_WORD OPEN",
        "Brine ! Must ! TRADE_WORD/OTHER_SHEET OPEN",
        "Brine ! Must and brine ! TRADE_WORD/OTHER_WORD OPEN",
        "Brine ! Brine ! COURSE/OTHER_WORD OTHER",
        "Battery ! Must ! TRADE_WORD/OTHER_SHEET FERMENT",
        "Sheet1 ! Battery, must ! TRADE_WORD/OTHER_WORD FERMENT",
      })
  void wordsOfBothSides(String sheet, String above, String told) {
    assertEquals(told, blank(told(sheet, above, "Day:day^Density:gravity", FALLS)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // without a fall they are no ferment's
        "Brine ! Must and brine ! OTHER",
        "Brine ! Must ! OPEN",
        "Sheet1 ! Must ! FERMENT",
      })
  void wordsOfBothSidesWithoutACourse(String sheet, String above, String verdict) {
    String stays = "0^1.05 ; 1^1.05 ; 2^1.049";
    assertEquals(
        verdict, told(sheet, above, "Day:day^Density:gravity", stays).replaceFirst(".* ", ""));
  }

  /** Headers count as far as they stand beside the reading; after a gap begins another list. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Day:day^Density:gravity^Brine:other ! ^x ! COURSE/OTHER_WORD OTHER",
        "Day:day^Density:gravity^^Brine:other ! ^^x ! COURSE/plain FERMENT",
        "Day:day^Density:gravity^Brine:computed ! ^x ! COURSE/plain FERMENT",
        "Brine:other^^Day:day^Density:gravity ! '' ! COURSE/plain FERMENT",
        "Day:day^Brine density:gravity ! '' ! COURSE/OTHER_READING OTHER",
      })
  void headersBesideTheReading(String headers, String behind, String told) {
    boolean left = headers.startsWith("Brine");
    StringBuilder rows = new StringBuilder();
    for (String row : FALLS.split(" ; ")) {
      rows.append(rows.isEmpty() ? "" : " ; ").append(left ? "x^^" + row : row + behind);
    }
    assertEquals(told, blank(told("Sheet1", "", headers, rows.toString())));
  }

  /** Without any time a rise is that of samples, one in each row. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Density:gravity ! 1.05 ; 1.06 ; 1.07 ; 1.08 ; 1.09 ! plain/ONE_EACH OTHER",
        "Density:gravity ! 1.085 ; 1.06 ; 1.03 ; 1.01 ; 1.005 ! COURSE/plain FERMENT",
        "Density:own_corrected_gravity ! 1.085 ; 1.06 ; 1.03 ; 1.01 ; 1.005 ! COURSE/plain FERMENT",
        "Density:gravity ! 1.085 ; 0 ; 1.06 ; 0.5 ; 1.03 ; 3 ; 1.01 ; 1.005 ! COURSE/plain FERMENT",
      })
  void readingsWithoutTimes(String header, String rows, String told) {
    assertEquals(told, blank(told("Sheet1", "", header, rows)));
  }
}
