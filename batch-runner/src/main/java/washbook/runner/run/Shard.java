package washbook.runner.run;

import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import washbook.log.language.ToldException;
import washbook.runner.language.Wording;

/**
 * One part of a job that is spread over machines. Which part a file belongs to follows from the
 * files alone, so that machines need not talk to each other.
 *
 * @param index from 1 to {@code count}
 */
public record Shard(int index, int count) {
  public static final Shard WHOLE = new Shard(1, 1);

  /** What opening, writing and forcing a small file costs besides its bytes; a block of a disk. */
  private static final long FILE_BYTES = 4096;

  /**
   * A file as it decides about parts.
   *
   * @param path the same on every machine, with / between folders
   */
  record Weighed(String path, long bytes) {}

  /** A part and what it has got so far. */
  private record Load(int index, long bytes) {}

  public Shard {
    if (count < 1 || index < 1 || index > count) {
      throw new ToldException(Wording.message("usage.shard.range", index, count));
    }
  }

  /** As {@code 2/8}; "" for the whole. */
  public String shown() {
    return equals(WHOLE) ? "" : index + "/" + count;
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
    throw new ToldException(Wording.message("usage.shard", text));
  }

  /** Whether this shard does the file of that path (with / between folders), going by it alone. */
  public boolean holds(String path) {
    CRC32 crc = new CRC32();
    crc.update(path.getBytes(StandardCharsets.UTF_8));
    return crc.getValue() % count == index - 1;
  }

  /**
   * Which of the files are this shard's, so that all are of like size: the largest file first, each
   * to the part that has least. The answer is the same wherever the same files are seen with the
   * same sizes, in whatever order.
   */
  BitSet byBytes(List<Weighed> files) {
    if (count == 1) {
      BitSet all = new BitSet();
      all.set(0, files.size());
      return all;
    }
    PriorityQueue<Load> loads =
        new PriorityQueue<>(Comparator.comparingLong(Load::bytes).thenComparingInt(Load::index));
    IntStream.rangeClosed(1, count).forEach(part -> loads.add(new Load(part, 0)));
    Comparator<Integer> largestFirst =
        Comparator.comparing(files::get, Comparator.comparingLong(Weighed::bytes).reversed());
    Comparator<Integer> order = largestFirst.thenComparing(i -> files.get(i).path());
    BitSet ours = new BitSet();
    IntStream.range(0, files.size())
        .boxed()
        .sorted(order)
        .forEachOrdered(
            i -> {
              Load lightest = loads.remove();
              ours.set(i, lightest.index == index);
              long bytes = lightest.bytes + files.get(i).bytes() + FILE_BYTES;
              loads.add(new Load(lightest.index, bytes));
            });
    return ours;
  }

  /** Parts of like count, for files whose size changes while other parts are at work. */
  BitSet byPath(List<Weighed> files) {
    BitSet ours = new BitSet();
    IntStream.range(0, files.size()).filter(i -> holds(files.get(i).path())).forEach(ours::set);
    return ours;
  }

  @Override
  public String toString() {
    return index + "/" + count;
  }
}
