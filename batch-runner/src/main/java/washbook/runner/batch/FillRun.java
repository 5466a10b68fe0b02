package washbook.runner.batch;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import washbook.runner.report.FileReport;
import washbook.runner.report.FileResult;

/** Fills many files and hands on the results in the order of the files. */
public final class FillRun {
  /** Hears about the files as they are done. */
  public interface Listener {
    /**
     * A file is done.
     *
     * @param earlier whether an earlier run did it and nothing has changed since
     */
    void done(FileResult result, boolean earlier) throws IOException;
  }

  private record Done(FileResult result, boolean earlier) {}

  private final FileFiller filler;
  private final Journal journal;
  private final Stop stop;

  /**
   * @param journal what was done before, or null
   */
  public FillRun(FillJob job, Journal journal, Stop stop) {
    this.filler = new FileFiller(job);
    this.journal = journal;
    this.stop = stop;
  }

  public void run(List<WorkItem> items, int threads, Listener listener) throws IOException {
    OrderedPool.run(
        items, threads, stop, this::work, done -> listener.done(done.result(), done.earlier()));
  }

  private Done work(WorkItem item) {
    Optional<FileReport> earlier = journal == null ? Optional.empty() : journal.done(item);
    if (earlier.isPresent()) {
      return new Done(FileResult.of(earlier.get()), true);
    }
    FileStamp before = FileStamp.orNull(item.file());
    FileResult result = filler.fill(item);
    if (journal != null && before != null) {
      Failure.ignoring(() -> journal.note(item, before, result));
    }
    return new Done(result, false);
  }
}
