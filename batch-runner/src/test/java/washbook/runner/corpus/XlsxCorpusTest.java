package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class XlsxCorpusTest {
  @TempDir private Path folder;

  @Test
  void everyFileIsRefusedWithAReasonOrPatchedWithoutAnyOtherChange() throws Exception {
    List<Path> files = Corpus.files("xlsx", "xlsm", "xlsb");
    List<CorpusResult> results = CorpusRun.run(files, XlsxChangeCheck.class, folder);
    assertEquals(files.size(), results.size());
    Map<CorpusResult.Kind, List<CorpusResult>> byKind =
        results.stream().collect(Collectors.groupingBy(CorpusResult::kind));
    byKind.forEach((kind, of) -> System.out.println("corpus of .xlsx: " + kind + " " + of.size()));
    assertEquals(List.of(), byKind.getOrDefault(CorpusResult.Kind.FAILED, List.of()));
    for (CorpusResult result : results) {
      if (result.kind() != CorpusResult.Kind.PATCHED) {
        assertTrue(result.text().endsWith("."), result.toLine());
        System.out.println(result.toLine());
      }
    }
  }
}
