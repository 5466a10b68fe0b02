package washbook.runner.file;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Folders for results: made where they are missing, links among them never followed. */
public final class ResultFolder {
  private ResultFolder() {}

  /**
   * Makes the folder of a result.
   *
   * @param root the folder that the user named, which may be a link; null when he named none
   */
  public static void make(Path root, Path folder) throws IOException {
    if (root == null || !folder.startsWith(root)) {
      Files.createDirectories(folder);
      return;
    }
    if (!Files.isDirectory(root)) {
      Files.createDirectories(root);
    }
    Path at = root;
    if (folder.equals(root)) {
      return;
    }
    for (Path name : root.relativize(folder)) {
      at = at.resolve(name);
      try {
        if (!Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
          Files.createDirectory(at);
        }
      } catch (FileAlreadyExistsException meanwhile) {
        // Looked at below.
      }
      if (Files.isSymbolicLink(at)) {
        throw new ToldFileException(at, UnusableFileException.message("system.link"));
      }
    }
  }
}
