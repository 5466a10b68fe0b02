package washbook.runner.archive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** Deflates bytes to the present end of a channel and counts them. */
final class PartPacker implements AutoCloseable {
  private final FileChannel to;
  private final Deflater deflater = new Deflater(6, true);
  private final CRC32 crc = new CRC32();
  private final byte[] packed = new byte[1 << 15];
  private long size;
  private long compressedSize;

  PartPacker(FileChannel to) {
    this.to = to;
  }

  void write(byte[] bytes, int length) throws IOException {
    crc.update(bytes, 0, length);
    size += length;
    deflater.setInput(bytes, 0, length);
    while (!deflater.needsInput()) {
      drain();
    }
  }

  void finish() throws IOException {
    deflater.finish();
    while (!deflater.finished()) {
      drain();
    }
  }

  private void drain() throws IOException {
    int count = deflater.deflate(packed);
    ByteBuffer buffer = ByteBuffer.wrap(packed, 0, count);
    while (buffer.hasRemaining()) {
      to.write(buffer);
    }
    compressedSize += count;
  }

  long size() {
    return size;
  }

  long compressedSize() {
    return compressedSize;
  }

  long crc32() {
    return crc.getValue();
  }

  @Override
  public void close() {
    deflater.end();
  }
}
