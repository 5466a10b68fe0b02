package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every function is compared with something outside the project, by a test that exists. */
class OutsideChecksTest {
  @Test
  void everyFunctionHasOne() throws IOException, ClassNotFoundException {
    try (InputStream in =
        OutsideChecksTest.class.getResourceAsStream("/washbook/outside-checks.csv")) {
      List<String[]> rows =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#"))
              .skip(1)
              .map(line -> line.split(",", 3))
              .toList();
      assertEquals(
          Catalogue.all().stream().map(CatalogueFunction::name).toList(),
          rows.stream().map(row -> row[0]).toList());
      for (String[] row : rows) {
        assertFalse(row[1].isBlank(), row[0]);
        String[] test = row[2].split("#");
        assertTrue(
            Arrays.stream(Class.forName(test[0]).getDeclaredMethods())
                .anyMatch(method -> method.getName().equals(test[1])),
            row[2]);
      }
    }
  }
}
