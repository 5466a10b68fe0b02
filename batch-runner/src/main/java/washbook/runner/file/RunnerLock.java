package washbook.runner.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.HexFormat;

/**
 * Says in a folder that the runner with this token lives. The token is drawn by lot and the lock is
 * the operating system's, which holds between containers and frees it when a process dies; names of
 * machines and numbers of processes would come twice.
 */
final class RunnerLock {
  /** How all our passing files begin. */
  static final String BEGIN = ".washbook-";

  /** How a lock's name ends. */
  static final String END = ".lock";

  private static final int ATTEMPTS = 100;

  /** The system's own lots; Java's, which are drawn from them, take longer to set up. */
  private static final Path LOTS = Path.of("/dev/urandom");

  private final WorkFolder folder;
  private final String token;
  private final FileChannel channel;

  private RunnerLock(WorkFolder folder, String token, FileChannel channel) {
    this.folder = folder;
    this.token = token;
    this.channel = channel;
  }

  /**
   * Takes a new lock. Between its making and its locking another runner can take it for one that
   * was left behind; then it is no longer there and another is made.
   */
  static RunnerLock in(WorkFolder folder) throws IOException {
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      String token = HexFormat.of().formatHex(drawn());
      Path name = Path.of(BEGIN + token + END);
      FileChannel channel;
      try {
        channel = folder.create(name);
      } catch (FileAlreadyExistsException taken) {
        continue;
      }
      Object made = folder.key(name);
      if (made != null && isTaken(channel) && made.equals(folder.key(name))) {
        return new RunnerLock(folder, token, channel);
      }
      channel.close();
    }
    throw UnusableFileException.of("lock.none", UnusableFileException.quoted(folder.path()));
  }

  private static byte[] drawn() {
    byte[] random = new byte[8];
    try (InputStream lots = Files.newInputStream(LOTS)) {
      if (lots.readNBytes(random, 0, random.length) == random.length) {
        return random;
      }
    } catch (IOException none) {
      // Not every system has them.
    }
    new SecureRandom().nextBytes(random);
    return random;
  }

  /** Where the system has no locks we go on without; others wait a day before they clear up. */
  private static boolean isTaken(FileChannel channel) {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException other) {
      return false;
    } catch (IOException noLocks) {
      return true;
    }
  }

  String token() {
    return token;
  }

  /**
   * Ends it.
   *
   * @param leavesFiles whether files of ours stay, which others shall find with a lock that is free
   */
  void close(boolean leavesFiles) throws IOException {
    try {
      if (!leavesFiles) {
        folder.delete(Path.of(BEGIN + token + END));
      }
    } finally {
      channel.close();
    }
  }
}
