package washbook.runner.archive;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import washbook.runner.file.ReadFile;
import washbook.runner.file.UnusableFileException;

/** The bytes of an archive at any place: those of a small file are read at once and kept. */
final class ArchiveBytes implements Closeable {
  private static final int SMALL = 1 << 20;

  private final ReadFile file;
  private final FileChannel channel;
  private final byte[] all;

  private ArchiveBytes(ReadFile file, byte[] all) {
    this.file = file;
    this.channel = file.channel();
    this.all = all;
  }

  static ArchiveBytes open(Path file) throws IOException {
    ReadFile opened = ReadFile.open(file);
    boolean kept = false;
    try {
      long size = opened.channel().size();
      byte[] all = size <= SMALL ? readAll(opened.channel(), (int) size) : null;
      kept = all == null;
      return new ArchiveBytes(opened, all);
    } finally {
      if (!kept) {
        opened.close();
      }
    }
  }

  private static byte[] readAll(FileChannel channel, int size) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(size);
    while (bytes.hasRemaining()) {
      if (channel.read(bytes, bytes.position()) < 0) {
        throw UnusableFileException.of("changed.read");
      }
    }
    return bytes.array();
  }

  long size() throws IOException {
    return all == null ? channel.size() : all.length;
  }

  /** How many bytes were read, or -1 behind the end. */
  int read(byte[] to, int offset, int length, long position) throws IOException {
    if (all == null) {
      return channel.read(ByteBuffer.wrap(to, offset, length), position);
    }
    if (position >= all.length) {
      return -1;
    }
    int count = (int) Math.min(length, all.length - position);
    System.arraycopy(all, (int) position, to, offset, count);
    return count;
  }

  /** Writes the bytes from start to end. */
  void copy(long start, long end, ArchiveSink to) throws IOException {
    if (all == null) {
      to.write(channel, start, end);
    } else {
      to.write(all, (int) start, (int) (end - start));
    }
  }

  InputStream stream(long start, long end) {
    return new Stretch(this, start, end);
  }

  @Override
  public void close() throws IOException {
    file.close();
  }

  /** A stretch of the file as a stream. */
  private static final class Stretch extends InputStream {
    private final ArchiveBytes bytes;
    private final long end;
    private long position;

    Stretch(ArchiveBytes bytes, long start, long end) {
      this.bytes = bytes;
      this.position = start;
      this.end = end;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] to, int offset, int length) throws IOException {
      int wanted = (int) Math.min(length, end - position);
      if (wanted <= 0) {
        return length == 0 ? 0 : -1;
      }
      int got = bytes.read(to, offset, wanted, position);
      if (got > 0) {
        position += got;
      }
      return got;
    }
  }
}
