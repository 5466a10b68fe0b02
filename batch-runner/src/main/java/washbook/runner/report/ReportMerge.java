package washbook.runner.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import washbook.log.language.Message;
import washbook.runner.file.UnusableFileException;
import washbook.runner.language.Wording;

/** Joins reports that are each in the order of paths, holding one entry of each at a time. */
public final class ReportMerge {
  private static final int MOST_TOLD = 20;

  private ReportMerge() {}

  /**
   * Writes the joined report.
   *
   * @param overwrites whether a plain file that is no report may be replaced
   * @param words for whom what is not quoted from the reports is written
   * @return "" or why it was not written, or which parts it lacks
   */
  public static String merge(List<Path> reports, Path out, boolean overwrites, Wording words)
      throws IOException {
    ReportPlace place = ReportPlace.about(out, reports).overwriting(overwrites);
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
      if (!next.isEmpty() && next.peek().isAudit()) {
        join(next, Reports.openAudit(place, words), source -> source.read(AuditReport.class));
      } else {
        join(
            next,
            Reports.open(place, words),
            source -> FileResult.of(source.read(FileReport.class)));
      }
      String missing = missing(sources);
      return missing.isEmpty()
          ? ""
          : words.say(UnusableFileException.message("report.missing", missing));
    } catch (UnreadableReport unreadable) {
      return words.say(unreadable.told);
    } finally {
      for (Source source : sources) {
        source.close();
      }
    }
  }

  private interface Entry<R> {
    R of(Source source) throws IOException;
  }

  /**
   * The parts that are in none of the reports, of a job that was done in parts; "" for none, and
   * where a report does not say what it is of, as one that was joined before.
   */
  private static String missing(List<Source> sources) {
    Set<String> there = new LinkedHashSet<>();
    for (Source source : sources) {
      there.add(source.part());
    }
    if (there.contains("")) {
      return "";
    }
    return there.stream()
        .map(part -> part.substring(part.indexOf('/')))
        .distinct()
        .flatMap(
            of ->
                IntStream.rangeClosed(1, Integer.parseInt(of.substring(1)))
                    .mapToObj(number -> number + of))
        .filter(part -> !there.contains(part))
        .limit(MOST_TOLD)
        .collect(Collectors.joining(", "));
  }

  private static <R> void join(PriorityQueue<Source> next, ReportWriter<R> report, Entry<R> entry)
      throws IOException {
    try (ReportWriter<R> writer = report) {
      String last = null;
      while (!next.isEmpty()) {
        Source source = next.remove();
        R result;
        try {
          result = entry.of(source);
        } catch (RuntimeException alien) {
          throw new UnreadableReport(source.file, alien);
        }
        if (source.path().equals(last)) {
          throw new UnreadableReport("report.twice", last, null);
        }
        last = source.path();
        try {
          writer.add(result);
        } catch (RuntimeException alien) {
          throw new UnreadableReport(source.file, alien);
        }
        if (source.advance()) {
          next.add(source);
        }
      }
      writer.finish();
    }
  }

  private static final class UnreadableReport extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient Message told;

    UnreadableReport(Path file, Exception cause) {
      this("report.none", file, cause);
    }

    UnreadableReport(String key, Object of, Exception cause) {
      super(cause);
      told = UnusableFileException.message(key, UnusableFileException.quoted(of));
    }
  }

  private static final class Source implements Closeable {
    private final Path file;
    private final JsonReader json;
    private JsonObject entry;

    Source(Path file) throws IOException {
      this.file = file;
      json = new JsonReader(Files.newBufferedReader(file));
      try {
        json.beginObject();
        if (!json.nextName().equals("files")) {
          throw new IllegalStateException("no files");
        }
        json.beginArray();
      } catch (IOException | RuntimeException other) {
        throw new UnreadableReport(file, other);
      }
    }

    String path() {
      return entry.get("path").getAsString();
    }

    boolean isAudit() {
      return entry.has("columns");
    }

    /** The entry as a report of one command. */
    <E> E read(Class<E> type) throws UnreadableReport {
      boolean audit = type == AuditReport.class;
      if (isAudit() != audit) {
        throw new UnreadableReport("report.other", file, null);
      }
      try {
        Class<?> words = audit ? AuditReport.Status.class : FileReport.Status.class;
        if (Json.GSON.fromJson(entry.get("status"), words) == null) {
          throw new IllegalStateException("no status");
        }
        return Json.GSON.fromJson(entry, type);
      } catch (RuntimeException other) {
        throw new UnreadableReport(file, other);
      }
    }

    boolean advance() throws IOException {
      try {
        if (json.peek() == JsonToken.END_ARRAY) {
          return false;
        }
        entry = Json.GSON.fromJson(json, JsonObject.class);
        boolean whole = entry != null && isText("path") && isText("status");
        if (!whole || !(isList("tables") || isList("columns")) || !isList("refusals")) {
          throw new IllegalStateException("no entry");
        }
        return true;
      } catch (IOException | RuntimeException other) {
        throw new UnreadableReport(file, other);
      }
    }

    /** The part that it tells of, behind its files; "" for the whole of a job. */
    String part() {
      try {
        json.endArray();
        while (json.hasNext()) {
          if (json.nextName().equals(JsonReport.PART)) {
            String part = json.nextString();
            return part.matches("[1-9]\\d{0,5}/[1-9]\\d{0,5}") ? part : "";
          }
          json.skipValue();
        }
        return "";
      } catch (IOException | RuntimeException cutOff) {
        return "";
      }
    }

    private boolean isText(String name) {
      return entry.get(name) instanceof JsonPrimitive text && text.isString();
    }

    private boolean isList(String name) {
      return entry.get(name) instanceof JsonArray;
    }

    @Override
    public void close() throws IOException {
      json.close();
    }
  }
}
