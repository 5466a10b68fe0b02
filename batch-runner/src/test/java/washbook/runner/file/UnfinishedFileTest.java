package washbook.runner.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
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

  /** Written, read and given permissions as it was made, whatever has its name by now. */
  @Test
  void aLinkInThePlaceOfAnUnfinishedFileLeadsNothingElsewhere() throws IOException {
    Path victim = elsewhere.resolve("plum.csv");
    Set<PosixFilePermission> owner = PosixFilePermissions.fromString("rw-------");
    Files.setPosixFilePermissions(victim, owner);
    for (boolean hard : List.of(false, true)) {
      try (UnfinishedFile file = UnfinishedFile.beside(out.resolve("plum.csv"))) {
        Path name;
        try (Stream<Path> files = Files.list(out)) {
          name = files.filter(f -> f.toString().endsWith(".csv")).findFirst().orElseThrow();
        }
        Files.delete(name);
        if (hard) {
          Files.createLink(name, victim);
        } else {
          Files.createSymbolicLink(name, victim);
        }
        try (OutputStream to = WrittenFile.stream(file.path())) {
          to.write("ours".getBytes(StandardCharsets.UTF_8));
        }
        assertEquals(4, file.attributes().size());
        try (InputStream in = ReadFile.stream(file.path())) {
          assertEquals("ours", new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        file.permit(PosixFilePermissions.fromString("rw-r--r--"), true);
        assertThrows(FileSystemException.class, file::place);
      }
      assertEquals("precious", Files.readString(victim));
      assertEquals(owner, Files.getPosixFilePermissions(victim));
      assertEquals(List.of(), names(out));
    }
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
