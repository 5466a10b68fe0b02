package washbook.runner.archive;

import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import washbook.runner.file.UnusableFileException;

/**
 * The central directory of a zip archive (PKWARE APPNOTE 6.3.10, sections 4.3.12 to 4.3.16).
 *
 * @param parts in the order of their bytes
 * @param listed in the order of the directory
 * @param start where it begins
 * @param comment bytes behind the end record
 */
record Directory(
    List<Part> parts,
    List<Part> listed,
    long start,
    @SuppressWarnings("ArrayRecordComponent") byte[] comment) {
  static final int LOCAL_SIGNATURE = 0x04034b50;
  static final int RECORD_SIGNATURE = 0x02014b50;
  static final int END_SIGNATURE = 0x06054b50;
  static final int LOCAL_LENGTH = 30;
  static final int RECORD_LENGTH = 46;
  static final int END_LENGTH = 22;

  private static final int END64_SIGNATURE = 0x06064b50;
  private static final int LOCATOR64_SIGNATURE = 0x07064b50;
  private static final int MOST_PARTS = 50_000;
  private static final int MOST_BYTES = 64 << 20;

  static Directory read(ArchiveBytes source) throws IOException {
    long size = source.size();
    int tailLength = (int) Math.min(size, END_LENGTH + 0xFFFF + 20);
    ByteBuffer tail = bytes(source, size - tailLength, tailLength);
    for (int at = tailLength - END_LENGTH; at >= 0; at--) {
      if (tail.getInt(at) == END_SIGNATURE
          && at + END_LENGTH + ushort(tail, at + 20) <= tailLength) {
        return read(source, tail, at, size - tailLength + at);
      }
    }
    throw damaged("how.zipEnd");
  }

  private static Directory read(ArchiveBytes source, ByteBuffer tail, int at, long endStart)
      throws IOException {
    byte[] comment = new byte[ushort(tail, at + 20)];
    tail.get(at + END_LENGTH, comment);
    long count = ushort(tail, at + 10);
    long length = uint(tail, at + 12);
    long start = uint(tail, at + 16);
    if (at >= 20 && tail.getInt(at - 20) == LOCATOR64_SIGNATURE) {
      ByteBuffer end64 = bytes(source, tail.getLong(at - 12), 56);
      if (end64.getInt(0) != END64_SIGNATURE) {
        throw damaged("how.zipDirectory");
      }
      count = end64.getLong(32);
      length = end64.getLong(40);
      start = end64.getLong(48);
    }
    if (count < 0 || count > MOST_PARTS || length < 0 || length > MOST_BYTES) {
      throw UnusableFileException.of("zip.many");
    }
    if (start < 0 || start > endStart - length) {
      throw damaged("how.zipDirectory");
    }
    ByteBuffer records = bytes(source, start, (int) length);
    List<Part> listed = new ArrayList<>();
    try {
      for (long i = 0; i < count; i++) {
        listed.add(part(source, records, start));
      }
    } catch (IndexOutOfBoundsException | BufferUnderflowException e) {
      throw damaged("how.zipDirectory");
    }
    return arranged(listed, start, comment);
  }

  /** Gives every entry its end and refuses entries that reach into each other. */
  private static Directory arranged(List<Part> listed, long start, byte[] comment)
      throws UnusableFileException {
    List<Integer> inOrder = new ArrayList<>();
    for (int i = 0; i < listed.size(); i++) {
      inOrder.add(i);
    }
    inOrder.sort((a, b) -> Long.compare(listed.get(a).recordStart(), listed.get(b).recordStart()));
    List<Part> parts = new ArrayList<>();
    List<Part> ended = new ArrayList<>(listed);
    for (int i = 0; i < inOrder.size(); i++) {
      Part part = listed.get(inOrder.get(i));
      long end = i + 1 < inOrder.size() ? listed.get(inOrder.get(i + 1)).recordStart() : start;
      if (part.dataStart() + part.compressedSize() > end) {
        throw damaged("how.zipOverlap");
      }
      Part whole =
          new Part(
              part.name(),
              part.flags(),
              part.method(),
              part.compressedSize(),
              part.size(),
              part.crc32(),
              part.recordStart(),
              part.dataStart(),
              end,
              part.directoryRecord());
      parts.add(whole);
      ended.set(inOrder.get(i), whole);
    }
    return new Directory(List.copyOf(parts), List.copyOf(ended), start, comment);
  }

  private static Part part(ArchiveBytes source, ByteBuffer records, long directoryStart)
      throws IOException {
    int at = records.position();
    if (records.getInt(at) != RECORD_SIGNATURE) {
      throw damaged("how.zipDirectory");
    }
    int flags = ushort(records, at + 8);
    int nameLength = ushort(records, at + 28);
    int extraLength = ushort(records, at + 30);
    int length = RECORD_LENGTH + nameLength + extraLength + ushort(records, at + 32);
    byte[] record = new byte[length];
    records.get(record);
    Charset charset = (flags & 0x800) != 0 ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
    String name = new String(record, RECORD_LENGTH, nameLength, charset);
    long size = uint(records, at + 24);
    long compressedSize = uint(records, at + 20);
    long start = uint(records, at + 42);
    ByteBuffer wide = Extra.wide(record, RECORD_LENGTH + nameLength, extraLength);
    if (size == Extra.WIDE) {
      size = wide.getLong();
    }
    if (compressedSize == Extra.WIDE) {
      compressedSize = wide.getLong();
    }
    if (start == Extra.WIDE) {
      start = wide.getLong();
    }
    if (start < 0 || start > directoryStart - LOCAL_LENGTH || compressedSize < 0 || size < 0) {
      throw damaged("how.zipOutside", name);
    }
    ByteBuffer local = bytes(source, start, LOCAL_LENGTH);
    if (local.getInt(0) != LOCAL_SIGNATURE) {
      throw damaged("how.zipBroken", name);
    }
    long dataStart = start + LOCAL_LENGTH + ushort(local, 26) + ushort(local, 28);
    return new Part(
        name,
        flags,
        ushort(records, at + 10),
        compressedSize,
        size,
        uint(records, at + 16),
        start,
        dataStart,
        dataStart,
        record);
  }

  static ByteBuffer bytes(ArchiveBytes source, long position, int length) throws IOException {
    ByteBuffer buffer = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    if (position < 0) {
      throw damaged("how.zipDirectory");
    }
    int count = 0;
    while (count < length) {
      int got = source.read(buffer.array(), count, length - count, position + count);
      if (got < 0) {
        throw damaged("how.early");
      }
      count += got;
    }
    return buffer;
  }

  static int ushort(ByteBuffer buffer, int at) {
    return buffer.getShort(at) & 0xFFFF;
  }

  static long uint(ByteBuffer buffer, int at) {
    return buffer.getInt(at) & 0xFFFFFFFFL;
  }

  private static UnusableFileException damaged(String how, Object... arguments) {
    return UnusableFileException.damaged(null, how, arguments);
  }
}
