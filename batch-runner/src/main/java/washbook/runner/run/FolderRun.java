package washbook.runner.run;

import com.google.gson.JsonElement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import washbook.log.language.Language;
import washbook.runner.file.UnusableFileException;

/**
 * Works on many files and hands on the results in the order of the files. Results are put into
 * place in groups: all forced to the disk, all named, then noted in the journal, and that forced.
 *
 * @param <R> what the work on one file gives
 */
public final class FolderRun<R> {
  /** How many results are put into place together. */
  private static final int GROUP = 64;

  /** How long a finished result waits for others at most. */
  private static final long LONGEST_WAIT_NANOS = 1_000_000_000;

  /** The work on one file. */
  public interface Work<R> {
    /** Does the work; whatever happens to a file is part of the result. */
    Made<R> make(WorkItem item);

    /** The result when what was made could not be put into place. */
    R failed(WorkItem item, Exception failure);

    /** What is noted of a result, so that it need not be made again; null for nothing. */
    Journal.Note note(R result);

    /** The result as it was noted. */
    R restore(JsonElement report);
  }

  /**
   * What the work on one file gave.
   *
   * @param pending the file that is still to take its place; null when there is none
   */
  public record Made<R>(R result, PendingResult pending) {}

  /** Hears about the files as they are done. */
  public interface Listener<R> {
    /**
     * A file is done.
     *
     * @param earlier whether an earlier run did it and nothing has changed since
     */
    void done(R result, boolean earlier) throws IOException;
  }

  private record Done<R>(WorkItem item, FileStamp.WithMap before, Made<R> made, boolean earlier) {}

  private final Work<R> work;
  private final Journal journal;
  private final Stop stop;
  private IOException journalFailure;

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
    try (Group group = new Group(listener)) {
      OrderedPool.run(items, threads, stop, task, group);
      group.place();
    }
  }

  /** Whether the journal could not be written. */
  public boolean lostJournal() {
    return journalFailure != null;
  }

  /** Why the journal could not be written. */
  public String journalProblem(Language language) {
    return UnusableFileException.message(
            "journal.unwritten", Failure.reason(journalFailure, language))
        .in(language);
  }

  private Done<R> work(WorkItem item) {
    Optional<JsonElement> earlier = journal == null ? Optional.empty() : journal.done(item);
    if (earlier.isPresent()) {
      return new Done<>(item, null, new Made<>(work.restore(earlier.get()), null), true);
    }
    FileStamp.WithMap before = FileStamp.WithMap.orNull(item.file());
    return new Done<>(item, before, work.make(item), false);
  }

  /** Results that wait to be put into place. */
  private final class Group implements OrderedPool.Sink<Done<R>>, AutoCloseable {
    private final Listener<R> listener;
    private final ResultGroup results = new ResultGroup();
    private final List<Done<R>> waiting = new ArrayList<>();
    private long since;

    Group(Listener<R> listener) {
      this.listener = listener;
    }

    @Override
    public void take(Done<R> done) throws IOException {
      if (waiting.isEmpty()) {
        since = System.nanoTime();
      }
      waiting.add(done);
      if (waiting.size() >= GROUP || System.nanoTime() - since > LONGEST_WAIT_NANOS) {
        place();
      }
    }

    /** Nothing more is finished just now. */
    @Override
    public void pause() throws IOException {
      place();
    }

    @Override
    public void drop(Done<R> done) {
      PendingResult pending = done.made().pending();
      if (pending != null) {
        Failure.ignoring(pending::close);
      }
    }

    void place() throws IOException {
      List<Done<R>> group = new ArrayList<>(waiting);
      waiting.clear();
      List<PendingResult> pending =
          group.stream().map(done -> done.made().pending()).filter(Objects::nonNull).toList();
      Map<PendingResult, Exception> failures = results.place(pending);
      List<R> ends = new ArrayList<>();
      for (Done<R> done : group) {
        Exception failure = failures.get(done.made().pending());
        ends.add(failure == null ? done.made().result() : work.failed(done.item(), failure));
      }
      note(group, ends);
      for (int i = 0; i < group.size(); i++) {
        listener.done(ends.get(i), group.get(i).earlier());
      }
    }

    /** A run goes on without its journal, and says so at the end. */
    private void note(List<Done<R>> group, List<R> ends) {
      if (journal == null) {
        return;
      }
      try {
        boolean any = false;
        for (int i = 0; i < group.size(); i++) {
          Done<R> done = group.get(i);
          Journal.Note note = done.earlier() ? null : work.note(ends.get(i));
          if (note != null && done.before() != null) {
            PendingResult pending = done.made().pending();
            journal.note(
                done.item(), done.before(), note, pending == null ? null : pending.stamp());
            any = true;
          }
        }
        if (any) {
          journal.force();
        }
      } catch (IOException failure) {
        journalFailure = journalFailure == null ? failure : journalFailure;
      }
    }

    @Override
    public void close() {
      waiting.forEach(this::drop);
      results.close();
    }
  }
}
