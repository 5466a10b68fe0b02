package washbook.runner.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import washbook.runner.file.UnusableFileException;

/**
 * Takes the new content of an entry. As long as the content is the same as before only {@link
 * #same} is called and nothing is packed: an entry that turns out not to change costs no more than
 * reading it.
 */
public final class PartOutput extends OutputStream {
  private final Archive archive;
  private final Part part;
  private final PartPacker packer;
  private long same;
  private boolean started;

  PartOutput(Archive archive, Part part, PartPacker packer) {
    this.archive = archive;
    this.part = part;
    this.packer = packer;
  }

  /** The next so many bytes are those of the old content; not allowed after the first write. */
  public void same(long count) {
    if (started) {
      throw new IllegalStateException("something else was written before");
    }
    same += count;
  }

  /** Bytes of the old content, as the directory has it. */
  public long oldSize() {
    return part.size();
  }

  /** Whether anything was written. */
  boolean isStarted() {
    return started;
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] from, int offset, int length) throws IOException {
    if (!started) {
      start();
    }
    packer.write(from, offset, length);
  }

  /** Packs the beginning that was the same, which has to be read again. */
  private void start() throws IOException {
    started = true;
    long left = same;
    byte[] buffer = new byte[(int) Math.min(left, 1 << 14)];
    try (InputStream old = archive.read(part)) {
      while (left > 0) {
        int got = old.read(buffer, 0, (int) Math.min(left, buffer.length));
        if (got < 0) {
          throw UnusableFileException.of("changed.part", part.name());
        }
        packer.write(buffer, 0, got);
        left -= got;
      }
    }
  }
}
