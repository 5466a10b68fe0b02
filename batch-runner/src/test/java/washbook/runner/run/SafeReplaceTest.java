package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SafeReplaceTest {
  @TempDir private Path folder;
  private Path log;
  private FileStamp before;

  @BeforeEach
  void log() throws IOException {
    log = folder.resolve("log.xlsx");
    Files.writeString(log, "old");
    before = FileStamp.of(log);
  }

  @Test
  void replacesTheFileAndKeepsItsPermissions() throws IOException {
    Files.setPosixFilePermissions(log, PosixFilePermissions.fromString("rw-rw-r-x"));
    assertTrue(put(log, path -> Files.writeString(path, "new"), path -> {}));
    assertEquals("new", Files.readString(log));
    assertEquals("rw-rw-r-x", PosixFilePermissions.toString(Files.getPosixFilePermissions(log)));
    assertEquals(List.of("log.xlsx"), names());
  }

  @Test
  void aFailureInWritingOrCheckingLeavesTheOldFileAndNothingElse() throws IOException {
    SafeReplace.Step half =
        path -> {
          Files.writeString(path, "ha");
          throw new IOException("disk full");
        };
    assertThrows(IOException.class, () -> put(log, half, path -> {}));
    SafeReplace.Step broken =
        path -> {
          throw new IllegalStateException("not readable");
        };
    assertThrows(
        IllegalStateException.class, () -> put(log, path -> Files.writeString(path, "x"), broken));
    assertEquals("old", Files.readString(log));
    assertEquals(List.of("log.xlsx"), names());
  }

  @Test
  void aFileThatChangedMeanwhileIsLeftAlone() throws IOException {
    SafeReplace.Step meanwhile =
        path -> {
          Files.writeString(path, "new");
          Files.writeString(log, "typed by hand");
        };
    IOException refused = assertThrows(IOException.class, () -> put(log, meanwhile, path -> {}));
    assertTrue(refused.getMessage().contains("changed by another program"), refused.getMessage());
    assertEquals("typed by hand", Files.readString(log));
    assertEquals(List.of("log.xlsx"), names());
  }

  @Test
  void theSameBytesAreNotWrittenAgain() throws IOException {
    assertFalse(put(log, path -> Files.writeString(path, "old"), path -> {}));
    assertEquals(before, FileStamp.of(log));
    assertEquals(List.of("log.xlsx"), names());
  }

  @Test
  void backupsAreNumberedAndNeverOverwritten() throws IOException {
    for (String text : List.of("one", "two", "three")) {
      FileStamp now = FileStamp.of(log);
      SafeReplace.put(log, now, log, true, path -> Files.writeString(path, text), path -> {});
    }
    assertEquals("three", Files.readString(log));
    assertEquals("old", Files.readString(folder.resolve("log.xlsx.bak")));
    assertEquals("one", Files.readString(folder.resolve("log.xlsx.bak2")));
    assertEquals("two", Files.readString(folder.resolve("log.xlsx.bak3")));
  }

  @Test
  void aKeptOriginalIsACopyThatAProgramWithTheFileOpenCannotChange() throws IOException {
    try (FileChannel open = FileChannel.open(log, StandardOpenOption.WRITE)) {
      SafeReplace.put(log, before, log, true, path -> Files.writeString(path, "new"), path -> {});
      open.write(ByteBuffer.wrap("bad".getBytes(StandardCharsets.UTF_8)));
    }
    assertEquals("old", Files.readString(folder.resolve("log.xlsx.bak")));
    FileStamp kept = FileStamp.of(folder.resolve("log.xlsx.bak"));
    assertEquals(before.modified() / 1_000_000, kept.modified() / 1_000_000);
  }

  @Test
  void linksReadOnlyFilesFoldersAndOpenWorkbooksAreRefused() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), log);
    refused(link, "symbolic link");
    refused(Files.createDirectory(folder.resolve("dir.xlsx")), "not a plain file");
    Path lock = Files.writeString(folder.resolve(".~lock.log.xlsx#"), "someone");
    refused(log, "open in an office program");
    Files.delete(lock);
    Files.setPosixFilePermissions(log, PosixFilePermissions.fromString("r--r--r--"));
    refused(log, "read-only");
    assertEquals("old", Files.readString(log));
  }

  @Test
  void aFolderThatCannotBeWrittenToIsAFailureWithAReason() {
    Path target = Path.of("/proc/washbook.xlsx");
    IOException failure =
        assertThrows(
            IOException.class, () -> put(target, path -> Files.writeString(path, "x"), p -> {}));
    assertTrue(Failure.reason(failure).startsWith("'/proc/"), Failure.reason(failure));
  }

  private void refused(Path target, String reason) {
    IOException refusal =
        assertThrows(
            IOException.class, () -> put(target, path -> Files.writeString(path, "new"), p -> {}));
    assertTrue(refusal.getMessage().contains(reason), refusal.getMessage());
  }

  private boolean put(Path target, SafeReplace.Step write, SafeReplace.Step check)
      throws IOException {
    return SafeReplace.put(log, before, target, false, write, check);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
