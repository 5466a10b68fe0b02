package washbook.runner.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import washbook.runner.report.ShownText;
import washbook.runner.run.Failure;

/** {@code washbook}: the command that the others hang on. */
@Command(
    name = "washbook",
    mixinStandardHelpOptions = true,
    versionProvider = WashbookCommand.Version.class,
    description = "Correct fermentation and spirit maths for the spreadsheet log you already keep.",
    subcommands = {
      FillCommand.class,
      ExplainCommand.class,
      AuditCommand.class,
      WatchCommand.class,
      SeasonCommand.class,
      CardCommand.class,
      ReportCommand.class,
      CalcCommand.class,
      FunctionsCommand.class,
      PortableCommand.class,
      CommandLine.HelpCommand.class
    },
    footerHeading = "%nExit codes:%n",
    footer = {
      "  0  all done",
      "  1  done, but something was refused (it is listed)",
      "  2  the command line makes no sense",
      "  3  a file could not be read or written",
      "  4  nothing was recognised"
    })
final class WashbookCommand {
  private final PrintStream out;
  private final PrintStream err;

  /** For tools that read the commands' descriptions. */
  WashbookCommand() {
    this(System.out, System.err);
  }

  WashbookCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  PrintStream out() {
    return out;
  }

  PrintStream err() {
    return err;
  }

  /** Runs a command line and gives its exit code. */
  static int run(String[] args, PrintStream out, PrintStream err) {
    CommandLine line = commandLine(out, err);
    if (args.length == 0) {
      line.usage(line.getErr());
      return ExitCode.USAGE;
    }
    return line.execute(args);
  }

  static CommandLine commandLine(PrintStream out, PrintStream err) {
    CommandLine line =
        new CommandLine(new WashbookCommand(new SafePrinter(out), new SafePrinter(err)));
    line.setOut(new PrintWriter(out, true, Terminal.charset()));
    line.setErr(new PrintWriter(err, true, Terminal.charset()));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setUsageHelpAutoWidth(true);
    SafetyWords.addTo(line, err);
    line.setExecutionExceptionHandler((failure, command, parsed) -> Wrong.failed(failure, err));
    line.setParameterExceptionHandler((wrong, given) -> explain(wrong));
    line.getSubcommands().get("calc").setUnmatchedOptionsArePositionalParams(true);
    return line;
  }

  /** Says what is wrong with a command line, without the whole help that would hide it. */
  private static int explain(CommandLine.ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(ShownText.of(wrong.getMessage()));
    if (!CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err)) {
      err.println(
          "'" + command.getCommandSpec().qualifiedName() + " --help' lists what can be given.");
    }
    err.flush();
    return ExitCode.USAGE;
  }

  /**
   * What is said when a command goes wrong. Apart from the commands, so that Java does not look at
   * the library's exceptions before one is needed.
   */
  static final class Wrong {
    private Wrong() {}

    /** Says why a command could not go on, and gives its exit code. */
    static int failed(Exception failure, PrintStream err) {
      new SafePrinter(err)
          .println(
              "washbook: " + (failure instanceof IOException ? Failure.reason(failure) : failure));
      return ExitCode.FILE;
    }

    static RuntimeException usage(CommandLine.Model.CommandSpec spec, String message) {
      return new CommandLine.ParameterException(spec.commandLine(), message);
    }
  }

  /** The version as the jar states it. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = WashbookCommand.class.getPackage().getImplementationVersion();
      return new String[] {"washbook " + (version == null ? "(not packaged)" : version)};
    }
  }
}
