package washbook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.WarningLimits.Limit;
import washbook.log.language.Language;
import washbook.log.language.ToldException;

/** The limits of warnings: what is usual, what can be set, and how either is told. */
class WarningLimitsTest {
  /** Each at its ends and at its usual value. */
  @ParameterizedTest
  @CsvSource({
    "warmest, WARMEST, -20, 60, 32, 32 °C",
    "coldest, COLDEST, -20, 60, 10, 10 °C",
    "lag-days, LAG, 0.1, 60, 3, 3 days",
    "overdue-days, OVERDUE, 0.1, 365, 4, 4 days",
    "closed-days, CLOSED, 1, 36500, 90, 90 days",
    "planned-abv, PLANNED, 0.1, 25, NaN, ",
    "final-gravity, FINAL, 0.98, 1.1, 1, 1 SG",
    "off-points, OFF_COURSE, 1, 200, 8, 8 points",
  })
  void eachLimitHasAWordAUsualValueAndTwoEnds(
      String word, Limit limit, double least, double most, double usual, String shown) {
    assertEquals(usual, WarningLimits.usual().of(limit));
    assertSame(WarningLimits.PRACTICE, WarningLimits.usual().source(limit));
    if (shown != null) {
      assertEquals(shown, WarningLimits.usual().shown(limit).in(Language.EN));
    }
    for (double end : new double[] {least, most}) {
      WarningLimits set = WarningLimits.parse(List.of(word + "=" + end));
      assertEquals(end, set.of(limit));
      assertEquals("limit as given", set.source(limit).in(Language.EN));
      assertFalse(set.isUsual());
      assertEquals(set, WarningLimits.parse(set.settings()));
      assertEquals(set.settings().get(0), set.toString());
    }
    for (double beyond : new double[] {least - 0.001, most + 0.001}) {
      String setting = word + "=" + beyond;
      ToldException refused =
          assertThrows(ToldException.class, () -> WarningLimits.parse(List.of(setting)));
      assertTrue(refused.told().in(Language.EN).contains(word + "=NUMBER"));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      quoteCharacter = '"',
      value = {
        "warmest ! 'warmest' must be warmest=NUMBER, -20 to 60 °C.",
        "lag-days=soon ! 'lag-days=soon' must be lag-days=NUMBER, 0.1 to 60 days.",
        "off-points= ! 'off-points=' must be off-points=NUMBER, 1 to 200 points.",
        "wettest=3 ! There is no limit 'wettest'; there are warmest, coldest, lag-days, overdue-days,"
            + " closed-days, planned-abv, final-gravity, off-points.",
      })
  void whatCannotBeSetIsRefused(String setting, String told) {
    ToldException refused =
        assertThrows(ToldException.class, () -> WarningLimits.parse(List.of(setting)));
    assertEquals(told, refused.told().in(Language.EN));
  }

  @Test
  void spacesAndCapitalsDoNotMatter() {
    assertEquals(28, WarningLimits.parse(List.of(" Warmest = 28 ")).of(Limit.WARMEST));
  }

  @Test
  void theNearerSettingWins() {
    WarningLimits near = WarningLimits.parse(List.of("warmest=28"));
    WarningLimits far = WarningLimits.parse(List.of("warmest=30", "coldest=12"));
    WarningLimits both = near.over(far);
    assertEquals(28, both.of(Limit.WARMEST));
    assertEquals(12, both.of(Limit.COLDEST));
    assertEquals("warmest=28,coldest=12", both.toString());
    assertEquals(near, near.over(WarningLimits.usual()));
    assertEquals(near, WarningLimits.usual().over(near));
    assertSame(WarningLimits.usual(), WarningLimits.usual().over(WarningLimits.usual()));
    assertTrue(WarningLimits.usual().isUsual());
  }

  @Test
  void limitsAreEqualWhereTheSameIsSet() {
    WarningLimits one = WarningLimits.parse(List.of("warmest=28"));
    assertEquals(one, WarningLimits.parse(List.of("WARMEST=28.0")));
    assertEquals(one.hashCode(), WarningLimits.parse(List.of("warmest=28")).hashCode());
    assertNotEquals(one.hashCode(), WarningLimits.parse(List.of("warmest=29")).hashCode());
    assertNotEquals(one, WarningLimits.parse(List.of("warmest=29")));
    assertFalse(one.equals(null));
  }
}
