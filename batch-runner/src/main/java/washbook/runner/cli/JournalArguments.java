package washbook.runner.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import washbook.log.language.Language;
import washbook.runner.file.FileIdentity;
import washbook.runner.file.UnusableFileException;
import washbook.runner.run.Failure;
import washbook.runner.run.Journal;
import washbook.runner.run.JournalPlace;

/** How an interrupted run is taken up. */
final class JournalArguments {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

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

  private boolean failed;

  /** Whether a journal was wanted and could not be written. */
  boolean failed() {
    return failed;
  }

  /** Refuses a journal under the report's name: the one would take the other's place. */
  void keepApart(Path report) {
    if (place != null && report != null && FileIdentity.of(place).equals(FileIdentity.of(report))) {
      throw WashbookCommand.Wrong.usage(spec, "usage.journalReport", report);
    }
  }

  /**
   * Opens the journal, or gives null where none is worth its while.
   *
   * @param settings what the results depend on besides the files
   * @param language in which is told why none is kept
   */
  Journal open(
      String command, List<String> settings, int files, PrintStream err, Language language) {
    if (files < 2 && place == null && !resume) {
      return null;
    }
    List<String> all = new ArrayList<>(settings);
    all.add(Path.of("").toAbsolutePath().toString());
    String sign = JournalPlace.sign(all);
    Path file = place != null ? place : JournalPlace.of(command, sign, System.getenv());
    if (place != null && !Journal.mayReplace(place)) {
      throw WashbookCommand.Wrong.usage(spec, "usage.journalThere", place);
    }
    try {
      Journal journal = Journal.open(file, sign, resume);
      if (journal.unreadable() > 0) {
        err.println(unreadable(journal, language));
      }
      return journal;
    } catch (Journal.InUse other) {
      err.println(none(other, language));
      return null;
    } catch (IOException failure) {
      failed = true;
      err.println(none(failure, language));
      return null;
    }
  }

  private static String none(IOException failure, Language language) {
    String reason = Failure.reason(failure, language);
    return UnusableFileException.message("journal.none", reason).in(language);
  }

  /** What is said of lines that a crash has torn. */
  static String unreadable(Journal journal, Language language) {
    int lines = journal.unreadable();
    String key = lines == 1 ? "journal.torn.one" : "journal.torn.many";
    return UnusableFileException.message(key, lines, journal.file()).in(language);
  }
}
