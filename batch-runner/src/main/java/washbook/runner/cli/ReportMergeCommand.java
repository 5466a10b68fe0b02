package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import washbook.runner.file.FileIdentity;
import washbook.runner.language.LanguageArgument;
import washbook.runner.language.UsageException;
import washbook.runner.report.ReportMerge;
import washbook.runner.report.Reports;

/** {@code washbook report merge}: joins the reports of the parts of a job. */
@Command(
    name = "merge",
    mixinStandardHelpOptions = true,
    description = {
      "Joins the JSON reports of the parts of a job, of fill or of audit, into one. It is the report"
          + " that the whole job would have given, charts included."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  washbook fill archive --out computed --shard 1/2 --report part1.json",
      "  washbook fill archive --out computed --shard 2/2 --report part2.json",
      "  washbook report merge part1.json part2.json --out whole.json"
    })
final class ReportMergeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @ParentCommand private ReportCommand parent;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The joined report; the ending .json, .csv or .html says of which kind.")
  private Path out;

  @Mixin private LanguageArgument language;

  @Option(names = "--overwrite", description = "Let --out replace a file that is no report.")
  private boolean overwrite;

  @Parameters(arity = "1..*", paramLabel = "REPORT", description = "JSON reports.")
  private List<Path> reports = List.of();

  @Override
  public Integer call() throws IOException {
    if (!Reports.canWrite(out)) {
      throw UsageException.of(spec, "usage.reportEnd", "--out", out);
    }
    FileIdentity own = FileIdentity.of(out);
    if (reports.stream().anyMatch(report -> FileIdentity.ofTarget(report).equals(own))) {
      throw UsageException.of(spec, "usage.joined", out);
    }
    boolean plain = Files.isRegularFile(out, LinkOption.NOFOLLOW_LINKS);
    if (!Reports.mayReplace(out) && !(overwrite && plain)) {
      throw UsageException.of(spec, plain ? "usage.reportThere" : "usage.notPlain", "--out", out);
    }
    String problem = ReportMerge.merge(reports, out, overwrite, language.wording());
    if (!problem.isEmpty()) {
      parent.parent().err().println(problem);
      return ExitCode.FILE;
    }
    return ExitCode.DONE;
  }
}
