package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import washbook.log.Understanding;
import washbook.log.fill.BatchCurve;
import washbook.log.fill.Filling;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.log.understand.ChartsSheet;
import washbook.runner.FileFormat;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;

/** The sheet with charts of one file: collects the curves of its logs and has it written. */
final class ChartsWanted {
  private final List<BatchCurve> curves = new ArrayList<>();
  private boolean isThere;
  private boolean foreign;

  void add(Grid grid, Understanding understanding, Filling filling) {
    if (ChartsSheet.isOne(grid)) {
      isThere = true;
    } else if (grid.name().equalsIgnoreCase(ChartsSheet.NAME)) {
      foreign = true;
    }
    curves.addAll(BatchCurve.of(grid, understanding, filling));
  }

  /** Whether no batch has two readings; then there is nothing to draw. */
  boolean isEmpty() {
    return curves.isEmpty();
  }

  void refuseWhereImpossible(FileFormat format) throws UnusableFileException {
    if (format.charts() == null) {
      throw new UnusableFileException(
          "A file of the kind " + format.name() + " takes no charts; leave out --chart.");
    }
    if (foreign) {
      throw new UnusableFileException(
          "The workbook has a sheet '"
              + ChartsSheet.NAME
              + "' that is not ours; rename it or leave out --chart.");
    }
  }

  /** The filled copy, and from that the one with charts. */
  void write(FileFormat format, Path source, List<SheetPatch> patches, Path target)
      throws IOException {
    try (UnfinishedFile filled = UnfinishedFile.beside(target)) {
      format.writer().write(source, patches, filled.path());
      filled.check();
      format.charts().write(filled.path(), curves, isThere, target);
    }
  }

  void check(FileFormat format, Path written) throws IOException {
    for (Grid grid : format.reader().read(written)) {
      if (ChartsSheet.isOne(grid)) {
        return;
      }
    }
    throw new UnusableFileException(
        "Read back, the result has no sheet with charts; the file was left as it was.");
  }
}
