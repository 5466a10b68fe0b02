package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import washbook.runner.file.LeftBehind;
import washbook.runner.report.ConsoleReport;
import washbook.runner.report.FileResult;
import washbook.runner.report.Reports;
import washbook.runner.run.FileFiller;
import washbook.runner.run.FillJob;
import washbook.runner.run.Journal;
import washbook.runner.run.Shard;
import washbook.runner.run.SheetFiller;
import washbook.runner.run.Stop;
import washbook.runner.run.WorkItem;

/** {@code washbook fill}: fills computed columns into logs. */
@Command(
    name = "fill",
    mixinStandardHelpOptions = true,
    description = {
      "Fills computed columns into fermentation logs: corrected gravity, alcohol to date, apparent"
          + " and real attenuation, and a note where a row was refused.",
      "The log itself stays as it is, unless --in-place is given; then it is replaced by a finished"
          + " file only. Folders are walked; copies, kept originals and lock files are left out."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  washbook fill Plum.xlsx",
      "  washbook fill logs --out computed --report computed/report.html",
      "  washbook fill logs --in-place --backup --threads 4",
      "  washbook fill Plum.xlsx --in-place --chart",
      "  washbook fill logs --in-place --continue",
      "  washbook fill archive --out computed --shard 2/8 --report part2.json"
    })
final class FillCommand implements Callable<Integer> {
  @ParentCommand private WashbookCommand parent;
  @Mixin private FillArguments fill;
  @Mixin private RunArguments run;
  @Mixin private JournalArguments journal;
  @Mixin private WarningArguments warnings;

  @Option(names = "--dry-run", description = "Compute and report, but write no workbook.")
  private boolean dryRun;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Logs, or folders with logs.")
  private List<Path> files = List.of();

  @Override
  public Integer call() throws IOException {
    Path report = run.report(files, fill.out());
    Shard shard = run.shard(System.getenv());
    int threads = run.threads();
    SheetFiller filler = fill.filler();
    FillJob job =
        new FillJob(
            filler,
            fill.destination(),
            fill.writesFormulas(),
            fill.charts(),
            dryRun,
            report != null && Reports.hasCharts(report),
            report == null ? null : warnings.overviews(fill.wording().language()));
    if (fill.out() != null && !dryRun) {
      LeftBehind.clearTree(fill.out());
    }
    List<WorkItem> items = run.files(files, job.destination(), shard);
    ConsoleReport console = new ConsoleReport(parent.out(), fill.wording(), dryRun, run.quiet());
    Stop stop = Stop.onTermination();
    try {
      ManyFiles<FileResult> batch =
          new ManyFiles<>(
              new FileFiller(job),
              console::add,
              openJournal(items, shard),
              report == null ? null : Reports.open(run.place(items), fill.wording()),
              parent.err());
      boolean whole = batch.run(items, threads, stop);
      console.finish();
      int code = whole && !journal.failed() ? ExitCode.of(console.totals()) : ExitCode.FILE;
      return mapWasUsed(console) || code != ExitCode.DONE ? code : ExitCode.REFUSED;
    } finally {
      stop.done();
    }
  }

  /** Says which sheets the map names to no effect: most often a name is misspelt. */
  private boolean mapWasUsed(ConsoleReport console) {
    boolean used = true;
    for (String sheet : fill.mappedSheets()) {
      if (!console.hasSeen(sheet)) {
        used = false;
        parent
            .err()
            .println(
                "--map: there is no log on a sheet named '"
                    + sheet
                    + "'; what the map says of it was not used.");
      }
    }
    return used;
  }

  /** A dry run notes nothing. */
  private Journal openJournal(List<WorkItem> items, Shard shard) {
    List<String> settings = new ArrayList<>(fill.settings());
    settings.add(files.toString());
    settings.add(shard.toString());
    settings.add(warnings.settings());
    return dryRun ? null : journal.open("fill", settings, items.size(), parent.err());
  }
}
