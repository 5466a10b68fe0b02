package washbook.runner.cli;

import java.io.IOException;
import java.io.PrintStream;
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
import washbook.log.overview.Overviews;
import washbook.runner.file.LeftBehind;
import washbook.runner.language.Wording;
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

  /**
   * The command with these words after its name, read without the command-line library, which costs
   * as much as filling a small log. Null where only the library does: for all but the plainest
   * options, and wherever something is wrong.
   */
  static FillCommand plain(List<String> words, Map<String, String> environment) {
    FillCommand command = new FillCommand();
    command.fill = new FillArguments();
    command.run = new RunArguments();
    command.journal = new JournalArguments();
    command.warnings = new WarningArguments();
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      if (word.equals("--dry-run") && !command.dryRun) {
        command.dryRun = true;
      } else if (isPlain(word)) {
        files.add(Path.of(word));
      } else if (i + 1 < words.size()
          && isPlain(words.get(i + 1))
          && command.fill.takes(word, words.get(i + 1))) {
        i++;
      } else if (!command.fill.takes(word) && !command.run.takes(word)) {
        return null;
      }
    }
    command.files = files;
    boolean complete = !files.isEmpty() && command.fill.goTogether();
    return complete && !environment.containsKey(RunArguments.SHARD_VARIABLE) ? command : null;
  }

  /** Whether a word means itself: no option, no file of words, nothing quoted, no odd character. */
  private static boolean isPlain(String word) {
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      if (c < ' ' || c > '~' || c == '"' || c == '\'' || c == '\\' || c == '$') {
        return false;
      }
    }
    return !word.isEmpty() && word.charAt(0) != '-' && word.charAt(0) != '@';
  }

  @Override
  public Integer call() throws IOException {
    return run(parent.out(), parent.err());
  }

  /** Runs the command and gives its exit code. */
  int run(PrintStream out, PrintStream err) throws IOException {
    Path report = run.report(files, fill.out());
    journal.keepApart(report);
    Shard shard = run.shard(System.getenv());
    int threads = run.threads();
    Overviews overviews = warnings.overviews(fill.wording().language());
    SheetFiller filler = fill.filler(overviews);
    FillJob job =
        new FillJob(
            filler,
            fill.destination(run.overwrites()),
            fill.writesFormulas(),
            fill.charts(),
            dryRun,
            report != null && Reports.hasCharts(report),
            report == null ? null : overviews);
    if (fill.out() != null && !dryRun) {
      LeftBehind.clearTree(fill.out());
    }
    List<WorkItem> items = run.files(files, job.destination(), shard, fill.wording().language());
    ConsoleReport console = new ConsoleReport(out, fill.wording(), dryRun, run.quiet());
    Stop stop = Stop.onTermination();
    try {
      ManyFiles<FileResult> batch =
          new ManyFiles<>(
              new FileFiller(job),
              console::add,
              openJournal(items, shard, err),
              report == null ? null : Reports.open(run.place(items, shard), fill.wording()),
              err,
              fill.wording().language());
      boolean whole = batch.run(items, threads, stop);
      console.finish();
      int code = whole && !journal.failed() ? ExitCode.of(console.totals()) : ExitCode.FILE;
      return mapWasUsed(console, err) || code != ExitCode.DONE ? code : ExitCode.REFUSED;
    } finally {
      stop.done();
    }
  }

  /** The language of what is said to the user. */
  Wording wording() {
    return fill.wording();
  }

  /** Whether nothing but refusals is to be said. */
  boolean isQuiet() {
    return run.quiet();
  }

  /** Says which sheets the map names to no effect: most often a name is misspelt. */
  private boolean mapWasUsed(ConsoleReport console, PrintStream err) {
    boolean used = true;
    for (String sheet : fill.mappedSheets()) {
      if (!console.hasSeen(sheet)) {
        used = false;
        err.println(fill.wording().say("usage.mapSheet", sheet));
      }
    }
    return used;
  }

  /** A dry run notes nothing. */
  private Journal openJournal(List<WorkItem> items, Shard shard, PrintStream err) {
    List<String> settings = new ArrayList<>(fill.settings());
    settings.add(files.toString());
    settings.add(shard.toString());
    settings.add(warnings.settings());
    return dryRun
        ? null
        : journal.open("fill", settings, items.size(), err, fill.wording().language());
  }
}
