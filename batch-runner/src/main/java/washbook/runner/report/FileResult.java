package washbook.runner.report;

import java.nio.file.Path;
import java.util.List;

/**
 * A file's report and what only this run knows.
 *
 * @param written the file that now holds the result; null when there is none
 * @param changed whether anything was written in this run
 * @param series curves for the charts; empty unless they were asked for
 */
public record FileResult(
    FileReport report, Path written, boolean changed, List<BatchSeries> series) {

  public static FileResult of(FileReport report) {
    return new FileResult(report, null, false, List.of());
  }
}
