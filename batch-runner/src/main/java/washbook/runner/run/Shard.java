package washbook.runner.run;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * One part of a job that is spread over machines. Which part a file belongs to follows from the
 * files alone, so that machines need not talk to each other.
 *
 * @param index from 1 to {@code count}
 */
public record Shard(int index, int count) {
  public static final Shard WHOLE = new Shard(1, 1);

  public Shard {
    if (count < 1 || index < 1 || index > count) {
      throw new IllegalArgumentException("shard " + index + "/" + count + " is not 1/N to N/N");
    }
  }

  /** Reads {@code I/N}. */
  public static Shard parse(String text) {
    String[] parts = text.strip().split("/", -1);
    try {
      if (parts.length == 2) {
        return new Shard(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
      }
    } catch (NumberFormatException notTwoNumbers) {
      // Said below.
    }
    throw new IllegalArgumentException("'" + text + "' is not I/N, for example 2/8");
  }

  /** Whether this shard does the file of that path (with / between folders), going by it alone. */
  public boolean holds(String path) {
    CRC32 crc = new CRC32();
    crc.update(path.getBytes(StandardCharsets.UTF_8));
    return crc.getValue() % count == index - 1;
  }

  @Override
  public String toString() {
    return index + "/" + count;
  }
}
