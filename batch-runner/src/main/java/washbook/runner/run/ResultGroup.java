package washbook.runner.run;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Predicate;
import washbook.runner.file.UnusableFileException;

/**
 * Puts results into place many at a time. Forcing a file makes the disk write down what is open;
 * when many are forced at the same time it does so once for all, which is what makes it cheap.
 */
final class ResultGroup implements Closeable {
  private static final int FORCED_AT_A_TIME = 16;

  private final Set<Object> placed = new HashSet<>();
  private ExecutorService pool;

  private interface Step {
    void run(PendingResult result) throws IOException;
  }

  /**
   * Forces the results, keeps what they replace, names them, and forces their folders. What comes
   * back under a result is why it was not placed; all are closed.
   */
  Map<PendingResult, Exception> place(List<PendingResult> results) throws IOException {
    Map<PendingResult, Exception> failures = new HashMap<>();
    List<PendingResult> open = new ArrayList<>(results);
    open.removeIf(result -> !result.changes());
    try {
      force(open, failures);
      each(open, failures, PendingResult::keep);
      forceFolders(open, PendingResult::hasBackup);
      each(open, failures, result -> result.place(placed));
      forceFolders(open, result -> true);
    } finally {
      for (PendingResult result : results) {
        Failure.ignoring(result::close);
      }
    }
    return failures;
  }

  private void force(List<PendingResult> results, Map<PendingResult, Exception> failures)
      throws IOException {
    if (results.size() < 2) {
      each(results, failures, PendingResult::force);
      return;
    }
    if (pool == null) {
      pool = Executors.newFixedThreadPool(FORCED_AT_A_TIME);
    }
    Map<PendingResult, Future<?>> begun = new HashMap<>();
    for (PendingResult result : results) {
      begun.put(
          result,
          pool.submit(
              () -> {
                result.force();
                return null;
              }));
    }
    each(results, failures, result -> await(begun.get(result)));
  }

  private static void await(Future<?> forced) throws IOException {
    try {
      forced.get();
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof IOException cause) {
        throw cause;
      }
      throw failure.getCause() instanceof RuntimeException wrong
          ? wrong
          : new IllegalStateException(failure.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw UnusableFileException.from(interrupted, "run.interrupted");
    }
  }

  private static void each(
      List<PendingResult> results, Map<PendingResult, Exception> failures, Step step) {
    results.removeIf(
        result -> {
          try {
            step.run(result);
            return false;
          } catch (IOException | RuntimeException failure) {
            failures.put(result, failure);
            return true;
          }
        });
  }

  private static void forceFolders(List<PendingResult> results, Predicate<PendingResult> which) {
    Set<Object> done = new HashSet<>();
    for (PendingResult result : results) {
      if (which.test(result) && done.add(result.folder())) {
        result.forceFolder();
      }
    }
  }

  @Override
  public void close() {
    if (pool != null) {
      pool.shutdown();
    }
  }
}
