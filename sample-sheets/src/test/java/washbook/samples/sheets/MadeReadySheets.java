package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import washbook.samples.Office;

/** Ready sheets of other languages, made of the English ones as a release makes them. */
final class MadeReadySheets {
  static final Path TEXTS = Path.of("src/release/ready");
  static final Path ENGLISH = Path.of("starters");

  private MadeReadySheets() {}

  /** Into {@code folder}; all languages where none is named. */
  static void into(Path folder, String... languages) throws IOException, InterruptedException {
    Path classes = Files.createTempDirectory("ready-sheets");
    try {
      String path = System.getProperty("java.class.path");
      List<String> compile = new ArrayList<>(List.of("javac", "-cp", path, "-d", "" + classes));
      try (Stream<Path> sources = Files.list(TEXTS)) {
        sources.map(Path::toString).filter(s -> s.endsWith(".java")).forEach(compile::add);
      }
      run(compile);
      List<String> make = new ArrayList<>(List.of("java", "-cp", classes + ":" + path));
      make.addAll(List.of("ReadySheets", "" + ENGLISH, "" + TEXTS, "" + folder));
      make.addAll(Arrays.asList(languages));
      run(make);
    } finally {
      Office.delete(classes);
    }
  }

  private static void run(List<String> command) throws IOException, InterruptedException {
    command.set(0, Path.of(System.getProperty("java.home"), "bin", command.get(0)).toString());
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), said);
  }
}
