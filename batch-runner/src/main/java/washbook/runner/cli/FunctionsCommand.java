package washbook.runner.cli;

import java.io.PrintStream;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.Function;
import washbook.functions.catalogue.Parameter;

/** {@code washbook functions}: the catalogue. */
@Command(
    name = "functions",
    mixinStandardHelpOptions = true,
    description = "Lists every function with its arguments, units, ranges and sources.",
    footerHeading = "%nExamples:%n",
    footer = {"  washbook functions", "  washbook functions --format markdown > functions.md"})
final class FunctionsCommand implements Callable<Integer> {
  @ParentCommand private WashbookCommand parent;

  @Override
  public Integer call() {
    PrintStream out = parent.out();
    for (Function function : Catalogue.all()) {
      StringBuilder line = new StringBuilder(function.name());
      for (Parameter parameter : function.parameters()) {
        line.append(' ')
            .append(parameter.optional() ? "[" + parameter.name() + "]" : parameter.name());
      }
      out.println(line);
      out.println("    " + function.summary());
    }
    return ExitCode.DONE;
  }
}
