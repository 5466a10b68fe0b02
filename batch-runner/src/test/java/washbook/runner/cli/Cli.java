package washbook.runner.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.function.BiFunction;

/** Runs a command line inside the test. */
public record Cli(int code, String out, String err) {
  public static Cli run(String... args) {
    return capture((out, err) -> Main.run(args, out, err));
  }

  /** Without the short cut for {@code calc}. */
  static Cli viaLibrary(String... args) {
    return capture((out, err) -> WashbookCommand.run(args, out, err));
  }

  private static Cli capture(BiFunction<PrintStream, PrintStream, Integer> program) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        program.apply(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    return new Cli(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
