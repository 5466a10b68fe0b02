package washbook.runner.cli;

import java.io.PrintStream;
import washbook.runner.report.ShownText;

/** Standard output or error for texts that may hold anything: a line stays one line. */
final class SafePrinter extends PrintStream {
  private final PrintStream to;

  SafePrinter(PrintStream to) {
    super(to, true);
    this.to = to;
  }

  @Override
  public void println(String line) {
    to.println(ShownText.of(String.valueOf(line)));
  }

  @Override
  public void println(Object line) {
    println(String.valueOf(line));
  }

  @Override
  public void print(String text) {
    to.print(ShownText.lines(String.valueOf(text)));
  }

  @Override
  public void print(Object text) {
    print(String.valueOf(text));
  }

  @Override
  public boolean checkError() {
    return to.checkError();
  }
}
