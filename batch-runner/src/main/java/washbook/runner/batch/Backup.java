package washbook.runner.batch;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import washbook.runner.TempName;

/**
 * Keeps a file as NAME.bak, NAME.bak2 and so on before it is replaced. What is kept is a copy of
 * its own on the disk, as a program that has the file open may still write to it.
 */
final class Backup {
  private Backup() {}

  /** Returns the copy; an older one is never overwritten. */
  static Path keep(Path target) throws IOException {
    Path copy = TempName.beside(target);
    try {
      Files.copy(target, copy, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
      SafeReplace.force(copy);
      Path kept = place(copy, target);
      SafeReplace.forceFolder(kept);
      return kept;
    } finally {
      Files.deleteIfExists(copy);
    }
  }

  private static Path place(Path copy, Path target) throws IOException {
    for (int i = 1; ; i++) {
      Path kept =
          target.resolveSibling(
              target.getFileName() + Destination.BACKUP_MARK + (i == 1 ? "" : Integer.toString(i)));
      if (Files.exists(kept, LinkOption.NOFOLLOW_LINKS)) {
        continue;
      }
      try {
        Files.createLink(kept, copy);
        return kept;
      } catch (FileAlreadyExistsException taken) {
        // The next number.
      } catch (IOException | UnsupportedOperationException noLinksHere) {
        Files.move(copy, kept, StandardCopyOption.ATOMIC_MOVE);
        return kept;
      }
    }
  }
}
