package washbook.functions;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

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
}
