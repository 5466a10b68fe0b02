package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Answer;

/** Sentences name arguments in words; their formal names are for formulas and programs. */
class ArgumentNamesTest {
  /** Formal names that are no words: those with a capital inside, and English ones elsewhere. */
  private static Pattern formal(String language) {
    Set<String> alsoWords =
        switch (language) {
          case "fr" -> Set.of("apparent", "arguments", "litres");
          case "es" -> Set.of("factor");
          default -> Set.of();
        };
    return Pattern.compile(
        parameters()
            .map(Parameter::name)
            .filter(name -> !language.equals("en") || !name.equals(name.toLowerCase(Locale.ROOT)))
            .filter(name -> !alsoWords.contains(name))
            .distinct()
            .collect(Collectors.joining("|", "\\b(", ")\\b")));
  }

  private static Stream<Parameter> parameters() {
    return Catalogue.all().stream().flatMap(function -> function.parameters().stream());
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es", "it", "pt", "nl", "af"})
  void everyArgumentHasANameThatIsAnothersInNoFunction(String language) {
    Pattern formal = formal(language);
    for (CatalogueFunction function : Catalogue.all()) {
      Set<String> names = new TreeSet<>();
      for (Parameter parameter : function.parameters()) {
        String name = parameter.told().in(language);
        assertFalse(name.isBlank() || formal.matcher(name).find(), function.name() + ": " + name);
        assertTrue(names.add(name), function.name() + " calls two arguments " + name);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es", "it", "pt", "nl", "af"})
  void noRefusalHasAFormalName(String language) {
    Set<String> found = new TreeSet<>();
    Pattern formal = formal(language);
    int refused = 0;
    for (CatalogueFunction function : Catalogue.all()) {
      for (Object[] call : wrongCalls(function)) {
        if (function.call(call) instanceof Answer.Refusal refusal) {
          refused++;
          String said = refusal.told().in(language);
          if (formal.matcher(said).find()) {
            found.add(function.name() + ": " + said);
          }
        }
      }
    }
    assertEquals(Set.of(), found);
    assertTrue(refused > 1500, refused + " refusals");
  }

  private static List<Object[]> wrongCalls(CatalogueFunction function) {
    Object[] example = CommandWords.read(function, function.example());
    List<Object[]> calls = new ArrayList<>();
    for (int i = 0; i < function.parameters().size(); i++) {
      for (Object wrong :
          Arrays.asList(
              null,
              "",
              "warm",
              1e9,
              -1e9,
              0.0,
              Double.NaN,
              List.of(1.5, "y"),
              new double[] {1e9})) {
        Object[] call = Arrays.copyOf(example, Math.max(example.length, i + 1));
        call[i] = wrong;
        calls.add(call);
        for (int j = 0; j < i; j++) {
          Object[] two = call.clone();
          two[j] = Objects.requireNonNullElse(call[i], 1e9);
          two[i] = example.length > j ? example[j] : null;
          calls.add(two);
        }
      }
      Object[] halfBlank = example.clone();
      for (int j = 0; j < Math.min(halfBlank.length, function.parameters().size()); j++) {
        if (function.parameters().get(j).kind() == Parameter.Kind.NUMBERS) {
          halfBlank[j] = j == i ? List.of(1.05, "") : List.of(1.05, 1.05);
        }
      }
      calls.add(halfBlank);
    }
    return calls;
  }
}
