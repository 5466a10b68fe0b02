package washbook.runner.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import washbook.runner.language.HelpWords;
import washbook.runner.language.UsageException;
import washbook.runner.language.Wording;
import washbook.runner.language.WrongWords;
import washbook.runner.report.ShownText;
import washbook.runner.run.Failure;

/** {@code washbook}: the command that the others hang on. */
@Command(
    name = "washbook",
    mixinStandardHelpOptions = true,
    versionProvider = WashbookCommand.Version.class,
    description = "Correct fermentation and spirit maths for the spreadsheet log you already keep.",
    footerHeading = "%nExit codes:%n",
    footer = {
      "  0  all done",
      "  1  done, but something was refused (it is listed)",
      "  2  the command line makes no sense",
      "  3  a file could not be read or written",
      "  4  nothing was recognised"
    })
class WashbookCommand {
  private final PrintStream out;
  private final PrintStream err;

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
    CommandLine line = commandLine(args, out, err);
    if (args.length == 0) {
      line.usage(line.getErr());
      return ExitCode.USAGE;
    }
    return line.execute(HelpWords.areWanted(args) ? HelpWords.withoutLanguage(args) : args);
  }

  static CommandLine commandLine(String[] args, PrintStream out, PrintStream err) {
    SafePrinter safeOut = new SafePrinter(out);
    SafePrinter safeErr = new SafePrinter(err);
    Object asked = args.length == 0 ? null : command(args[0]);
    CommandLine line =
        asked == null
            ? new CommandLine(new Whole(safeOut, safeErr))
            : new CommandLine(new WashbookCommand(safeOut, safeErr)).addSubcommand(asked);
    line.setOut(new PrintWriter(out, true, Terminal.charset()));
    line.setErr(new PrintWriter(err, true, Terminal.charset()));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setUsageHelpAutoWidth(true);
    Wording words = HelpWords.areWanted(args) ? HelpWords.wording(args) : null;
    if (words != null) {
      HelpWords.translate(line, words.language());
    }
    SafetyWords.addTo(line, err, words);
    line.setExecutionExceptionHandler(
        (failure, command, parsed) -> Wrong.failed(failure, HelpWords.wording(args), err));
    line.setParameterExceptionHandler((wrong, given) -> explain(wrong, HelpWords.wording(args)));
    CommandLine calc = line.getSubcommands().get("calc");
    if (calc != null) {
      calc.setUnmatchedOptionsArePositionalParams(true);
    }
    return line;
  }

  /** The command of that name alone: to make them all takes longer than most of them work. */
  private static Object command(String name) {
    return switch (name) {
      case "fill" -> new FillCommand();
      case "explain" -> new ExplainCommand();
      case "audit" -> new AuditCommand();
      case "watch" -> new WatchCommand();
      case "season" -> new SeasonCommand();
      case "portable" -> new PortableCommand();
      default -> null;
    };
  }

  /** Says what is wrong with a command line, without the whole help that would hide it. */
  private static int explain(CommandLine.ParameterException wrong, Wording words) {
    PrintWriter err = wrong.getCommandLine().getErr();
    List<String> lines = WrongWords.lines(wrong, words);
    err.println(ShownText.of(lines.get(0)));
    boolean suggested =
        WrongWords.isLeftToTheLibrary(words)
            && CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err);
    if (!suggested) {
      err.println(ShownText.of(lines.get(1)));
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
    static int failed(Exception failure, Wording words, PrintStream err) {
      new SafePrinter(err)
          .println(
              "washbook: "
                  + (failure instanceof IOException
                      ? Failure.reason(failure, words.language())
                      : failure));
      return ExitCode.FILE;
    }

    static RuntimeException usage(
        CommandLine.Model.CommandSpec spec, String key, Object... arguments) {
      return UsageException.of(spec, key, arguments);
    }
  }

  /** With all commands, for help and for names that are none. */
  @Command(
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
      })
  static final class Whole extends WashbookCommand {
    /** For tools that read the commands' descriptions. */
    Whole() {
      this(System.out, System.err);
    }

    Whole(PrintStream out, PrintStream err) {
      super(out, err);
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
