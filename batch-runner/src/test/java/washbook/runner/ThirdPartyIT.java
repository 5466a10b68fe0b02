package washbook.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every library in the jar is named where its licence is told, and on the page of promises. */
final class ThirdPartyIT {
  private static final Path BILL = Path.of("target/washbook-sbom.json");

  @Test
  void everyLibraryOfTheBillOfMaterialsIsNamed() throws IOException {
    assumeTrue(Files.exists(BILL), "no bill of materials: it is made with the network only");
    JsonObject bill = JsonParser.parseString(Files.readString(BILL)).getAsJsonObject();
    List<String> missing = new ArrayList<>();
    int libraries = 0;
    for (JsonElement component : bill.getAsJsonArray("components")) {
      String name = component.getAsJsonObject().get("name").getAsString();
      if (name.startsWith("functions-")) {
        continue;
      }
      libraries++;
      for (String page : List.of("src/main/resources/META-INF/THIRD-PARTY.txt", "RELIABILITY.md")) {
        if (!Files.readString(Path.of(page)).matches("(?s).*\\b" + name + "\\b.*")) {
          missing.add(name + " in " + page);
        }
      }
    }
    assertTrue(libraries > 10, libraries + " libraries");
    assertEquals(List.of(), missing);
  }
}
