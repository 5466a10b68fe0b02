package washbook.functions.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Every published figure is met, and the table of them and TRUTH.md say what was found today. To
 * write both again: {@code -Dtest=TruthTest -Dwashbook.write=true}.
 */
class TruthTest {
  private static final Path PAGE = Path.of("../TRUTH.md");
  private static final Path TABLE = Path.of("src/test/resources/washbook/published-values.tsv");
  private static final List<PublishedValue> VALUES = PublishedValues.all();

  @Test
  void everyPublishedValueIsMet() {
    for (PublishedValue value : VALUES) {
      assertTrue(Math.abs(value.deviation()) <= value.allowed(), value + ": " + value.deviation());
    }
    assertTrue(VALUES.size() > 500, "only " + VALUES.size());
  }

  /** The table from which the proof sheet among the starters is made. */
  @Test
  void theTableOfPublishedValuesIsCurrent() throws IOException {
    current(
        TABLE,
        VALUES.stream()
            .map(PublishedValue::line)
            .collect(
                Collectors.joining(
                    "\n", "function\targuments\tpublished\tallowed\tsource\n", "\n")));
  }

  @Test
  void theTruthPageIsCurrent() throws IOException {
    current(PAGE, TruthPage.markdown(VALUES));
  }

  private static void current(Path file, String text) throws IOException {
    if (Boolean.getBoolean("washbook.write")) {
      Files.writeString(file, text);
    }
    assertEquals(text, Files.readString(file), file + " is stale: -Dwashbook.write=true");
  }
}
