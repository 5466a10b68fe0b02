package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A text's meaning is worked out once, and however many texts come, each gets its own. */
class RememberedTest {
  private final List<String> asked = new ArrayList<>();
  private final Remembered<Integer> lengths =
      new Remembered<>(
          text -> {
            asked.add(text);
            return text.length();
          });

  @Test
  void workedOutOnce() {
    assertEquals(3, lengths.of("SG1"));
    assertEquals(3, lengths.of("SG1"));
    assertEquals(5, lengths.of("batch"));
    assertEquals(List.of("SG1", "batch"), asked);
  }

  @Test
  void longTextsAreNotKept() {
    String note = "n".repeat(161);
    assertEquals(161, lengths.of(note));
    assertEquals(161, lengths.of(note));
    assertEquals(2, asked.size());
  }

  @Test
  void moreTextsThanAreKept() {
    for (int round = 0; round < 2; round++) {
      for (int i = 0; i < 5000; i++) {
        assertEquals(String.valueOf(i).length(), lengths.of(String.valueOf(i)));
      }
    }
  }
}
