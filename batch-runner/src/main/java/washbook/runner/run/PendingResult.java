package washbook.runner.run;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributeView;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Set;
import washbook.runner.file.FileIdentity;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;

/**
 * A finished result that has not taken its place yet. The steps come in this order, for a group of
 * results each: {@link #force}, {@link #keep}, folders forced, {@link #place}, folders forced.
 */
public final class PendingResult implements Closeable {
  private final Path source;
  private final FileStamp before;
  private final Path target;
  private final boolean keepsOld;
  private final UnfinishedFile result;
  private final FileStamp stamp;
  private UnfinishedFile copy;
  private Path kept;

  /**
   * @param source the file that it was made from
   * @param before its stamp when reading began
   * @param keepsOld whether the file in its place is kept under another name
   * @param result null when the file in its place has the same bytes already
   * @param stamp that of the file with the result
   */
  PendingResult(
      Path source,
      FileStamp before,
      Path target,
      boolean keepsOld,
      UnfinishedFile result,
      FileStamp stamp) {
    this.source = source;
    this.before = before;
    this.target = target;
    this.keepsOld = keepsOld;
    this.result = result;
    this.stamp = stamp;
  }

  /** Whether the file in its place is another one afterwards. */
  boolean changes() {
    return result != null;
  }

  FileStamp stamp() {
    return stamp;
  }

  /** The result's folder. */
  Object folder() {
    return result.folderKey();
  }

  /** By what the system knows the result, wherever it lies. */
  Object key() {
    return result.key();
  }

  boolean hasBackup() {
    return kept != null;
  }

  /** Puts the result on the disk, and a copy of the file that it replaces. */
  void force() throws IOException {
    result.force();
    if (keepsOld && Files.exists(target)) {
      copy = UnfinishedFile.beside(target);
      BasicFileAttributes old = Files.readAttributes(target, BasicFileAttributes.class);
      try (InputStream in = Files.newInputStream(target, LinkOption.NOFOLLOW_LINKS);
          OutputStream out = WrittenFile.stream(copy.path())) {
        in.transferTo(out);
      }
      copy.check();
      Ownership.give(target, copy, false);
      BasicFileAttributeView times =
          Files.getFileAttributeView(
              copy.path(), BasicFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
      Failure.ignoring(() -> times.setTimes(old.lastModifiedTime(), null, null));
      copy.force();
    }
  }

  /** Names the copy NAME.bak, NAME.bak2 and so on; an older one is never overwritten. */
  void keep() throws IOException {
    for (int i = 1; copy != null && kept == null; i++) {
      String mark = Destination.BACKUP_MARK + (i == 1 ? "" : Integer.toString(i));
      Path free = target.resolveSibling(target.getFileName() + mark);
      try {
        if (isSame(free)) {
          // An earlier run was ended after it had kept it.
          copy.close();
          return;
        }
        copy.placeAs(free);
        kept = free;
      } catch (FileAlreadyExistsException taken) {
        // The next number.
      } catch (FileSystemException failure) {
        throw Failure.named(failure, copy.path(), free);
      }
    }
  }

  private boolean isSame(Path other) throws IOException {
    return Files.isRegularFile(other, LinkOption.NOFOLLOW_LINKS)
        && Files.mismatch(other, copy.path()) == -1;
  }

  /**
   * Looks a last time and takes the place.
   *
   * @param placed what this run has put into place, by what the system knows it
   */
  void place(Set<Object> placed) throws IOException {
    try {
      SafeReplace.refuseWhereUnsafe(target);
      if (!FileStamp.of(source).equals(before)) {
        throw UnusableFileException.of("write.changed");
      }
      Object there = FileIdentity.key(target);
      if (there != null && placed.contains(there)) {
        throw UnusableFileException.of("write.twice", UnusableFileException.quoted(target));
      }
      result.place();
      placed.add(result.key());
    } catch (FileSystemException failure) {
      forgetBackup();
      throw Failure.named(failure, result.path(), target);
    } catch (IOException | RuntimeException failure) {
      forgetBackup();
      throw failure;
    }
  }

  /** The file was not replaced, so that there is nothing to keep. */
  private void forgetBackup() {
    if (kept != null) {
      Failure.ignoring(() -> Files.deleteIfExists(kept));
    }
  }

  void forceFolder() {
    result.forceFolder();
  }

  @Override
  public void close() throws IOException {
    UnfinishedFile second = copy;
    try (UnfinishedFile first = result;
        second) {
      copy = null;
    }
  }
}
