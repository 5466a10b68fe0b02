package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import washbook.log.Understanding;
import washbook.log.fill.BatchCurve;
import washbook.log.fill.Filling;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.log.understand.ChartsSheet;
import washbook.runner.FileFormat;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport;

/**
 * The sheet with charts of one file: collects the curves of its logs and has it written. A file
 * that takes no such sheet is filled without it, and the report says so.
 */
final class ChartsWanted {
  private final Wording words;
  private final List<BatchCurve> curves = new ArrayList<>();
  private final Set<String> foreign = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);

  /** The name of a sheet of ours that is there already; null for none. */
  private String older;

  /** Why the sheet was left out; "" when it was not. */
  private String leftOut = "";

  /**
   * @param language in which the report says why there are no charts
   */
  ChartsWanted(Language language) {
    words = new Wording(language);
  }

  void add(Grid grid, Understanding understanding, Filling filling) {
    if (!ChartsSheet.isOne(grid)) {
      foreign.add(grid.name());
    } else if (older == null) {
      older = grid.name();
    }
    curves.addAll(BatchCurve.of(grid, understanding, filling));
  }

  /** The columns and, where that can be done, the sheet with charts. */
  void write(FileFormat format, SafeReplace.Job job, List<SheetPatch> patches, Path target)
      throws IOException {
    if (!curves.isEmpty()) {
      leftOut = reasonAgainst(format);
    }
    if (curves.isEmpty() || !leftOut.isEmpty()) {
      format.writer().write(job.source(), patches, target);
      return;
    }
    try (UnfinishedFile filled = UnfinishedFile.beside(job.root(), job.target())) {
      format.writer().write(job.source(), patches, filled.path());
      filled.check();
      addCharts(format, filled.path(), target);
    }
  }

  private void addCharts(FileFormat format, Path filled, Path target) throws IOException {
    try {
      format.charts().orElseThrow().write(filled, curves, Optional.ofNullable(older), target);
    } catch (UnusableFileException e) {
      leftOut = words.say(e.told());
      WrittenFile.copy(filled, target);
    }
  }

  /** Why a file takes no charts; "" when it does. */
  private String reasonAgainst(FileFormat format) {
    if (format.charts().isEmpty()) {
      return words.say("charts.impossible", format.name());
    }
    String name = ChartsSheet.name(curves.get(0).language());
    return older == null && foreign.contains(name) ? words.say("charts.foreign", name) : "";
  }

  /** The report with a word about charts that were left out. */
  FileReport mentionedIn(FileReport report) {
    return leftOut.isEmpty()
        ? report
        : report.with(new FileReport.Refusal("", FileReport.Refusal.NO_CHARTS, leftOut));
  }

  void check(FileFormat format, Path written) throws IOException {
    if (curves.isEmpty() || !leftOut.isEmpty()) {
      return;
    }
    for (Grid grid : format.reader().read(written)) {
      if (ChartsSheet.isOne(grid)) {
        return;
      }
    }
    throw UnusableFileException.of("readBack.charts");
  }
}
