package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.StringPair;
import com.sun.star.script.provider.XScriptProviderFactory;
import com.sun.star.uno.UnoRuntime;
import java.io.File;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.functions.SafetyNote;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;
import washbook.office.testing.Book;
import washbook.office.testing.JavaSettings;
import washbook.office.testing.Office;

/** The packed extension goes in, is replaced by a newer one and goes out again. */
class InstallIT {
  private static final String FORMULA = "=WASHBOOK.ABV(1.085;1.01)";

  @TempDir Path directory;

  @Test
  void isSmall() throws IOException {
    assertTrue(Files.size(SharedOffice.extension()) < 1_700_000);
  }

  @Test
  void holdsWhatItNames() throws IOException {
    try (FileSystem zip = FileSystems.newFileSystem(SharedOffice.extension())) {
      for (String name : List.of("description.xml", "description.txt", "LICENSE", "types.idl")) {
        assertTrue(Files.size(zip.getPath(name)) > 100, name);
      }
      String description = Files.readString(zip.getPath("description.xml"));
      assertTrue(description.contains(System.getProperty("washbook.version")), description);
      assertFalse(description.contains("update-information"), "nobody hosts it yet");
      assertTrue(description.contains("Apache-2.0"), description);
      assertTrue(description.contains("Tried in LibreOffice 7.4 to 26.8"), description);
      assertTrue(Files.size(zip.getPath("icons/washbook.png")) > 100);
      for (String name : List.of("script.xlb", "dialog.xlb", "Start.xba")) {
        assertTrue(Files.size(zip.getPath("Washbook", name)) > 100, name);
      }
      for (Language language : Language.values()) {
        String name =
            language == Language.EN ? "description.txt" : "description-" + language.code() + ".txt";
        String note = SafetyNote.text(language.code());
        assertTrue(Files.readString(zip.getPath(name)).contains(note), name);
        assertTrue(description.contains("<src xlink:href=\"" + name + "\" lang="), description);
      }
    }
  }

  @Test
  void isInstalledUpdatedAndRemoved() throws Exception {
    Path profile = Office.freshProfile();
    Path newer = directory.resolve("washbook.oxt");
    Files.copy(SharedOffice.extension(), newer);
    try (FileSystem zip = FileSystems.newFileSystem(newer)) {
      Path description = zip.getPath("description.xml");
      String version = System.getProperty("washbook.version");
      Files.writeString(
          description, Files.readString(description).replace('"' + version + '"', "\"99.0\""));
    }
    try {
      try (Office office = Office.on(profile)) {
        assertEquals("#NAME?", shown(office));
        office.extensions().add(SharedOffice.extension());
      }
      try (Office office = Office.on(profile)) {
        assertEquals(
            System.getProperty("washbook.version"),
            office.extensions().installed().orElseThrow().getVersion());
        StringPair publisher = office.extensions().installed().orElseThrow().getPublisherInfo();
        assertEquals("Washbook", publisher.First);
        assertEquals("", publisher.Second);
        assertEquals("", errorOf(office));
        assertEquals("", macro(office, "Trouble"));
        office.extensions().add(newer);
      }
      try (Office office = Office.on(profile)) {
        assertEquals("99.0", office.extensions().installed().orElseThrow().getVersion());
        assertEquals("", errorOf(office));
      }
      JavaSettings.switchOff(profile);
      try (Office office = Office.on(profile)) {
        assertEquals("Err:504", shown(office));
        assertTrue(macro(office, "Trouble").contains("Java"), macro(office, "Trouble"));
        for (Language language : Language.values()) {
          assertEquals(
              OfficeText.of("java.missing").in(language),
              macro(office, "JavaIsMissing", language.code() + "-XX"));
        }
        office.extensions().remove("washbook.oxt");
      }
      try (Office office = Office.on(profile)) {
        assertTrue(office.extensions().installed().isEmpty());
        assertEquals("#NAME?", shown(office));
      }
    } finally {
      Office.delete(profile);
    }
  }

  /** The command line, as a user who is not root; root itself is refused by the command. */
  @Test
  void isInstalledByCommand() throws Exception {
    Path home = Path.of(Files.createTempDirectory("washbook-home-").toString());
    Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwxrwxrwx"));
    Path copy = home.resolve("washbook.oxt");
    Files.copy(SharedOffice.extension(), copy);
    Path profile = home.resolve("profile");
    try {
      boolean root = "root".equals(System.getProperty("user.name"));
      List<String> command = new ArrayList<>();
      if (root) {
        command.addAll(List.of("runuser", "-u", "nobody", "--"));
      }
      command.addAll(List.of("env", "HOME=" + home, "unopkg"));
      String where = "-env:UserInstallation=" + profile.toUri();
      run(command, "add", where, copy.toString());
      assertTrue(run(command, "list", where).contains("washbook.office"));
      try (Office office = Office.on(profile)) {
        assertEquals("", errorOf(office));
      }
      if (root) {
        run(List.of("chown", "-R", "nobody"), home.toString());
      }
      run(command, "remove", where, "washbook.office");
      assertFalse(run(command, "list", where).contains("washbook.office"));
    } finally {
      Office.delete(home);
    }
  }

  private static String run(List<String> start, String... rest) throws Exception {
    List<String> command = new ArrayList<>(start);
    command.addAll(List.of(rest));
    File log = File.createTempFile("washbook", ".txt");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log).start();
    boolean ended = process.waitFor(120, TimeUnit.SECONDS);
    String said = Files.readString(log.toPath());
    Files.delete(log.toPath());
    if (!ended) {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
    assertTrue(ended, command + " " + said);
    assertEquals(0, process.exitValue(), command + " " + said);
    return said;
  }

  /** What a function of the menu's macros answers; they run where Java does not. */
  private static String macro(Office office, String function, Object... arguments)
      throws Exception {
    XScriptProviderFactory providers =
        UnoRuntime.queryInterface(
            XScriptProviderFactory.class,
            office
                .context()
                .getValueByName(
                    "/singletons/com.sun.star.script.provider.theMasterScriptProviderFactory"));
    return (String)
        providers
            .createScriptProvider("")
            .getScript(
                "vnd.sun.star.script:Washbook.Start."
                    + function
                    + "?language=Basic&location=application")
            .invoke(arguments, new short[1][0], new Object[1][0]);
  }

  private static String shown(Office office) {
    try (Book book = office.newBook()) {
      return book.formula("A1", FORMULA).shown("A1");
    }
  }

  private static String errorOf(Office office) {
    try (Book book = office.newBook()) {
      book.formula("A1", FORMULA);
      return book.error("A1") == 0 && book.number("A1") > 9 ? "" : book.shown("A1");
    }
  }
}
