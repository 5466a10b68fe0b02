package washbook.runner.archive;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Extra fields of a zip entry (PKWARE APPNOTE 6.3.10, section 4.5). */
final class Extra {
  /** Stands in a 32 bit field whose value is in the wide (Zip64) field. */
  static final long WIDE = 0xFFFFFFFFL;

  private static final int WIDE_ID = 1;

  private Extra() {}

  /** The values of the wide field; empty when there is none. */
  static ByteBuffer wide(byte[] record, int start, int length) {
    ByteBuffer all = ByteBuffer.wrap(record, start, length).order(ByteOrder.LITTLE_ENDIAN);
    while (all.remaining() >= 4) {
      int id = all.getShort() & 0xFFFF;
      int size = Math.min(all.getShort() & 0xFFFF, all.remaining());
      if (id == WIDE_ID) {
        return all.slice(all.position(), size).order(ByteOrder.LITTLE_ENDIAN);
      }
      all.position(all.position() + size);
    }
    return ByteBuffer.allocate(0);
  }

  /** The fields without the wide one. */
  static byte[] withoutWide(byte[] record, int start, int length) {
    ByteBuffer all = ByteBuffer.wrap(record, start, length).order(ByteOrder.LITTLE_ENDIAN);
    ByteArrayOutputStream kept = new ByteArrayOutputStream();
    while (all.remaining() >= 4) {
      int at = all.position();
      int id = all.getShort() & 0xFFFF;
      int size = Math.min(all.getShort() & 0xFFFF, all.remaining());
      all.position(all.position() + size);
      if (id != WIDE_ID) {
        kept.write(record, at, 4 + size);
      }
    }
    kept.write(record, all.position(), all.remaining());
    return kept.toByteArray();
  }
}
