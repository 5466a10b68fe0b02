package washbook.runner.report;

import com.google.gson.JsonIOException;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.function.Function;
import java.util.function.Supplier;
import washbook.functions.SafetyNote;

/**
 * The report for programs: {@code {"files":[...],"safety":"..."}}, for a part of a job with {@code
 * "part":"2/8"}; its shape is frozen.
 *
 * @param <R> a file's result
 */
final class JsonReport<R> implements ReportWriter<R> {
  /** Under this stands of which part of a job it tells, so that a joining misses none. */
  static final String PART = "part";

  private final PendingFile file;
  private final JsonWriter json;
  private final String part;
  private final Function<R, Object> entry;
  private final Supplier<Object> total;

  /**
   * @param entry the record that stands for a result
   */
  JsonReport(ReportPlace target, Function<R, Object> entry) throws IOException {
    this(target, entry, null);
  }

  /**
   * @param total what stands under "total" behind all files, asked for at the end; null for nothing
   */
  JsonReport(ReportPlace target, Function<R, Object> entry, Supplier<Object> total)
      throws IOException {
    this.entry = entry;
    this.total = total;
    part = target.part();
    file = new PendingFile(target);
    json = new JsonWriter(file.writer());
    json.setIndent(" ");
    json.setSerializeNulls(true);
    json.setHtmlSafe(false);
    json.beginObject().name("files").beginArray();
  }

  @Override
  public void add(R result) throws IOException {
    Object record = entry.apply(result);
    try {
      Json.GSON.toJson(record, record.getClass(), json);
    } catch (JsonIOException failure) {
      throw failure.getCause() instanceof IOException cause ? cause : new IOException(failure);
    }
  }

  @Override
  public void finish() throws IOException {
    json.endArray();
    if (total != null) {
      Object record = total.get();
      json.name("total");
      Json.GSON.toJson(record, record.getClass(), json);
    }
    if (!part.isEmpty()) {
      json.name(PART).value(part);
    }
    json.name("safety").value(SafetyNote.text()).endObject();
    json.flush();
    file.writer().write("\n");
    file.finish();
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
