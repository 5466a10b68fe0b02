package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The lock files that office programs put beside a workbook while it is open. */
final class OfficeLock {
  private OfficeLock() {}

  static boolean isHeld(Path file) {
    String name = file.getFileName().toString();
    List<String> locks = List.of(".~lock." + name + "#", "~$" + name);
    try {
      return locks.stream().anyMatch(lock -> Files.exists(file.resolveSibling(lock)));
    } catch (InvalidPathException unspeakable) {
      return isListed(file, locks);
    }
  }

  /** Under language settings that lack the name's characters, names read can still be compared. */
  private static boolean isListed(Path file, List<String> locks) {
    try (Stream<Path> beside = Files.list(file.toAbsolutePath().getParent())) {
      return beside.anyMatch(other -> locks.contains(other.getFileName().toString()));
    } catch (IOException unreadable) {
      return false;
    }
  }
}
