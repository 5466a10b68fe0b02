package washbook.runner.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import washbook.functions.catalogue.ReferencePage;
import washbook.functions.portable.PortableFormulas;
import washbook.runner.language.FunctionList;
import washbook.runner.language.LanguageArgument;

/** {@code washbook functions}: the catalogue. */
@Command(
    name = "functions",
    mixinStandardHelpOptions = true,
    description = "Lists every function with its arguments, units, ranges and sources.",
    footerHeading = "%nExamples:%n",
    footer = {"  washbook functions", "  washbook functions --format markdown > functions.md"})
final class FunctionsCommand implements Callable<Integer> {
  /** Forms of the list. */
  enum Format {
    TEXT,
    MARKDOWN,
    JSON
  }

  @Mixin private LanguageArgument language;
  @ParentCommand private WashbookCommand parent;

  @Option(
      names = "--format",
      paramLabel = "FORM",
      defaultValue = "text",
      description = "text, markdown or json (default: ${DEFAULT-VALUE}).")
  private Format format;

  @Override
  public Integer call() {
    parent
        .out()
        .print(
            switch (format) {
              case TEXT -> FunctionList.in(language.wording());
              case MARKDOWN -> ReferencePage.markdown(PortableFormulas::note);
              case JSON -> ReferencePage.json();
            });
    return ExitCode.DONE;
  }
}
