package washbook.runner.cli;

import java.io.PrintStream;

/** The program's entry. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    PrintStream out = Terminal.out();
    int code = run(args, out, Terminal.err());
    boolean lost = out.checkError() && code == ExitCode.DONE;
    System.exit(lost ? ExitCode.FILE : code);
  }

  /** A plain {@code calc} goes round the command-line library, which costs more than the sum. */
  static int run(String[] args, PrintStream out, PrintStream err) {
    if (args.length > 1 && args[0].equals("calc") && !asksForHelp(args)) {
      return Calc.run(args, 1, new SafePrinter(out), new SafePrinter(err));
    }
    return WashbookCommand.run(args, out, err);
  }

  private static boolean asksForHelp(String[] args) {
    for (String arg : args) {
      if (arg.equals("--help") || arg.equals("-h")) {
        return true;
      }
    }
    return false;
  }
}
