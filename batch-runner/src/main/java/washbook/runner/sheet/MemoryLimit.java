package washbook.runner.sheet;

import washbook.runner.file.UnusableFileException;

/** Counts what one file takes, so that a hostile or huge one is refused instead of ending us. */
final class MemoryLimit {
  private long left;

  MemoryLimit(long bytes) {
    left = bytes;
  }

  /** Six tenths of what this Java process may use. */
  static MemoryLimit ofProcess() {
    return new MemoryLimit(Runtime.getRuntime().maxMemory() / 10 * 6);
  }

  void take(long bytes) throws UnusableFileException {
    left -= bytes;
    if (left < 0) {
      throw new UnusableFileException(
          "The file needs more memory than this Java process may use (see java -Xmx).");
    }
  }
}
