package washbook.runner.file;

import java.nio.file.FileSystemException;
import java.nio.file.Path;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.language.Told;

/** A file that is left alone though the system would let one work on it; says why. */
public final class ToldFileException extends FileSystemException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message told;

  public ToldFileException(Path file, Message told) {
    super(file.toString(), null, told.in(Language.EN));
    this.told = told;
  }

  @Override
  public Message told() {
    return told;
  }
}
