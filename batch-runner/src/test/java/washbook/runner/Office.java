package washbook.runner;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** LibreOffice without a window, with a profile of its own that is thrown away by the caller. */
public final class Office {
  private static final String ALL_SHEETS_AS_SHOWN =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,true,false,false,-1";
  private static final String ALL_SHEETS_FORMULAS =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,true,false,-1";

  private final Path directory;

  /**
   * @param directory for the profile and the results
   */
  public Office(Path directory) {
    this.directory = directory;
  }

  /** Converts a file and gives the directory with the results, which is new each time. */
  public Path convert(Path file, String filter, String... more)
      throws IOException, InterruptedException {
    return convert(List.of(file), filter, more);
  }

  /** The same of several files in one go. */
  public Path convert(List<Path> files, String filter, String... more)
      throws IOException, InterruptedException {
    requireOffice();
    Path results = Files.createTempDirectory(directory, "out");
    List<String> command =
        new ArrayList<>(
            List.of(
                "soffice",
                "-env:UserInstallation=" + directory.resolve("profile").toUri(),
                "--headless",
                "--norestore"));
    command.addAll(List.of(more));
    command.addAll(List.of("--convert-to", filter, "--outdir", results.toString()));
    files.forEach(file -> command.add(file.toString()));
    Path said = Files.createTempFile(directory, "office", ".txt");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    try {
      if (!process.waitFor(120, TimeUnit.SECONDS)) {
        throw new IOException("the office took more than two minutes over " + files);
      }
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
    try (Stream<Path> made = Files.list(results)) {
      if (made.findAny().isEmpty()) {
        throw new IOException(
            "the office made nothing of " + files + ": " + Files.readString(said));
      }
    }
    return results;
  }

  /** Without an office these tests are left out with a word; in CI they fail. */
  private static void requireOffice() {
    boolean found =
        Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, "soffice")));
    if (!found) {
      String lacks =
          "soffice is not on the PATH. These tests need a real office: install libreoffice-calc and"
              + " libreoffice-java-common, as .ci/run does.";
      // Where all tests must run a lack is a failure; elsewhere they are left out and say so.
      if (System.getenv("CI") == null) {
        Assumptions.abort(lacks);
      }
      throw new IllegalStateException(lacks);
    }
  }

  /** The names (without ending) of those files that the office can read, all in one go. */
  public List<String> converted(List<Path> files) throws IOException, InterruptedException {
    Path results = convert(files, "fods");
    try (Stream<Path> made = Files.list(results)) {
      return made.map(path -> path.getFileName().toString().replaceFirst("\\.fods$", ""))
          .sorted()
          .toList();
    }
  }

  /** Every sheet of a file as the office shows it, by the names of the text files it makes. */
  public Map<String, List<String>> shown(Path file) throws IOException, InterruptedException {
    return sheets(convert(file, ALL_SHEETS_AS_SHOWN));
  }

  /** Every sheet of a file with the formulas in place of their results. */
  public Map<String, List<String>> formulas(Path file) throws IOException, InterruptedException {
    return sheets(convert(file, ALL_SHEETS_FORMULAS));
  }

  private static Map<String, List<String>> sheets(Path results) throws IOException {
    Map<String, List<String>> sheets = new TreeMap<>();
    try (Stream<Path> files = Files.list(results)) {
      files.forEach(
          path -> {
            String name = path.getFileName().toString();
            try {
              sheets.put(
                  name.substring(name.indexOf('-') + 1).replace(".csv", ""),
                  Files.readAllLines(path, StandardCharsets.UTF_8));
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    }
    return sheets;
  }
}
