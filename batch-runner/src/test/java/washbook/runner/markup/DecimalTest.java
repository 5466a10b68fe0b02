package washbook.runner.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DecimalTest {
  private static final int TRIES = 200_000;

  @Test
  void digitsShownAreThoseOfDecimalArithmetic() {
    Random random = new Random(7);
    for (int i = 0; i < TRIES; i++) {
      int decimals = random.nextInt(7);
      double number = number(random, decimals);
      String expected =
          BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
      assertEquals(expected, Decimal.shown(number, decimals), number + " to " + decimals);
    }
  }

  /** Ordinary readings, halves just at the digit that is cut, and sizes of all kinds. */
  private static double number(Random random, int decimals) {
    double sign = random.nextBoolean() ? 1 : -1;
    return switch (random.nextInt(3)) {
      case 0 -> sign * random.nextDouble() * 1200;
      case 1 -> sign * (random.nextInt(100_000) + 0.5) / Math.pow(10, decimals);
      default -> sign * random.nextDouble() * Math.pow(10, random.nextInt(25) - 12);
    };
  }

  @Test
  void whatIsWrittenReadsBackAsTheSameNumber() {
    Random random = new Random(11);
    for (int i = 0; i < TRIES; i++) {
      double number = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(number)) {
        byte[] text = Decimal.format(number).getBytes(StandardCharsets.US_ASCII);
        assertEquals(number, Decimal.parse(text, 0, text.length), 0.0);
      }
    }
  }

  @Test
  void moreDigitsThanANumberHoldsAreRoundedAsTheJdkDoes() {
    Random random = new Random(13);
    for (int i = 0; i < TRIES; i++) {
      String text = random.nextInt(10_000) + "." + Long.toString(random.nextLong() >>> 1);
      byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
      assertEquals(Double.parseDouble(text), Decimal.parse(bytes, 0, bytes.length), 0.0, text);
    }
  }

  @Test
  void wordsOfTheJdkAreNoNumbers() {
    for (String word : new String[] {"NaN", "Infinity", "1d", "0x1p3", "1e", "--1", "", "."}) {
      byte[] bytes = word.getBytes(StandardCharsets.US_ASCII);
      assertEquals(Double.NaN, Decimal.parse(bytes, 0, bytes.length), word);
    }
  }
}
