package washbook.runner.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import washbook.log.sheet.SheetPatch;

/** Puts computed columns into a copy of a file of one format; all else stays as it was. */
public interface SheetWriter {
  /**
   * Writes a patched copy of {@code source} to {@code target}, which must be another file and may
   * be left unfinished when this fails: the caller moves a finished one into place.
   */
  void write(Path source, List<SheetPatch> patches, Path target) throws IOException;
}
