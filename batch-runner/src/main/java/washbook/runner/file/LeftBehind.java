package washbook.runner.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Unfinished files of runners that were killed: told by a lock that nobody holds, and removed. */
public final class LeftBehind {
  /** Without locks an unfinished file is given up when it was not touched for so long. */
  private static final Duration GIVEN_UP = Duration.ofDays(1);

  private static final int TOKEN = 16;

  private LeftBehind() {}

  /** Whether a name is that of a passing file of ours. */
  public static boolean isOne(Path file) {
    return file.getFileName().toString().startsWith(RunnerLock.BEGIN);
  }

  /** Clears one folder; what cannot be cleared stays. */
  public static void clear(Path folder) {
    Map<String, List<Path>> byToken = new TreeMap<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, LeftBehind::isOne)) {
      for (Path file : files) {
        byToken.computeIfAbsent(token(file), t -> new ArrayList<>()).add(file);
      }
    } catch (IOException | RuntimeException unreadable) {
      return;
    }
    byToken.forEach((token, files) -> clear(folder, token, files));
  }

  /** Clears a folder and those inside it. */
  public static void clearTree(Path folder) {
    SimpleFileVisitor<Path> visitor =
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path each, BasicFileAttributes attributes) {
            clear(each);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFileFailed(Path file, IOException failure) {
            return FileVisitResult.CONTINUE;
          }
        };
    try {
      if (Files.isDirectory(folder)) {
        Files.walkFileTree(folder.toRealPath(), visitor);
      }
    } catch (IOException unreadable) {
      // The run itself will say so.
    }
  }

  private static String token(Path file) {
    String rest = file.getFileName().toString().substring(RunnerLock.BEGIN.length());
    return rest.substring(0, Math.min(TOKEN, rest.length()));
  }

  /** The lock goes last, so that whoever dies while clearing leaves it to the next. */
  private static void clear(Path folder, String token, List<Path> files) {
    Path lock = folder.resolve(RunnerLock.BEGIN + token + RunnerLock.END);
    try (FileChannel channel =
        FileChannel.open(lock, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
      FileLock held;
      try {
        held = channel.tryLock();
      } catch (IOException noLocks) {
        clearOld(files);
        return;
      }
      if (held != null) {
        delete(files.stream().filter(file -> !file.equals(lock)).toList());
        delete(List.of(lock));
      }
    } catch (OverlappingFileLockException ours) {
      // A lock of this process.
    } catch (NoSuchFileException none) {
      clearOld(files);
    } catch (IOException notOurs) {
      // Another user's.
    }
  }

  private static void clearOld(List<Path> files) {
    Instant old = Instant.now().minus(GIVEN_UP);
    delete(
        files.stream()
            .filter(
                file -> {
                  try {
                    return Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS)
                        .toInstant()
                        .isBefore(old);
                  } catch (IOException gone) {
                    return false;
                  }
                })
            .toList());
  }

  private static void delete(List<Path> files) {
    for (Path file : files) {
      try {
        Files.deleteIfExists(file);
      } catch (IOException stays) {
        // The next run tries again.
      }
    }
  }
}
