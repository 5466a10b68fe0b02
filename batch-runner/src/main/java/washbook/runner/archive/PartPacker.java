package washbook.runner.archive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import washbook.runner.file.UnusableFileException;

/**
 * Deflates bytes to a channel, block by block on all processors. Every block but the last ends on a
 * byte's boundary and knows the end of the one before it, so together they are one ordinary stream
 * (RFC 1951, section 3.2; zlib manual, deflateSetDictionary and Z_SYNC_FLUSH). The result does not
 * depend on the number of processors.
 */
final class PartPacker implements AutoCloseable {
  private static final int BLOCK = 1 << 19;

  /** How far back deflate can point. */
  private static final int WINDOW = 1 << 15;

  /** Where blocks go when there are more than one. */
  @FunctionalInterface
  interface Target {
    FileChannel open() throws IOException;
  }

  private final Target target;
  private final int threads = Runtime.getRuntime().availableProcessors();
  private final CRC32 crc = new CRC32();
  private final Deque<Future<byte[]>> packed = new ArrayDeque<>();
  private final Deque<byte[]> inUse = new ArrayDeque<>();
  private ExecutorService pool;
  private FileChannel to;
  private byte[] block = new byte[1 << 14];
  private byte[] window = new byte[0];
  private byte[] spare;
  private int used;
  private long size;
  private long compressedSize;

  PartPacker(Target target) {
    this.target = target;
  }

  void write(byte[] from, int offset, int length) throws IOException {
    int done = 0;
    while (done < length) {
      if (used == BLOCK) {
        send(false);
      }
      int count = Math.min(length - done, BLOCK - used);
      if (used + count > block.length) {
        block = Arrays.copyOf(block, Math.min(BLOCK, Math.max(used + count, 2 * block.length)));
      }
      System.arraycopy(from, offset + done, block, used, count);
      used += count;
      done += count;
    }
  }

  /** The packed bytes, when they were not put into the target. */
  Optional<byte[]> finish() throws IOException {
    if (pool == null) {
      crc.update(block, 0, used);
      size = used;
      byte[] only = deflate(block, used, window, true);
      compressedSize = only.length;
      return Optional.of(only);
    }
    send(true);
    while (!packed.isEmpty()) {
      writeFirst();
    }
    return Optional.empty();
  }

  private void send(boolean last) throws IOException {
    crc.update(block, 0, used);
    size += used;
    byte[] bytes = block;
    byte[] before = window;
    int length = used;
    if (pool == null) {
      to = target.open();
      pool =
          Executors.newFixedThreadPool(
              threads,
              task -> {
                Thread thread = new Thread(task, "pack");
                thread.setDaemon(true);
                return thread;
              });
    }
    if (packed.size() > threads) {
      writeFirst();
    }
    packed.add(pool.submit(() -> deflate(bytes, length, before, last)));
    inUse.add(bytes);
    window = Arrays.copyOfRange(bytes, Math.max(0, length - WINDOW), length);
    block = spare == null ? new byte[BLOCK] : spare;
    spare = null;
    used = 0;
  }

  private static byte[] deflate(byte[] bytes, int length, byte[] before, boolean last) {
    Deflater deflater = ZipEngines.deflater();
    try {
      if (before.length > 0) {
        deflater.setDictionary(before);
      }
      deflater.setInput(bytes, 0, length);
      if (last) {
        deflater.finish();
      }
      byte[] out = new byte[Math.max(1 << 10, length / 4)];
      int count = 0;
      while (true) {
        int flush = last ? Deflater.NO_FLUSH : Deflater.SYNC_FLUSH;
        count += deflater.deflate(out, count, out.length - count, flush);
        if (last ? deflater.finished() : count < out.length) {
          return Arrays.copyOf(out, count);
        }
        if (count == out.length) {
          out = Arrays.copyOf(out, 2 * out.length);
        }
      }
    } finally {
      ZipEngines.giveBack(deflater);
    }
  }

  private void writeFirst() throws IOException {
    try {
      ByteBuffer bytes = ByteBuffer.wrap(packed.remove().get());
      compressedSize += bytes.remaining();
      while (bytes.hasRemaining()) {
        to.write(bytes);
      }
      spare = inUse.remove();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw UnusableFileException.from(e, "run.interrupted");
    } catch (ExecutionException e) {
      throw UnusableFileException.from(e.getCause(), "packing", e.getCause());
    }
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
    if (pool != null) {
      pool.shutdownNow();
    }
  }
}
