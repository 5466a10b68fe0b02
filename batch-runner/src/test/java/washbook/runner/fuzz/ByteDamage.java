package washbook.runner.fuzz;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.Random;

/** Damage that knows nothing about what the bytes mean. */
final class ByteDamage {
  /** Numbers that lengths and offsets are not prepared for. */
  private static final int[] EXTREMES = {
    0, 1, 0x7F, 0x80, 0xFF, 0x7FFF, 0x8000, 0xFFFF, 0x7FFFFFFF, 0x80000000, 0xFFFFFFFF
  };

  private ByteDamage() {}

  static byte[] some(byte[] whole, Random random) {
    if (whole.length == 0) {
      return new byte[] {(byte) random.nextInt()};
    }
    return switch (random.nextInt(6)) {
      case 0 -> flipped(whole, random, whole.length);
      case 1 -> Arrays.copyOf(whole, random.nextInt(whole.length));
      case 2 -> blockMoved(whole, random);
      case 3 -> extreme(whole, random, random.nextInt(whole.length));
      case 4 -> extreme(whole, random, nearEnd(whole, random));
      default -> flipped(whole, random, Math.min(whole.length, 1024));
    };
  }

  private static byte[] flipped(byte[] whole, Random random, int within) {
    byte[] bytes = whole.clone();
    int flips = 1 + random.nextInt(8);
    for (int i = 0; i < flips; i++) {
      bytes[random.nextInt(within)] ^= (byte) (1 << random.nextInt(8));
    }
    return bytes;
  }

  /** Where archives keep their directory. */
  private static int nearEnd(byte[] whole, Random random) {
    return Math.max(0, whole.length - 1 - random.nextInt(1500));
  }

  private static byte[] extreme(byte[] whole, Random random, int at) {
    byte[] bytes = whole.clone();
    int value = EXTREMES[random.nextInt(EXTREMES.length)];
    int width = 1 << random.nextInt(3);
    for (int i = 0; i < width && at + i < bytes.length; i++) {
      bytes[at + i] = (byte) (value >>> (8 * i));
    }
    return bytes;
  }

  /** Drops, doubles or moves a stretch. */
  private static byte[] blockMoved(byte[] whole, Random random) {
    int start = random.nextInt(whole.length);
    int length = 1 + random.nextInt(Math.min(4096, whole.length - start));
    int to = random.nextInt(whole.length);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int kind = random.nextInt(3);
    if (kind == 0) {
      out.write(whole, 0, start);
      out.write(whole, start + length, whole.length - start - length);
    } else if (kind == 1) {
      out.write(whole, 0, to);
      out.write(whole, start, length);
      out.write(whole, to, whole.length - to);
    } else {
      byte[] bytes = whole.clone();
      System.arraycopy(whole, start, bytes, to, Math.min(length, whole.length - to));
      return bytes;
    }
    return out.toByteArray();
  }
}
