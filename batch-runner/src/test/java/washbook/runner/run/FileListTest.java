package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.language.Language;
import washbook.runner.file.LeftBehind;
import washbook.runner.file.UnfinishedFile;

final class FileListTest {
  @TempDir private Path folder;

  @BeforeEach
  void files() throws IOException {
    for (String name :
        List.of(
            "b.xlsx",
            "a.xlsx",
            "a.filled.xlsx",
            "a.portable.xlsx",
            "a.xlsx.bak",
            "notes.txt",
            ".hidden.xlsx",
            "~$a.xlsx",
            ".~lock.a.xlsx#",
            "old/c.xlsx",
            ".git/d.xlsx",
            "results/e.xlsx")) {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, name);
    }
  }

  @Test
  void walksFoldersInOrderAndLeavesOutWhatIsNoLogOfTheUsers() {
    List<WorkItem> items =
        FileList.of(List.of(folder), Destination.BESIDE, Shard.WHOLE, Language.EN);
    assertEquals(List.of("a.xlsx", "b.xlsx", "old/c.xlsx", "results/e.xlsx"), names(items));
    assertEquals(folder.resolve("old/c.filled.xlsx"), items.get(2).target());
  }

  @Test
  void keepsFoldersInsideTheResultFolderAndDoesNotReadItsOwnResults() {
    Destination out = new Destination(folder.resolve("results"), false, false);
    List<WorkItem> items = FileList.of(List.of(folder), out, Shard.WHOLE, Language.EN);
    assertEquals(List.of("a.xlsx", "b.xlsx", "old/c.xlsx"), names(items));
    assertEquals(folder.resolve("results/old/c.xlsx"), items.get(2).target());
  }

  @Test
  void aFileNamedTwiceIsDoneOnce() {
    Path a = folder.resolve("a.xlsx");
    List<WorkItem> items =
        FileList.of(List.of(a, folder, a), Destination.BESIDE, Shard.WHOLE, Language.EN);
    assertEquals(4, items.size());
  }

  @Test
  void twoResultsInOneFileAreRefusedAndSoIsAResultOverAnotherInput() throws IOException {
    Files.writeString(folder.resolve("old/a.xlsx"), "another");
    Destination out = new Destination(folder.resolve("out"), false, false);
    List<Path> same = List.of(folder.resolve("a.xlsx"), folder.resolve("old/a.xlsx"));
    List<WorkItem> items = FileList.of(same, out, Shard.WHOLE, Language.EN);
    assertEquals(1, items.stream().filter(i -> i.refused() != null).count());

    List<Path> over = List.of(folder.resolve("a.xlsx"), folder.resolve("a.filled.xlsx"));
    items = FileList.of(over, Destination.BESIDE, Shard.WHOLE, Language.EN);
    assertNotNull(items.get(1).refused());
    assertTrue(items.get(1).refused().refusals().get(0).reason().contains("one of the files"));
  }

  @Test
  void aMissingFileIsListedWithTheReason() {
    List<WorkItem> items =
        FileList.of(
            List.of(folder.resolve("gone.xlsx")), Destination.BESIDE, Shard.WHOLE, Language.EN);
    assertEquals("There is no such file.", items.get(0).refused().refusals().get(0).reason());
  }

  @Test
  void shardsPartTheFolderByPathsInsideIt() {
    int total = 0;
    for (int i = 1; i <= 3; i++) {
      total +=
          FileList.of(List.of(folder), Destination.BESIDE, new Shard(i, 3), Language.EN).size();
    }
    assertEquals(4, total);
  }

  @Test
  void removesWhatAKilledRunLeftBehindButNotWhatALivingOneWrites() throws IOException {
    String token = ".washbook-0123456789abcdef";
    Path dead = Files.writeString(folder.resolve(token + "-1.xlsx"), "half");
    Path lock = Files.writeString(folder.resolve(token + ".lock"), "");
    String noLock = ".washbook-fedcba9876543210-1.xlsx";
    Path young = Files.writeString(folder.resolve(noLock), "written where there are no locks");
    Path old = Files.writeString(folder.resolve("old/" + noLock), "given up");
    Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofHours(25))));
    try (UnfinishedFile living = UnfinishedFile.beside(folder.resolve("a.xlsx"))) {
      FileList.of(List.of(folder), Destination.BESIDE, Shard.WHOLE, Language.EN);
      assertTrue(Files.exists(living.path()));
      assertFalse(Files.exists(dead));
      assertFalse(Files.exists(lock));
      assertTrue(Files.exists(young));
      assertFalse(Files.exists(old));
    }
    Files.delete(young);
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(), files.filter(LeftBehind::isOne).toList());
    }
  }

  private List<String> names(List<WorkItem> items) {
    return items.stream()
        .map(item -> folder.relativize(item.file()).toString().replace('\\', '/'))
        .toList();
  }
}
