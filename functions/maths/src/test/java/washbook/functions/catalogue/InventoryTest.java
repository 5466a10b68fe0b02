package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Saved workbooks hold names and the order of arguments, so both are frozen. */
class InventoryTest {
  @Test
  void namesAndArgumentsAreTheCommittedOnes() throws IOException {
    String now =
        Catalogue.all().stream()
            .map(
                f ->
                    f.name()
                        + f.parameters().stream()
                            .map(p -> " " + p.name() + (p.optional() ? "?" : ""))
                            .collect(Collectors.joining()))
            .collect(Collectors.joining("\n", "", "\n"));
    try (InputStream in = InventoryTest.class.getResourceAsStream("/washbook/inventory.txt")) {
      String committed = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(committed, now, "write new functions and optional arguments into the inventory");
    }
  }

  /**
   * What an earlier release had goes on working: a function keeps its name and its arguments, and
   * optional arguments may have come at the end.
   */
  @Test
  void releasedCallsGoOnWorking() throws IOException {
    Map<String, String> now =
        lines("/washbook/inventory.txt").collect(Collectors.toMap(l -> l.split(" ")[0], l -> l));
    lines("/washbook/inventory-0.1.txt")
        .forEach(
            released -> {
              String line = now.get(released.split(" ")[0]);
              assertTrue(goesOn(released, line), released + " has become " + line);
            });
  }

  @Test
  void onlyOptionalArgumentsMayComeAndOnlyAtTheEnd() {
    assertTrue(goesOn("ABV originalGravity gravity", "ABV originalGravity gravity wash?"));
    assertTrue(goesOn("CONVERT value from to", "CONVERT value from to"));
    assertFalse(goesOn("ABV originalGravity gravity", null));
    assertFalse(goesOn("ABV originalGravity gravity", "ABV originalGravity gravity wash"));
    assertFalse(goesOn("ABV originalGravity gravity", "ABV gravity originalGravity"));
    assertFalse(goesOn("ABV originalGravity gravity", "ABV originalGravity gravityNow"));
    assertFalse(goesOn("ABV originalGravity gravity", "ABV originalGravity wash? gravity"));
    assertFalse(goesOn("BLEND litres kilograms?", "BLEND litres kilograms"));
    assertFalse(goesOn("BLEND litres kilograms?", "BLEND litres"));
  }

  private static boolean goesOn(String released, String now) {
    return now != null
        && now.startsWith(released)
        && now.substring(released.length()).matches("( [A-Za-z0-9]+\\?)*");
  }

  private static Stream<String> lines(String resource) throws IOException {
    try (InputStream in = InventoryTest.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines();
    }
  }

  @Test
  void namesAreOfLettersAndDigitsAndOptionalArgumentsAreLast() {
    for (CatalogueFunction f : Catalogue.all()) {
      assertTrue(f.name().matches("[A-Z][A-Z0-9]*"), f.name());
      boolean optional = false;
      for (Parameter p : f.parameters()) {
        assertTrue(p.optional() || !optional, f.name() + " " + p.name());
        optional = p.optional();
      }
    }
  }
}
