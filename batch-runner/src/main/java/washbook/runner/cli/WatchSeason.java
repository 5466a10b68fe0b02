package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import washbook.log.WarningLimits;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport;
import washbook.runner.report.FileResult;
import washbook.runner.run.Failure;
import washbook.runner.run.Watcher;
import washbook.runner.season.SeasonKeeper;

/** Hears for the log what the watcher does, and keeps the season up to date with it. */
final class WatchSeason implements Watcher.Listener {
  private final WatchLog log;
  private final Path file;
  private final Wording words;
  private final SeasonKeeper keeper;
  private String problem = "";

  WatchSeason(WatchLog log, Path file, WarningLimits limits, Wording words) {
    this.log = log;
    this.file = file;
    this.words = words;
    keeper = new SeasonKeeper(file, limits, words);
  }

  @Override
  public void done(FileResult result) {
    log.done(result);
  }

  @Override
  public void notice(String path, String message) {
    log.notice(path, message);
  }

  @Override
  public void known(FileReport report) {
    keeper.add(report);
  }

  /** What cannot be written now is tried again in the next round; it is said once. */
  @Override
  public void lookedThrough() {
    try {
      keeper.update(LocalDate.now());
      problem = "";
    } catch (IOException | RuntimeException failure) {
      String reason = words.say("season.failed", Failure.reason(failure, words.language()));
      if (!reason.equals(problem)) {
        log.notice(file.toString(), reason);
      }
      problem = reason;
    }
  }
}
