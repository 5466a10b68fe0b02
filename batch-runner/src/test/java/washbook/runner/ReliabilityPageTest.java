package washbook.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every test that RELIABILITY.md names is there. */
final class ReliabilityPageTest {
  private static final Pattern NAME =
      Pattern.compile("`(?:([A-Z]\\w+(?:Test|IT))(?:\\.(\\w+))?|([a-z]\\w+))(?:\\.\\.\\.)?`");

  @Test
  void everyPromiseHasItsTest() throws IOException {
    Map<String, String> sources = new HashMap<>();
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        sources.put(file.getFileName().toString().replace(".java", ""), Files.readString(file));
      }
    }
    List<String> missing = new ArrayList<>();
    int rows = 0;
    for (String line : Files.readAllLines(Path.of("RELIABILITY.md"))) {
      String[] cells = line.split("(?<!\\\\)\\|");
      if (cells.length != 4 || cells[1].strip().startsWith("-") || cells[3].contains("shown by")) {
        continue;
      }
      rows++;
      Matcher matcher = NAME.matcher(cells[3]);
      String owner = "";
      int named = 0;
      while (matcher.find()) {
        owner = matcher.group(1) != null ? matcher.group(1) : owner;
        String method = matcher.group(2) != null ? matcher.group(2) : matcher.group(3);
        String source = sources.get(owner);
        String begin = method == null ? "Test" : "@Test\n  void " + method;
        if (source == null || !source.contains(begin)) {
          missing.add(matcher.group() + " of " + owner);
        }
        named++;
      }
      if (named == 0) {
        missing.add("no test: " + line);
      }
    }
    assertEquals(List.of(), missing);
    assertTrue(rows >= 30, rows + " rows");
  }
}
