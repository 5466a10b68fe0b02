package washbook.runner.cli;

import java.io.PrintStream;
import java.util.Arrays;
import washbook.runner.language.HelpWords;
import washbook.runner.language.Wording;

/** The program's entry. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    PrintStream out = Terminal.out();
    int code = run(args, out, Terminal.err());
    boolean lost = out.checkError() && code == ExitCode.DONE;
    System.exit(lost ? ExitCode.FILE : code);
  }

  /**
   * What is plain goes round the command-line library, which costs more than a sum or a small log.
   */
  static int run(String[] args, PrintStream out, PrintStream err) {
    if (args.length > 1 && args[0].equals("calc") && isPlainCall(args)) {
      return Calc.run(
          args, 1, () -> Wording.ofUser(""), new SafePrinter(out), new SafePrinter(err));
    }
    FillCommand fill =
        args.length > 1 && args[0].equals("fill")
            ? FillCommand.plain(Arrays.asList(args).subList(1, args.length), System.getenv())
            : null;
    return fill == null ? WashbookCommand.run(args, out, err) : fill(fill, args, out, err);
  }

  private static int fill(FillCommand fill, String[] args, PrintStream out, PrintStream err) {
    int code;
    try {
      code = fill.run(new SafePrinter(out), new SafePrinter(err));
    } catch (Exception failure) {
      return WashbookCommand.Wrong.failed(failure, HelpWords.wording(args), err);
    }
    if (!fill.isQuiet()) {
      err.println(fill.wording().say("safety.pointer"));
    }
    return code;
  }

  /** Whether a call of {@code calc} has no options. */
  private static boolean isPlainCall(String[] args) {
    for (String arg : args) {
      if (arg.equals("--help") || arg.equals("-h") || arg.startsWith("--language")) {
        return false;
      }
    }
    return true;
  }
}
