package washbook.samples.sheets;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The command line program in a process of its own, as a person runs it. */
final class Washbook {
  /** What it said and how it ended. */
  record Run(int exitCode, String output) {}

  private Washbook() {}

  static Run run(Object... arguments) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                "washbook.runner.cli.Main"));
    for (Object argument : arguments) {
      command.add(argument.toString());
    }
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    try {
      String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return new Run(process.waitFor(), output);
    } finally {
      process.destroyForcibly();
    }
  }
}
