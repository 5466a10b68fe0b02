package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class OrderedPoolTest {
  @Test
  void resultsComeInTheItemsOrderHoweverLongEachTakes() throws IOException {
    List<Integer> items = IntStream.range(0, 500).boxed().toList();
    List<Integer> seen = new ArrayList<>();
    OrderedPool.run(
        items,
        8,
        Stop.byHand(),
        item -> {
          for (int i = ThreadLocalRandom.current().nextInt(2000); i > 0; i--) {
            Thread.onSpinWait();
          }
          return item * 2;
        },
        seen::add);
    assertEquals(items.stream().map(i -> i * 2).toList(), seen);
  }

  @Test
  void aStopEndsTheRunAfterWhatIsBegun() throws IOException {
    Stop stop = Stop.byHand();
    List<Integer> seen = new ArrayList<>();
    List<Integer> items = IntStream.range(0, 10_000).boxed().toList();
    OrderedPool.run(
        items,
        2,
        stop,
        item -> {
          if (item == 20) {
            stop.ask();
          }
          return item;
        },
        seen::add);
    assertTrue(seen.size() >= 20 && seen.size() < 1000, "done: " + seen.size());
  }
}
