package washbook.runner.sheet;

import java.lang.management.ManagementFactory;
import washbook.log.language.Message;
import washbook.log.language.Told;
import washbook.runner.file.UnusableFileException;

/**
 * Bounds the processor time that one sheet may take, so that a hostile one is refused instead of
 * holding up all others. It is counted by how often cells are asked for.
 */
final class WorkLimit {
  /** How many questions there are between two looks at the time; each look costs a system call. */
  private static final int QUESTIONS = 1 << 20;

  /** Rows of honest logs take a hundredth of it: a million of them 20 s of processor time. */
  private static final long NANOS_EACH_ROW = 1_000_000;

  private static final long NANOS_ANY = 60_000_000_000L;

  private final long nanosAny;
  private int asked;
  private long started = -1;

  WorkLimit() {
    this(NANOS_ANY);
  }

  WorkLimit(long nanosAny) {
    this.nanosAny = nanosAny;
  }

  /** Counts a question. */
  void ask(int rows) {
    if ((++asked & (QUESTIONS - 1)) == 0) {
      look(rows);
    }
  }

  private void look(int rows) {
    long now = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    if (started < 0) {
      started = now;
    }
    if (now - started > nanosAny + rows * NANOS_EACH_ROW) {
      throw new TooMuchWork();
    }
  }

  /** The sheet takes too long; said through code that knows of no files. */
  static final class TooMuchWork extends RuntimeException implements Told {
    private static final long serialVersionUID = 1L;

    TooMuchWork() {
      super("work");
    }

    @Override
    public Message told() {
      return UnusableFileException.message("work");
    }
  }
}
