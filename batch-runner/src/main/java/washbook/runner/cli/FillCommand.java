package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import washbook.runner.batch.Failure;
import washbook.runner.batch.FileList;
import washbook.runner.batch.FillJob;
import washbook.runner.batch.FillRun;
import washbook.runner.batch.Journal;
import washbook.runner.batch.JournalPlace;
import washbook.runner.batch.Shard;
import washbook.runner.batch.SheetFiller;
import washbook.runner.batch.Stop;
import washbook.runner.batch.WorkItem;
import washbook.runner.report.ConsoleReport;
import washbook.runner.report.ReportWriter;
import washbook.runner.report.Reports;

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
      "  washbook fill logs --in-place --continue",
      "  washbook fill archive --out computed --shard 2/8 --report part2.json"
    })
final class FillCommand implements Callable<Integer> {
  @ParentCommand private WashbookCommand parent;
  @Mixin private FillArguments fill;
  @Mixin private RunArguments run;

  @Option(names = "--dry-run", description = "Compute and report, but write no workbook.")
  private boolean dryRun;

  @Option(
      names = "--continue",
      description =
          "Take up an earlier run of the same command: files that it has done and that have not"
              + " changed since are left alone.")
  private boolean resume;

  @Option(
      names = "--journal",
      paramLabel = "FILE",
      description =
          "Where the run notes what it has done; by default in the user's folder for such notes.")
  private Path journalFile;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Logs, or folders with logs.")
  private List<Path> files = List.of();

  @Override
  public Integer call() throws IOException {
    Map<String, String> environment = System.getenv();
    Path report = run.report(files);
    Shard shard = run.shard(environment);
    int threads = run.threads();
    SheetFiller filler = fill.filler();
    FillJob job =
        new FillJob(
            filler,
            fill.destination(),
            fill.writesFormulas(),
            dryRun,
            report != null && Reports.hasCharts(report));
    List<WorkItem> items = FileList.of(files, job.destination(), shard);
    items.removeIf(item -> isSame(item.file(), report));
    Stop stop = Stop.onTermination();
    try {
      return fill(items, threads, job, report, openJournal(items, shard, environment), stop);
    } finally {
      stop.done();
    }
  }

  private int fill(
      List<WorkItem> items, int threads, FillJob job, Path report, Journal journal, Stop stop)
      throws IOException {
    ConsoleReport console = new ConsoleReport(parent.out(), dryRun);
    try (journal;
        ReportWriter writer = report == null ? null : Reports.open(report);
        Progress progress = Progress.over(items.size(), parent.err())) {
      new FillRun(job, journal, stop)
          .run(
              items,
              threads,
              (result, earlier) -> {
                progress.step();
                console.add(result, earlier);
                if (writer != null) {
                  writer.add(result);
                }
              });
      if (writer != null && !stop.isAsked()) {
        writer.finish();
      }
    }
    console.finish();
    if (stop.isAsked()) {
      parent.err().println("Stopped before the end; --continue takes it up.");
      return ExitCode.FILE;
    }
    return ExitCode.of(console.totals());
  }

  /** A report that lies in a walked folder is no log. */
  private static boolean isSame(Path file, Path report) {
    return report != null
        && file.toAbsolutePath().normalize().equals(report.toAbsolutePath().normalize());
  }

  /** A journal is worth its while from the second file on; a dry run notes nothing. */
  private Journal openJournal(List<WorkItem> items, Shard shard, Map<String, String> environment) {
    if (dryRun || (items.size() < 2 && journalFile == null && !resume)) {
      return null;
    }
    List<String> all = new ArrayList<>(fill.settings());
    all.add(Path.of("").toAbsolutePath().toString());
    all.add(files.toString());
    all.add(shard.toString());
    String sign = JournalPlace.sign(all);
    Path place = journalFile != null ? journalFile : JournalPlace.of("fill", sign, environment);
    try {
      return Journal.open(place, sign, resume);
    } catch (IOException failure) {
      parent.err().println("No journal is kept: " + Failure.reason(failure));
      return null;
    }
  }
}
