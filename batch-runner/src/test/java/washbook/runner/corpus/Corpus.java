package washbook.runner.corpus;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** Difficult workbooks that nobody here wrote; they lie beside the checkout, not in it. */
final class Corpus {
  private static final String FOLDER = "shared/corpus/workbooks";

  private Corpus() {}

  /** The corpus files with one of these extensions; the test is skipped when there is no corpus. */
  static List<Path> files(String... extensions) throws IOException {
    Path root = Path.of("").toAbsolutePath();
    while (root != null && !Files.exists(root.resolve(".git"))) {
      root = root.getParent();
    }
    Path folder = root == null ? null : root.resolveSibling(FOLDER);
    if (folder == null || !Files.isDirectory(folder)) {
      String message = "SKIPPED: the corpus of difficult workbooks is not at " + folder;
      System.out.println(message);
      Assumptions.abort(message);
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> List.of(extensions).contains(extension(file))).sorted().toList();
    }
  }

  static String extension(Path file) {
    String name = file.getFileName().toString();
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
