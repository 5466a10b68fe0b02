package washbook.runner.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import washbook.runner.language.LanguageArgument;

/** {@code washbook calc}: see {@link Calc}, which does the work. */
@Command(
    name = "calc",
    mixinStandardHelpOptions = true,
    description = {
      "Calculates one function and prints the result alone.",
      "Numbers are written with a point. A range of cells is one argument with commas between"
          + " its values. A missing optional argument is written as -. A refusal goes to standard"
          + " error."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  washbook calc ABV 1.085 0.998",
      "  washbook calc CORRECTEDGRAVITY 1.040 30 15.56",
      "  washbook calc CORRECTEDGRAVITY 1.000 30 - 1.085",
      "  washbook calc CONVERT -5 C F"
    })
final class CalcCommand implements Callable<Integer> {
  @ParentCommand private WashbookCommand parent;
  @Mixin private LanguageArgument language;

  @Parameters(
      arity = "1..*",
      paramLabel = "NAME [ARG...]",
      description = "The function's name, with or without WASHBOOK. before it, and its arguments.")
  private List<String> words = List.of();

  @Override
  public Integer call() {
    PrintStream out = parent.out();
    return Calc.run(words.toArray(String[]::new), 0, language::wording, out, parent.err());
  }
}
