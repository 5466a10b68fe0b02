package washbook.samples.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.audit.Audit;
import washbook.log.audit.LogAuditor;

/** The audit finds why a log's own figures are off: each cause was planted. */
class AuditTest {
  @Test
  void thePlantedCauseIsFound() throws IOException {
    int logs = 0;
    for (Path log : CorpusFilesTest.logs(CorpusFilesTest.GENERATED)) {
      List<String> planted = CorpusFilesTest.expected(log).causes();
      if (planted.isEmpty()) {
        continue;
      }
      logs++;
      List<Audit.Column> columns = columns(log);
      assertFalse(columns.isEmpty(), log.toString());
      for (Audit.Column column : columns) {
        String where = log.getFileName() + ": " + column.causes() + " " + column.detail();
        assertTrue(column.differing() > 0, where);
        assertFalse(column.causes().isEmpty(), where);
        column.causes().forEach(c -> assertTrue(planted.contains(c.name()), where));
      }
    }
    assertEquals(7, logs);
  }

  @Test
  void figuresThatAreRightAgree() throws IOException {
    List<Audit.Column> columns = columns(CorpusFilesTest.GENERATED.resolve("audit-right.xlsx"));
    assertEquals(2, columns.size());
    for (Audit.Column column : columns) {
      assertEquals(0, column.differing());
      assertEquals(List.of(Audit.Cause.AGREES), column.causes());
    }
  }

  private static List<Audit.Column> columns(Path log) throws IOException {
    List<Audit.Column> columns = new ArrayList<>();
    for (Taken.Sheet sheet : Taken.of(log).sheets()) {
      columns.addAll(LogAuditor.audit(sheet.grid(), sheet.understanding()).columns());
    }
    return columns;
  }
}
