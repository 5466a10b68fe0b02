package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;

final class CalcCommandTest {
  @Test
  void printsTheNumberAloneInItsShortestExactForm() {
    Cli run = Cli.run("calc", "ABV", "1.085", "0.998");
    Answer.Number expected = (Answer.Number) Catalogue.get("ABV").call(1.085, 0.998);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertEquals("", run.err());
    assertEquals(Double.toString(expected.value()) + System.lineSeparator(), run.out());
  }

  @ParameterizedTest
  @CsvSource({"CONVERT -5 C F,23", "convert 0 c f,32", "WASHBOOK.CONVERT 50 F C,10"})
  void takesNegativeNumbersAndNamesInAnyCase(String words, String expected) {
    assertEquals(expected, Cli.run(("calc " + words).split(" ")).out().strip());
  }

  @Test
  void theHelpOptionGoesThroughTheLibraryAndSoDoesACallWithIt() {
    Cli help = Cli.run("calc", "--help");
    assertEquals(ExitCode.DONE, help.code());
    assertTrue(help.out().contains("washbook calc ABV 1.085 0.998"), help.out());
    assertEquals("23", Cli.viaLibrary("calc", "CONVERT", "-5", "C", "F").out().strip());
  }

  @Test
  void aDashIsAMissingOptionalArgument() {
    Cli dash = Cli.run("calc", "CORRECTEDGRAVITY", "1.000", "30", "-", "1.085");
    Cli stated = Cli.run("calc", "CORRECTEDGRAVITY", "1.000", "30", "20", "1.085");
    assertEquals(ExitCode.DONE, dash.code(), dash.err());
    assertEquals(stated.out(), dash.out());
  }

  @Test
  void aRefusalGoesToStandardErrorWithExitCodeOne() {
    Cli run = Cli.run("calc", "ABV", "1.085", "2");
    assertEquals(ExitCode.REFUSED, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("gravity 2 is too high"), run.err());
  }

  @Test
  void aDecimalCommaIsRefusedWithTheReason() {
    Cli run = Cli.run("calc", "ABV", "1,085", "0.998");
    assertEquals(ExitCode.REFUSED, run.code());
    assertTrue(run.err().contains("'1,085' is not a number"), run.err());
  }

  @Test
  void anUnknownFunctionAndNoFunctionAreUsageErrors() {
    assertEquals(ExitCode.USAGE, Cli.run("calc", "NOSUCH", "1").code());
    assertEquals(ExitCode.USAGE, Cli.run("calc").code());
    assertEquals(ExitCode.USAGE, Cli.run().code());
    assertEquals(ExitCode.USAGE, Cli.run("nosuch").code());
  }

  @Test
  void everyExampleOfTheCatalogueRuns() {
    for (CatalogueFunction function : Catalogue.all()) {
      String[] args = new String[function.example().size() + 2];
      args[0] = "calc";
      args[1] = function.name();
      for (int i = 2; i < args.length; i++) {
        args[i] = function.example().get(i - 2);
      }
      Cli run = Cli.run(args);
      assertEquals(ExitCode.DONE, run.code(), function.name() + ": " + run.err());
      assertEquals(run, Cli.viaLibrary(args));
    }
  }
}
