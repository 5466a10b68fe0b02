package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class JournalTest {
  @TempDir private Path folder;
  private Path place;
  private WorkItem item;
  private JsonElement report;

  @BeforeEach
  void oneFile() throws IOException {
    place = folder.resolve("notes/journal.jsonl");
    Path log = Files.writeString(folder.resolve("Plüm 3.xlsx"), "log");
    Path copy = Files.writeString(folder.resolve("Plüm 3.filled.xlsx"), "copy");
    item = new WorkItem(log, "Plüm 3.xlsx", copy, null);
    report = JsonParser.parseString("{\"status\":\"filled\",\"note\":\"5 °C\"}");
  }

  @Test
  void remembersAcrossRunsUntilFileOrResultChanges() throws IOException {
    note();
    assertEquals(Optional.of(report), ask("s"));
    assertEquals(Optional.of(report), ask("s"));
    Files.writeString(item.target(), "changed copy");
    assertEquals(Optional.empty(), ask("s"));
  }

  @Test
  void otherSettingsStartAnew() throws IOException {
    note();
    assertEquals(Optional.empty(), ask("other"));
    assertEquals(Optional.empty(), ask("s"));
  }

  @Test
  void aTornLastLineIsPassedOver() throws IOException {
    note();
    Files.writeString(place, "{\"path\":\"Plüm 3.xl", StandardOpenOption.APPEND);
    assertEquals(Optional.of(report), ask("s"));
    assertTrue(Files.readString(place).endsWith("}\n"));
  }

  @Test
  void withoutResumingEarlierEntriesAreDropped() throws IOException {
    note();
    try (Journal journal = Journal.open(place, "s", false)) {
      assertEquals(Optional.empty(), journal.done(item));
    }
  }

  private void note() throws IOException {
    try (Journal journal = Journal.open(place, "s", false)) {
      Journal.Note note = new Journal.Note(report, item.target());
      journal.note(item, FileStamp.of(item.file()), note);
    }
  }

  private Optional<JsonElement> ask(String settings) throws IOException {
    try (Journal journal = Journal.open(place, settings, true)) {
      return journal.done(item);
    }
  }
}
