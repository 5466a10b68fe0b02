package washbook.runner.sheet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import washbook.runner.file.UnusableFileException;

/**
 * The texts of one workbook, numbered from 0 in the order they came and kept as UTF-8 bytes in big
 * blocks. One instance serves all sheets of a file.
 */
public final class Texts {
  private static final int BLOCK = 1 << 16;

  private final MemoryLimit limit;
  private final List<byte[]> blocks = new ArrayList<>();
  private byte[] block = new byte[0];
  private int used;

  /** Block number in the upper half, offset in the lower; the text ends where its length says. */
  private long[] places = new long[64];

  private int[] lengths = new int[64];
  private int count;

  /** Open addressing over the interned texts: number + 1, or 0. */
  private int[] slots = new int[128];

  private int interned;

  public Texts() {
    this(MemoryLimit.ofProcess());
  }

  Texts(MemoryLimit limit) {
    this.limit = limit;
  }

  MemoryLimit limit() {
    return limit;
  }

  public int size() {
    return count;
  }

  /** Adds a text behind all others and gives its number. */
  public int add(String text) throws UnusableFileException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return add(bytes, 0, bytes.length);
  }

  public int add(byte[] from, int offset, int length) throws UnusableFileException {
    if (used + length > block.length || blocks.isEmpty()) {
      limit.take(Math.max(BLOCK, length));
      block = new byte[Math.max(BLOCK, length)];
      blocks.add(block);
      used = 0;
    }
    if (count == places.length) {
      limit.take(12L * count);
      places = Arrays.copyOf(places, 2 * count);
      lengths = Arrays.copyOf(lengths, 2 * count);
    }
    System.arraycopy(from, offset, block, used, length);
    places[count] = ((long) (blocks.size() - 1) << 32) | used;
    lengths[count] = length;
    used += length;
    return count++;
  }

  /** The number of an equal text that was interned before, or of a new one. */
  public int intern(String text) throws UnusableFileException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return intern(bytes, 0, bytes.length);
  }

  public int intern(byte[] from, int offset, int length) throws UnusableFileException {
    if (2 * interned >= slots.length) {
      growSlots();
    }
    int slot = hash(from, offset, length) & (slots.length - 1);
    while (slots[slot] != 0) {
      int number = slots[slot] - 1;
      byte[] there = blocks.get((int) (places[number] >>> 32));
      int start = (int) places[number];
      if (Arrays.equals(there, start, start + lengths[number], from, offset, offset + length)) {
        return number;
      }
      slot = (slot + 1) & (slots.length - 1);
    }
    int number = add(from, offset, length);
    slots[slot] = number + 1;
    interned++;
    return number;
  }

  private void growSlots() throws UnusableFileException {
    limit.take(4L * slots.length);
    int[] old = slots;
    slots = new int[2 * old.length];
    for (int entry : old) {
      if (entry != 0) {
        int number = entry - 1;
        byte[] there = blocks.get((int) (places[number] >>> 32));
        int slot = hash(there, (int) places[number], lengths[number]) & (slots.length - 1);
        while (slots[slot] != 0) {
          slot = (slot + 1) & (slots.length - 1);
        }
        slots[slot] = entry;
      }
    }
  }

  private static int hash(byte[] bytes, int offset, int length) {
    int hash = length;
    for (int i = offset; i < offset + length; i++) {
      hash = 31 * hash + bytes[i];
    }
    return hash ^ (hash >>> 15);
  }

  /** The text with this number. */
  public String get(int number) {
    if (number < 0 || number >= count) {
      throw new IndexOutOfBoundsException(number);
    }
    return new String(
        blocks.get((int) (places[number] >>> 32)),
        (int) places[number],
        lengths[number],
        StandardCharsets.UTF_8);
  }

  boolean isEmpty(int number) {
    return lengths[number] == 0;
  }
}
