package washbook.runner.archive;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;

/**
 * Writes an archive again with some entries changed, left out or added. The bytes of every other
 * entry, its header and its place in the order stay as they are. When nothing changes the copy is
 * the same file.
 */
public final class ArchiveCopy implements Closeable {
  /** The first day that an entry can have, 1 January 1980, so that equal content is equal bytes. */
  private static final short FIRST_DAY = 0x21;

  private final Path source;
  private final Archive archive;
  private final Map<Part, Packed> changed = new HashMap<>();
  private final Set<Part> leftOut = new HashSet<>();
  private final Map<Part, byte[]> records = new HashMap<>();
  private final Map<String, Packed> added = new LinkedHashMap<>();
  private FileChannel aside;

  /**
   * The new content of an entry, packed.
   *
   * @param bytes null when they were put aside
   * @param start where they were put aside
   */
  private record Packed(
      @SuppressWarnings("ArrayRecordComponent") byte[] bytes,
      long start,
      long compressedSize,
      long size,
      long crc32) {}

  /** {@code archive} must be open on {@code source}. */
  public ArchiveCopy(Path source, Archive archive) {
    this.source = source;
    this.archive = archive;
  }

  /** Gives an entry new content. */
  public interface Change {
    /**
     * Reads the old content and writes the new one; as long as both are the same it may call {@link
     * PartOutput#same} instead.
     */
    void apply(InputStream old, PartOutput to) throws IOException;
  }

  /** Packs the new content of an entry; true when it differs from the old. The last one counts. */
  public boolean change(Part part, Change change) throws IOException {
    changed.remove(part);
    try (PartPacker packer = new PartPacker(this::aside);
        InputStream old = archive.read(part)) {
      PartOutput out = new PartOutput(archive, part, packer);
      change.apply(old, out);
      if (!out.isStarted()) {
        return false;
      }
      changed.put(part, finish(packer));
      return true;
    }
  }

  public void leaveOut(Part part) {
    leftOut.add(part);
  }

  /** Adds an entry behind all others; its name is ASCII and no other entry's. */
  public void add(String name, byte[] content) throws IOException {
    try (PartPacker packer = new PartPacker(this::aside)) {
      packer.write(content, 0, content.length);
      added.put(name, finish(packer));
    }
  }

  private Packed finish(PartPacker packer) throws IOException {
    byte[] bytes = packer.finish().orElse(null);
    long start = bytes == null ? aside.position() - packer.compressedSize() : 0;
    return new Packed(bytes, start, packer.compressedSize(), packer.size(), packer.crc32());
  }

  /** Where a part too large for memory is put, behind those before it. */
  private FileChannel aside() throws IOException {
    if (aside == null) {
      aside =
          FileChannel.open(
              Files.createTempFile("washbook", ".part"),
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              StandardOpenOption.DELETE_ON_CLOSE);
    }
    return aside;
  }

  /** Writes the copy. */
  public void write(Path target) throws IOException {
    if (changed.isEmpty() && leftOut.isEmpty() && added.isEmpty()) {
      WrittenFile.copy(source, target);
      return;
    }
    try (ArchiveSink to = new ArchiveSink(target)) {
      long firstStart = archive.parts().get(0).recordStart();
      archive.source().copy(0, firstStart, to);
      for (Part part : archive.parts()) {
        Packed packed = changed.get(part);
        if (packed != null) {
          writeChanged(part, packed, to);
        } else if (!leftOut.contains(part)) {
          records.put(part, record(part, to.position()));
          archive.source().copy(part.recordStart(), part.recordEnd(), to);
        }
      }
      ByteArrayOutputStream addedRecords = new ByteArrayOutputStream();
      for (Map.Entry<String, Packed> entry : added.entrySet()) {
        addedRecords.writeBytes(writeAdded(entry.getKey(), entry.getValue(), to));
      }
      writeDirectory(to, addedRecords.toByteArray());
      to.flush();
    }
  }

  /** Writes a new entry and gives its bytes for the directory. */
  private byte[] writeAdded(String name, Packed packed, ArchiveSink to) throws IOException {
    byte[] ascii = name.getBytes(StandardCharsets.US_ASCII);
    long start = to.position();
    ByteBuffer header =
        ByteBuffer.allocate(Directory.LOCAL_LENGTH + ascii.length).order(ByteOrder.LITTLE_ENDIAN);
    header.putInt(0, Directory.LOCAL_SIGNATURE);
    header.putShort(12, FIRST_DAY);
    header.putShort(26, (short) ascii.length);
    describe(header, 4, packed);
    header.put(Directory.LOCAL_LENGTH, ascii);
    to.write(header);
    copyPacked(packed, to);
    ByteBuffer record =
        ByteBuffer.allocate(Directory.RECORD_LENGTH + ascii.length).order(ByteOrder.LITTLE_ENDIAN);
    record.putInt(0, Directory.RECORD_SIGNATURE);
    record.putShort(4, (short) 20);
    record.putShort(14, FIRST_DAY);
    record.putShort(28, (short) ascii.length);
    describe(record, 6, packed);
    record.putInt(42, narrow(start));
    record.put(Directory.RECORD_LENGTH, ascii);
    return record.array();
  }

  private void copyPacked(Packed packed, ArchiveSink to) throws IOException {
    if (packed.bytes() == null) {
      to.write(aside, packed.start(), packed.start() + packed.compressedSize());
    } else {
      to.write(packed.bytes(), 0, packed.bytes().length);
    }
  }

  /** The entry's bytes in the directory for a new place. */
  private static byte[] record(Part part, long start) throws UnusableFileException {
    byte[] bytes = part.directoryRecord().clone();
    ByteBuffer record = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    if (Directory.uint(record, 42) != Extra.WIDE) {
      record.putInt(42, narrow(start));
      return bytes;
    }
    ByteBuffer wide =
        Extra.wide(
            bytes,
            Directory.RECORD_LENGTH + Directory.ushort(record, 28),
            Directory.ushort(record, 30));
    int before =
        (Directory.uint(record, 24) == Extra.WIDE ? 8 : 0)
            + (Directory.uint(record, 20) == Extra.WIDE ? 8 : 0);
    wide.putLong(before, start);
    return bytes;
  }

  private void writeChanged(Part part, Packed packed, ArchiveSink to) throws IOException {
    long start = to.position();
    ByteBuffer old =
        Directory.bytes(
            archive.source(), part.recordStart(), (int) (part.dataStart() - part.recordStart()));
    int extraStart = Directory.LOCAL_LENGTH + Directory.ushort(old, 26);
    byte[] extra = Extra.withoutWide(old.array(), extraStart, Directory.ushort(old, 28));
    ByteBuffer header =
        ByteBuffer.allocate(extraStart + extra.length).order(ByteOrder.LITTLE_ENDIAN);
    header.put(old.array(), 0, extraStart).put(extra).flip();
    header.putShort(28, (short) extra.length);
    describe(header, 4, packed);
    to.write(header);
    copyPacked(packed, to);
    records.put(part, changedRecord(part, packed, start));
  }

  private static byte[] changedRecord(Part part, Packed packed, long start)
      throws UnusableFileException {
    byte[] old = part.directoryRecord();
    ByteBuffer oldRecord = ByteBuffer.wrap(old).order(ByteOrder.LITTLE_ENDIAN);
    int extraStart = Directory.RECORD_LENGTH + Directory.ushort(oldRecord, 28);
    int extraLength = Directory.ushort(oldRecord, 30);
    byte[] extra = Extra.withoutWide(old, extraStart, extraLength);
    ByteBuffer record =
        ByteBuffer.allocate(old.length - extraLength + extra.length).order(ByteOrder.LITTLE_ENDIAN);
    record.put(old, 0, extraStart).put(extra);
    int commentStart = extraStart + extraLength;
    record.put(old, commentStart, old.length - commentStart);
    record.putShort(30, (short) extra.length);
    describe(record, 6, packed);
    record.putInt(42, narrow(start));
    return record.array();
  }

  /** Sets the fields from "version needed" to "size": the same in both kinds of header. */
  private static void describe(ByteBuffer header, int at, Packed packed)
      throws UnusableFileException {
    int keptFlags = Directory.ushort(header, at + 2) & 0x800;
    header.putShort(at, (short) 20);
    header.putShort(at + 2, (short) keptFlags);
    header.putShort(at + 4, (short) 8);
    header.putInt(at + 10, (int) packed.crc32());
    header.putInt(at + 14, narrow(packed.compressedSize()));
    header.putInt(at + 18, narrow(packed.size()));
  }

  private static int narrow(long value) throws UnusableFileException {
    if (value >= Extra.WIDE) {
      throw UnusableFileException.of("zip.wide");
    }
    return (int) value;
  }

  private void writeDirectory(ArchiveSink to, byte[] addedRecords) throws IOException {
    long start = to.position();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    int count = 0;
    for (Part part : archive.directory().listed()) {
      if (!leftOut.contains(part)) {
        bytes.writeBytes(records.get(part));
        count++;
      }
    }
    bytes.writeBytes(addedRecords);
    count += added.size();
    ByteBuffer end =
        ByteBuffer.allocate(Directory.END_LENGTH + archive.directory().comment().length)
            .order(ByteOrder.LITTLE_ENDIAN);
    end.putInt(Directory.END_SIGNATURE).putInt(0);
    end.putShort((short) count).putShort((short) count);
    end.putInt(bytes.size()).putInt(narrow(start));
    end.putShort((short) archive.directory().comment().length);
    end.put(archive.directory().comment()).flip();
    to.write(ByteBuffer.wrap(bytes.toByteArray()));
    to.write(end);
  }

  @Override
  public void close() throws IOException {
    if (aside != null) {
      aside.close();
    }
  }
}
