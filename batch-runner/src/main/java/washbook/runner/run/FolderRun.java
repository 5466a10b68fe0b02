package washbook.runner.run;

import com.google.gson.JsonElement;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Works on many files and hands on the results in the order of the files.
 *
 * @param <R> what the work on one file gives
 */
public final class FolderRun<R> {
  /** The work on one file. */
  public interface Work<R> {
    /** Does the work; whatever happens to a file is part of the result. */
    R work(WorkItem item);

    /** What is noted of a result, so that it need not be made again; null for nothing. */
    Journal.Note note(R result);

    /** The result as it was noted. */
    R restore(JsonElement report);
  }

  /** Hears about the files as they are done. */
  public interface Listener<R> {
    /**
     * A file is done.
     *
     * @param earlier whether an earlier run did it and nothing has changed since
     */
    void done(R result, boolean earlier) throws IOException;
  }

  private record Done<R>(R result, boolean earlier) {}

  private final Work<R> work;
  private final Journal journal;
  private final Stop stop;

  /**
   * @param journal what was done before, or null
   */
  public FolderRun(Work<R> work, Journal journal, Stop stop) {
    this.work = work;
    this.journal = journal;
    this.stop = stop;
  }

  public void run(List<WorkItem> items, int threads, Listener<R> listener) throws IOException {
    Function<WorkItem, Done<R>> task = this::work;
    OrderedPool.run(
        items, threads, stop, task, done -> listener.done(done.result(), done.earlier()));
  }

  private Done<R> work(WorkItem item) {
    Optional<JsonElement> earlier = journal == null ? Optional.empty() : journal.done(item);
    if (earlier.isPresent()) {
      return new Done<>(work.restore(earlier.get()), true);
    }
    FileStamp before = FileStamp.orNull(item.file());
    R result = work.work(item);
    Journal.Note note = work.note(result);
    if (journal != null && before != null && note != null) {
      Failure.ignoring(() -> journal.note(item, before, note));
    }
    return new Done<>(result, false);
  }
}
