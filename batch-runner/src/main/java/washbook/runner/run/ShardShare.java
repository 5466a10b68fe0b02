package washbook.runner.run;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/** Which of the files one part of a spread job does. Each machine works it out alone. */
final class ShardShare {
  /** What opening, writing and forcing a small file costs besides its bytes; a block of a disk. */
  private static final long FILE_BYTES = 4096;

  /**
   * @param path the same on every machine, with / between folders
   */
  record Weighed(String path, long bytes) {}

  /** A part and what it has got so far. */
  private record Load(int index, long bytes) {}

  private ShardShare() {}

  /**
   * Parts of like size: the largest file first, each to the part that has least. The answer is the
   * same wherever the same files are seen with the same sizes, in whatever order.
   */
  static BitSet byBytes(Shard shard, List<Weighed> files) {
    PriorityQueue<Load> loads =
        new PriorityQueue<>(Comparator.comparingLong(Load::bytes).thenComparingInt(Load::index));
    IntStream.rangeClosed(1, shard.count()).forEach(index -> loads.add(new Load(index, 0)));
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
              ours.set(i, lightest.index == shard.index());
              long bytes = lightest.bytes + files.get(i).bytes() + FILE_BYTES;
              loads.add(new Load(lightest.index, bytes));
            });
    return ours;
  }

  /** Parts of like count, for files whose size changes while other parts are at work. */
  static BitSet byPath(Shard shard, List<Weighed> files) {
    BitSet ours = new BitSet();
    IntStream.range(0, files.size())
        .filter(i -> shard.holds(files.get(i).path()))
        .forEach(ours::set);
    return ours;
  }
}
