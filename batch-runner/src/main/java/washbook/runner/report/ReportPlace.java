package washbook.runner.report;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import washbook.runner.file.FileMode;

/**
 * Where a report goes.
 *
 * @param readers who may read it
 */
public record ReportPlace(Path file, Set<PosixFilePermission> readers) {

  /** A report about these files: those may read it who may read all of them. */
  public static ReportPlace about(Path file, List<Path> files) {
    List<Path> all = new ArrayList<>(files);
    if (Files.exists(file)) {
      all.add(file);
    }
    return new ReportPlace(file, FileMode.forAll(all));
  }
}
