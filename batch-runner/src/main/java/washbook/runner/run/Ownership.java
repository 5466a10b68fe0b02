package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;

/** Owner, group and mode of a file for another that is to stand in its place or beside it. */
final class Ownership {
  private Ownership() {}

  /** Gives those of a file on, links followed, as far as that is allowed. */
  static void give(Path from, UnfinishedFile to) throws IOException {
    if (to.permissions() != null) {
      give(
          Files.readAttributes(from, PosixFileAttributes.class),
          !of(from).equals(of(to)),
          to,
          false);
    }
  }

  /**
   * Gives those of a file in the folder of the other on.
   *
   * @param key by what the system knows the file whose they are
   * @param needed whether the other is no good without the same owner and group
   */
  static void give(Path from, Object key, UnfinishedFile to, boolean needed) throws IOException {
    if (to.permissions() == null) {
      return;
    }
    PosixFileAttributes given =
        Files.readAttributes(from, PosixFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    Map<String, Object> user = of(from, LinkOption.NOFOLLOW_LINKS);
    if (key == null || !key.equals(given.fileKey()) || !key.equals(to.keyBeside(from))) {
      throw UnusableFileException.of("write.changed");
    }
    give(given, !user.equals(of(to)), to, needed);
  }

  private static void give(
      PosixFileAttributes given, boolean differs, UnfinishedFile to, boolean needed)
      throws IOException {
    if (differs) {
      PosixFileAttributeView view = to.permissions();
      Failure.ignoring(() -> view.setGroup(given.group()));
      Failure.ignoring(() -> view.setOwner(given.owner()));
      PosixFileAttributes has = view.readAttributes();
      if (needed && !(given.owner().equals(has.owner()) && given.group().equals(has.group()))) {
        throw UnusableFileException.of(
            "write.owner",
            UnusableFileException.quoted(to.target()),
            given.owner().getName() + ":" + given.group().getName());
      }
    }
    try {
      to.permit(given.permissions(), needed);
    } catch (IOException refused) {
      throw UnusableFileException.of(
          "write.mode",
          UnusableFileException.quoted(to.target()),
          PosixFilePermissions.toString(given.permissions()));
    }
  }

  private static Map<String, Object> of(UnfinishedFile file) throws IOException {
    Path exact = file.descriptor();
    return exact != null ? of(exact) : of(file.path(), LinkOption.NOFOLLOW_LINKS);
  }

  /** User and group by number: looking up their names takes longer than all the rest. */
  private static Map<String, Object> of(Path file, LinkOption... options) throws IOException {
    return Files.readAttributes(file, "unix:uid,gid", options);
  }
}
