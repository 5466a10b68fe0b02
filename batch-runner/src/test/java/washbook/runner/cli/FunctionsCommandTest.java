package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonParser;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.log.language.Language;

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
    assertTrue(Cli.run("functions").out().contains("Gives a number in the unit asked for."));
    assertTrue(JsonParser.parseString(Cli.run("functions", "--format", "json").out()) != null);
    assertEquals(ExitCode.USAGE, Cli.run("functions", "--format", "pdf").code());
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void theListIsInTheReadersLanguage(Language language) {
    Cli run = Cli.run("functions", "--language", language.code());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Pattern english = Pattern.compile("\\b(the|and|that|with|gives|which|days)\\b");
    run.out()
        .lines()
        .filter(line -> !line.contains("WASHBOOK.") && !line.contains("washbook calc"))
        .forEach(line -> assertFalse(english.matcher(line).find(), line));
  }
}
