package washbook.runner.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import washbook.runner.file.FileMode;
import washbook.runner.file.UnusableFileException;

/**
 * Where a report goes.
 *
 * @param readers who may read it
 * @param overwrites whether it may replace a plain file that is no report
 * @param part of which part of a job it tells, as 2/8; "" for the whole
 */
public record ReportPlace(
    Path file, Set<PosixFilePermission> readers, boolean overwrites, String part) {

  /** A report about these files: those may read it who may read all of them. */
  public static ReportPlace about(Path file, List<Path> files) {
    List<Path> all = new ArrayList<>(files);
    if (Files.exists(file)) {
      all.add(file);
    }
    return new ReportPlace(file, FileMode.forAll(all), false, "");
  }

  /** The same place, where whatever plain file is there may be replaced or not. */
  public ReportPlace overwriting(boolean any) {
    return new ReportPlace(file, readers, any, part);
  }

  /** The same place for a part of a job. */
  public ReportPlace ofPart(String shown) {
    return new ReportPlace(file, readers, overwrites, shown);
  }

  /** Looks again before the report takes its place: a result may have come there meanwhile. */
  void check() throws IOException {
    boolean plain = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    if (!Reports.mayReplace(file) && !(overwrites && plain)) {
      throw UnusableFileException.of("report.foreign", UnusableFileException.quoted(file));
    }
  }
}
