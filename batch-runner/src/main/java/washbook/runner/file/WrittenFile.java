package washbook.runner.file;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Opens files for writing without being led elsewhere by a link that somebody has put there; one
 * that is held open already is written as it was opened.
 */
public final class WrittenFile implements Closeable {
  private final FileChannel channel;
  private final boolean held;

  private WrittenFile(FileChannel channel, boolean held) {
    this.channel = channel;
    this.held = held;
  }

  /** The file emptied; a new one when there is none. */
  public static WrittenFile open(Path file) throws IOException {
    FileChannel held = OpenFiles.of(file);
    if (held != null) {
      held.truncate(0);
      return new WrittenFile(held.position(0), true);
    }
    try {
      return new WrittenFile(
          FileChannel.open(
              file,
              StandardOpenOption.WRITE,
              StandardOpenOption.TRUNCATE_EXISTING,
              LinkOption.NOFOLLOW_LINKS),
          false);
    } catch (NoSuchFileException absent) {
      return new WrittenFile(
          FileChannel.open(
              file,
              StandardOpenOption.WRITE,
              StandardOpenOption.CREATE_NEW,
              LinkOption.NOFOLLOW_LINKS),
          false);
    }
  }

  /** The same as a stream. */
  public static OutputStream stream(Path file) throws IOException {
    return new BufferedOutputStream(new Stream(open(file)), 1 << 16);
  }

  /** Copies a file's bytes. */
  public static void copy(Path from, Path to) throws IOException {
    try (InputStream in = ReadFile.stream(from);
        OutputStream out = stream(to)) {
      in.transferTo(out);
    }
  }

  /** Not to be closed. */
  public FileChannel channel() {
    return channel;
  }

  @Override
  public void close() throws IOException {
    if (!held) {
      channel.close();
    }
  }

  private static final class Stream extends OutputStream {
    private final WrittenFile file;

    Stream(WrittenFile file) {
      this.file = file;
    }

    @Override
    public void write(int one) throws IOException {
      write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] from, int offset, int length) throws IOException {
      ByteBuffer bytes = ByteBuffer.wrap(from, offset, length);
      while (bytes.hasRemaining()) {
        file.channel.write(bytes);
      }
    }

    @Override
    public void close() throws IOException {
      file.close();
    }
  }
}
