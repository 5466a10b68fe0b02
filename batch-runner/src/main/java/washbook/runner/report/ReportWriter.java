package washbook.runner.report;

import java.io.Closeable;
import java.io.IOException;

/**
 * Takes the files' results one after the other, so that a long run needs no more memory than a
 * short one. Only {@link #finish} puts the report in its place.
 *
 * @param <R> a file's result
 */
public interface ReportWriter<R> extends Closeable {
  void add(R result) throws IOException;

  /** Ends the report and moves it into place. */
  void finish() throws IOException;

  /** Drops an unfinished report. */
  @Override
  void close() throws IOException;
}
