package washbook.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** The office suite without a screen, in a throw-away profile; its processes end with the call. */
public final class Office {
  private static final long MINUTES = 3;

  private Office() {}

  /** Whether the office suite is installed. */
  public static boolean isThere() {
    return Stream.of(System.getenv("PATH").split(":"))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, "soffice")));
  }

  /** Converts all files into {@code folder}; {@code format} as the office names it. */
  public static void convert(List<Path> files, String format, Path folder)
      throws IOException, InterruptedException {
    if (!isThere()) {
      String lacks =
          "soffice is not on the PATH. These tests need a real office: install libreoffice-calc and"
              + " libreoffice-java-common, as .ci/run does.";
      // Where all tests must run a lack is a failure; elsewhere they are left out and say so.
      if (System.getenv("CI") == null) {
        Assumptions.abort(lacks);
      }
      throw new IllegalStateException(lacks);
    }
    Path profile = Files.createTempDirectory("office");
    List<String> command =
        new ArrayList<>(
            List.of(
                "soffice",
                "-env:UserInstallation=" + profile.toUri(),
                "--headless",
                "--norestore",
                "--convert-to",
                format,
                "--outdir",
                folder.toString()));
    files.forEach(f -> command.add(f.toString()));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(profile.resolve("office.log").toFile())
            .start();
    try {
      if (!process.waitFor(MINUTES, TimeUnit.MINUTES) || process.exitValue() != 0) {
        throw new IOException(
            "the office did not convert: " + Files.readString(profile.resolve("office.log")));
      }
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
      delete(profile);
    }
  }

  /** Deletes a folder with all that is in it. */
  public static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
