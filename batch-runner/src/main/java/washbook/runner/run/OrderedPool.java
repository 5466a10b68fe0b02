package washbook.runner.run;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/** Works on items in several threads and hands on the results in the items' order. */
final class OrderedPool {
  /** How far the threads may run ahead of the first unfinished item, for each thread. */
  private static final int AHEAD = 32;

  /** Takes a result. */
  @FunctionalInterface
  interface Sink<R> {
    void take(R result) throws IOException;
  }

  private OrderedPool() {}

  /** Stops taking new items once {@code stop} is set; those begun are finished. */
  static <T, R> void run(List<T> items, int threads, Stop stop, Function<T, R> work, Sink<R> sink)
      throws IOException {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      Deque<Future<R>> begun = new ArrayDeque<>();
      Iterator<T> rest = items.iterator();
      while (true) {
        while (rest.hasNext() && begun.size() < threads * AHEAD) {
          T item = rest.next();
          begun.add(pool.submit(() -> stop.isAsked() ? null : work.apply(item)));
        }
        if (begun.isEmpty()) {
          return;
        }
        R result = begun.remove().get();
        if (result != null) {
          sink.take(result);
        }
      }
    } catch (ExecutionException failure) {
      throw new IllegalStateException(failure.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IOException("The run was interrupted.", interrupted);
    } finally {
      pool.shutdownNow();
    }
  }
}
