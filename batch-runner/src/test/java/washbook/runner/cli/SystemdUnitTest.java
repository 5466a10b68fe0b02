package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The printed unit, also as the service manager itself reads it. */
@Timeout(120)
final class SystemdUnitTest {
  private static final Path MANAGER = Path.of("/lib/systemd/systemd");
  private static final String ODD = "/srv/my \"logs\" $HOME 100%n\\x 'q' ;";

  @TempDir private Path folder;

  @Test
  void pathsAreFullAndWhatIsWrittenIsAllowed() {
    String here = Path.of("").toAbsolutePath().toString();
    for (List<String> form :
        List.of(
            List.of("--out", "results", "--journal", "notes/j.jsonl"),
            List.of("--out=results", "--journal=notes/j.jsonl"))) {
      String unit = unit("my logs", form.toArray(String[]::new));
      assertTrue(unit.contains(" watch \"" + here + "/my logs\" --out"), unit);
      assertTrue(unit.contains("\nReadWritePaths=" + here + "/results " + here + "/notes\n"), unit);
      assertFalse(unit.contains("--print-unit"), unit);
    }
    String inPlace = unit("my logs", "--in-place");
    assertTrue(inPlace.contains("\nReadWritePaths=\"" + here + "/my logs\"\n"), inPlace);
  }

  /** Keys and commands stay; sentences are for whoever installs it. */
  @Test
  void whatAPersonReadsInTheUnitIsInTheirLanguage() {
    String unit = unit("/srv/logs", "--language", "de");
    assertTrue(
        unit.startsWith("# Legen Sie dies in /etc/systemd/system/washbook.service ab"), unit);
    assertTrue(unit.contains("\nDescription=Washbook: hält einen Ordner"), unit);
    assertFalse(unit.contains("# @") || unit.contains("=@d"), unit);
  }

  @Test
  void aLineFeedInAPathIsRefused() {
    Cli done = Cli.run("watch", "a\nb", "--print-unit");
    assertEquals(ExitCode.USAGE, done.code(), done.out());
  }

  @Test
  void theServiceIsShutIn() throws Exception {
    String report = ask("systemd-analyze", "security", "--offline=true", file(unit("/srv/logs")));
    Matcher level = Pattern.compile("exposure level.*: (\\d+\\.\\d)").matcher(report);
    assertTrue(level.find(), report);
    assertTrue(Double.parseDouble(level.group(1)) < 2.0, level.group());
    List<String> unit = unit("/srv/logs").lines().toList();
    for (String line :
        List.of(
            "SystemCallFilter=@system-service",
            "PrivateNetwork=true",
            "CapabilityBoundingSet=",
            "MemoryMax=1G",
            "User=washbook",
            "Environment=LC_CTYPE=C.UTF-8",
            "Restart=on-failure")) {
      assertTrue(unit.contains(line), line);
    }
  }

  @Test
  void theServiceManagerReadsEachPathAsItIs() throws Exception {
    assumeTrue(Files.exists(MANAGER), "no systemd on this machine");
    file(unit(ODD, "--out=" + ODD, "--journal", ODD + "/j.jsonl"));
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxrwxrwx"));
    Path state = Files.createDirectory(folder.resolve("state"));
    Files.setPosixFilePermissions(state, PosixFilePermissions.fromString("rwxrwxrwx"));
    String command =
        "SYSTEMD_UNIT_PATH=%1$s: XDG_RUNTIME_DIR=%2$s HOME=%2$s %3$s %4$s --user --test --unit=washbook.service"
            .formatted(
                folder,
                state,
                System.getProperty("user.name").equals("root")
                    ? "setpriv --reuid=65534 --regid=65534 --clear-groups"
                    : "",
                MANAGER);
    String dump = ask("/bin/sh", "-c", command + " 2>&1");
    assumeTrue(dump.contains("Unit washbook.service"), "the manager does not show units here");
    String ours = dump.substring(dump.indexOf("-> Unit washbook.service"));
    String line = found("Command Line: (.*)", ours);
    String shown = ODD.replace("\\", "\\\\").replace("\"", "\\\"").replace("$", "\\$\\$");
    assertTrue(line.contains(" watch \"" + shown + "\" "), line);
    assertTrue(line.contains(" \"--out=" + shown + "\" "), line);
    assertTrue(line.contains(" --journal \"" + shown + "/j.jsonl\""), line);
    assertEquals(ODD, found("ReadWritePaths: (.*)", ours));
    assertEquals(ODD, found("RequiresMountsFor: (/srv.*) \\(", ours));
  }

  @Test
  void theLineForCronRunsInAShell() throws Exception {
    String unit = unit(ODD, "--out=" + ODD);
    String cron = found("#   \\*/10 \\* \\* \\* \\* (.*)", unit).replace("\\%", "%");
    String said = ask("/bin/sh", "-c", "for word in " + cron + "; do echo \"[$word]\"; done");
    assertTrue(said.contains("[" + ODD + "]\n[--out=" + ODD + "]\n[--once]\n[--quiet]"), said);
  }

  private static String found(String pattern, String in) {
    Matcher matcher = Pattern.compile(pattern).matcher(in);
    assertTrue(matcher.find(), pattern + " in " + in);
    return matcher.group(1);
  }

  private static String unit(String logs, String... options) {
    String[] words = new String[options.length + 3];
    words[0] = "watch";
    words[1] = logs;
    System.arraycopy(options, 0, words, 2, options.length);
    words[words.length - 1] = "--print-unit";
    Cli done = Cli.run(words);
    assertEquals(ExitCode.DONE, done.code(), done.err());
    return done.out();
  }

  private String file(String unit) throws IOException {
    // The tests' class path stands where the program's jar would.
    String withJar = unit.replaceAll("-jar \\S+", "-jar /washbook.jar");
    return Files.writeString(folder.resolve("washbook.service"), withJar).toString();
  }

  private static String ask(String... command) throws Exception {
    Process process = null;
    try {
      process = new ProcessBuilder(command).redirectErrorStream(true).start();
    } catch (IOException missing) {
      assumeTrue(false, command[0] + " is not on this machine");
    }
    try {
      String text = new String(process.getInputStream().readAllBytes());
      assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it hangs");
      return text;
    } finally {
      process.destroyForcibly();
    }
  }
}
