package washbook.samples.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import washbook.log.RowAccount;

/**
 * Every row with a value in the reading column is filled or refused, never passed over, and the
 * counts of filled, refused and passed over rows add up to the rows of a table's range.
 */
class AccountingTest {
  private int rows;
  private final List<String> wrongAccounts = new ArrayList<>();

  @Test
  void everyReadingOfTheCorpusIsFilledOrRefused() throws IOException {
    List<String> vanished = new ArrayList<>();
    for (String folder : List.of("corpus", "typed")) {
      try (Stream<Path> files = Files.list(Path.of("src/test/resources", folder))) {
        for (Path file : files.sorted().toList()) {
          if (!file.toString().endsWith(".expected")) {
            for (Sheet sheet : Recogniser.read(file)) {
              for (Seen.Table table : Recogniser.look(sheet).tables()) {
                checkAccount(file.getFileName().toString(), table);
                vanished(sheet, table)
                    .forEach(r -> vanished.add(file.getFileName() + " row " + (r + 1)));
              }
            }
          }
        }
      }
    }
    assertTrue(rows > 1000, rows + " rows");
    assertEquals(List.of(), wrongAccounts);
    List<String> tooMany = new ArrayList<>();
    Allowed.compare("corpus", vanished.size(), Allowed.UNACCOUNTED, Allowed.LOGS, tooMany);
    assertEquals(List.of(), tooMany, vanished.toString());
  }

  @Test
  void everyReadingOfTheMadeLogsIsFilledOrRefused() {
    List<String> vanished = new ArrayList<>();
    for (int number = 0; number < Allowed.LOGS; number++) {
      GeneratedLog log = GeneratedLog.of(GeneratedLogsTest.SEED, number);
      for (Seen.Table table : Recogniser.look(log.sheet()).tables()) {
        checkAccount(log.seed() + "/" + log.number(), table);
        List<Integer> readings = vanished(log.sheet(), table);
        readings.retainAll(log.truth().rows().stream().map(Truth.Row::row).toList());
        readings.forEach(r -> vanished.add(log.seed() + "/" + log.number() + " row " + (r + 1)));
      }
    }
    assertTrue(rows > 10_000, rows + " rows");
    assertEquals(List.of(), wrongAccounts);
    List<String> tooMany = new ArrayList<>();
    Allowed.compare("inside a range", vanished.size(), Allowed.UNACCOUNTED, Allowed.LOGS, tooMany);
    assertEquals(List.of(), tooMany, vanished.toString());
  }

  /** The account covers the range, says of a filled table what its cells show, and adds up. */
  private void checkAccount(String where, Seen.Table table) {
    RowAccount account = table.account();
    int filled = table.settled() ? table.filled().size() : 0;
    boolean right =
        account != null
            && account.rows() == table.lastRow() - table.headerRow() + 1
            && account.rows() == account.filled() + account.refused() + account.passedOver()
            && account.passedOver()
                == account.passed().stream().mapToInt(RowAccount.Passed::count).sum()
            && account.filled() == filled
            && (!table.settled() || account.refused() == table.refused().size());
    if (!right) {
      wrongAccounts.add(
          where + ": " + account + ", " + filled + " filled, " + table.refused().size());
    }
  }

  /** Rows inside a filled table's range with a value of which nothing is said. */
  private List<Integer> vanished(Sheet sheet, Seen.Table table) {
    List<Integer> vanished = new ArrayList<>();
    if (!table.settled()) {
      return vanished;
    }
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      boolean value = false;
      for (int column : table.readingColumns()) {
        value |= isValue(sheet.at(row, column));
      }
      if (value) {
        rows++;
        if (!table.filled().containsKey(row) && !table.refused().containsKey(row)) {
          vanished.add(row);
        }
      }
    }
    return vanished;
  }

  /** A number, or a text that begins as one; formulas in the reading column are means. */
  private static boolean isValue(Object cell) {
    return cell instanceof Double || (cell instanceof String text && text.matches("[~']?[0-9].*"));
  }
}
