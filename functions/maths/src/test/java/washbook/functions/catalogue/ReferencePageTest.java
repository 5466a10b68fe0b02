package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import washbook.functions.Answer;
import washbook.functions.portable.PortableFormulas;

class ReferencePageTest {
  static List<CatalogueFunction> functions() {
    return Catalogue.all();
  }

  @Test
  void committedPageIsCurrent() throws IOException {
    assertEquals(
        ReferencePage.markdown(PortableFormulas::note),
        Files.readString(Path.of("../REFERENCE.md")),
        "functions/REFERENCE.md is not what the catalogue says; write it again: java -jar"
            + " batch-runner/target/washbook.jar functions --format markdown"
            + " > functions/REFERENCE.md");
  }

  @ParameterizedTest
  @MethodSource("functions")
  void saysEverything(CatalogueFunction function) {
    assertFalse(function.summary().isBlank());
    assertTrue(function.summary().endsWith("."), function.summary());
    assertTrue(function.summary().length() <= 100, "long for the function wizard");
    assertFalse(function.source().isBlank());
    assertFalse(function.example().isEmpty());
    for (Parameter parameter : function.parameters()) {
      assertTrue(parameter.meaning().endsWith("."), parameter.meaning());
    }
  }

  @ParameterizedTest
  @MethodSource("functions")
  void exampleHasAnAnswer(CatalogueFunction function) {
    Answer answer = function.call(CommandWords.read(function, function.example()));
    assertTrue(
        function.givesText()
            ? answer instanceof Answer.Text || answer instanceof Answer.Told
            : answer instanceof Answer.Number,
        answer.toString());
  }

  @Test
  void everyFunctionIsOnEveryPage() {
    for (CatalogueFunction function : Catalogue.all()) {
      assertTrue(
          ReferencePage.markdown(PortableFormulas::note)
              .contains("\n### " + function.name() + "\n"));
      assertTrue(ReferencePage.json().contains("{\"name\":\"" + function.name() + "\","));
    }
  }

  @Test
  void whatCanHurtCarriesItsCaution() {
    for (CatalogueFunction function : Catalogue.all()) {
      boolean still = function.group() == CatalogueFunction.Group.STILL;
      boolean dilution = function.name().startsWith("DILUT") || function.name().startsWith("RUN");
      if (still || dilution) {
        assertTrue(function.caution().contains("safe to drink"), function.name());
        assertTrue(function.caution().contains("licensed practice"), function.name());
      }
    }
  }
}
