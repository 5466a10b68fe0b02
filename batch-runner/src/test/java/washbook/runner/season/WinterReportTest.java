package washbook.runner.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.cli.Cli;

/** The winter's logs filled: the reports say of every batch what is true of it by construction. */
class WinterReportTest {
  @TempDir private Path folder;

  @Test
  void everyBatchOfTheWinterHasTheStateAndTheWarningsThatItWasMadeWith() throws Exception {
    Path logs = Files.createDirectory(folder.resolve("logs"));
    List<WinterBatch> truth = new Winter(LocalDate.now().minusDays(1)).write(logs);
    Path report = folder.resolve("report.json");
    Cli.run("fill", logs.toString(), "--dry-run", "--report", report.toString());
    JsonArray files =
        JsonParser.parseString(Files.readString(report)).getAsJsonObject().getAsJsonArray("files");
    assertEquals(Winter.LOGS, files.size());
    Map<String, JsonObject> found = new TreeMap<>();
    for (JsonElement file : files) {
      for (JsonElement batch : file.getAsJsonObject().getAsJsonArray("overview")) {
        found.put(batch.getAsJsonObject().get("batch").getAsString(), batch.getAsJsonObject());
      }
    }
    List<String> wrong = new ArrayList<>();
    for (WinterBatch batch : truth) {
      JsonObject is = found.get(batch.name());
      String state = is == null ? "missing" : is.get("state").getAsString();
      String wanted = batch.state().equals("not falling") ? "stuck" : batch.state();
      String warnings =
          is == null
              ? ""
              : StreamSupport.stream(is.getAsJsonArray("warnings").spliterator(), false)
                  .map(w -> w.getAsJsonObject().get("kind").getAsString())
                  .distinct()
                  .collect(Collectors.joining(", "));
      if (!state.equals(wanted) || !warnings.equals(KINDS.apply(batch.warning()))) {
        wrong.add(batch + " is " + state + ", " + warnings);
      } else {
        double latest = is.get("latestGravity").getAsDouble();
        // The winter is made with the correction of sugar alone; alcohol expands more.
        assertEquals(batch.gravity(batch.lastDay()), latest, 1e-3, batch.name());
        assertEquals(batch.original(), is.get("originalGravity").getAsDouble(), 2e-4, batch.name());
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(truth.size() > Winter.LOGS, truth.size() + " batches");
  }

  private static final Function<String, String> KINDS =
      word ->
          switch (word) {
            case "stuck" -> "STUCK";
            case "not falling" -> "NOT_FALLING";
            case "too warm" -> "TOO_WARM";
            case "reading overdue" -> "OVERDUE";
            default -> "";
          };
}
