package washbook.runner.file;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Opens files for reading; one that is held open already is read as it was opened. */
public final class ReadFile implements Closeable {
  private final FileChannel channel;
  private final boolean held;

  private ReadFile(FileChannel channel, boolean held) {
    this.channel = channel;
    this.held = held;
  }

  public static ReadFile open(Path file) throws IOException {
    FileChannel held = OpenFiles.of(file);
    return held != null
        ? new ReadFile(held, true)
        : new ReadFile(FileChannel.open(file, StandardOpenOption.READ), false);
  }

  /** The bytes from the start. */
  public static InputStream stream(Path file) throws IOException {
    FileChannel held = OpenFiles.of(file);
    return held != null ? new Held(held) : Files.newInputStream(file);
  }

  /** To be read at places, since others may share it; not to be closed. */
  public FileChannel channel() {
    return channel;
  }

  @Override
  public void close() throws IOException {
    if (!held) {
      channel.close();
    }
  }

  /** A file from its start to its end, which is left open. */
  private static final class Held extends InputStream {
    private final FileChannel channel;
    private long position;

    Held(FileChannel channel) {
      this.channel = channel;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] to, int offset, int length) throws IOException {
      if (length == 0) {
        return 0;
      }
      int got = channel.read(ByteBuffer.wrap(to, offset, length), position);
      position += Math.max(got, 0);
      return got;
    }
  }
}
