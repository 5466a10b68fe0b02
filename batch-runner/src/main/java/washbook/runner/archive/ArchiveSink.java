package washbook.runner.archive;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;

/** Takes the bytes of a new archive; short stretches go to the file together. */
final class ArchiveSink implements Closeable {
  private final WrittenFile file;
  private final FileChannel channel;
  private final ByteBuffer buffer = ByteBuffer.allocate(1 << 15);
  private long written;

  ArchiveSink(Path target) throws IOException {
    file = WrittenFile.open(target);
    channel = file.channel();
  }

  long position() {
    return written + buffer.position();
  }

  void write(byte[] from, int offset, int length) throws IOException {
    if (length > buffer.remaining()) {
      flush();
    }
    if (length > buffer.remaining()) {
      writeAll(ByteBuffer.wrap(from, offset, length));
    } else {
      buffer.put(from, offset, length);
    }
  }

  void write(ByteBuffer from) throws IOException {
    write(from.array(), from.arrayOffset() + from.position(), from.remaining());
  }

  /** The bytes of another file from start to end. */
  void write(FileChannel from, long start, long end) throws IOException {
    flush();
    long position = start;
    while (position < end) {
      long count = from.transferTo(position, end - position, channel);
      if (count <= 0) {
        throw UnusableFileException.of("changed.copied");
      }
      position += count;
      written += count;
    }
  }

  void flush() throws IOException {
    writeAll(buffer.flip());
    buffer.clear();
  }

  private void writeAll(ByteBuffer from) throws IOException {
    while (from.hasRemaining()) {
      written += channel.write(from);
    }
  }

  /** Closes the file; what was not flushed is lost. */
  @Override
  public void close() throws IOException {
    file.close();
  }
}
