package washbook.runner.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

/**
 * Takes the new content of an entry and packs it in a second thread. As long as the content is the
 * same as before only {@link #same} is called and nothing is packed: an entry that turns out not to
 * change costs no more than reading it.
 */
public final class PartOutput extends OutputStream {
  private static final int BLOCK = 1 << 16;
  private static final Block END = new Block(new byte[0], 0);

  private record Block(@SuppressWarnings("ArrayRecordComponent") byte[] bytes, int length) {}

  private final Archive archive;
  private final Part part;
  private final PartPacker packer;
  private final BlockingQueue<Block> queue = new ArrayBlockingQueue<>(8);
  private final BlockingQueue<byte[]> free = new ArrayBlockingQueue<>(16);
  private long same;
  private byte[] block;
  private int used;
  private Thread thread;
  private volatile Throwable failure;

  PartOutput(Archive archive, Part part, PartPacker packer) {
    this.archive = archive;
    this.part = part;
    this.packer = packer;
  }

  /** The next so many bytes are those of the old content; not allowed after the first write. */
  public void same(long count) {
    if (thread != null) {
      throw new IllegalStateException("something else was written before");
    }
    same += count;
  }

  /** Whether anything was written. */
  boolean isStarted() {
    return thread != null;
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] from, int offset, int length) throws IOException {
    if (thread == null) {
      start();
    }
    append(from, offset, length);
  }

  private void append(byte[] from, int offset, int length) throws IOException {
    int done = 0;
    while (done < length) {
      int count = Math.min(length - done, BLOCK - used);
      System.arraycopy(from, offset + done, block, used, count);
      used += count;
      done += count;
      if (used == BLOCK) {
        send();
      }
    }
  }

  private void start() throws IOException {
    block = new byte[BLOCK];
    thread = new Thread(this::pack, "pack " + part.name());
    thread.setDaemon(true);
    thread.start();
    long left = same;
    byte[] buffer = new byte[1 << 14];
    try (InputStream old = archive.read(part)) {
      while (left > 0) {
        int got = old.read(buffer, 0, (int) Math.min(left, buffer.length));
        if (got < 0) {
          throw new IOException(part.name() + " changed while it was read.");
        }
        append(buffer, 0, got);
        left -= got;
      }
    }
  }

  private void send() throws IOException {
    put(new Block(block, used));
    byte[] next = free.poll();
    block = next == null ? new byte[BLOCK] : next;
    used = 0;
  }

  private void put(Block full) throws IOException {
    throwFailure();
    try {
      queue.put(full);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while packing");
    }
  }

  private void throwFailure() throws IOException {
    Throwable thrown = failure;
    if (thrown != null) {
      throw new IOException("Packing failed: " + thrown.getMessage(), thrown);
    }
  }

  private void pack() {
    while (true) {
      Block next;
      try {
        next = queue.take();
      } catch (InterruptedException e) {
        return;
      }
      if (next == END) {
        return;
      }
      if (failure == null) {
        try {
          packer.write(next.bytes(), next.length());
          free.offer(next.bytes());
        } catch (IOException | RuntimeException | OutOfMemoryError e) {
          failure = e;
        }
      }
    }
  }

  /** Waits until all is packed. */
  void finish() throws IOException {
    if (used > 0) {
      send();
    }
    put(END);
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while packing");
    }
    throwFailure();
  }

  /** Ends the second thread, also when not all was written. */
  @Override
  public void close() {
    if (thread != null) {
      thread.interrupt();
      try {
        thread.join();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
