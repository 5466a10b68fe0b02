package washbook.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The version stands in the poms, and each has its entry in CHANGELOG.md. */
final class ReleaseNotesTest {
  private static final Pattern OF_THE_POM =
      Pattern.compile("<artifactId>washbook</artifactId>\\s*<version>([^<]+)</version>");

  @Test
  void theNewestEntryIsOfTheVersionThatIsBuilt() throws IOException {
    assertEquals(version(), entries().get(0).lines().findFirst().orElse("").strip());
  }

  @Test
  void eachEntryBeginsWithWhatToDoWhenUpgrading() throws IOException {
    List<String> without = new ArrayList<>();
    for (String entry : entries()) {
      List<String> lines = entry.lines().filter(line -> !line.isBlank()).toList();
      if (lines.size() < 2 || !lines.get(1).startsWith("Upgrading from ")) {
        without.add(lines.get(0));
      }
    }
    assertEquals(List.of(), without);
  }

  @Test
  void whatIsGivenAwayTakesTheVersionFromThePoms() throws IOException {
    Pattern version = Pattern.compile("(?<![\\w.])" + Pattern.quote(version()) + "(?![\\w.])");
    assertFalse(version().isEmpty());
    List<String> places = new ArrayList<>();
    for (String folder :
        List.of("src/deb", "src/cluster", "bin", "src/main", "../sample-sheets/src/release")) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          if (version.matcher(Files.readString(file, StandardCharsets.ISO_8859_1)).find()) {
            places.add(file.toString());
          }
        }
      }
    }
    if (version.matcher(Files.readString(Path.of("../README.md"))).find()) {
      places.add("README.md");
    }
    assertEquals(List.of(), places);
  }

  private static String version() throws IOException {
    Matcher found = OF_THE_POM.matcher(Files.readString(Path.of("../pom.xml")));
    return found.find() ? found.group(1) : "";
  }

  private static List<String> entries() throws IOException {
    String[] parts = Files.readString(Path.of("CHANGELOG.md")).split("(?m)^## ");
    return List.of(parts).subList(1, parts.length);
  }
}
