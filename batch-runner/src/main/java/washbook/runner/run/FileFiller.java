package washbook.runner.run;

import com.google.gson.JsonElement;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import washbook.log.Understanding;
import washbook.log.fill.Filling;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.runner.FileFormat;
import washbook.runner.FileFormats;
import washbook.runner.file.FileIdentity;
import washbook.runner.file.ResultFolder;
import washbook.runner.file.SourceFile;
import washbook.runner.file.UnusableFileException;
import washbook.runner.report.FileReport;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.FileResult;
import washbook.runner.report.Json;
import washbook.runner.sheet.PatchStore;

/** Fills one file: reads, understands, computes, writes and reads back. */
public final class FileFiller implements FolderRun.Work<FileResult> {
  private final FillJob job;

  public FileFiller(FillJob job) {
    this.job = job;
  }

  /** Failures are not noted, so that they are tried again. */
  @Override
  public Journal.Note note(FileResult result) {
    return result.report().status() == Status.FAILED
        ? null
        : new Journal.Note(Json.GSON.toJsonTree(result.report()), result.written());
  }

  @Override
  public FileResult restore(JsonElement report) {
    return FileResult.of(Json.GSON.fromJson(report, FileReport.class));
  }

  @Override
  public FolderRun.Made<FileResult> make(WorkItem item) {
    if (item.refused() != null) {
      return made(FileResult.of(item.refused()));
    }
    try {
      return read(item);
    } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError failure) {
      return made(failed(item, Refusal.UNREADABLE, failure));
    }
  }

  @Override
  public FileResult failed(WorkItem item, Exception failure) {
    return failed(item, Refusal.UNWRITABLE, failure);
  }

  private static FolderRun.Made<FileResult> made(FileResult result) {
    return new FolderRun.Made<>(result, null);
  }

  private FileResult failed(WorkItem item, String code, Throwable failure) {
    return FileResult.of(
        FileReport.failed(item.shown(), code, Failure.reason(failure, job.filler().messages())));
  }

  private FolderRun.Made<FileResult> read(WorkItem item) throws IOException {
    if (!job.destination().inPlace() || job.dryRun()) {
      return read(item, null);
    }
    try (SourceFile held = SourceFile.open(item.within(), item.file())) {
      return read(item, held);
    } catch (FileSystemException failure) {
      throw Failure.named(failure, item.file(), item.file());
    }
  }

  /**
   * Reads and writes.
   *
   * @param held the file, open, where it is to be replaced
   */
  private FolderRun.Made<FileResult> read(WorkItem item, SourceFile held) throws IOException {
    SafeReplace.Job to = destined(item, held);
    FileFormat format = FileFormats.of(item.file());
    List<SheetPatch> patches = new ArrayList<>();
    SheetFiller filler = job.filler().beside(item.file());
    ReportBuilder report = new ReportBuilder(item.shown(), filler.messages(), filler.mapBeside());
    ChartsWanted charts = job.charts() ? new ChartsWanted(job.filler().messages()) : null;
    try (PatchStore store = new PatchStore()) {
      // Taken out one by one, so that what is done with makes room for the rest.
      Deque<Grid> grids = new ArrayDeque<>(format.reader().read(item.file()));
      boolean several = grids.size() > 1;
      while (!grids.isEmpty()) {
        SheetPatch patch = fill(grids.remove(), filler, report, charts);
        if (!patch.columns().isEmpty()) {
          patches.add(several ? store.put(patch) : patch);
        }
      }
      FileReport done = report.build();
      if (patches.isEmpty() || job.dryRun() || done.status() == Status.NOTHING_RECOGNISED) {
        return made(new FileResult(done, null, false));
      }
      if (job.writesFormulas() && !format.holdsFormulas()) {
        throw UnusableFileException.of("write.valuesOnly", format.name());
      }
      try {
        PendingResult result = write(to, format, patches, charts);
        FileReport told = charts == null ? done : charts.mentionedIn(done);
        return new FolderRun.Made<>(new FileResult(told, item.target(), result.changes()), result);
      } catch (IOException | RuntimeException | OutOfMemoryError failure) {
        return made(failed(item, Refusal.UNWRITABLE, failure));
      }
    }
  }

  private SheetPatch fill(Grid grid, SheetFiller filler, ReportBuilder report, ChartsWanted charts)
      throws UnusableFileException {
    Understanding understanding = filler.understand(grid);
    Filling filling = filler.fill(grid, understanding);
    report.add(understanding, filling);
    if (charts != null) {
      charts.add(grid, understanding, filling);
    }
    if (job.keepSeries()) {
      report.addCurves(SeriesReader.read(grid, understanding, filling));
    }
    if (job.overviews() != null) {
      report.addOverview(job.overviews().of(grid, understanding, filling));
    }
    return filling.patch();
  }

  private SafeReplace.Job destined(WorkItem item, SourceFile held) throws IOException {
    Path out = job.destination().folder();
    Path root = out != null ? out : item.within();
    return new SafeReplace.Job(
        root == null ? null : root.toAbsolutePath(),
        item.file(),
        FileStamp.of(item.file()),
        held == null ? null : held.key(),
        out != null ? null : FileIdentity.key(folder(item.target())),
        item.target(),
        job.destination().backup());
  }

  private PendingResult write(
      SafeReplace.Job to, FileFormat format, List<SheetPatch> patches, ChartsWanted charts)
      throws IOException {
    if (job.destination().inPlace() && to.key() == null) {
      throw UnusableFileException.of("write.link", UnusableFileException.quoted(to.target()));
    }
    if (job.destination().folder() != null) {
      ResultFolder.make(to.root(), folder(to.target()));
    }
    return SafeReplace.prepare(
        to,
        unfinished -> {
          if (charts == null) {
            format.writer().write(to.source(), patches, unfinished);
          } else {
            charts.write(format, to, patches, unfinished);
          }
        },
        unfinished -> {
          ReadBack.check(format, unfinished, patches);
          if (job.destination().replacesOnlyOurs()) {
            ReadBack.checkReplaced(format, unfinished, to.target(), older -> false);
          }
          if (charts != null) {
            charts.check(format, unfinished);
          }
        });
  }

  private static Path folder(Path target) {
    return target.toAbsolutePath().getParent();
  }
}
