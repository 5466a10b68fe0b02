package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.words.DateText.Order;

/** Dates and times as people type them, in eight languages. */
class DateTextTest {
  private static final LocalDate ZERO = LocalDate.of(1899, 12, 30);

  /** A day's serial, ISO 8601 by java.time; a spreadsheet counts from 1899-12-30. */
  private static double serial(String day) {
    return LocalDate.parse(day).toEpochDay() - ZERO.toEpochDay();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2025-03-04 | 2025-03-04",
        "2025/3/4 | 2025-03-04",
        "2025.03.04 | 2025-03-04",
        "4/3/2025 | 2025-03-04",
        "4.3.2025 | 2025-03-04",
        "04-03-25 | 2025-03-04",
        "4.3.99 | 2099-03-04",
        "4.3.100 | 0100-03-04",
        "31.12.2024 | 2024-12-31",
        "Tue 4/3/2025 | 2025-03-04",
        "Di., 4.3.2025 | 2025-03-04",
        "4 Mar 2025 | 2025-03-04",
        "31 Mar 2025 | 2025-03-31",
        "4 March 2025 | 2025-03-04",
        "March 4, 2025 | 2025-03-04",
        "2025 Mar 4 | 2025-03-04",
        "mar 3 nov 2025 | 2025-11-03",
      })
  void aDateIsThisDay(String text, String day) {
    assertEquals(serial(day), DateText.serial(text, Order.DAY_FIRST));
  }

  /** Every month in English, German, French, Spanish, Italian, Portuguese, Dutch, Afrikaans. */
  @ParameterizedTest
  @CsvSource({
    "1, January, Januar, janvier, enero, gennaio, janeiro, januari, Januarie",
    "2, February, Februar, février, febrero, febbraio, fevereiro, februari, Februarie",
    "3, March, März, mars, marzo, marzo, março, maart, Maart",
    "4, April, April, avril, abril, aprile, abril, april, April",
    "5, May, Mai, mai, mayo, maggio, maio, mei, Mei",
    "6, June, Juni, juin, junio, giugno, junho, juni, Junie",
    "7, July, Juli, juillet, julio, luglio, julho, juli, Julie",
    "8, August, August, août, agosto, agosto, agosto, augustus, Augustus",
    "9, September, September, septembre, septiembre, settembre, setembro, september, September",
    "10, October, Oktober, octobre, octubre, ottobre, outubro, oktober, Oktober",
    "11, November, November, novembre, noviembre, novembre, novembro, november, November",
    "12, December, Dezember, décembre, diciembre, dicembre, dezembro, december, Desember",
  })
  void aMonthIsKnownInEightLanguages(
      int month,
      String en,
      String de,
      String fr,
      String es,
      String it,
      String pt,
      String nl,
      String af) {
    double expected = serial(LocalDate.of(2025, month, 17).toString());
    for (String name : new String[] {en, de, fr, es, it, pt, nl, af}) {
      assertEquals(expected, DateText.serial("17 " + name + " 2025", Order.DAY_FIRST), name);
      assertEquals(expected, DateText.serial("17. " + name + " 2025", Order.MONTH_FIRST), name);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "3/4/2025, MONTH_FIRST, 2025-03-04",
    "3/4/2025, DAY_FIRST, 2025-04-03",
    "3/4/2025, UNKNOWN, 2025-04-03",
    "2025-03-04, MONTH_FIRST, 2025-03-04",
  })
  void theOrderDecidesWhereBothWouldDo(String text, Order order, String day) {
    assertEquals(serial(day), DateText.serial(text, order));
  }

  @ParameterizedTest
  @CsvSource({
    "3/4/2025, UNKNOWN",
    "12/12/2025, UNKNOWN",
    "13/4/2025, DAY_FIRST",
    "4/13/2025, MONTH_FIRST",
    "4/12/2025, UNKNOWN",
    "4.3.2025, DAY_FIRST",
    "31/1/2025, DAY_FIRST",
    "32/1/2025, UNKNOWN",
    "2025-13-01, UNKNOWN",
    "Mon 4/13/2025, MONTH_FIRST",
    "4 Mar 2025, UNKNOWN",
    "4/13, MONTH_FIRST",
    "13/4, DAY_FIRST",
    "13.4, UNKNOWN",
  })
  void aDateTellsItsOrder(String text, Order order) {
    assertEquals(order, DateText.order(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "soon",
        "1.085",
        "31/2/2025",
        "32 Mar 2025",
        "4.3",
        "4/3/2025/1",
        "12345/1/1",
        "Mar",
        "4 5 6 Mar",
        "4 Mar 2025 at 25:00",
        "x4/3/2025y",
        "12:00",
        "Mx 4",
      })
  void anythingElseIsNoDate(String text) {
    assertTrue(Double.isNaN(DateText.serial(text, Order.DAY_FIRST)), text);
  }

  @ParameterizedTest
  @CsvSource({
    "4/3/2025 18:30, 0.7708333333333334",
    "2025-03-04T06:00, 0.25",
    "2025-03-04T06:00Z, 0.25",
    "4 Mar 2025 12:00, 0.5",
    "4/3/2025 9:15 pm, 0.8854166666666666",
    "4/3/2025 00:00, 0",
  })
  void aTimeAfterTheDateIsItsFraction(String text, double fraction) {
    double expected = serial("2025-03-04") + fraction;
    assertEquals(expected, DateText.serial(text, Order.DAY_FIRST), 1e-9);
  }

  /** Hours, and minutes and seconds where there are any. */
  @ParameterizedTest
  @CsvSource({
    "0:00, 0, 0, 0",
    "6:00, 6, 0, 0",
    "18:30, 18, 30, 0",
    "18:30:15, 18, 30, 15",
    "18.30, 18, 30, 0",
    "18h30, 18, 30, 0",
    "18h, 18, 0, 0",
    "7, 7, 0, 0",
    "T07:45, 7, 45, 0",
    "24:00, 24, 0, 0",
    "59:00, -1, 0, 0",
    "7:59, 7, 59, 0",
    "7 pm, 19, 0, 0",
    "7:45pm, 19, 45, 0",
    "7:45 PM, 19, 45, 0",
    "7:45 am, 7, 45, 0",
    "11:59 pm, 23, 59, 0",
    "12:00 pm, 12, 0, 0",
    "12:30 pm, 12, 30, 0",
    "12:00 am, 0, 0, 0",
    "12:30 am, 0, 30, 0",
  })
  void aTimeOfDayIsThisTime(String text, int hours, int minutes, int seconds) {
    double expected =
        hours < 0 ? Double.NaN : (hours * 3600 + minutes * 60 + seconds) / (24 * 3600.0);
    assertEquals(expected, DateText.time(text), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "25:00", "7:60", "7:5:60", "1:2:3:4", "123", "noon", "7:x", "7:", "-7"})
  void anythingElseIsNoTime(String text) {
    assertTrue(Double.isNaN(DateText.time(text)), text);
  }

  /** The year that brings a date nearest to the one before it. */
  @ParameterizedTest
  @CsvSource({
    "28/10, 2024-10-20, 2024-10-28",
    "28.10., 2024-10-20, 2024-10-28",
    "Sat 28/10, 2024-10-20, 2024-10-28",
    "2/1, 2024-12-30, 2025-01-02",
    "martes 30, 2025-09-29, 2025-09-30",
    "jueves 2, 2025-09-30, 2025-10-02",
    "'Dienstag, 14.', 2025-10-12, 2025-10-14",
    "maandag 3, 2025-11-01, 2025-11-03",
    "30 Dec, 2024-12-28, 2024-12-30",
    "2 Jan, 2024-12-30, 2025-01-02",
    "30 Dec, 2025-01-02, 2024-12-30",
    "15 Jun, 2025-06-10, 2025-06-15",
  })
  void aDateWithoutAYearGoesWhereTheLogIs(String text, String near, String day) {
    assertEquals(serial(day), DateText.serial(text, Order.DAY_FIRST, serial(near)));
    assertTrue(DateText.lacksYear(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"30 Dec 2024", "4/3/2025", "soon", ""})
  void otherTextsDoNotLackAYear(String text) {
    assertFalse(DateText.lacksYear(text));
  }
}
