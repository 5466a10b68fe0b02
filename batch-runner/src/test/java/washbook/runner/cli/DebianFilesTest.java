package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The scripts of the Debian package, without installing it. */
@Timeout(60)
final class DebianFilesTest {
  private static final Path DEB = Path.of("src/deb");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"control/postinst", "control/prerm", "control/postrm"})
  void theShellReadsTheScriptsOfThePackage(String name) throws Exception {
    assertEquals("", shell("-n", DEB.resolve(name).toString()));
  }

  @Test
  void eachServiceIsLetIntoTheFoldersOfItsSettings() throws Exception {
    assertEquals(
        List.of(
            "[Unit]",
            "RequiresMountsFor=\"/srv/my logs/100%%\" \"/srv/a\\\\b\"",
            "[Service]",
            "ReadWritePaths=\"/srv/a\\\\b\""),
        generated("# LOGS=/other\nLOGS=\"/srv/my logs/100%\"\nCOMPUTED=/srv/a\\b \nOPTIONS=\n"));
  }

  @Test
  void homesAreSeenOnlyWhereSettingsNameThem() throws Exception {
    List<String> home = generated("LOGS=/srv/logs\nCOMPUTED='/home/anna/my logs'\n");
    assertEquals("ProtectHome=read-only", home.get(home.size() - 1));
    List<String> lookalike = generated("LOGS=/srv/home/logs\nCOMPUTED=/srv/root/x\n");
    assertFalse(lookalike.contains("ProtectHome=read-only"), lookalike.toString());
  }

  @Test
  void settingsWithANameThatNoServiceHasAreLeftOut() throws Exception {
    write("no such.conf", "LOGS=/a\nCOMPUTED=/b\n");
    run();
    assertFalse(Files.exists(folder.resolve("units")));
  }

  private List<String> generated(String settings) throws Exception {
    write("cellar.conf", settings);
    run();
    return Files.readAllLines(folder.resolve("units/washbook@cellar.service.d/folders.conf"));
  }

  private void write(String name, String settings) throws IOException {
    Files.createDirectories(folder.resolve("etc"));
    Files.writeString(folder.resolve("etc").resolve(name), settings);
  }

  private void run() throws Exception {
    String script = Files.readString(DEB.resolve("washbook-folders"));
    Path copy = folder.resolve("generator");
    Files.writeString(copy, script.replace("/etc/washbook/", folder.resolve("etc") + "/"));
    assertEquals("", shell(copy.toString(), folder.resolve("units").toString()));
  }

  private static String shell(String... words) throws Exception {
    ProcessBuilder builder = new ProcessBuilder("/bin/sh");
    builder.command().addAll(List.of(words));
    Process process = builder.redirectErrorStream(true).start();
    try {
      String said = new String(process.getInputStream().readAllBytes());
      process.waitFor(30, TimeUnit.SECONDS);
      assertEquals(0, process.exitValue(), said);
      return said;
    } finally {
      process.destroyForcibly();
    }
  }
}
