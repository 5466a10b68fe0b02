package washbook.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.runner.file.UnusableFileException;

class OtherKindsTest {
  @TempDir private Path directory;

  @ParameterizedTest
  @ValueSource(strings = {"a.fods", "a.sxc", "a.NUMBERS", "a.gsheet", "a.wk1"})
  void otherSpreadsheetsAreRefusedByName(String name) throws IOException {
    Path file = Files.writeString(directory.resolve(name), "<?xml version=\"1.0\"?><x/>");
    UnusableFileException refusal =
        assertThrows(UnusableFileException.class, () -> FileFormats.of(file));
    String extension = name.substring(1).toLowerCase(Locale.ROOT);
    assertTrue(refusal.getMessage().contains("(" + extension + ")"), refusal.getMessage());
  }

  @Test
  void theContentDecidesAndNotTheName() throws IOException {
    Path file = directory.resolve("a.xls");
    OdsSamples.pack(file, OdsSamples.content("", "<table:table table:name=\"A\"/>"));
    assertEquals("ods", FileFormats.of(file).extensions().get(0));
    Path text = Files.writeString(directory.resolve("a.tsv"), "day\tgravity\n");
    assertEquals("csv", FileFormats.of(text).extensions().get(0));
  }
}
