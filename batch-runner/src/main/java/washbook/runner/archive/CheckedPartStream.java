package washbook.runner.archive;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import washbook.runner.file.UnusableFileException;

/** Unpacks an entry and proves that it is as long as the directory says and has its check sum. */
final class CheckedPartStream extends InputStream {
  private static final int LARGEST_INPUT = 1 << 14;

  private final Part part;
  private final InputStream stored;
  private Inflater inflater;
  private final byte[] input;
  private final CRC32 crc = new CRC32();
  private long count;
  private boolean done;

  /** {@code inflater} is null for a stored entry. */
  CheckedPartStream(Part part, InputStream stored, Inflater inflater) {
    this.part = part;
    this.stored = stored;
    this.inflater = inflater;
    this.input = inflater == null ? null : new byte[inputSize(part)];
  }

  private static int inputSize(Part part) {
    return (int) Math.max(1, Math.min(part.compressedSize(), LARGEST_INPUT));
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] to, int offset, int length) throws IOException {
    if (done || length == 0) {
      return done ? -1 : 0;
    }
    int got = inflater == null ? stored.read(to, offset, length) : inflate(to, offset, length);
    if (got < 0) {
      done = true;
      if (count != part.size() || crc.getValue() != part.crc32()) {
        throw damaged(null);
      }
      return -1;
    }
    crc.update(to, offset, got);
    count += got;
    if (count > part.size()) {
      throw damaged(null);
    }
    return got;
  }

  private int inflate(byte[] to, int offset, int length) throws IOException {
    try {
      while (true) {
        int got = inflater.inflate(to, offset, length);
        if (got > 0) {
          return got;
        }
        if (inflater.finished()) {
          return -1;
        }
        if (inflater.needsDictionary()) {
          throw damaged(null);
        }
        int read = stored.read(input, 0, input.length);
        if (read < 0) {
          throw damaged(null);
        }
        inflater.setInput(input, 0, read);
      }
    } catch (DataFormatException e) {
      throw damaged(e);
    }
  }

  private UnusableFileException damaged(Throwable cause) {
    return UnusableFileException.damaged(cause, "how.zipBroken", part.name());
  }

  @Override
  public void close() throws IOException {
    done = true;
    if (inflater != null) {
      ZipEngines.giveBack(inflater);
      inflater = null;
    }
    stored.close();
  }
}
