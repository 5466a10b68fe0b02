package washbook.runner.run;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import washbook.runner.file.UnusableFileException;

/** Works on items in several threads and hands on the results in the items' order. */
final class OrderedPool {
  /** How far the threads may run ahead of the first unfinished item, for each thread. */
  private static final int AHEAD = 64;

  /** When a result lets one wait so long, what is there is dealt with. */
  private static final long PAUSE_MILLIS = 100;

  private static final long LONGEST_END_SECONDS = 60;

  /** Takes results. */
  @FunctionalInterface
  interface Sink<R> {
    void take(R result) throws IOException;

    /** The next result takes a while. */
    default void pause() throws IOException {}

    /** The run has failed before this result was taken. */
    default void drop(R result) {}
  }

  private OrderedPool() {}

  /** Stops taking new items once {@code stop} is set; those begun are finished. */
  static <T, R> void run(List<T> items, int threads, Stop stop, Function<T, R> work, Sink<R> sink)
      throws IOException {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    Deque<Future<R>> begun = new ArrayDeque<>();
    try {
      Iterator<T> rest = items.iterator();
      while (true) {
        while (rest.hasNext() && begun.size() < threads * AHEAD) {
          T item = rest.next();
          begun.add(pool.submit(() -> stop.isAsked() ? null : work.apply(item)));
        }
        if (begun.isEmpty()) {
          return;
        }
        R result = next(begun.remove(), sink);
        if (result != null) {
          sink.take(result);
        }
      }
    } catch (ExecutionException failure) {
      throw new IllegalStateException(failure.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw UnusableFileException.from(interrupted, "run.interrupted");
    } finally {
      pool.shutdownNow();
      begun.forEach(future -> drop(future, sink));
    }
  }

  private static <R> R next(Future<R> future, Sink<R> sink)
      throws IOException, ExecutionException, InterruptedException {
    try {
      return future.get(PAUSE_MILLIS, TimeUnit.MILLISECONDS);
    } catch (TimeoutException slow) {
      sink.pause();
      return future.get();
    }
  }

  private static <R> void drop(Future<R> future, Sink<R> sink) {
    try {
      future.cancel(false);
      R result = future.get(LONGEST_END_SECONDS, TimeUnit.SECONDS);
      if (result != null) {
        sink.drop(result);
      }
    } catch (CancellationException | ExecutionException | TimeoutException nothing) {
      // There is nothing to drop.
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
