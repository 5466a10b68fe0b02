package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ShardTest {
  @Test
  void everyPathIsInExactlyOneShardAndTheShardsAreOfLikeSize() {
    int[] sizes = new int[8];
    for (int file = 0; file < 4000; file++) {
      String path = "winter/Plum " + file + ".xlsx";
      int holders = 0;
      for (int i = 1; i <= 8; i++) {
        if (new Shard(i, 8).holds(path)) {
          holders++;
          sizes[i - 1]++;
        }
      }
      assertEquals(1, holders, path);
    }
    for (int size : sizes) {
      assertTrue(size > 400 && size < 600, "size " + size);
    }
  }

  /** CRC-32 of "123456789" is CBF43926 (the check value of ITU-T V.42's polynomial). */
  @Test
  void thePartFollowsFromTheCrcOfThePath() {
    int part = (int) (0xCBF43926L % 5) + 1;
    assertTrue(new Shard(part, 5).holds("123456789"));
  }

  @Test
  void readsWhatItPrints() {
    assertEquals(new Shard(2, 8), Shard.parse(" 2/8 "));
    assertEquals("2/8", new Shard(2, 8).toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0/3", "4/3", "1", "a/b", "1/0", "1/2/3", "-1/2"})
  void refusesWhatIsNoPart(String text) {
    assertThrows(IllegalArgumentException.class, () -> Shard.parse(text));
  }
}
