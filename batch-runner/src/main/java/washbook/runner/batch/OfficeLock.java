package washbook.runner.batch;

import java.nio.file.Files;
import java.nio.file.Path;

/** The lock files that office programs put beside a workbook while it is open. */
final class OfficeLock {
  private OfficeLock() {}

  static boolean isHeld(Path file) {
    String name = file.getFileName().toString();
    return Files.exists(file.resolveSibling(".~lock." + name + "#"))
        || Files.exists(file.resolveSibling("~$" + name));
  }
}
