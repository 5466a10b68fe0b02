package washbook.runner.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import washbook.log.sheet.Grid;
import washbook.runner.file.UnusableFileException;

/** Reads the sheets of one file format. */
public interface SheetReader {
  /**
   * All sheets of the file in their order.
   *
   * @throws UnusableFileException when the file is encrypted, signed, damaged or of another kind
   */
  List<Grid> read(Path file) throws IOException;
}
