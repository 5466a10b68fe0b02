package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import washbook.runner.language.LanguageArgument;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.RefusalGroup;
import washbook.runner.run.Destination;
import washbook.runner.run.Failure;
import washbook.runner.run.PortableJob;

/** {@code washbook portable}: formulas that need no pack. */
@Command(
    name = "portable",
    mixinStandardHelpOptions = true,
    description = {
      "Turns formulas with WASHBOOK functions into plain arithmetic that any spreadsheet program"
          + " calculates, each within the error that 'washbook functions' states.",
      "Writes a copy NAME.portable.EXT beside each file. A call that cannot be turned is left and"
          + " listed."
    },
    footerHeading = "%nExamples:%n",
    footer = {"  washbook portable Plum.xlsx", "  washbook portable --in-place --backup Plum.ods"})
final class PortableCommand implements Callable<Integer> {
  @ParentCommand private WashbookCommand parent;
  @Mixin private LanguageArgument language;

  @Option(names = "--in-place", description = "Replace the files themselves.")
  private boolean inPlace;

  @Option(
      names = "--backup",
      description = "With --in-place: keep each replaced file as NAME.EXT.bak, .bak2 and so on.")
  private boolean backup;

  @Option(
      names = "--overwrite",
      description = "Let a copy replace a file that is no copy made earlier by this program.")
  private boolean overwrite;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Workbooks: .xlsx, .xlsm, .ods.")
  private List<Path> files = List.of();

  @Override
  public Integer call() {
    boolean failed = false;
    boolean left = false;
    boolean found = false;
    for (Path file : files) {
      try {
        PortableJob.Done done =
            PortableJob.run(file, new Destination(null, inPlace, backup, overwrite));
        left |= !done.result().left().isEmpty();
        found |= !done.result().nothingFound();
        show(file, done);
      } catch (IOException | RuntimeException failure) {
        failed = true;
        parent.err().println(file + ": " + Failure.reason(failure, language.wording().language()));
      }
    }
    return failed
        ? ExitCode.FILE
        : left ? ExitCode.REFUSED : found ? ExitCode.DONE : ExitCode.NOTHING_RECOGNISED;
  }

  private void show(Path file, PortableJob.Done done) {
    Wording words = language.wording();
    int formulas = done.result().formulas();
    parent
        .out()
        .println(
            done.result().nothingFound()
                ? words.say("portable.none", file)
                : words.say(
                    done.target() == null ? "portable.here" : "portable.done",
                    file,
                    words.count("portable.formulas", formulas),
                    String.valueOf(done.target())));
    List<Refusal> left =
        done.result().left().stream()
            .map(l -> new Refusal(words.say(l.cell()), "", words.say(l.told())))
            .toList();
    for (RefusalGroup stays : RefusalGroup.of(left)) {
      String key = stays.count() == 1 ? "portable.stays.one" : "portable.stays.many";
      parent.out().println("  " + words.say(key, stays.cells(), stays.reason()));
    }
  }
}
