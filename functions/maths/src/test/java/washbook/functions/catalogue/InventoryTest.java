package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
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
      assertEquals(
          committed, now, "a released name or argument may not change; new ones go behind");
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
