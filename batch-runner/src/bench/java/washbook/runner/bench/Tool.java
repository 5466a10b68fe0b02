package washbook.runner.bench;

import java.nio.file.Path;
import java.util.List;

/**
 * A program that does the job, or a command to compare with, which fills nothing.
 *
 * @param how what it does, and what it is spared
 * @param lacks why it cannot do the job, or empty
 */
record Tool(String name, String how, Does does, String lacks, Command command) {
  /** What comes out of it, and so how it is checked. */
  enum Does {
    FILLS,
    FILLS_BY_PORTABLE_FORMULAS,
    FILLS_NOTHING
  }

  /** The command that puts the results into a folder. */
  interface Command {
    List<String> into(Path results);
  }
}
