package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.RefusalGroup;
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

  @Option(names = "--in-place", description = "Replace the files themselves.")
  private boolean inPlace;

  @Option(
      names = "--backup",
      description = "With --in-place: keep each replaced file as NAME.EXT.bak, .bak2 and so on.")
  private boolean backup;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Workbooks: .xlsx, .xlsm, .ods.")
  private List<Path> files = List.of();

  @Override
  public Integer call() {
    boolean failed = false;
    boolean left = false;
    boolean found = false;
    for (Path file : files) {
      try {
        PortableJob.Done done = PortableJob.run(file, inPlace, backup);
        left |= !done.result().left().isEmpty();
        found |= !done.result().nothingFound();
        show(file, done);
      } catch (IOException | RuntimeException failure) {
        failed = true;
        parent.err().println(file + ": " + Failure.reason(failure));
      }
    }
    return failed
        ? ExitCode.FILE
        : left ? ExitCode.REFUSED : found ? ExitCode.DONE : ExitCode.NOTHING_RECOGNISED;
  }

  private void show(Path file, PortableJob.Done done) {
    int formulas = done.result().formulas();
    parent
        .out()
        .println(
            done.result().nothingFound()
                ? file + ": no formula with a WASHBOOK function."
                : file
                    + ": "
                    + formulas
                    + (formulas == 1 ? " formula is" : " formulas are")
                    + " portable now"
                    + (done.target() == null ? "." : ", in " + done.target() + "."));
    List<Refusal> left =
        done.result().left().stream().map(l -> new Refusal(l.cell(), "", l.reason())).toList();
    for (RefusalGroup stays : RefusalGroup.of(left)) {
      String verb = stays.count() == 1 ? " stays: " : " stay: ";
      parent.out().println("  " + stays.cells() + verb + stays.reason());
    }
  }
}
