package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.Map;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;

/** Owner, group and mode of a file for another that is to stand in its place or beside it. */
final class Ownership {
  private Ownership() {}

  /**
   * Gives them on.
   *
   * @param needed whether the file is no good without the same owner and group
   */
  static void give(Path from, UnfinishedFile to, boolean needed) throws IOException {
    PosixFileAttributeView view = to.permissions();
    if (view == null) {
      return;
    }
    PosixFileAttributes given = Files.readAttributes(from, PosixFileAttributes.class);
    if (!of(from).equals(of(to.path(), LinkOption.NOFOLLOW_LINKS))) {
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
    to.permit(given.permissions(), needed);
  }

  /** User and group by number: looking up their names takes longer than all the rest. */
  private static Map<String, Object> of(Path file, LinkOption... options) throws IOException {
    return Files.readAttributes(file, "unix:uid,gid", options);
  }
}
