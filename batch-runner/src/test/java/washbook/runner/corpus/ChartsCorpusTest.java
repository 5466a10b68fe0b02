package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.fill.BatchCurve;
import washbook.log.sheet.Grid;
import washbook.runner.FileFormat;
import washbook.runner.FileFormats;
import washbook.runner.file.UnusableFileException;

/** Charts go into every workbook that takes columns, and it is as readable afterwards as before. */
class ChartsCorpusTest {
  private static final List<BatchCurve> CURVES =
      List.of(
          new BatchCurve(
              "Plum 3",
              "Log",
              true,
              new double[] {0, 3, 6},
              new double[] {1.085, 1.05, 1.02},
              new double[] {0, 4.6, 8.7},
              new double[] {20, 22, 21}));

  @TempDir private Path folder;

  @Test
  void everyWorkbookThatTakesColumnsTakesChartsToo() throws IOException {
    ZipSecureFile.setMinInflateRatio(0);
    List<String> failed = new ArrayList<>();
    int drawn = 0;
    int readable = 0;
    for (Path file : Corpus.files("xlsx", "xlsm", "ods")) {
      Path filled = filled(file);
      if (filled == null) {
        continue;
      }
      FileFormat format = FileFormats.of(filled);
      Path charts = folder.resolve("charts." + Corpus.extension(file));
      try {
        format.charts().orElseThrow().write(filled, CURVES, Optional.empty(), charts);
        List<Grid> grids = format.reader().read(charts);
        assertEquals("Washbook charts", grids.get(grids.size() - 1).name(), file.toString());
      } catch (UnusableFileException e) {
        if (!e.getMessage().contains("structure is protected")) {
          failed.add(file.getFileName() + ": " + e.getMessage());
        }
        continue;
      }
      drawn++;
      if (isReadable(filled)) {
        readable++;
        if (!isReadable(charts)) {
          failed.add(file.getFileName() + ": no longer readable");
        }
      }
    }
    System.out.println("charts: " + drawn + " workbooks, " + readable + " read by POI too");
    assertEquals(List.of(), failed);
    assertTrue(drawn > 100 && readable > 100, drawn + " drawn");
  }

  private Path filled(Path file) throws IOException {
    Path filled = folder.resolve("filled." + Corpus.extension(file));
    try {
      FileFormat format = FileFormats.of(file);
      format.writer().write(file, ForcedPatch.on(format.reader().read(file)), filled);
      return filled;
    } catch (UnusableFileException refused) {
      return null;
    }
  }

  private static boolean isReadable(Path file) {
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      return workbook.getNumberOfSheets() > 0;
    } catch (IOException | RuntimeException | LinkageError e) {
      return false;
    }
  }
}
