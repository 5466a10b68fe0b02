package washbook.runner.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;

/** {@code washbook report}: works on reports. */
@Command(
    name = "report",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    description = "Works on reports.",
    subcommands = ReportMergeCommand.class)
final class ReportCommand {
  @ParentCommand private WashbookCommand parent;

  WashbookCommand parent() {
    return parent;
  }
}
