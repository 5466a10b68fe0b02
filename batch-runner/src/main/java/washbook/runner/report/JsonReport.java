package washbook.runner.report;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.nio.file.Path;
import washbook.functions.SafetyNote;

/** The report for programs: {@code {"files":[...],"safety":"..."}}; its shape is frozen. */
final class JsonReport implements ReportWriter {
  private final PendingFile file;
  private final JsonWriter json;

  JsonReport(Path target) throws IOException {
    file = new PendingFile(target);
    json = new JsonWriter(file.writer());
    json.setIndent(" ");
    json.setSerializeNulls(true);
    json.setHtmlSafe(false);
    json.beginObject().name("files").beginArray();
  }

  @Override
  public void add(FileResult result) {
    Json.GSON.toJson(result.report(), FileReport.class, json);
  }

  @Override
  public void finish() throws IOException {
    json.endArray().name("safety").value(SafetyNote.text()).endObject();
    json.flush();
    file.writer().write("\n");
    file.finish();
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
