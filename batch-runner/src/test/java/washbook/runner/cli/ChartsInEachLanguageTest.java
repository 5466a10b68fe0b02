package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;
import washbook.log.understand.ChartsSheet;
import washbook.runner.FileFormats;

/**
 * The sheet with charts is called in the log's language, and stays one when the log is refilled.
 */
class ChartsInEachLanguageTest {
  private static final Path LOGS = Path.of("../sample-sheets/src/test/resources/corpus");

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Language.class)
  void aNewSheetHasTheNameOfTheLanguageAndKeepsItInAnother(Language language) throws IOException {
    for (String log : List.of("de-oechsle.xlsx", "de-kmw.ods")) {
      Path first = filled(LOGS.resolve(log), language.code(), "--language", language.code());
      List<String> names = names(first);
      assertEquals(ChartsSheet.name(language), names.get(names.size() - 1));
      Path german = filled(first, "again", "--overwrite");
      assertEquals(names, names(german));
      assertEquals(-1, Files.mismatch(german, filled(german, "third", "--overwrite")), log);
    }
  }

  @Test
  void aGermanLogHasAGermanSheet() throws IOException {
    List<String> names = names(filled(LOGS.resolve("de-oechsle.xlsx"), "german"));
    assertEquals("Washbook-Diagramme", names.get(names.size() - 1));
  }

  private Path filled(Path log, String into, String... options) {
    List<String> words =
        new ArrayList<>(
            List.of("fill", log.toString(), "--out", folder.resolve(into).toString(), "--chart"));
    words.addAll(List.of(options));
    Cli run = Cli.run(words.toArray(String[]::new));
    assertTrue(run.code() <= 1, run.out() + run.err());
    return folder.resolve(into).resolve(log.getFileName());
  }

  private static List<String> names(Path file) throws IOException {
    return FileFormats.of(file).reader().read(file).stream().map(Grid::name).toList();
  }
}
