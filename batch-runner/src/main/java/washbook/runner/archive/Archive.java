package washbook.runner.archive;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import washbook.runner.file.UnusableFileException;

/**
 * A zip archive (PKWARE APPNOTE 6.3.10) open for reading, with every byte of an entry within reach
 * so that a copy can keep it. Refused: two entries of the same name, overlapping entries, and
 * entries that inflate out of proportion, alone or together.
 */
public final class Archive implements Closeable {
  /** An entry larger than this is refused when it is more than RATIO times its stored size. */
  private static final long LARGE = 64L << 20;

  private static final int RATIO = 300;

  /** No more than this is unpacked of one file, whatever its size. */
  private static final long MOST_UNPACKED = 16L << 30;

  private final ArchiveBytes bytes;
  private final Directory directory;
  private final Map<String, Part> byName = new HashMap<>();
  private long unpacked;

  private Archive(ArchiveBytes bytes, Directory directory) throws UnusableFileException {
    this.bytes = bytes;
    this.directory = directory;
    for (Part part : directory.parts()) {
      if (byName.put(key(part.name()), part) != null) {
        throw UnusableFileException.of("zip.twice", part.name());
      }
    }
  }

  public static Archive open(Path file) throws IOException {
    ArchiveBytes bytes = ArchiveBytes.open(file);
    try {
      return new Archive(bytes, Directory.read(bytes));
    } catch (IOException | RuntimeException e) {
      bytes.close();
      throw e;
    }
  }

  /** All entries in the order of their bytes. */
  public List<Part> parts() {
    return directory.parts();
  }

  /** The entry of that name; case and a leading "/" do not matter. */
  public Optional<Part> find(String name) {
    return Optional.ofNullable(byName.get(key(name)));
  }

  private static String key(String name) {
    String key = name.replace('\\', '/').toLowerCase(Locale.ROOT);
    return key.startsWith("/") ? key.substring(1) : key;
  }

  /** The entry's content; its length and check sum are proven when the end is reached. */
  public InputStream read(Part part) throws UnusableFileException {
    if (part.isEncrypted()) {
      throw UnusableFileException.of("zip.encrypted", part.name());
    }
    if (part.method() != 0 && part.method() != 8) {
      throw UnusableFileException.of("zip.method", part.name(), part.method());
    }
    if (part.size() > LARGE && part.size() / RATIO > part.compressedSize()) {
      throw UnusableFileException.of("zip.grows", part.name());
    }
    count(part);
    InputStream stored = bytes.stream(part.dataStart(), part.dataStart() + part.compressedSize());
    if (part.method() == 0) {
      return new CheckedPartStream(part, stored, null);
    }
    return new CheckedPartStream(part, stored, ZipEngines.inflater());
  }

  /** Many parts, each below the limit, or one part read as many sheets, are no better. */
  private void count(Part part) throws UnusableFileException {
    unpacked += part.size();
    boolean outOfProportion = unpacked > LARGE && unpacked / RATIO > Math.max(1, directory.start());
    if (outOfProportion || unpacked > MOST_UNPACKED || unpacked < 0) {
      throw UnusableFileException.of("zip.allGrow");
    }
  }

  /** The whole content of an entry that is expected to be small. */
  public byte[] bytes(Part part, int limit) throws IOException {
    if (part.size() > limit) {
      throw UnusableFileException.of("zip.part", part.name());
    }
    try (InputStream in = read(part)) {
      return in.readAllBytes();
    }
  }

  Directory directory() {
    return directory;
  }

  ArchiveBytes source() {
    return bytes;
  }

  @Override
  public void close() throws IOException {
    bytes.close();
  }
}
