package washbook.runner.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import washbook.runner.run.Failure;
import washbook.runner.run.Journal;
import washbook.runner.run.JournalPlace;

/** How an interrupted run is taken up. */
final class JournalArguments {
  @Option(
      names = "--continue",
      description =
          "Take up an earlier run of the same command: files that it has done and that have not"
              + " changed since are left alone.")
  private boolean resume;

  @Option(
      names = "--journal",
      paramLabel = "FILE",
      description =
          "Where the run notes what it has done; by default in the user's folder for such notes.")
  private Path place;

  /**
   * Opens the journal, or gives null where none is worth its while.
   *
   * @param settings what the results depend on besides the files
   */
  Journal open(String command, List<String> settings, int files, PrintStream err) {
    if (files < 2 && place == null && !resume) {
      return null;
    }
    List<String> all = new ArrayList<>(settings);
    all.add(Path.of("").toAbsolutePath().toString());
    String sign = JournalPlace.sign(all);
    Path file = place != null ? place : JournalPlace.of(command, sign, System.getenv());
    try {
      return Journal.open(file, sign, resume);
    } catch (IOException failure) {
      err.println("No journal is kept: " + Failure.reason(failure));
      return null;
    }
  }
}
