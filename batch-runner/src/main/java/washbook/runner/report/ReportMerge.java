package washbook.runner.report;

import com.google.gson.JsonParseException;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** Joins reports that are each in the order of paths, holding one entry of each at a time. */
public final class ReportMerge {
  private ReportMerge() {}

  /**
   * Writes the joined report.
   *
   * @return "" or why it was not written
   */
  public static String merge(List<Path> reports, Path out) throws IOException {
    List<Source> sources = new ArrayList<>();
    try {
      PriorityQueue<Source> next = new PriorityQueue<>(Comparator.comparing(Source::path));
      for (Path report : reports) {
        Source source = new Source(report);
        sources.add(source);
        if (source.advance()) {
          next.add(source);
        }
      }
      return join(next, out);
    } catch (UnreadableReport unreadable) {
      return unreadable.getMessage();
    } finally {
      for (Source source : sources) {
        source.close();
      }
    }
  }

  private static String join(PriorityQueue<Source> next, Path out) throws IOException {
    try (ReportWriter<FileResult> writer = Reports.open(out)) {
      String last = null;
      while (!next.isEmpty()) {
        Source source = next.remove();
        if (source.path().equals(last)) {
          return "'" + last + "' is in more than one report; nothing was written.";
        }
        last = source.path();
        writer.add(FileResult.of(source.entry));
        if (source.advance()) {
          next.add(source);
        }
      }
      writer.finish();
      return "";
    }
  }

  private static final class UnreadableReport extends IOException {
    private static final long serialVersionUID = 1L;

    UnreadableReport(Path file, Exception cause) {
      super("'" + file + "' is no JSON report of this program; nothing was written.", cause);
    }
  }

  private static final class Source implements Closeable {
    private final Path file;
    private final JsonReader json;
    private FileReport entry;

    Source(Path file) throws IOException {
      this.file = file;
      json = new JsonReader(Files.newBufferedReader(file));
      try {
        json.beginObject();
        if (!json.nextName().equals("files")) {
          throw new IllegalStateException("no files");
        }
        json.beginArray();
      } catch (IOException | IllegalStateException other) {
        throw new UnreadableReport(file, other);
      }
    }

    String path() {
      return entry.path();
    }

    boolean advance() throws IOException {
      try {
        if (json.peek() == JsonToken.END_ARRAY) {
          return false;
        }
        entry = Json.GSON.fromJson(json, FileReport.class);
        if (entry == null || entry.path() == null || entry.status() == null) {
          throw new IllegalStateException("no entry");
        }
        return true;
      } catch (IOException | IllegalStateException | JsonParseException other) {
        throw new UnreadableReport(file, other);
      }
    }

    @Override
    public void close() throws IOException {
      json.close();
    }
  }
}
