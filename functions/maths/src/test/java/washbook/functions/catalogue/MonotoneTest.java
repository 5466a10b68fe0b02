package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Parameter.Kind;
import washbook.functions.quantity.Quantity;

/**
 * Each result rises or falls with each number over its whole range as monotone.csv says: 100,000
 * points with the other arguments of the worked example, and a coarser scan at every corner and
 * middle of the others' ranges. Where it turns, the list says why.
 */
@Execution(ExecutionMode.CONCURRENT)
class MonotoneTest {
  /** Fewer only to save time while developing: {@code -Dwashbook.points=2000}. */
  private static final int FINE = Integer.getInteger("washbook.points", 100_000);

  private static final int COARSE = 300;
  private static final double[] CORNERS = {0, 0.5, 1};

  record Line(String function, String parameter, String direction, String why) {}

  static List<Line> lines() throws IOException {
    try (InputStream in = MonotoneTest.class.getResourceAsStream("/washbook/monotone.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(",", 4))
          .map(c -> new Line(c[0], c[1], c[2], c[3]))
          .toList();
    }
  }

  static List<Line> directed() throws IOException {
    return lines().stream().filter(line -> !line.direction.equals("none")).toList();
  }

  /** No function and no number is left out, and every exception has its reason. */
  @Test
  void listIsWhole() throws IOException {
    List<String> needed = new ArrayList<>();
    for (CatalogueFunction function : Catalogue.all()) {
      boolean ranges =
          function.parameters().stream()
              .anyMatch(p -> p.kind() == Kind.NUMBERS || p.kind() == Kind.REST);
      for (Parameter p : function.parameters()) {
        if (!ranges && p.kind() == Kind.NUMBER && p.quantity() != Quantity.ANY) {
          needed.add(function.name() + "," + p.name());
        }
      }
    }
    assertEquals(needed, lines().stream().map(l -> l.function + "," + l.parameter).toList());
    lines().forEach(l -> assertEquals(l.direction.equals("none"), !l.why.isEmpty(), l.toString()));
  }

  @ParameterizedTest
  @MethodSource("directed")
  void overTheWholeRange(Line line) {
    CatalogueFunction function = Catalogue.get(line.function);
    List<Parameter> parameters = function.parameters();
    int scanned = 0;
    while (!parameters.get(scanned).name().equals(line.parameter)) {
      scanned++;
    }
    double sign = line.direction.equals("+") ? 1 : -1;
    Object[] raw = Arrays.copyOf(exampleOf(function), parameters.size());
    int answered = scan(function, raw, scanned, sign, FINE);
    int corners = 1;
    for (int i = 1; i < parameters.size(); i++) {
      corners *= CORNERS.length;
    }
    for (int corner = 0; corner < corners; corner++) {
      int rest = corner;
      for (int i = 0; i < raw.length; i++) {
        if (i != scanned) {
          raw[i] = corner(parameters.get(i), CORNERS[rest % CORNERS.length]);
          rest /= CORNERS.length;
        }
      }
      answered += scan(function, raw, scanned, sign, COARSE);
    }
    assertTrue(answered > Math.min(1000, FINE / 10), "only " + answered + " points had an answer");
  }

  private static Object[] exampleOf(CatalogueFunction function) {
    return CommandWords.read(function, function.example());
  }

  private static Object corner(Parameter p, double share) {
    if (!p.words().isEmpty()) {
      return p.words().get((int) (share * (p.words().size() - 1)));
    }
    return at(p, share);
  }

  private static double at(Parameter p, double share) {
    double max = Math.min(p.quantity().max(), 1000);
    return share == 1 ? max : p.quantity().min() + share * (max - p.quantity().min());
  }

  private static int scan(
      CatalogueFunction function, Object[] raw, int scanned, double sign, int points) {
    Parameter p = function.parameters().get(scanned);
    double last = Double.NaN;
    int answered = 0;
    for (int i = 0; i <= points; i++) {
      raw[scanned] = at(p, (double) i / points);
      if (function.call(raw) instanceof Answer.Number number) {
        double rounding = 1e-11 * Math.max(1, Math.abs(number.value()));
        if (answered > 0 && sign * (number.value() - last) < -rounding) {
          throw new AssertionError(
              function.name() + Arrays.toString(raw) + ": " + number.value() + " after " + last);
        }
        last = number.value();
        answered++;
      }
    }
    return answered;
  }
}
