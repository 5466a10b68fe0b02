package washbook.runner.batch;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import washbook.runner.TempName;
import washbook.runner.read.UnusableFileException;

/**
 * Puts a result into its place without ever showing a half-written file: written beside the target,
 * forced to the disk, read back, then moved at one stroke. When anything fails the target is as it
 * was and nothing is left beside it.
 */
final class SafeReplace {
  /** Writes or checks a result at a path. */
  @FunctionalInterface
  interface Step {
    void run(Path path) throws IOException;
  }

  private static final String CHANGED =
      "The file was changed by another program in the meantime; nothing was written.";

  private SafeReplace() {}

  /**
   * Replaces or makes {@code target}.
   *
   * @param source the file that the result is made from
   * @param before its stamp when reading began
   * @param backup whether an existing target is kept under another name
   * @return whether the target is another than before
   */
  static boolean put(
      Path source, FileStamp before, Path target, boolean backup, Step write, Step check)
      throws IOException {
    refuseWhereUnsafe(source, target);
    Path unfinished = TempName.beside(target);
    try {
      createForOwnerOnly(unfinished);
      write.run(unfinished);
      boolean replaces = Files.exists(target);
      force(unfinished);
      check.run(unfinished);
      keepPermissions(source, target, unfinished);
      if (!FileStamp.of(source).equals(before)) {
        throw new UnusableFileException(CHANGED);
      }
      if (replaces && Files.mismatch(unfinished, target) == -1) {
        return false;
      }
      Path kept = backup && replaces ? Backup.keep(target) : null;
      try {
        if (kept != null && !FileStamp.of(source).equals(before)) {
          throw new UnusableFileException(CHANGED);
        }
        Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (IOException failure) {
        if (kept != null) {
          Files.deleteIfExists(kept);
        }
        throw failure;
      }
      forceFolder(target);
      return true;
    } catch (FileSystemException failure) {
      throw Failure.named(failure, unfinished, target);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }

  private static void refuseWhereUnsafe(Path source, Path target) throws IOException {
    if (Files.isSymbolicLink(target)) {
      throw new UnusableFileException(
          "'" + target + "' is a symbolic link; name the file itself to have it replaced.");
    }
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(target)) {
      throw new UnusableFileException("'" + target + "' is not a plain file.");
    }
    if (Files.exists(target) && isReadOnly(target)) {
      throw new UnusableFileException("'" + target + "' is read-only.");
    }
    if (Files.exists(target) && OfficeLock.isHeld(target)) {
      throw new UnusableFileException("'" + target + "' is open in an office program.");
    }
  }

  /** Also without any write permission, which does not stop the superuser. */
  private static boolean isReadOnly(Path file) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    boolean nobodyWrites =
        view != null
            && Collections.disjoint(
                view.readAttributes().permissions(),
                Set.of(
                    PosixFilePermission.OWNER_WRITE,
                    PosixFilePermission.GROUP_WRITE,
                    PosixFilePermission.OTHERS_WRITE));
    return nobodyWrites || !Files.isWritable(file);
  }

  /**
   * Before an older file goes, the new one is on the disk, and so it is before anybody notes that
   * it was made.
   */
  static void force(Path path) throws IOException {
    try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** Makes a change of names in the file's folder last; not every system can. */
  static void forceFolder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    Failure.ignoring(
        () -> {
          try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
          }
        });
  }

  /** While it is written, others see no more of it than of a file that they may not read. */
  private static void createForOwnerOnly(Path unfinished) throws IOException {
    Files.createFile(unfinished);
    PosixFileAttributeView view =
        Files.getFileAttributeView(unfinished, PosixFileAttributeView.class);
    if (view != null) {
      view.setPermissions(Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE));
    }
  }

  /**
   * A replaced file keeps its owner, group and mode, or is not replaced; a new one gets the mode of
   * what it is made from.
   */
  private static void keepPermissions(Path source, Path target, Path to) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (view == null) {
      return;
    }
    boolean replaced = Files.exists(target);
    PosixFileAttributes given =
        Files.readAttributes(replaced ? target : source, PosixFileAttributes.class);
    if (ownership(replaced ? target : source).equals(ownership(to))) {
      view.setPermissions(given.permissions());
      return;
    }
    Failure.ignoring(() -> view.setGroup(given.group()));
    Failure.ignoring(() -> view.setOwner(given.owner()));
    view.setPermissions(given.permissions());
    PosixFileAttributes kept = view.readAttributes();
    if (replaced && !(given.owner().equals(kept.owner()) && given.group().equals(kept.group()))) {
      throw new UnusableFileException(
          "'"
              + target
              + "' belongs to "
              + given.owner().getName()
              + ":"
              + given.group().getName()
              + ", which a new file could not be given; it was left as it was.");
    }
  }

  /** User and group by number: looking up their names takes longer than all the rest. */
  private static Map<String, Object> ownership(Path file) throws IOException {
    return Files.readAttributes(file, "unix:uid,gid");
  }
}
