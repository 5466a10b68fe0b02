package washbook.runner.season;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import washbook.functions.SafetyNote;
import washbook.runner.file.WrittenFile;
import washbook.runner.report.Json;

/** The season for programs: {"season":[...],"left":[...],"safety":"..."}. */
final class SeasonJson {
  private SeasonJson() {}

  static void write(Season season, Path to) throws IOException {
    JsonObject whole = new JsonObject();
    JsonArray batches = new JsonArray();
    for (SeasonRow row : season.rows()) {
      JsonObject batch = new JsonObject();
      batch.addProperty("file", row.line().file());
      JsonObject overview = Json.GSON.toJsonTree(row.line().batch()).getAsJsonObject();
      overview.entrySet().forEach(entry -> batch.add(entry.getKey(), entry.getValue()));
      JsonElement curve = Json.GSON.toJsonTree(row.curve());
      batch.add("curve", curve);
      batches.add(batch);
    }
    whole.add("season", batches);
    whole.add("left", Json.GSON.toJsonTree(season.left()));
    whole.addProperty("safety", SafetyNote.text());
    try (Writer out = new OutputStreamWriter(WrittenFile.stream(to), StandardCharsets.UTF_8)) {
      JsonWriter json = new JsonWriter(out);
      json.setIndent(" ");
      json.setHtmlSafe(false);
      Json.GSON.toJson(whole, json);
      json.flush();
      out.write("\n");
    }
  }
}
