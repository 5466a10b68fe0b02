package washbook.runner.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import washbook.log.language.Language;
import washbook.runner.file.UnusableFileException;
import washbook.runner.report.ReportWriter;
import washbook.runner.run.Failure;
import washbook.runner.run.FolderRun;
import washbook.runner.run.Journal;
import washbook.runner.run.Stop;
import washbook.runner.run.WorkItem;

/**
 * A run over many files with all that goes with it: threads, journal, progress bar, report.
 *
 * @param work what is done with each file
 * @param console what a person reads
 * @param journal or null
 * @param report or null
 * @param language in which is told how it ended
 * @param <R> what the work on one file gives
 */
record ManyFiles<R>(
    FolderRun.Work<R> work,
    FolderRun.Listener<R> console,
    Journal journal,
    ReportWriter<R> report,
    PrintStream err,
    Language language) {

  /** Works on the files; false when it was stopped before the end or could not be noted. */
  boolean run(List<WorkItem> items, int threads, Stop stop) throws IOException {
    boolean noted = true;
    try (journal;
        report;
        TerminalProgress progress = TerminalProgress.over(items.size(), err)) {
      FolderRun<R> run = new FolderRun<>(work, journal, stop);
      run.run(
          items,
          threads,
          (result, earlier) -> {
            progress.step();
            console.done(result, earlier);
            if (report != null) {
              told(() -> report.add(result));
            }
          });
      noted = !run.lostJournal();
      if (!noted) {
        String problem = run.journalProblem(language);
        err.println(UnusableFileException.message("journal.again", problem).in(language));
      }
      if (report != null && !stop.isAsked()) {
        told(report::finish);
      }
    }
    if (stop.isAsked()) {
      err.println(UnusableFileException.message("journal.stopped").in(language));
    }
    return noted && !stop.isAsked();
  }

  private interface Writing {
    void run() throws IOException;
  }

  /** Says of what fails that it is the report: the logs were filled by then. */
  private void told(Writing writing) throws IOException {
    try {
      writing.run();
    } catch (UnusableFileException told) {
      throw told;
    } catch (IOException failure) {
      throw UnusableFileException.of("report.unwritten", Failure.reason(failure, language));
    }
  }
}
