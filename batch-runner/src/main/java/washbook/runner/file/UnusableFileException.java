package washbook.runner.file;

import java.io.IOException;

/** A file that cannot be worked on; the message is a sentence for people. */
public final class UnusableFileException extends IOException {
  private static final long serialVersionUID = 1L;

  public UnusableFileException(String reason) {
    super(reason);
  }

  public UnusableFileException(String reason, Throwable cause) {
    super(reason, cause);
  }
}
