package washbook.runner.cli;

import java.io.PrintStream;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A progress bar on a terminal, and nothing anywhere else. */
final class TerminalProgress implements AutoCloseable {
  private static final int WIDTH = 78;
  private static final String CLEAR_LINE = "\r\u001b[K";

  private final PrintStream err;
  private final ProgressBar bar;

  private TerminalProgress(PrintStream err, ProgressBar bar) {
    this.err = err;
    this.bar = bar;
  }

  /** A bar for this many files, where a person looks on and there is more than one. */
  static TerminalProgress over(int files, PrintStream err) {
    if (files < 2 || System.console() == null) {
      return new TerminalProgress(err, null);
    }
    ProgressBar bar =
        new ProgressBarBuilder()
            .setTaskName("Files")
            .setInitialMax(files)
            .setStyle(ProgressBarStyle.ASCII)
            .setUpdateIntervalMillis(200)
            .setConsumer(new DelegatingProgressBarConsumer(s -> write(err, "\r" + s), WIDTH))
            .build();
    return new TerminalProgress(err, bar);
  }

  /** What moves the cursor is ours and goes past what makes texts from outside safe. */
  private static void write(PrintStream err, String text) {
    err.writeBytes(text.getBytes(Terminal.charset()));
    err.flush();
  }

  /** One more file is done; the bar makes room for the line about it. */
  void step() {
    if (bar != null) {
      bar.step();
      write(err, CLEAR_LINE);
    }
  }

  @Override
  public void close() {
    if (bar != null) {
      bar.close();
      write(err, CLEAR_LINE);
    }
  }
}
