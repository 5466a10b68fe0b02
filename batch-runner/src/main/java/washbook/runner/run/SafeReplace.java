package washbook.runner.run;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;

/**
 * Puts a result into its place without ever showing a half-written file: written beside the target,
 * read back, forced to the disk, then named at one stroke. When anything fails the target is as it
 * was and nothing is left beside it.
 */
final class SafeReplace {
  /** Writes or checks a result at a path. */
  @FunctionalInterface
  interface Step {
    void run(Path path) throws IOException;
  }

  private SafeReplace() {}

  /**
   * Replaces or makes {@code target} at once.
   *
   * @return whether the target is another than before
   */
  static boolean put(
      Path source, FileStamp before, Path target, boolean backup, Step write, Step check)
      throws IOException {
    try (ResultGroup group = new ResultGroup()) {
      PendingResult result = prepare(null, source, before, target, backup, write, check);
      Exception failure = group.place(List.of(result)).get(result);
      if (failure instanceof IOException known) {
        throw known;
      }
      if (failure instanceof RuntimeException unknown) {
        throw unknown;
      }
      return result.changes();
    }
  }

  /**
   * Writes and checks what is to replace or become {@code target}.
   *
   * @param root the user's folder for results, below which links are not followed; null for none
   * @param source the file that the result is made from
   * @param before its stamp when reading began
   * @param backup whether an existing target is kept under another name
   */
  static PendingResult prepare(
      Path root, Path source, FileStamp before, Path target, boolean backup, Step write, Step check)
      throws IOException {
    refuseWhereUnsafe(target);
    UnfinishedFile unfinished = UnfinishedFile.beside(root, target);
    PendingResult result = null;
    try {
      write.run(unfinished.path());
      unfinished.check();
      check.run(unfinished.path());
      boolean replaces = Files.exists(target);
      Ownership.give(replaces ? target : source, unfinished, replaces);
      if (!FileStamp.of(source).equals(before)) {
        throw UnusableFileException.of("write.changed");
      }
      FileStamp old = replaces ? FileStamp.of(target) : null;
      result =
          replaces && Files.mismatch(unfinished.path(), target) == -1
              ? new PendingResult(source, before, target, false, null, old)
              : new PendingResult(
                  source, before, target, backup, unfinished, FileStamp.of(unfinished.path()));
      return result;
    } catch (FileSystemException failure) {
      throw Failure.named(failure, unfinished.path(), target);
    } finally {
      if (result == null || !result.changes()) {
        unfinished.close();
      }
    }
  }

  static void refuseWhereUnsafe(Path target) throws IOException {
    if (Files.isSymbolicLink(target)) {
      throw UnusableFileException.of("write.link", UnusableFileException.quoted(target));
    }
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(target)) {
      throw UnusableFileException.of("write.notPlain", UnusableFileException.quoted(target));
    }
    if (Files.exists(target) && isReadOnly(target)) {
      throw UnusableFileException.of("write.readOnly", UnusableFileException.quoted(target));
    }
    if (Files.exists(target) && OfficeLock.isHeld(target)) {
      throw UnusableFileException.of("write.open", UnusableFileException.quoted(target));
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
}
