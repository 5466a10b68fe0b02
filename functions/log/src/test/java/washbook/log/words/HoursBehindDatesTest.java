package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HoursBehindDatesTest {
  @ParameterizedTest
  @CsvSource({
    "06-feb 07h, 06-feb, 7",
    "07-feb 19h, 07-feb, 19",
    "14/03 21u30, 14/03, 21.5",
    "7/11 6am, 7/11, 6",
    "7/11 6 am, 7/11, 6",
    "7/12 12pm, 7/12, 12",
    "7/12 10pm, 7/12, 22",
    "Wed 8/4 am, 8/4, 9",
    "Wed 8/4 pm, 8/4, 18",
    "10.3. abends, 10.3., 18",
    "4 okt oggend, 4 okt, 9",
  })
  void anHourOrAHalfOfTheDayIsNoYear(String text, String date, double hours) {
    double day = DateText.serial(date, DateText.Order.DAY_FIRST);
    assertEquals(hours / 24, DateText.serial(text, DateText.Order.DAY_FIRST) - day, 1e-6);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"24.8.2024 abends 8 Uhr", "24.8.2024 6h 18h", "Sat 7 am", "24.8. am abends"})
  void anHourBesideAHalfOfTheDayOrAWeekdayIsNotRead(String text) {
    assertTrue(Double.isNaN(DateText.serial(text, DateText.Order.DAY_FIRST)), text);
  }

  @Test
  void aLongTextIsNoDate() {
    assertTrue(
        Double.isNaN(DateText.serial("24.8.2024" + " 1h".repeat(5000), DateText.Order.DAY_FIRST)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"after lunch", "cap 8 in.", "stuck 3h", "18 h"})
  void otherWordsAreNoDates(String text) {
    assertTrue(Double.isNaN(DateText.serial(text, DateText.Order.DAY_FIRST)));
  }
}
