package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

/** Faults of disks, folders and permissions, in processes of their own; nothing is ever lost. */
@Timeout(300)
final class FaultsTest {
  private static final boolean SUPERUSER = System.getProperty("user.name").equals("root");

  @TempDir private Path folder;
  private Path logs;
  private Path log;
  private byte[] before;

  @BeforeEach
  void oneLog() throws IOException {
    logs = Files.createDirectory(folder.resolve("logs"));
    log = TestLogs.plain(logs.resolve("log.xlsx"), 1.085, 300);
    before = Files.readAllBytes(log);
  }

  // Full disks

  @Test
  void aFullDiskLeavesTheOldFileAndNothingElse() throws Exception {
    assumeTrue(sh("unshare -rm true").code() == 0, "no mounts allowed on this machine");
    // Its table is too large to be packed in memory and goes through the temporary folder.
    Path large = Files.createDirectory(folder.resolve("large"));
    Files.copy(
        TestLogs.plain(large.resolve("log.xlsx"), 1.085, 5000), folder.resolve("large.xlsx"));
    String script =
        """
        mkdir small && mount -t tmpfs -o size=48k tmpfs small && cp logs/log.xlsx small/
        head -c 100000 /dev/zero > small/rest 2> error.txt
        for way in --in-place '' ; do
          %1$s fill $way small/log.xlsx; echo "exit $?"
        done
        %1$s fill logs/log.xlsx --out small; echo "exit $?"
        for kind in json csv html; do
          %1$s fill --dry-run logs/log.xlsx --report small/report.$kind; echo "exit $?"
        done
        %1$s fill --dry-run small/log.xlsx small/log.xlsx small --journal small/j; echo "exit $?"
        %2$s fill large/log.xlsx --in-place; echo "exit $?"
        cmp logs/log.xlsx small/log.xlsx && cmp large/log.xlsx large.xlsx && echo same
        ls -A small
        """
            .formatted(java(), java("-Djava.io.tmpdir=" + folder.resolve("small")));
    Files.writeString(folder.resolve("full.sh"), script);
    Cli done = sh("unshare -rm sh full.sh 2>&1");
    List<String> codes = done.out().lines().filter(line -> line.startsWith("exit")).toList();
    assertEquals(
        List.of("exit 3", "exit 3", "exit 3", "exit 3", "exit 3", "exit 3", "exit 0", "exit 3"),
        codes,
        done.out());
    assertEquals(
        7, done.out().lines().filter(l -> l.contains("No space left")).count(), done.out());
    assertTrue(done.out().contains("\nsame\n"), done.out());
    assertTrue(done.out().endsWith("same\nlog.xlsx\nrest\n"), "left behind: " + done.out());
    untouched();
  }

  @Test
  void aLimitOnTheSizeOfFilesIsLikeAFullDisk() throws Exception {
    for (String way : List.of("--in-place", "", "--out elsewhere")) {
      Cli done = sh("ulimit -f 8; " + java("-XX:-UsePerfData") + " fill logs/log.xlsx " + way);
      assertEquals(3, done.code(), done.out());
      assertTrue(done.out().contains("File too large"), done.out());
      untouched();
    }
  }

  @Test
  void resultsThatCannotBePrintedAreNoSuccess() throws Exception {
    assertEquals(3, sh(java() + " calc ABV 1.085 1.010 > /dev/full").code());
    assertEquals(3, sh(java() + " functions > /dev/full").code());
  }

  // Permissions

  @Test
  void whatMayNotBeReadIsSaid() throws Exception {
    Files.setPosixFilePermissions(log, PosixFilePermissions.fromString("---------"));
    Cli done = sh(unprivileged(java() + " fill logs"));
    assertEquals(3, done.code(), done.out());
    assertTrue(done.out().contains("'logs/log.xlsx': permission denied."), done.out());
    Files.setPosixFilePermissions(logs, PosixFilePermissions.fromString("---------"));
    done = sh(unprivileged(java() + " fill logs"));
    Files.setPosixFilePermissions(logs, PosixFilePermissions.fromString("rwx------"));
    assertEquals(3, done.code(), done.out());
    assertTrue(done.out().contains("'logs': permission denied."), done.out());
  }

  @Test
  void inAReadOnlyFolderNothingIsWrittenAndElsewhereItWorks() throws Exception {
    Files.setPosixFilePermissions(logs, PosixFilePermissions.fromString("r-xr-xr-x"));
    for (String way : List.of("--in-place", "")) {
      Cli done = sh(unprivileged(java() + " fill logs " + way));
      assertEquals(3, done.code(), done.out());
      String target = way.isEmpty() ? "log.filled.xlsx" : "log.xlsx";
      assertTrue(done.out().contains(target + "': permission denied."), done.out());
    }
    assertEquals(0, sh(unprivileged(java() + " fill logs --out elsewhere")).code());
    untouched();
    assertEquals(List.of("log.xlsx"), names(folder.resolve("elsewhere")));
    Files.setPosixFilePermissions(logs, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  @Test
  void aReadOnlyFileIsNotReplaced() throws Exception {
    Files.setPosixFilePermissions(log, PosixFilePermissions.fromString("r--r--r--"));
    Cli done = sh(java() + " fill logs --in-place");
    assertEquals(3, done.code(), done.out());
    assertTrue(done.out().contains("read-only"), done.out());
    untouched();
    assertEquals(0, sh(java() + " fill logs").code());
  }

  @Test
  void inPlaceKeepsOwnerGroupAndModeOrDoesNothing() throws Exception {
    assumeTrue(SUPERUSER, "only the superuser can give files away");
    UserPrincipalLookupService users = log.getFileSystem().getUserPrincipalLookupService();
    PosixFileAttributeView view = Files.getFileAttributeView(log, PosixFileAttributeView.class);
    view.setOwner(users.lookupPrincipalByName("nobody"));
    view.setGroup(users.lookupPrincipalByGroupName("nogroup"));
    view.setPermissions(PosixFilePermissions.fromString("rw-rw-r--"));
    PosixFileAttributes given = view.readAttributes();
    Files.setPosixFilePermissions(log, PosixFilePermissions.fromString("rw-rw-rw-"));
    Cli done = sh(unprivileged(java() + " fill logs --in-place"));
    assertEquals(3, done.code(), done.out());
    assertTrue(done.out().contains("could not be given"), done.out());
    untouched();
    Files.setPosixFilePermissions(log, PosixFilePermissions.fromString("rw-rw-r--"));
    assertEquals(0, sh(java() + " fill logs --in-place").code());
    PosixFileAttributes kept = view.readAttributes();
    assertEquals(given.owner(), kept.owner());
    assertEquals(given.group(), kept.group());
    assertEquals(given.permissions(), kept.permissions());
    assertFalse(Arrays.equals(before, Files.readAllBytes(log)));
  }

  // Links, and what is no file

  @Test
  void linksStayLinksAndTheirTargetsAreKept() throws Exception {
    Path links = Files.createDirectory(folder.resolve("links"));
    Path link = Files.createSymbolicLink(links.resolve("plum.xlsx"), log);
    Files.createSymbolicLink(links.resolve("loop"), links);
    Files.createSymbolicLink(links.resolve("gone.xlsx"), folder.resolve("gone"));
    Cli inPlace = sh(java() + " fill links --in-place");
    assertEquals(3, inPlace.code(), inPlace.out());
    assertTrue(inPlace.out().contains("symbolic link"), inPlace.out());
    assertTrue(Files.isSymbolicLink(link));
    untouched();
    assertEquals(0, sh(java() + " fill links").code());
    assertTrue(Files.isRegularFile(links.resolve("plum.filled.xlsx"), LinkOption.NOFOLLOW_LINKS));
    Path mine = Files.writeString(folder.resolve("mine.txt"), "mine");
    Path out = Files.createDirectory(folder.resolve("out"));
    Files.createSymbolicLink(out.resolve("log.xlsx"), mine);
    assertEquals(3, sh(java() + " fill logs --out out").code());
    assertEquals("mine", Files.readString(mine));
    Cli gone = sh(java() + " fill links/gone.xlsx");
    assertTrue(gone.code() == 3 && gone.out().contains("not there"), gone.out());
    untouched();
  }

  @Test
  void pipesAndDevicesAreNotReadFrom() throws Exception {
    assertEquals(0, sh("mkfifo pipe.xlsx").code());
    for (String odd : List.of("pipe.xlsx", "/dev/zero")) {
      Cli done = sh(java() + " fill " + odd);
      assertEquals(3, done.code(), done.out());
      assertTrue(done.out().contains("not a plain file"), done.out());
    }
  }

  @Test
  void aWorkbookOpenInAnOfficeProgramIsNotReplaced() throws Exception {
    for (String lock : List.of(".~lock.log.xlsx#", "~$log.xlsx")) {
      Path held = Files.writeString(logs.resolve(lock), "x");
      Cli done = sh(java() + " fill logs --in-place");
      assertEquals(3, done.code(), done.out());
      assertTrue(done.out().contains("open in an office program"), done.out());
      Files.delete(held);
      untouched();
    }
  }

  // Names

  @Test
  void oddAndLongNamesAreFilledOrRefused() throws Exception {
    String longest = "ü".repeat(125) + ".xlsx";
    List<String> odd =
        List.of("Plüm 梅 🍎.xlsx", "-rf.xlsx", "a'b\"c.xlsx", "new\nline.xlsx", longest);
    for (String name : odd) {
      Files.copy(log, logs.resolve(name));
    }
    for (String locale : List.of("C.UTF-8", "C")) {
      Cli done = sh("LC_ALL=" + locale + " " + java() + " fill logs --in-place");
      assertEquals(0, done.code(), done.out());
      byte[] filled = Files.readAllBytes(log);
      for (String name : odd) {
        assertArrayEquals(filled, Files.readAllBytes(logs.resolve(name)));
        Files.write(logs.resolve(name), before);
      }
    }
    Cli done = sh("LC_ALL=C " + java() + " fill --dry-run logs");
    assertEquals(3, done.code(), done.out());
    assertTrue(done.out().contains("set LC_ALL=C.UTF-8"), done.out());
    done = sh("LC_ALL=C.UTF-8 " + java() + " fill logs/ü*.xlsx");
    assertEquals(3, done.code(), done.out());
    assertTrue(done.out().contains("File name too long"), done.out());
    assertEquals(3, sh("LC_ALL=C.UTF-8 " + java() + " fill --in-place --backup logs/ü*").code());
    assertArrayEquals(before, Files.readAllBytes(logs.resolve(longest)));
    assertEquals(odd.size() + 1, names(logs).size(), names(logs).toString());
  }

  @Test
  void backupsNeverOverwriteAnything() throws Exception {
    Path bak = Files.writeString(logs.resolve("log.xlsx.bak"), "mine");
    Files.createDirectory(logs.resolve("log.xlsx.bak2"));
    Files.createSymbolicLink(logs.resolve("log.xlsx.bak3"), folder.resolve("gone"));
    assertEquals(0, sh(java() + " fill logs/log.xlsx --in-place --backup").code());
    assertEquals("mine", Files.readString(bak));
    assertFalse(Files.exists(folder.resolve("gone")));
    assertArrayEquals(before, Files.readAllBytes(logs.resolve("log.xlsx.bak4")));
  }

  // Two at a time

  @Test
  void twoRunnersOnOneFolderLeaveWholeFiles() throws Exception {
    for (int i = 0; i < 30; i++) {
      Files.copy(log, logs.resolve("log " + i + ".xlsx"));
    }
    String run = java() + " fill logs --in-place";
    Cli both =
        sh(
            "mkdir s1 s2;"
                + " (XDG_STATE_HOME=s1 "
                + run
                + "; echo exit $?) & (XDG_STATE_HOME=s2 "
                + run
                + "; echo exit $?); wait");
    for (String line : both.out().split("\n")) {
      boolean refused = line.strip().startsWith("refused:");
      assertFalse(refused && !line.contains("changed by another program"), line);
    }
    assertEquals(0, sh(run).code());
    byte[] filled = Files.readAllBytes(log);
    assertFalse(Arrays.equals(before, filled));
    assertEquals(31, names(logs).size(), names(logs).toString());
    for (String name : names(logs)) {
      assertArrayEquals(filled, Files.readAllBytes(logs.resolve(name)), name);
    }
  }

  // Helpers

  private void untouched() throws IOException {
    assertArrayEquals(before, Files.readAllBytes(log));
    assertEquals(
        List.of(),
        names(logs).stream().filter(n -> !n.equals("log.xlsx") && !n.contains("lock")).toList());
  }

  private static List<String> names(Path of) throws IOException {
    try (Stream<Path> files = Files.list(of)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static String java(String... options) {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-Xmx128m", "-XX:TieredStopAtLevel=1"));
    words.addAll(List.of(options));
    words.add("-cp '" + System.getProperty("java.class.path") + "'");
    words.add(Main.class.getName());
    return String.join(" ", words);
  }

  /** The superuser too is bound by permissions when the capabilities are taken away. */
  private static String unprivileged(String command) {
    return SUPERUSER ? "setpriv --bounding-set=-all --inh-caps=-all " + command : command;
  }

  private Cli sh(String script) throws Exception {
    Path out = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder("/bin/sh", "-c", script)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    try {
      assertTrue(process.waitFor(120, TimeUnit.SECONDS), "it hangs: " + Files.readString(out));
      return new Cli(process.exitValue(), Files.readString(out), "");
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
  }
}
