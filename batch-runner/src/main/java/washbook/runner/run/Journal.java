package washbook.runner.run;

import com.google.gson.JsonElement;
import com.google.gson.JsonParseException;
import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.language.Told;
import washbook.runner.file.LeftBehind;
import washbook.runner.file.ToldFileException;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;
import washbook.runner.report.Json;

/**
 * What has been done, one line a file, so that a run can be taken up after an interruption and
 * unchanged files are left alone. A line that is torn or not ours counts as not written.
 */
public final class Journal implements Closeable {
  /**
   * One line. {@code source} is the stamp of the read file after the work, {@code map} of the map
   * beside it.
   */
  private record Entry(
      String path,
      FileStamp source,
      FileStamp map,
      String target,
      FileStamp result,
      JsonElement report) {}

  /** The first line: entries under other settings do not count. */
  private record Head(String journal, String settings) {}

  /** How it is told where it is torn. */
  private static final String HEAD_BEGINS = "{\"journal\":\"washbook\"";

  /**
   * What is noted of a file.
   *
   * @param written the file that holds the result; null when there is none
   */
  public record Note(JsonElement report, Path written) {}

  /** Another run writes this journal. */
  public static final class InUse extends IOException implements Told {
    private static final long serialVersionUID = 1L;

    private final transient Message told;

    InUse(Path file) {
      this(UnusableFileException.message("journal.inUse", UnusableFileException.quoted(file)));
    }

    private InUse(Message told) {
      super(told.in(Language.EN));
      this.told = told;
    }

    @Override
    public Message told() {
      return told;
    }
  }

  /** Where a line stands in the file. */
  private record Place(long start, int length) {}

  private final Path file;
  private final Map<String, Place> places = new HashMap<>();
  private final RandomAccessFile lines;
  private final FileChannel lock;
  private int unreadable;

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
    if (!mayReplace(file) && !JournalPlace.isOurs(file)) {
      throw UnusableFileException.of("journal.foreign", UnusableFileException.quoted(file));
    }
    Path folder = file.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    LeftBehind.clear(folder);
    FileChannel lock = lock(file);
    try {
      Head head = new Head("washbook", settings);
      Map<String, byte[]> kept = new LinkedHashMap<>();
      int unreadable = resume && Files.exists(file) ? read(file, head, kept) : 0;
      write(file, head, kept);
      Journal journal = new Journal(file, lock);
      journal.unreadable = unreadable;
      journal.index(head, kept);
      JournalPlace.removeOld(file);
      return journal;
    } catch (InUse | FileSystemException known) {
      lock.close();
      throw known;
    } catch (IOException unnamed) {
      lock.close();
      throw unnamed instanceof Told told
          ? new ToldFileException(file, told.told())
          : new FileSystemException(file.toString(), null, unnamed.getMessage());
    } catch (RuntimeException failure) {
      lock.close();
      throw failure;
    }
  }

  static void removeUnlessUsed(Path file) throws IOException {
    try (FileChannel held = lock(file)) {
      Files.deleteIfExists(file);
      Files.deleteIfExists(file.resolveSibling(file.getFileName() + ".lock"));
    } catch (InUse living) {
      // It stays.
    }
  }

  /** Whether a file of this name can be used: there is none, or it is a journal of ours. */
  public static boolean mayReplace(Path file) {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
      byte[] first = JournalLine.next(in);
      if (first == null || JournalLine.isBlank(first)) {
        return true;
      }
      String text = JournalLine.text(first);
      Head head =
          parse(text != null ? text : new String(first, StandardCharsets.UTF_8), Head.class);
      return (head != null && "washbook".equals(head.journal()))
          || JournalLine.isTorn(first, HEAD_BEGINS);
    } catch (IOException unreadable) {
      return false;
    }
  }

  /** How many lines of the earlier run could not be used; their files are done again. */
  public int unreadable() {
    return unreadable;
  }

  public Path file() {
    return file;
  }

  /** Two runs must not write into one journal; the operating system frees it when a run dies. */
  private static FileChannel lock(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file.resolveSibling(file.getFileName() + ".lock"),
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS);
    FileLock held = null;
    try {
      held = channel.tryLock();
    } catch (OverlappingFileLockException ofThisProcess) {
      // The same as one of another process.
    }
    if (held == null) {
      channel.close();
      throw new InUse(file);
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
      Entry entry = parse(JournalLine.text(line), Entry.class);
      boolean same =
          entry != null
              && entry.path().equals(item.shown())
              && FileStamp.WithMap.of(item.file())
                  .equals(new FileStamp.WithMap(entry.source(), entry.map()))
              && (entry.result() == null
                  || FileStamp.of(Path.of(entry.target())).equals(entry.result()));
      return same ? Optional.of(entry.report()) : Optional.empty();
    } catch (IOException gone) {
      return Optional.empty();
    }
  }

  /**
   * Notes a result; {@link #force} puts it on the disk.
   *
   * @param after the stamp of the file with the result; null when there is none
   */
  synchronized void note(WorkItem item, FileStamp.WithMap before, Note note, FileStamp after)
      throws IOException {
    Path written = note.written();
    boolean inPlace = written != null && written.equals(item.file());
    Entry entry =
        new Entry(
            item.shown(),
            inPlace ? after : before.file(),
            before.map(),
            written == null ? null : written.toString(),
            after,
            note.report());
    byte[] line = JournalLine.of(Json.GSON.toJson(entry));
    long start = lines.length();
    try {
      lines.seek(start);
      lines.write(line);
    } catch (IOException full) {
      lines.setLength(start);
      throw full;
    }
    places.put(item.shown(), new Place(start, line.length - 1));
  }

  synchronized void force() throws IOException {
    lines.getChannel().force(false);
  }

  @Override
  public synchronized void close() throws IOException {
    try (lock) {
      lines.getChannel().force(false);
      lines.close();
    }
  }

  private void index(Head head, Map<String, byte[]> kept) {
    long start = JournalLine.of(Json.GSON.toJson(head)).length;
    for (Map.Entry<String, byte[]> line : kept.entrySet()) {
      int length = line.getValue().length;
      places.put(line.getKey(), new Place(start, length));
      start += length + 1;
    }
  }

  /** Takes each file's last whole line; returns how many lines are none. */
  private static int read(Path file, Head head, Map<String, byte[]> kept) throws IOException {
    int unreadable = 0;
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
      byte[] first = JournalLine.next(in);
      if (first == null || !head.equals(parse(JournalLine.text(first), Head.class))) {
        return first != null && JournalLine.isTorn(first, HEAD_BEGINS) ? 1 : 0;
      }
      for (byte[] line = JournalLine.next(in); line != null; line = JournalLine.next(in)) {
        Entry entry = parse(JournalLine.text(line), Entry.class);
        if (entry == null || entry.path() == null || entry.report() == null) {
          unreadable++;
        } else {
          kept.put(entry.path(), line);
        }
      }
    }
    return unreadable;
  }

  /** Puts a journal with these lines in the place of the earlier one. */
  private static void write(Path file, Head head, Map<String, byte[]> kept) throws IOException {
    try (UnfinishedFile fresh = UnfinishedFile.beside(file)) {
      try (OutputStream out = WrittenFile.stream(fresh.path())) {
        out.write(JournalLine.of(Json.GSON.toJson(head)));
        for (byte[] line : kept.values()) {
          out.write(line);
          out.write('\n');
        }
      }
      fresh.force();
      fresh.place();
      fresh.forceFolder();
    }
  }

  private static <T> T parse(String json, Class<T> type) {
    try {
      return json == null ? null : Json.GSON.fromJson(json, type);
    } catch (JsonParseException alien) {
      return null;
    }
  }
}
