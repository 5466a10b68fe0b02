package washbook.samples.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Recognition measured on the corpus: nothing wrong is filled, nearly everything is understood. */
class CorpusTest {
  private static final double LEAST_UNDERSTOOD = 0.95;
  private static final Path REPORT = Path.of("target/corpus-report.txt");

  @Test
  void nothingWrongIsFilledAndNearlyAllIsUnderstood() throws IOException {
    Tally tally = new Tally();
    List<String> wrong = new ArrayList<>();
    List<String> missed = new ArrayList<>();
    List<String> names = new ArrayList<>();
    int logs = 0;
    int understood = 0;
    int toFill = 0;
    int filled = 0;
    for (Path folder : List.of(CorpusFilesTest.GENERATED, CorpusFilesTest.TYPED)) {
      for (Path log : CorpusFilesTest.logs(folder)) {
        Expected expected = CorpusFilesTest.expected(log);
        Taken taken = Taken.of(log);
        Judge judge = new Judge(expected, taken, tally);
        boolean mustFill = expected.verdict() == Expected.Verdict.FILL;
        logs++;
        understood += judge.understood() ? 1 : 0;
        toFill += mustFill ? 1 : 0;
        filled += mustFill && judge.understood() ? 1 : 0;
        String name = log.getFileName() + " (" + expected.about() + "): ";
        judge.wrong().stream().limit(3).forEach(w -> wrong.add(name + w));
        judge.names().forEach(n -> names.add(name + n));
        judge.missed().stream()
            .limit(3)
            .forEach(m -> missed.add(expected.verdict() + " " + name + m + taken.questions()));
      }
    }
    String report =
        String.format(
            Locale.ROOT,
            "%d logs, %d as expected; of %d to be filled without help %d were (%.1f %%)%n%n%s%n"
                + "WRONG (%d)%n%s%nNOT UNDERSTOOD (%d)%n%s%n%nBATCHES CALLED OTHERWISE (%d)%n%s%n",
            logs,
            understood,
            toFill,
            filled,
            100.0 * filled / toFill,
            tally.table(),
            wrong.size(),
            String.join("\n", wrong),
            missed.size(),
            String.join("\n", missed),
            names.size(),
            String.join("\n", names));
    Files.writeString(REPORT, report);
    System.out.println(report);
    assertEquals(List.of(), wrong, "wrongly filled");
    assertTrue(filled >= LEAST_UNDERSTOOD * toFill, filled + " of " + toFill + " understood");
    assertTrue(tally.nameRecall() >= LEAST_UNDERSTOOD, "names of batches found");
    assertTrue(tally.namePrecision() >= LEAST_UNDERSTOOD, "names of batches right");
  }
}
