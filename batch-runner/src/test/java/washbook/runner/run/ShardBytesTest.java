package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import washbook.runner.run.Shard.Weighed;

final class ShardBytesTest {
  private static final int PARTS = 7;

  /** One large log among many small ones, and sizes that differ a thousandfold. */
  private static List<Weighed> archive() {
    Random random = new Random(5);
    List<Weighed> files = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      files.add(
          new Weighed(
              "year/Plum " + i + ".xlsx", Math.round(Math.exp(random.nextDouble() * 7) * 1000)));
    }
    files.add(new Weighed("year/all.xlsx", 3_000_000));
    return files;
  }

  @Test
  void everyFileIsInOnePartAndThePartsAreOfLikeBytes() {
    List<Weighed> files = archive();
    BitSet all = new BitSet();
    long whole = files.stream().mapToLong(Weighed::bytes).sum();
    for (int part = 1; part <= PARTS; part++) {
      BitSet ours = new Shard(part, PARTS).byBytes(files);
      assertFalse(all.intersects(ours), "part " + part);
      all.or(ours);
      long bytes = ours.stream().mapToLong(i -> files.get(i).bytes()).sum();
      assertEquals(1.0 / PARTS, (double) bytes / whole, 0.02, "part " + part);
    }
    assertEquals(files.size(), all.cardinality());
  }

  @Test
  void theOrderInWhichAMachineFindsTheFilesDoesNotMatter() {
    List<Weighed> files = archive();
    List<Weighed> shuffled = new ArrayList<>(files);
    Collections.shuffle(shuffled, new Random(6));
    Shard shard = new Shard(3, PARTS);
    assertEquals(paths(shard.byBytes(files), files), paths(shard.byBytes(shuffled), shuffled));
  }

  @Test
  void goingByThePathASizeDoesNotMatter() {
    List<Weighed> files = archive();
    List<Weighed> filled = files.stream().map(f -> new Weighed(f.path(), f.bytes() + 999)).toList();
    Shard shard = new Shard(2, PARTS);
    assertEquals(shard.byPath(files), shard.byPath(filled));
  }

  @Test
  void moreMachinesThanFilesLeavesSomeWithout() {
    List<Weighed> one = List.of(new Weighed("a.csv", 10));
    assertTrue(new Shard(1, 2).byBytes(one).get(0));
    assertTrue(new Shard(2, 2).byBytes(one).isEmpty());
  }

  private static Set<String> paths(BitSet ours, List<Weighed> files) {
    return new TreeSet<>(ours.stream().mapToObj(i -> files.get(i).path()).toList());
  }
}
