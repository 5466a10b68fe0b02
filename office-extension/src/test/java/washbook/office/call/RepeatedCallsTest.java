package washbook.office.call;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;

class RepeatedCallsTest {
  private final RepeatedCalls calls = new RepeatedCalls();
  private final AtomicInteger worked = new AtomicInteger();

  private Answer ask(String name, Object... values) {
    return calls.answer(
        name,
        values,
        () -> {
          worked.incrementAndGet();
          return Catalogue.get(name).call(values);
        });
  }

  private static List<Object> days(int count) {
    List<Object> days = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      days.add(i / 2.0);
    }
    return days;
  }

  private static List<Object> gravities(int count) {
    List<Object> gravities = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      gravities.add(1.010 + 0.07 * Math.exp(-i / 8.0));
    }
    return gravities;
  }

  @Test
  void theSameQuestionAboutTheSameReadingsIsWorkedOutOnce() {
    Answer first = ask("FERMENTRATE", days(40), gravities(40));
    for (int formula = 0; formula < 100; formula++) {
      assertEquals(first, ask("FERMENTRATE", days(40), gravities(40)));
    }
    assertEquals(1, worked.get());
  }

  @Test
  void anotherFunctionAReadingThatChangesAndOneMoreAreWorkedOut() {
    Answer first = ask("FERMENTRATE", days(40), gravities(40));
    List<Object> changed = gravities(40);
    changed.set(39, 1.009);
    Answer second = ask("FERMENTRATE", days(40), changed);
    assertEquals(Catalogue.get("FERMENTRATE").call(days(40), changed), second);
    ask("FERMENTSTATE", days(40), gravities(40));
    ask("FERMENTRATE", days(41), gravities(41));
    assertEquals(4, worked.get());
    assertEquals(first, ask("FERMENTRATE", days(40), gravities(40)));
    assertEquals(4, worked.get());
  }

  @Test
  void whatIsAskedLongAgoIsForgotten() {
    for (int count = 10; count < 60; count++) {
      ask("FERMENTRATE", days(count), gravities(count));
    }
    ask("FERMENTRATE", days(59), gravities(59));
    assertEquals(50, worked.get());
    ask("FERMENTRATE", days(10), gravities(10));
    assertEquals(51, worked.get());
  }

  @Test
  void singleValuesAndRangesTooLongToKeepAreAskedEveryTime() {
    for (int i = 0; i < 2; i++) {
      ask("ABV", 1.080, 1.010);
      ask("FERMENTRATE", days(300_000), gravities(300_000));
    }
    assertEquals(4, worked.get());
  }
}
