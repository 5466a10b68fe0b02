package washbook.runner.archive;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.Inflater;
import washbook.runner.read.UnusableFileException;

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

  private final FileChannel channel;
  private final Directory directory;
  private final Map<String, Part> byName = new HashMap<>();
  private long unpacked;

  private Archive(FileChannel channel, Directory directory) throws UnusableFileException {
    this.channel = channel;
    this.directory = directory;
    for (Part part : directory.parts()) {
      if (byName.put(key(part.name()), part) != null) {
        throw new UnusableFileException(
            "The file holds two parts of the same name (" + part.name() + ").");
      }
    }
  }

  public static Archive open(Path file) throws IOException {
    FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
    try {
      return new Archive(channel, Directory.read(channel));
    } catch (IOException | RuntimeException e) {
      channel.close();
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
      throw new UnusableFileException("The file is encrypted (" + part.name() + ").");
    }
    if (part.method() != 0 && part.method() != 8) {
      throw new UnusableFileException(
          part.name() + " is packed by a method that is not supported (" + part.method() + ").");
    }
    if (part.size() > LARGE && part.size() / RATIO > part.compressedSize()) {
      throw new UnusableFileException(
          part.name() + " would grow out of proportion when unpacked: this is no honest workbook.");
    }
    count(part);
    InputStream stored =
        new ChannelStream(channel, part.dataStart(), part.dataStart() + part.compressedSize());
    if (part.method() == 0) {
      return new CheckedPartStream(part, stored, null);
    }
    return new CheckedPartStream(part, stored, new Inflater(true));
  }

  /** Many parts, each below the limit, or one part read as many sheets, are no better. */
  private void count(Part part) throws UnusableFileException {
    unpacked += part.size();
    boolean outOfProportion = unpacked > LARGE && unpacked / RATIO > Math.max(1, directory.start());
    if (outOfProportion || unpacked > MOST_UNPACKED || unpacked < 0) {
      throw new UnusableFileException(
          "Its parts would grow out of proportion when unpacked: this is no honest workbook.");
    }
  }

  /** The whole content of an entry that is expected to be small. */
  public byte[] bytes(Part part, int limit) throws IOException {
    if (part.size() > limit) {
      throw new UnusableFileException(part.name() + " is larger than any honest part of its kind.");
    }
    try (InputStream in = read(part)) {
      return in.readAllBytes();
    }
  }

  Directory directory() {
    return directory;
  }

  FileChannel channel() {
    return channel;
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }

  /** A stretch of the file as a stream. */
  private static final class ChannelStream extends InputStream {
    private final FileChannel channel;
    private final long end;
    private long position;

    ChannelStream(FileChannel channel, long start, long end) {
      this.channel = channel;
      this.position = start;
      this.end = end;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] to, int offset, int length) throws IOException {
      int wanted = (int) Math.min(length, end - position);
      if (wanted <= 0) {
        return length == 0 ? 0 : -1;
      }
      int got = channel.read(ByteBuffer.wrap(to, offset, wanted), position);
      if (got > 0) {
        position += got;
      }
      return got;
    }
  }
}
