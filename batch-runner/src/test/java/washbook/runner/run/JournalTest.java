package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
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
  void aJournalCutAnywhereOpensAndForgetsNoWholeLine() throws IOException {
    note();
    byte[] whole = Files.readAllBytes(place);
    String text = Files.readString(place);
    int head = text.substring(0, text.indexOf('\n') + 1).getBytes(StandardCharsets.UTF_8).length;
    for (int cut = head; cut < whole.length; cut++) {
      Files.write(place, Arrays.copyOf(whole, cut));
      assertEquals(cut == whole.length - 1, ask("s").isPresent(), "cut at " + cut);
    }
  }

  /** All is done again, and that is said. */
  @Test
  void aJournalCutInItsFirstLineOpensToo() throws IOException {
    note();
    byte[] whole = Files.readAllBytes(place);
    int head = Files.readString(place).indexOf('\n');
    for (int cut = 10; cut < head; cut++) {
      Files.write(place, Arrays.copyOf(whole, cut));
      try (Journal journal = Journal.open(place, "s", true)) {
        assertEquals(Optional.empty(), journal.done(item), "cut at " + cut);
        assertEquals(1, journal.unreadable(), "cut at " + cut);
      }
      assertTrue(ask("s").isEmpty());
    }
  }

  @Test
  void aLineWithAnotherByteIsDoneAgainAndSaid() throws IOException {
    note();
    byte[] whole = Files.readAllBytes(place);
    for (int i = whole.length - 2; whole[i] != '\n'; i--) {
      byte[] torn = whole.clone();
      torn[i] ^= 1;
      Files.write(place, torn);
      try (Journal journal = Journal.open(place, "s", true)) {
        assertEquals(Optional.empty(), journal.done(item), "byte " + i);
        assertTrue(journal.unreadable() > 0, "byte " + i);
      }
    }
  }

  @Test
  void zerosThatALossOfPowerLeavesAreALineThatIsNone() throws IOException {
    Files.createDirectories(place.getParent());
    Files.write(place, new byte[4096]);
    assertEquals(Optional.empty(), ask("s"));
    note();
    Files.write(place, new byte[512], StandardOpenOption.APPEND);
    assertEquals(Optional.of(report), ask("s"));
  }

  @Test
  void oldJournalsAreRemovedFromOurOwnFolderUnlessARunHasThem() throws IOException {
    Path ours = JournalPlace.of("watch", "0123456789abcdef", System.getenv());
    Path old = ours.resolveSibling("fill-00000000000000aa.jsonl");
    Path used = ours.resolveSibling("fill-00000000000000bb.jsonl");
    Files.createDirectories(ours.getParent());
    Files.writeString(ours, "torn to the first line");
    try (Journal living = Journal.open(used, "s", true)) {
      Files.writeString(old, "");
      for (Path file : List.of(old, living.file())) {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(Duration.ofDays(200))));
      }
      Journal.open(ours, "s", true).close();
      assertFalse(Files.exists(old));
      assertTrue(Files.exists(used));
    }
    Files.delete(used);
    Files.delete(ours);
  }

  @Test
  void aFileThatIsNoJournalIsLeftAsItIs() throws IOException {
    Path mine = Files.writeString(folder.resolve("mine.jsonl"), "{\"mine\":1}\n");
    Path link = Files.createSymbolicLink(folder.resolve("link.jsonl"), mine);
    for (Path taken : List.of(mine, link, folder)) {
      assertThrows(IOException.class, () -> Journal.open(taken, "s", true));
      assertThrows(IOException.class, () -> Journal.open(taken, "s", false));
    }
    assertEquals("{\"mine\":1}\n", Files.readString(mine));
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
      journal.note(item, FileStamp.WithMap.of(item.file()), note, FileStamp.of(item.target()));
    }
  }

  private Optional<JsonElement> ask(String settings) throws IOException {
    try (Journal journal = Journal.open(place, settings, true)) {
      return journal.done(item);
    }
  }
}
