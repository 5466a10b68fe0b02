package washbook.runner.run;

import com.google.gson.JsonElement;
import com.google.gson.JsonParseException;
import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.Writer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import washbook.runner.file.TempName;
import washbook.runner.report.Json;

/**
 * What has been done, one JSON line a file, so that a run can be taken up after an interruption and
 * unchanged files are left alone. A line torn by a crash counts as not written.
 */
public final class Journal implements Closeable {
  /** One line. {@code source} is the stamp of the read file after the work. */
  private record Entry(
      String path, FileStamp source, String target, FileStamp result, JsonElement report) {}

  /** The first line: entries under other settings do not count. */
  private record Head(String journal, String settings) {}

  /**
   * What is noted of a file.
   *
   * @param written the file that holds the result; null when there is none
   */
  public record Note(JsonElement report, Path written) {}

  /** Where a line stands in the file. */
  private record Place(long start, int length) {}

  private final Path file;
  private final Map<String, Place> places = new HashMap<>();
  private final RandomAccessFile lines;
  private final FileChannel lock;

  private Journal(Path file, FileChannel lock) throws IOException {
    this.file = file;
    this.lock = lock;
    this.lines = new RandomAccessFile(file.toFile(), "rw");
  }

  /**
   * Opens a journal.
   *
   * @param settings what the results depend on besides the files
   * @param resume whether earlier entries count; else they are dropped
   */
  public static Journal open(Path file, String settings, boolean resume) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    FileChannel lock = lock(file);
    try {
      Head head = new Head("washbook", settings);
      boolean kept = resume && Files.exists(file) && compact(file, head);
      if (!kept) {
        Files.writeString(file, Json.GSON.toJson(head) + "\n");
      }
      Journal journal = new Journal(file, lock);
      journal.index();
      return journal;
    } catch (IOException | RuntimeException failure) {
      lock.close();
      throw failure;
    }
  }

  /** Two runs must not write into one journal; the operating system frees it when a run dies. */
  private static FileChannel lock(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file.resolveSibling(file.getFileName() + ".lock"),
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE);
    FileLock held = null;
    try {
      held = channel.tryLock();
    } catch (OverlappingFileLockException ofThisProcess) {
      // The same as one of another process.
    }
    if (held == null) {
      channel.close();
      throw new IOException("'" + file + "' is in use by another run.");
    }
    return channel;
  }

  /** The earlier report on a file, when neither it nor its result has changed since. */
  synchronized Optional<JsonElement> done(WorkItem item) {
    Place place = places.get(item.shown());
    if (place == null) {
      return Optional.empty();
    }
    try {
      byte[] line = new byte[place.length()];
      lines.seek(place.start());
      lines.readFully(line);
      Entry entry = Json.GSON.fromJson(new String(line, StandardCharsets.UTF_8), Entry.class);
      boolean same =
          entry.path().equals(item.shown())
              && FileStamp.of(item.file()).equals(entry.source())
              && (entry.result() == null
                  || FileStamp.of(Path.of(entry.target())).equals(entry.result()));
      return same ? Optional.of(entry.report()) : Optional.empty();
    } catch (IOException | JsonParseException gone) {
      return Optional.empty();
    }
  }

  /** Notes a result. */
  synchronized void note(WorkItem item, FileStamp before, Note note) throws IOException {
    Path written = note.written();
    FileStamp after = written == null ? null : FileStamp.of(written);
    boolean inPlace = written != null && written.equals(item.file());
    Entry entry =
        new Entry(
            item.shown(),
            inPlace ? after : before,
            written == null ? null : written.toString(),
            after,
            note.report());
    byte[] line = (Json.GSON.toJson(entry) + "\n").getBytes(StandardCharsets.UTF_8);
    long start = lines.length();
    lines.seek(start);
    lines.write(line);
    places.put(item.shown(), new Place(start, line.length - 1));
  }

  @Override
  public synchronized void close() throws IOException {
    try (lock) {
      lines.getFD().sync();
      lines.close();
    }
  }

  private void index() throws IOException {
    long start = 0;
    try (BufferedReader reader = Files.newBufferedReader(file)) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        int length = line.getBytes(StandardCharsets.UTF_8).length;
        if (start > 0) {
          places.put(Json.GSON.fromJson(line, Entry.class).path(), new Place(start, length));
        }
        start += length + 1;
      }
    }
  }

  /** Rewrites a journal with each file's last whole line; false when it is of other settings. */
  private static boolean compact(Path file, Head head) throws IOException {
    Map<String, String> last = new HashMap<>();
    try (BufferedReader reader = Files.newBufferedReader(file)) {
      String first = reader.readLine();
      if (first == null || !head.equals(parse(first, Head.class))) {
        return false;
      }
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        Entry entry = parse(line, Entry.class);
        if (entry != null && entry.path() != null) {
          last.put(entry.path(), line);
        }
      }
    }
    Path fresh = TempName.beside(file);
    try (Writer writer = Files.newBufferedWriter(fresh, StandardOpenOption.CREATE_NEW)) {
      writer.write(Json.GSON.toJson(head) + "\n");
      for (String line : last.values()) {
        writer.write(line + "\n");
      }
    }
    Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
    return true;
  }

  private static <T> T parse(String line, Class<T> type) {
    try {
      return Json.GSON.fromJson(line, type);
    } catch (JsonParseException torn) {
      return null;
    }
  }
}
