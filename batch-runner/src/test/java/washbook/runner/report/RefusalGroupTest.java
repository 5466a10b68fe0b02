package washbook.runner.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import washbook.runner.report.FileReport.Refusal;

class RefusalGroupTest {
  private static final String BLANK = "temperature is blank";

  @Test
  void refusalsOfOneColumnForOneReasonAreOneLineOfRanges() {
    Stream<Refusal> run =
        IntStream.rangeClosed(7, 19).mapToObj(i -> new Refusal("Log!B" + i, "BLANK", BLANK));
    List<Refusal> all =
        Stream.concat(
                run,
                Stream.of(
                    new Refusal("Log!B23", "BLANK", BLANK),
                    new Refusal("Log!C23", "BLANK", BLANK),
                    new Refusal("'My log'!B24", "BLANK", BLANK),
                    new Refusal("Log!B24", "TOO_HIGH", "reading 7 is too high"),
                    new Refusal("", "UNREADABLE", "no such file")))
            .toList();
    assertEquals(
        List.of(
            new RefusalGroup("Log!B7:B19, B23", "BLANK", BLANK, 14),
            new RefusalGroup("Log!C23", "BLANK", BLANK, 1),
            new RefusalGroup("'My log'!B24", "BLANK", BLANK, 1),
            new RefusalGroup("Log!B24", "TOO_HIGH", "reading 7 is too high", 1),
            new RefusalGroup("", "UNREADABLE", "no such file", 1)),
        RefusalGroup.of(all));
  }
}
