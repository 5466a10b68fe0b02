package washbook.runner.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OdsMomentTest {
  private static final LocalDateTime DAY_ZERO = LocalDateTime.of(1899, 12, 30, 0, 0);

  @Test
  void momentsAreDaysSinceTheEndOf1899() {
    Random random = new Random(5);
    for (int i = 0; i < 20_000; i++) {
      LocalDateTime moment = DAY_ZERO.plusSeconds(random.nextLong(6_000_000_000L));
      String text = moment.truncatedTo(ChronoUnit.SECONDS).toString();
      double seconds = ChronoUnit.SECONDS.between(DAY_ZERO, moment);
      assertEquals(seconds / 86_400, OdsCell.days(text), 1e-9, text);
      assertEquals(OdsCell.days(text), OdsCell.days(text + "Z"), 0.0, text);
    }
  }

  @Test
  void whatNoCalendarHasIsNoMoment() {
    for (String text :
        new String[] {
          "2026-13-01T00:00:00",
          "2026-02-30T00:00:00",
          "2026-02-01T25:00:00",
          "2026-02-01T00:61:00",
          "2026-02-01 00:00:00",
          "20260201T000000",
          ""
        }) {
      assertEquals(Double.NaN, OdsCell.days(text), text);
    }
  }
}
