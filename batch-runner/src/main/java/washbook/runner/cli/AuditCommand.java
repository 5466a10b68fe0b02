package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import washbook.log.understand.LogMap;
import washbook.runner.language.LanguageArgument;
import washbook.runner.language.Wording;
import washbook.runner.report.AuditReport;
import washbook.runner.report.ConsoleAudit;
import washbook.runner.report.Reports;
import washbook.runner.run.Destination;
import washbook.runner.run.FileAuditor;
import washbook.runner.run.Journal;
import washbook.runner.run.Shard;
import washbook.runner.run.Stop;
import washbook.runner.run.WorkItem;

/** {@code washbook audit}: compares logs' own figures with ours. */
@Command(
    name = "audit",
    mixinStandardHelpOptions = true,
    description = {
      "Recomputes logs and compares their own alcohol, attenuation and corrected gravity with the"
          + " result: where and by how much they differ, and the likely cause.",
      "Nothing in the logs is changed."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  washbook audit Plum.xlsx",
      "  washbook audit logs --report audit.html",
      "  washbook audit archive --report audit.csv --threads 4"
    })
final class AuditCommand implements Callable<Integer> {
  /** Nothing is written, so that nothing can collide. */
  private static final Destination NOWHERE = new Destination(null, true, false);

  @ParentCommand private WashbookCommand parent;
  @Mixin private MapArgument map;
  @Mixin private RunArguments run;
  @Mixin private JournalArguments journal;
  @Mixin private LanguageArgument language;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Logs, or folders with logs.")
  private List<Path> files = List.of();

  @Override
  public Integer call() throws IOException {
    Path report = run.report(files);
    journal.keepApart(report);
    Shard shard = run.shard(System.getenv());
    Wording words = language.wording();
    LogMap given = map.read(words.language());
    List<WorkItem> items = run.files(files, NOWHERE, shard, words.language());
    ConsoleAudit console = new ConsoleAudit(parent.out(), words, run.quiet());
    List<String> settings =
        List.of(map.text(), files.toString(), shard.toString(), words.language().code());
    Journal notes = journal.open("audit", settings, items.size(), parent.err(), words.language());
    Stop stop = Stop.onTermination();
    try {
      ManyFiles<AuditReport> batch =
          new ManyFiles<>(
              new FileAuditor(given, report != null && Reports.hasCharts(report), words.language()),
              console::add,
              notes,
              report == null ? null : Reports.openAudit(run.place(items, shard), words),
              parent.err(),
              words.language());
      boolean whole = batch.run(items, run.threads(), stop);
      console.finish();
      return whole && !journal.failed() ? ExitCode.of(console.totals()) : ExitCode.FILE;
    } finally {
      stop.done();
    }
  }
}
