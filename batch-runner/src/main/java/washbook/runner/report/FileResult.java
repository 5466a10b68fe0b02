package washbook.runner.report;

import java.nio.file.Path;

/**
 * A file's report and what only this run knows.
 *
 * @param written the file that now holds the result; null when there is none
 * @param changed whether anything was written in this run
 */
public record FileResult(FileReport report, Path written, boolean changed) {

  public static FileResult of(FileReport report) {
    return new FileResult(report, null, false);
  }
}
