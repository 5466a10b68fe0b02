package washbook.runner.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Links on the way to a result, as another user can put them there at any moment. */
final class UnfinishedFileTest {
  @TempDir private Path folder;
  private Path out;
  private Path elsewhere;

  @BeforeEach
  void aFolderOfResultsAndAnother() throws IOException {
    out = Files.createDirectory(folder.resolve("out"));
    elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve("plum.csv"), "precious");
  }

  @Test
  void aFolderBelowTheUsersThatBecameALinkIsNotFollowed() throws IOException {
    Files.createDirectory(out.resolve("inner"));
    place(out.resolve("inner/plum.csv"));
    Files.delete(out.resolve("inner/plum.csv"));
    Files.delete(out.resolve("inner"));
    Files.createSymbolicLink(out.resolve("inner"), elsewhere);
    assertThrows(FileSystemException.class, () -> place(out.resolve("inner/plum.csv")));
    Files.createDirectory(elsewhere.resolve("deep"));
    assertThrows(FileSystemException.class, () -> place(out.resolve("inner/deep/plum.csv")));
    assertEquals(List.of("deep", "plum.csv"), names(elsewhere));
    assertEquals("precious", Files.readString(elsewhere.resolve("plum.csv")));
  }

  /** One result keeps the folder open while the next one is made. */
  @Test
  void alsoWhileTheFolderThatTheLinkLeadsToIsBeingWorkedIn() throws IOException {
    Files.createSymbolicLink(out.resolve("inner"), elsewhere);
    try (UnfinishedFile there = UnfinishedFile.beside(elsewhere.resolve("apple.csv"))) {
      assertThrows(FileSystemException.class, () -> place(out.resolve("inner/plum.csv")));
      there.place();
    }
    assertEquals(List.of("apple.csv", "plum.csv"), names(elsewhere));
  }

  @Test
  void theUsersFolderItselfMayBeALink() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link"), out);
    Files.createDirectory(out.resolve("inner"));
    try (UnfinishedFile file = UnfinishedFile.beside(link, link.resolve("inner/plum.csv"))) {
      file.place();
    }
    assertEquals(List.of("plum.csv"), names(out.resolve("inner")));
  }

  private void place(Path target) throws IOException {
    try (UnfinishedFile file = UnfinishedFile.beside(out, target)) {
      file.place();
    }
  }

  private static List<String> names(Path of) throws IOException {
    try (Stream<Path> files = Files.list(of)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
