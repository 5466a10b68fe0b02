package washbook.runner.file;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.SecureDirectoryStream;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributeView;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A folder that we write into. Names are used inside the folder as it was opened, so that another
 * user who moves things about cannot lead a write elsewhere; where the system cannot do that, names
 * are used as paths. While it is open, a lock tells other runners whose unfinished files these are.
 */
final class WorkFolder implements Closeable {
  private static final Map<Object, WorkFolder> OPEN = new HashMap<>();

  /**
   * Folders that have been cleared of what killed runners left there, and in which we left nothing.
   */
  private static final Set<Object> CLEARED = new HashSet<>();

  private static final Path HERE = Path.of(".");

  private final Path path;
  private final Object key;
  private final SecureDirectoryStream<Path> entries;
  private final AtomicLong next = new AtomicLong();
  private RunnerLock lock;
  private int users;
  private boolean leavesFiles;

  private WorkFolder(Path path, Object key, SecureDirectoryStream<Path> entries) {
    this.path = path;
    this.key = key;
    this.entries = entries;
  }

  /**
   * Opens a folder, or takes part in one that is open.
   *
   * @param root a folder above it, from which links are no longer followed; null for none
   */
  static WorkFolder open(Path root, Path path) throws IOException {
    if (!Files.isDirectory(path)) {
      throw new NoSuchFileException(path.toString());
    }
    SecureDirectoryStream<Path> entries = SecureFolder.open(root, path);
    try {
      return open(entries, path);
    } catch (IOException | RuntimeException failure) {
      close(entries);
      throw failure;
    }
  }

  private static WorkFolder open(SecureDirectoryStream<Path> entries, Path path)
      throws IOException {
    Object key = entries == null ? FileIdentity.key(path) : key(entries, path);
    synchronized (OPEN) {
      WorkFolder folder = OPEN.get(key);
      if (folder != null) {
        close(entries);
      } else {
        if (CLEARED.add(key)) {
          LeftBehind.clear(path);
        }
        folder = new WorkFolder(path, key, entries);
        folder.lock = RunnerLock.in(folder);
        OPEN.put(key, folder);
      }
      folder.users++;
      return folder;
    }
  }

  /** By what the system knows the folder that was opened, whatever its path leads to by now. */
  private static Object key(SecureDirectoryStream<Path> entries, Path path) throws IOException {
    return FileIdentity.key(
        entries.getFileAttributeView(BasicFileAttributeView.class).readAttributes(), path);
  }

  /** Whether this is still the folder that its path leads to. */
  boolean isInPlace() {
    return key.equals(FileIdentity.key(path));
  }

  Path path() {
    return path;
  }

  /** A name for a new unfinished file. */
  Path newName(String extension) {
    return Path.of(RunnerLock.BEGIN + lock.token() + "-" + next.incrementAndGet() + extension);
  }

  /** Makes a file that only its owner may read; one that is there, a link too, is a failure. */
  FileChannel create(Path name) throws IOException {
    Set<OpenOption> options =
        Set.of(
            StandardOpenOption.CREATE_NEW,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS);
    FileAttribute<?>[] mode =
        path.getFileSystem().supportedFileAttributeViews().contains("posix")
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
            }
            : new FileAttribute<?>[0];
    if (entries != null) {
      SeekableByteChannel channel = entries.newByteChannel(name, options, mode);
      if (channel instanceof FileChannel file) {
        return file;
      }
      channel.close();
      entries.deleteFile(name);
    }
    return FileChannel.open(path.resolve(name), options, mode);
  }

  /** An entry's bytes; a link is a failure. */
  InputStream read(Path name) throws IOException {
    Set<OpenOption> options = Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
    return Channels.newInputStream(
        entries != null
            ? entries.newByteChannel(name, options)
            : Files.newByteChannel(path.resolve(name), options));
  }

  /** Attributes of an entry; a link stands for itself. */
  <V extends FileAttributeView> V view(Path name, Class<V> type) {
    return entries != null
        ? entries.getFileAttributeView(name, type, LinkOption.NOFOLLOW_LINKS)
        : Files.getFileAttributeView(path.resolve(name), type, LinkOption.NOFOLLOW_LINKS);
  }

  /** By what the system knows an entry; null when there is none. */
  Object key(Path name) throws IOException {
    try {
      return FileIdentity.key(
          view(name, BasicFileAttributeView.class).readAttributes(), path.resolve(name));
    } catch (NoSuchFileException absent) {
      return null;
    }
  }

  /** Gives an entry another name, in place of what has it. */
  void move(Path from, Path to) throws IOException {
    if (entries != null) {
      entries.move(from, entries, to);
    } else {
      Files.move(path.resolve(from), path.resolve(to), StandardCopyOption.ATOMIC_MOVE);
    }
  }

  void delete(Path name) throws IOException {
    try {
      if (entries != null) {
        entries.deleteFile(name);
      } else {
        Files.delete(path.resolve(name));
      }
    } catch (NoSuchFileException gone) {
      // It was to go.
    }
  }

  /** Removes a passing file; one that stays is known by its lock to be left behind. */
  void deletePassing(Path name) throws IOException {
    try {
      delete(name);
    } catch (IOException stays) {
      synchronized (OPEN) {
        leavesFiles = true;
      }
      throw stays;
    }
  }

  /** Puts the names in the folder on the disk; some systems cannot, and need not. */
  void force() {
    try (FileChannel channel = itself()) {
      channel.force(true);
    } catch (IOException | UnsupportedOperationException cannot) {
      // Nothing more can be done here.
    }
  }

  private FileChannel itself() throws IOException {
    if (entries != null) {
      SeekableByteChannel channel = entries.newByteChannel(HERE, Set.of(StandardOpenOption.READ));
      if (channel instanceof FileChannel file) {
        return file;
      }
      channel.close();
    }
    return FileChannel.open(path, StandardOpenOption.READ);
  }

  /** By what the system knows the folder. */
  Object key() {
    return key;
  }

  /** Ends one use; the last one takes the lock away. */
  @Override
  public void close() throws IOException {
    synchronized (OPEN) {
      if (--users > 0) {
        return;
      }
      OPEN.remove(key);
      boolean isClean = false;
      try {
        lock.close(leavesFiles);
        isClean = !leavesFiles;
      } finally {
        if (!isClean) {
          // A watcher lives long: it clears up itself when it comes back to the folder.
          CLEARED.remove(key);
        }
        closeEntries();
      }
    }
  }

  private void closeEntries() throws IOException {
    close(entries);
  }

  private static void close(SecureDirectoryStream<Path> entries) throws IOException {
    if (entries != null) {
      entries.close();
    }
  }
}
