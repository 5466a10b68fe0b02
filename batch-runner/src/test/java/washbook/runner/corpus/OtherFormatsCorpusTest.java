package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OtherFormatsCorpusTest {
  @TempDir private Path folder;

  @Test
  void everyXlsIsRefusedWithAReasonOrPatchedWithoutAnyOtherChange() throws Exception {
    assertTrue(patched("xls", XlsChangeCheck.class) > 150);
  }

  @Test
  void everyOdsIsRefusedWithAReasonOrPatchedWithoutAnyOtherChange() throws Exception {
    assertEquals(1, patched("ods", OdsChangeCheck.class));
  }

  private long patched(String extension, Class<? extends ChangeCheck> check) throws Exception {
    List<Path> files = Corpus.files(extension);
    List<CorpusResult> results = CorpusRun.run(files, check, folder);
    assertEquals(files.size(), results.size());
    long patched = 0;
    for (CorpusResult result : results) {
      assertTrue(result.kind() != CorpusResult.Kind.FAILED, result.toLine());
      if (result.kind() == CorpusResult.Kind.PATCHED) {
        patched++;
      } else {
        assertTrue(result.text().endsWith("."), result.toLine());
        System.out.println(result.toLine());
      }
    }
    System.out.println("corpus of ." + extension + ": " + patched + " of " + files.size());
    return patched;
  }
}
