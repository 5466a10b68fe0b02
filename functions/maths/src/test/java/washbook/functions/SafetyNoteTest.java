package washbook.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SafetyNoteTest {
  @Test
  void namesEveryDangerAndLeavesTheDecisionToLocalCodes() {
    String text = SafetyNote.text().toLowerCase(Locale.ROOT);
    for (String word :
        List.of("vapour", "flame", "carbon dioxide", "hot", "methanol", "licence", "excise")) {
      assertTrue(text.contains(word), word);
    }
    assertTrue(text.contains("local codes and licensed practice decide"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void everyLanguageHasEveryLine(String language) {
    List<String> lines = SafetyNote.lines(language);
    assertEquals(SafetyNote.LINES.size(), lines.size());
    for (int i = 0; i < lines.size(); i++) {
      assertTrue(lines.get(i).length() > SafetyNote.LINES.get(i).length() / 2, lines.get(i));
      assertFalse(lines.get(i).matches(".*\\b(the|and|can|safe)\\b.*"), lines.get(i));
    }
    assertTrue(SafetyNote.text(language).startsWith(SafetyNote.title(language)));
    assertEquals(SafetyNote.text(), SafetyNote.text("sv"));
  }
}
