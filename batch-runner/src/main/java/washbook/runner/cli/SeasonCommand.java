package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import washbook.log.ComputedColumn;
import washbook.log.fill.FillOptions;
import washbook.log.fill.FormulaStyle;
import washbook.log.language.Message;
import washbook.runner.file.FileIdentity;
import washbook.runner.language.LanguageArgument;
import washbook.runner.language.UsageException;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport;
import washbook.runner.report.FileResult;
import washbook.runner.report.Totals;
import washbook.runner.run.Destination;
import washbook.runner.run.FileFiller;
import washbook.runner.run.FileList;
import washbook.runner.run.FillJob;
import washbook.runner.run.LogSheetFiller;
import washbook.runner.run.Shard;
import washbook.runner.run.Stop;
import washbook.runner.run.WorkItem;
import washbook.runner.season.Season;
import washbook.runner.season.SeasonFile;
import washbook.runner.season.SeasonKeeper;

/** {@code washbook season}: all batches of all logs in one table. */
@Command(
    name = "season",
    mixinStandardHelpOptions = true,
    description = {
      "Reads all logs and writes one table of all batches: where each stands, what to look at, and"
          + " the curves of all batches of one kind over days. The logs are not changed.",
      "An older table in its place is brought up to date: columns that you have added to it are"
          + " kept with their batch, in .xlsx also their formulas and further sheets."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  washbook season logs --out season.xlsx",
      "  washbook season cellar barn --out season.html --limit warmest=28,planned-abv=12",
      "  washbook watch logs --in-place --season season.ods"
    })
final class SeasonCommand implements Callable<Integer> {
  private static final Destination NOWHERE = new Destination(null, true, false);
  private static final int MOST_LINES = 20;

  @Spec private CommandSpec spec;
  @ParentCommand private WashbookCommand parent;
  @Mixin private MapArgument map;
  @Mixin private WarningArguments warnings;
  @Mixin private LanguageArgument language;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The table; the ending .xlsx, .ods, .csv, .html or .json says of which kind.")
  private Path out;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Work on this many files at the same time; by default one for each processor.")
  private Integer threads;

  @Option(names = "--quiet", description = "Say only what was refused or failed.")
  private boolean quiet;

  @Parameters(arity = "1..*", paramLabel = "DIR", description = "Folders with logs, or logs.")
  private List<Path> folders = List.of();

  private final Totals totals = new Totals();
  private int refused;
  private Wording words;

  @Override
  public Integer call() throws IOException {
    checkPlace(spec, "--out", out);
    if (threads != null && (threads < 1 || threads > 1024)) {
      throw UsageException.of(spec, "usage.threads");
    }
    words = language.wording();
    FillOptions options =
        new FillOptions(
                Set.of(ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV), FormulaStyle.VALUES)
            .forUser(words.language());
    LogSheetFiller filler = new LogSheetFiller(map.read(words.language()), options);
    FillJob job =
        new FillJob(
            filler, NOWHERE, false, false, true, true, warnings.overviews(words.language()));
    List<WorkItem> items = FileList.of(folders, NOWHERE, Shard.WHOLE, words.language());
    FileIdentity own = FileIdentity.of(out);
    items.removeIf(item -> FileIdentity.of(item.file()).equals(own));
    SeasonKeeper keeper = new SeasonKeeper(out, warnings.limits(words.language()), words);
    Stop stop = Stop.onTermination();
    try {
      int workers = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
      ManyFiles<FileResult> run =
          new ManyFiles<>(
              new FileFiller(job),
              (result, earlier) -> take(result.report(), keeper),
              null,
              null,
              parent.err(),
              words.language());
      if (!run.run(items, workers, stop)) {
        return ExitCode.FILE;
      }
    } finally {
      stop.done();
    }
    Season season = keeper.write(LocalDate.now());
    if (!quiet) {
      parent.out().println(out + ": " + season.sentence());
    }
    return ExitCode.of(totals);
  }

  /** What is not in the table is said at once. */
  private void take(FileReport report, SeasonKeeper keeper) {
    totals.add(report);
    keeper.add(report);
    boolean none = report.overview().isEmpty() && !report.refusals().isEmpty();
    if (none && ++refused <= MOST_LINES) {
      String reason = report.refusals().get(0).reason();
      parent.out().println(words.say("season.left.one", report.path(), reason));
    } else if (none && refused == MOST_LINES + 1) {
      parent.out().println(words.say("season.left.more", out));
    }
  }

  /** Refuses a place that cannot take a season, before any work is done. */
  static void checkPlace(CommandSpec spec, String option, Path file) {
    if (!SeasonFile.canWrite(file)) {
      throw UsageException.of(spec, "usage.seasonEnd", option, file);
    }
    if (!Files.isDirectory(file.toAbsolutePath().getParent())) {
      throw UsageException.of(spec, "usage.inNoFolder", option, file);
    }
    Message against = SeasonFile.reasonAgainst(file);
    if (!against.isBlank()) {
      throw UsageException.of(spec, "usage.against", option, file, against);
    }
  }
}
