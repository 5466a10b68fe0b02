package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;
import washbook.runner.file.FileIdentity;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.FileResult;

/**
 * Keeps a folder computed: looks again and again, and fills each new or changed file once it has
 * settled. Looking works on every kind of drive, network drives among them, where notices of
 * changes do not arrive.
 */
public final class Watcher {
  /** Hears what the watcher does. */
  public interface Listener {
    void done(FileResult result);

    /** Something that a person should know, once for each file and reason. */
    void notice(String path, String message);

    /** What is known of a file now, also when an earlier run did it. */
    default void known(FileReport report) {}

    /** The folder was looked through and what was due is done. */
    default void lookedThrough() {}
  }

  /**
   * When to look and how long to wait.
   *
   * @param settle how long a file's size and time must stand still
   * @param retry when a failed file is tried again though it has not changed
   */
  public record Pace(Duration interval, Duration settle, Duration retry) {}

  /** A file as it was seen, and since when (by the steady clock) it has been so. */
  private record Seen(FileStamp.WithMap stamp, long sinceMillis) {}

  private final Path folder;
  private final FillJob job;
  private final Shard shard;
  private final Journal journal;
  private final Pace pace;
  private final Stop stop;
  private final LongSupplier wallMillis;
  private final LongSupplier steadyMillis;
  private final Map<String, FileStamp.WithMap> finished = new HashMap<>();
  private final Map<String, Seen> failed = new HashMap<>();
  private final Map<String, Seen> settling = new HashMap<>();
  private final Map<String, String> noticed = new HashMap<>();
  private FileIdentity leftOut;
  private boolean unnoted;

  public Watcher(Path folder, FillJob job, Shard shard, Journal journal, Pace pace, Stop stop) {
    this(
        folder,
        job,
        shard,
        journal,
        pace,
        stop,
        System::currentTimeMillis,
        () -> System.nanoTime() / 1_000_000);
  }

  /** {@code wallMillis} may jump either way; waiting goes by {@code steadyMillis}, which cannot. */
  Watcher(
      Path folder,
      FillJob job,
      Shard shard,
      Journal journal,
      Pace pace,
      Stop stop,
      LongSupplier wallMillis,
      LongSupplier steadyMillis) {
    this.folder = folder;
    this.job = job;
    this.shard = shard;
    this.journal = journal;
    this.pace = pace;
    this.stop = stop;
    this.wallMillis = wallMillis;
    this.steadyMillis = steadyMillis;
  }

  /** Leaves alone a file of ours that may lie in the folder. */
  public void leaveOut(Path file) {
    leftOut = FileIdentity.of(file);
  }

  /**
   * Works until asked to stop.
   *
   * @param once whether to end when every file that is there has settled and been seen to
   */
  public void run(int threads, boolean once, Listener listener) throws IOException {
    while (!stop.isAsked()) {
      List<WorkItem> due = new ArrayList<>();
      int waiting = look(due, listener);
      fill(due, threads, listener);
      listener.lookedThrough();
      if (once && waiting == 0) {
        return;
      }
      stop.sleep(pace.interval().toMillis());
    }
  }

  /** Whether something that was done could not be noted in the journal. */
  public boolean isUnnoted() {
    return unnoted;
  }

  /** Collects the files whose time has come; returns how many are still settling. */
  private int look(List<WorkItem> due, Listener listener) {
    int unsettled = 0;
    String waiting = Wording.message("watch.waiting").in(job.filler().messages());
    for (WorkItem item :
        FileList.of(List.of(folder), job.destination(), shard, job.filler().messages())) {
      if (leftOut != null && FileIdentity.of(item.file()).equals(leftOut)) {
        continue;
      }
      if (item.refused() != null) {
        notice(item.shown(), item.refused().refusals().get(0).reason(), listener);
        continue;
      }
      FileStamp.WithMap stamp = FileStamp.WithMap.orNull(item.file());
      if (stamp == null || isSeenTo(item, stamp)) {
        continue;
      }
      if (OfficeLock.isHeld(item.file())) {
        settling.remove(item.shown());
        notice(item.shown(), waiting, listener);
        continue;
      }
      if (isSettled(item, stamp)) {
        settling.remove(item.shown());
        noticed.remove(item.shown());
        due.add(item);
      } else {
        unsettled++;
      }
    }
    return unsettled;
  }

  private void fill(List<WorkItem> due, int threads, Listener listener) throws IOException {
    Map<String, WorkItem> items = new HashMap<>();
    due.forEach(item -> items.put(item.shown(), item));
    FolderRun<FileResult> run = new FolderRun<>(new FileFiller(job), journal, stop);
    run.run(
        due,
        threads,
        (result, earlier) -> {
          note(items.get(result.report().path()), result.report());
          listener.known(result.report());
          if (!earlier) {
            listener.done(result);
          }
        });
    if (run.lostJournal()) {
      unnoted = true;
      notice(folder.toString(), run.journalProblem(job.filler().messages()), listener);
    }
  }

  private void note(WorkItem item, FileReport report) {
    FileStamp.WithMap stamp = FileStamp.WithMap.orNull(item.file());
    if (stamp == null) {
      return;
    }
    if (report.status() == Status.FAILED) {
      failed.put(item.shown(), new Seen(stamp, steadyMillis.getAsLong()));
    } else {
      failed.remove(item.shown());
      finished.put(item.shown(), stamp);
    }
  }

  private boolean isSeenTo(WorkItem item, FileStamp.WithMap stamp) {
    Seen failure = failed.get(item.shown());
    return stamp.equals(finished.get(item.shown()))
        || (failure != null
            && failure.stamp().equals(stamp)
            && steadyMillis.getAsLong() - failure.sinceMillis() < pace.retry().toMillis());
  }

  /** Stood still while we looked on, or has not been touched for long. */
  private boolean isSettled(WorkItem item, FileStamp.WithMap stamp) {
    long untouched = wallMillis.getAsLong() - stamp.modified() / 1_000_000;
    if (untouched >= pace.settle().toMillis()) {
      return true;
    }
    long now = steadyMillis.getAsLong();
    Seen seen = settling.get(item.shown());
    if (seen == null || !seen.stamp().equals(stamp)) {
      settling.put(item.shown(), new Seen(stamp, now));
      return false;
    }
    return now - seen.sinceMillis() >= pace.settle().toMillis();
  }

  private void notice(String path, String message, Listener listener) {
    if (!message.equals(noticed.put(path, message))) {
      listener.notice(path, message);
    }
  }
}
