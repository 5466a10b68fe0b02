package washbook.runner.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import washbook.functions.log.Grid;

/** Reads the sheets of one file format. */
public interface SheetReader {
  /**
   * All sheets of the file in their order.
   *
   * @throws UnusableFileException when the file is encrypted, signed, damaged or of another kind
   */
  List<Grid> read(Path file) throws IOException;
}
