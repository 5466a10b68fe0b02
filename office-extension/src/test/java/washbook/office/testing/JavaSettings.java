package washbook.office.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What the office keeps about Java in a profile in which it has started Java. */
public final class JavaSettings {
  private static final String ON = "<enabled xsi:nil=\"true\"/>";
  private static final String OFF = "<enabled xsi:nil=\"false\">false</enabled>";

  private JavaSettings() {}

  /** As the user does under Tools, Options, LibreOffice, Advanced. */
  public static void switchOff(Path profile) throws IOException {
    try (Stream<Path> settings = Files.list(profile.resolve("user/config"))) {
      List<Path> files =
          settings.filter(f -> f.getFileName().toString().startsWith("javasettings_")).toList();
      for (Path file : files) {
        String on = Files.readString(file);
        if (!on.contains(ON)) {
          throw new IllegalStateException(on);
        }
        Files.writeString(file, on.replace(ON, OFF));
      }
    }
  }
}
