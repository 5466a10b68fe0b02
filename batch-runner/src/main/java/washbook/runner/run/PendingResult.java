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
import java.nio.file.attribute.FileTime;
import java.util.Set;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;

/**
 * A finished result that has not taken its place yet. The steps come in this order, for a group of
 * results each: {@link #force}, {@link #keep}, folders forced, {@link #place}, folders forced.
 */
public final class PendingResult implements Closeable {
  private final SafeReplace.Job job;
  private final Path target;
  private final UnfinishedFile result;
  private final FileStamp stamp;
  private UnfinishedFile copy;
  private Path kept;

  /**
   * @param result null when the file in its place has the same bytes already
   * @param stamp that of the file with the result
   */
  PendingResult(SafeReplace.Job job, UnfinishedFile result, FileStamp stamp) {
    this.job = job;
    this.target = job.target();
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
    Object old = job.keepsOld() ? result.keyBeside(target) : null;
    if (old != null) {
      copy = UnfinishedFile.beside(job.root(), target);
      FileTime changed = Files.getLastModifiedTime(target, LinkOption.NOFOLLOW_LINKS);
      try (InputStream in = copy.readBeside(target);
          OutputStream out = WrittenFile.stream(copy.path())) {
        in.transferTo(out);
      }
      copy.check();
      Ownership.give(target, old, copy, false);
      Failure.ignoring(() -> copy.setModified(changed));
      copy.force();
    }
  }

  /** Names the copy NAME.bak, NAME.bak2 and so on; an older one is never overwritten. */
  void keep() throws IOException {
    for (int i = 1; copy != null && kept == null; i++) {
      String mark = Destination.BACKUP_MARK + (i == 1 ? "" : Integer.toString(i));
      Path free = target.resolveSibling(target.getFileName() + mark);
      try {
        if (copy.keyBeside(free) != null && copy.hasBytesOf(free)) {
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

  /**
   * Looks a last time and takes the place.
   *
   * @param placed what this run has put into place, by what the system knows it
   */
  void place(Set<Object> placed) throws IOException {
    try {
      SafeReplace.refuseWhereUnsafe(target);
      Object there = result.keyBeside(target);
      boolean same = job.key() == null || job.key().equals(there);
      if (!same || !FileStamp.of(job.source()).equals(job.before())) {
        throw UnusableFileException.of("write.changed");
      }
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
      Failure.ignoring(() -> copy.takeBack(kept));
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
