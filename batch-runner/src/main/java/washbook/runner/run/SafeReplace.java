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

  /**
   * What is made from what, and where it goes.
   *
   * @param root the folder that the user named, below which links are not followed; null for none
   * @param source the file that the result is made from
   * @param before its stamp when reading began
   * @param key by what the system knows the file that was read, which alone may be replaced; null
   *     where the result is another file
   * @param folder by what the system knew the result's folder when reading began; null when it may
   *     have been made since
   * @param keepsOld whether an existing target is kept under another name
   */
  record Job(
      Path root,
      Path source,
      FileStamp before,
      Object key,
      Object folder,
      Path target,
      boolean keepsOld) {}

  private SafeReplace() {}

  /** Replaces or makes {@code target} at once. */
  static boolean put(
      Path source, FileStamp before, Path target, boolean backup, Step write, Step check)
      throws IOException {
    return put(new Job(null, source, before, null, null, target, backup), write, check);
  }

  /**
   * The same.
   *
   * @return whether the target is another than before
   */
  static boolean put(Job job, Step write, Step check) throws IOException {
    try (ResultGroup group = new ResultGroup()) {
      PendingResult result = prepare(job, write, check);
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

  /** Writes and checks what is to replace or become the target. */
  static PendingResult prepare(Job job, Step write, Step check) throws IOException {
    Path target = job.target();
    refuseWhereUnsafe(target);
    UnfinishedFile unfinished = UnfinishedFile.beside(job.root(), target);
    PendingResult result = null;
    try {
      unfinished.checkFolder(job.folder());
      write.run(unfinished.path());
      unfinished.check();
      check.run(unfinished.path());
      Object old = unfinished.keyBeside(target);
      if (job.key() != null && !job.key().equals(old)) {
        FileStamp.of(job.source());
        throw UnusableFileException.of("write.changed");
      }
      if (old != null) {
        Ownership.give(target, old, unfinished, true);
      } else {
        Ownership.give(job.source(), unfinished);
      }
      if (!FileStamp.of(job.source()).equals(job.before())) {
        throw UnusableFileException.of("write.changed");
      }
      result =
          old != null && unfinished.hasBytesOf(target)
              ? new PendingResult(job, null, FileStamp.of(target))
              : new PendingResult(job, unfinished, FileStamp.of(unfinished.attributes()));
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
