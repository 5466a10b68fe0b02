package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonParser;
import org.junit.jupiter.api.Test;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;

final class FunctionsCommandTest {
  @Test
  void everyFormNamesEveryFunction() {
    for (String format : new String[] {"text", "markdown", "json"}) {
      Cli run = Cli.run("functions", "--format", format);
      assertEquals(ExitCode.DONE, run.code(), run.err());
      for (CatalogueFunction function : Catalogue.all()) {
        assertTrue(run.out().contains(function.name()), format + " " + function.name());
      }
    }
    assertEquals(Cli.run("functions"), Cli.run("functions", "--format", "text"));
    assertTrue(JsonParser.parseString(Cli.run("functions", "--format", "json").out()) != null);
    assertEquals(ExitCode.USAGE, Cli.run("functions", "--format", "pdf").code());
  }
}
