package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;
import washbook.log.overview.Overviews;
import washbook.runner.file.LeftBehind;
import washbook.runner.run.FillJob;
import washbook.runner.run.Journal;
import washbook.runner.run.JournalPlace;
import washbook.runner.run.Shard;
import washbook.runner.run.SheetFiller;
import washbook.runner.run.Stop;
import washbook.runner.run.Watcher;

/** {@code washbook watch}: keeps a folder computed. */
@Command(
    name = "watch",
    mixinStandardHelpOptions = true,
    description = {
      "Watches a folder and fills each new or changed log once it has settled: size and time stand"
          + " still and no office program has it open.",
      "What is done is noted in a journal, so that it can be stopped and started at any time."
          + " It ends cleanly on SIGTERM and Ctrl-C."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  washbook watch logs --out computed",
      "  washbook watch logs --in-place --backup --log json",
      "  washbook watch logs --once",
      "  washbook watch logs --in-place --season season.xlsx",
      "  washbook watch logs --in-place --print-unit > washbook.service"
    })
final class WatchCommand implements Callable<Integer> {
  private static final Duration RETRY = Duration.ofMinutes(5);

  @Spec private CommandSpec spec;
  @ParentCommand private WashbookCommand parent;
  @Mixin private FillArguments fill;
  @Mixin private WarningArguments warnings;

  @Option(
      names = "--season",
      paramLabel = "FILE",
      description =
          "Keep one table of all batches up to date, as 'washbook season' writes it: .xlsx, .ods,"
              + " .csv, .html or .json.")
  private Path season;

  @Option(names = "--once", description = "End when every file that is there has been seen to.")
  private boolean once;

  @Option(
      names = "--settle",
      paramLabel = "SECONDS",
      defaultValue = "5",
      description = "How long a file must stand still (default: ${DEFAULT-VALUE}).")
  private double settleSeconds;

  @Option(
      names = "--interval",
      paramLabel = "SECONDS",
      defaultValue = "2",
      description = "How often the folder is looked through (default: ${DEFAULT-VALUE}).")
  private double intervalSeconds;

  @Option(
      names = "--threads",
      paramLabel = "N",
      defaultValue = "1",
      description = "Work on this many files at the same time (default: ${DEFAULT-VALUE}).")
  private int threads;

  @Option(
      names = "--log",
      paramLabel = "FORM",
      defaultValue = "text",
      description = "Lines for people (text) or for programs (json).")
  private WatchLog.Form form;

  @Option(
      names = "--quiet",
      description = "Say only what was refused or failed, and what a person should know.")
  private boolean quiet;

  @Option(
      names = "--journal",
      paramLabel = "FILE",
      description = "The journal; by default in the user's or the service's folder for such notes.")
  private Path journalFile;

  @Option(
      names = "--print-unit",
      description = "Print a systemd unit that runs this command, and do nothing else.")
  private boolean printUnit;

  @Parameters(paramLabel = "DIR", description = "The folder.")
  private Path folder;

  @Override
  public Integer call() throws IOException {
    if (settleSeconds < 0 || intervalSeconds < 0.05 || threads < 1) {
      throw usage("usage.times");
    }
    if (printUnit) {
      try {
        ParseResult given = spec.commandLine().getParseResult();
        parent.out().print(SystemdUnit.of(folder, given, fill.wording()));
        return ExitCode.DONE;
      } catch (IllegalArgumentException unspeakable) {
        throw usage("usage.unit");
      }
    }
    if (!Files.isDirectory(folder)) {
      throw usage("usage.noFolder", folder);
    }
    Overviews overviews = warnings.overviews(fill.wording().language());
    SheetFiller filler = fill.filler(overviews);
    if (season != null) {
      SeasonCommand.checkPlace(spec, "--season", season);
    }
    FillJob job =
        new FillJob(
            filler,
            fill.destination(false),
            fill.writesFormulas(),
            fill.charts(),
            false,
            season != null,
            season == null ? null : overviews);
    List<String> settings = new ArrayList<>(fill.settings());
    settings.add(warnings.settings());
    if (season != null) {
      settings.add("season");
    }
    settings.add(folder.toAbsolutePath().normalize().toString());
    String sign = JournalPlace.sign(settings);
    Map<String, String> environment = System.getenv();
    Path place = journalFile != null ? journalFile : JournalPlace.of("watch", sign, environment);
    if (journalFile != null && !Journal.mayReplace(place)) {
      throw usage("usage.journalThere", place);
    }
    if (fill.out() != null) {
      LeftBehind.clearTree(fill.out());
    }
    WatchLog log = new WatchLog(parent.out(), fill.wording(), form, quiet);
    Stop stop = Stop.onTermination();
    boolean noted = true;
    try (Journal journal = Journal.open(place, sign, true)) {
      log.event("started", folder.toString(), fill.wording().say("watch.started", place));
      if (journal.unreadable() > 0) {
        log.notice(
            folder.toString(), JournalArguments.unreadable(journal, fill.wording().language()));
      }
      Watcher.Pace pace = new Watcher.Pace(seconds(intervalSeconds), seconds(settleSeconds), RETRY);
      Watcher watcher = new Watcher(folder, job, Shard.WHOLE, journal, pace, stop);
      if (season != null) {
        watcher.leaveOut(season);
      }
      watcher.run(
          threads,
          once,
          season == null
              ? log
              : new WatchSeason(
                  log, season, warnings.limits(fill.wording().language()), fill.wording()));
      noted = !watcher.isUnnoted();
      log.event("stopped", folder.toString(), log.totals().sentence(fill.wording()));
    } finally {
      stop.done();
    }
    if (once && !noted) {
      return ExitCode.FILE;
    }
    return once && log.totals().count() > 0 ? ExitCode.of(log.totals()) : ExitCode.DONE;
  }

  private static Duration seconds(double seconds) {
    return Duration.ofMillis(Math.round(seconds * 1000));
  }

  private RuntimeException usage(String key, Object... arguments) {
    return WashbookCommand.Wrong.usage(spec, key, arguments);
  }
}
