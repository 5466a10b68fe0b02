package washbook.runner.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Opens files for writing without being led elsewhere by a link that somebody has put there. */
public final class WrittenFile {
  private WrittenFile() {}

  /** The file emptied; a new one when there is none. */
  public static FileChannel open(Path file) throws IOException {
    try {
      return FileChannel.open(
          file,
          StandardOpenOption.WRITE,
          StandardOpenOption.TRUNCATE_EXISTING,
          LinkOption.NOFOLLOW_LINKS);
    } catch (NoSuchFileException absent) {
      return FileChannel.open(
          file, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW, LinkOption.NOFOLLOW_LINKS);
    }
  }

  /** The same as a stream. */
  public static OutputStream stream(Path file) throws IOException {
    return new BufferedOutputStream(Channels.newOutputStream(open(file)), 1 << 16);
  }

  /** Copies a file's bytes. */
  public static void copy(Path from, Path to) throws IOException {
    try (OutputStream out = stream(to)) {
      Files.copy(from, out);
    }
  }
}
