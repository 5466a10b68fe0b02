package washbook.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NumbersShownTest {
  @Test
  void aNumberWithSoManyDecimalPlacesIsThatOfJavasOwnFormat() {
    Random random = new Random(5);
    for (int i = 0; i < 20_000; i++) {
      double value = random.nextInt(4) == 0 ? random.nextInt(20_000) / 16.0 : random.nextDouble();
      int places = random.nextInt(5);
      String format = "%." + places + "f";
      assertEquals(
          String.format(Locale.ROOT, format, value), Numbers.fixed(value, places), "" + value);
    }
  }

  @Test
  void aHalfGoesAwayFromZeroAndWhatIsNoNumberIsNamed() {
    assertEquals("1.3", Numbers.fixed(1.25, 1));
    assertEquals("-1.3", Numbers.fixed(-1.25, 1));
    assertEquals("NaN", Numbers.fixed(Double.NaN, 1));
  }
}
