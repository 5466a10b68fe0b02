package washbook.samples.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;

/** The corpus is complete, and what it expects agrees with itself. */
class CorpusFilesTest {
  static final Path GENERATED = Path.of("src/test/resources/corpus");
  static final Path TYPED = Path.of("src/test/resources/typed");

  static List<Path> logs(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> !f.toString().endsWith(".expected")).sorted().toList();
    }
  }

  static Expected expected(Path log) throws IOException {
    return ExpectedFile.read(log.resolveSibling(log.getFileName() + ".expected"));
  }

  @Test
  void everyGeneratedLogIsThereAndNothingElse() throws IOException {
    Set<String> made =
        Corpus.logs().stream().map(Log::fileName).collect(Collectors.toCollection(TreeSet::new));
    Set<String> there = new TreeSet<>();
    logs(GENERATED).forEach(f -> there.add(f.getFileName().toString()));
    assertEquals(made, there);
    assertEquals(115, there.size());
    assertEquals(53, logs(TYPED).size());
  }

  @Test
  void whatIsExpectedIsWhatTheGeneratorSays() throws IOException {
    for (Log log : Corpus.logs()) {
      Path again = Files.createTempFile("expected", ".txt");
      ExpectedFile.write(log.expected(), again);
      Path kept = GENERATED.resolve(log.fileName() + ".expected");
      assertEquals(Files.readString(kept), Files.readString(again), log.fileName());
      Files.delete(again);
    }
  }

  /** Every reading, corrected and calculated by the catalogue, gives the truth it was made from. */
  @Test
  void readingsLeadBackToTheTruth() throws IOException {
    int checked = 0;
    for (Path log : logs(GENERATED)) {
      for (Expected.Table table : expected(log).tables()) {
        for (Expected.Row row : table.rows()) {
          if (!row.refused() && !Double.isNaN(row.reading())) {
            check(log, table, row);
            checked++;
          }
        }
      }
    }
    assertTrue(checked > 800, checked + " rows checked");
  }

  private static void check(Path log, Expected.Table table, Expected.Row row) {
    Recomputed figures = Recomputed.of(table, row);
    String where = log.getFileName() + " row " + (row.row() + 1);
    assertEquals(row.gravity(), figures.gravity(), row.gravityError(), where);
    if (figures.gravity() <= figures.originalGravity()) {
      Answer abv = Catalogue.get("ABV").call(figures.originalGravity(), figures.gravity());
      assertTrue(abv instanceof Answer.Number, where + ": " + abv);
      assertEquals(row.abv(), ((Answer.Number) abv).value(), row.abvError(), where);
    }
  }
}
