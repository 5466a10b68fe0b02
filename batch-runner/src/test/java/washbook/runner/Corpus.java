package washbook.runner;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** Difficult workbooks that nobody here wrote; they lie beside the checkout, or not at all. */
public final class Corpus {
  private Corpus() {}

  /** The files with this extension in the order of their names; skips the test without them. */
  public static List<Path> files(String extension) throws IOException {
    Path directory = Path.of("..", "..", "shared", "corpus", "workbooks");
    Path byCheckout = Path.of("..", "shared", "corpus", "workbooks");
    String stated = System.getProperty("corpus");
    Path found =
        stated != null ? Path.of(stated) : Files.isDirectory(directory) ? directory : byCheckout;
    Assumptions.assumeTrue(
        Files.isDirectory(found),
        () -> "SKIPPED: the difficult workbooks are not at " + directory.toAbsolutePath());
    try (Stream<Path> files = Files.list(found)) {
      return files
          .filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith("." + extension))
          .sorted()
          .toList();
    }
  }
}
