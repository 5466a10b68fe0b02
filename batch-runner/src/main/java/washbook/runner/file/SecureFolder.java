package washbook.runner.file;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SecureDirectoryStream;

/** Opens folders so that none on the way can become a link behind our back. */
final class SecureFolder {
  private SecureFolder() {}

  /**
   * Opens a folder step by step.
   *
   * @param root a folder above it, from which links are no longer followed; null for none
   * @return null where the system cannot do that
   */
  static SecureDirectoryStream<Path> open(Path root, Path path) throws IOException {
    Path from = root != null && path.startsWith(root) ? root : path;
    SecureDirectoryStream<Path> at = opened(from);
    if (at == null || from.equals(path)) {
      return at;
    }
    Path done = from;
    for (Path name : from.relativize(path)) {
      done = done.resolve(name);
      try (SecureDirectoryStream<Path> above = at) {
        at = above.newDirectoryStream(name, LinkOption.NOFOLLOW_LINKS);
      } catch (FileSystemException failure) {
        throw named(done, failure);
      }
    }
    return at;
  }

  @SuppressWarnings("unchecked")
  private static SecureDirectoryStream<Path> opened(Path path) throws IOException {
    DirectoryStream<Path> stream = Files.newDirectoryStream(path);
    if (stream instanceof SecureDirectoryStream) {
      return (SecureDirectoryStream<Path>) stream;
    }
    stream.close();
    return null;
  }

  /** The system names the last step only. */
  private static FileSystemException named(Path path, FileSystemException failure) {
    if (Files.isSymbolicLink(path)) {
      return new ToldFileException(path, UnusableFileException.message("system.link"));
    }
    return failure instanceof NoSuchFileException
        ? new NoSuchFileException(path.toString())
        : new FileSystemException(path.toString(), null, failure.getReason());
  }
}
