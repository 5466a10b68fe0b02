package washbook.runner.archive;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * Inflaters and deflaters to be used again: making one clears more memory than a small part has.
 */
final class ZipEngines {
  private static final int LEVEL = 4;
  private static final int KEPT = 8;

  private static final BlockingQueue<Inflater> INFLATERS = new ArrayBlockingQueue<>(KEPT);
  private static final BlockingQueue<Deflater> DEFLATERS = new ArrayBlockingQueue<>(KEPT);

  private ZipEngines() {}

  static Inflater inflater() {
    Inflater kept = INFLATERS.poll();
    return kept == null ? new Inflater(true) : kept;
  }

  /** Nobody may use it afterwards. */
  static void giveBack(Inflater inflater) {
    inflater.reset();
    if (!INFLATERS.offer(inflater)) {
      inflater.end();
    }
  }

  static Deflater deflater() {
    Deflater kept = DEFLATERS.poll();
    return kept == null ? new Deflater(LEVEL, true) : kept;
  }

  /** Nobody may use it afterwards. */
  static void giveBack(Deflater deflater) {
    deflater.reset();
    if (!DEFLATERS.offer(deflater)) {
      deflater.end();
    }
  }
}
