package washbook.runner.sheet;

import java.io.IOException;
import java.nio.file.Path;

/** Makes the pack formulas of a workbook portable. */
public interface PortableWriter {
  /** What {@link #write} would do. */
  PortableResult inspect(Path source) throws IOException;

  /**
   * Writes a copy of {@code source} to {@code target}; the same file when there is nothing to do.
   */
  PortableResult write(Path source, Path target) throws IOException;

  /**
   * Whether another workbook holds a formula that {@link #write} puts into copies of {@code
   * source}, perhaps in another cell, so that it is such a copy made earlier.
   */
  boolean isEarlier(Path source, Path other) throws IOException;
}
