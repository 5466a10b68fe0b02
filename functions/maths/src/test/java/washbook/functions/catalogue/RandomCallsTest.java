package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Parameter.Kind;
import washbook.functions.quantity.Quantity;

/** A million calls of each function with sense and nonsense: always an answer or a reason. */
@Execution(ExecutionMode.CONCURRENT)
class RandomCallsTest {
  /** Fewer only to save time while developing: {@code -Dwashbook.tuples=20000}. */
  private static final int TUPLES = Integer.getInteger("washbook.tuples", 1_000_000);

  private static final double[] NONSENSE = {
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    Double.MAX_VALUE,
    -Double.MAX_VALUE,
    Double.MIN_VALUE,
    0.0,
    -0.0,
    1e9,
    -1,
    1e-300
  };

  static List<CatalogueFunction> functions() {
    return Catalogue.all();
  }

  @ParameterizedTest
  @MethodSource("functions")
  void neverNanNorInfinity(CatalogueFunction function) {
    SplittableRandom random = new SplittableRandom(function.name().hashCode());
    // A run takes many boils and a fit many steps, so most of their calls hold one nonsense value
    // and end early.
    boolean fits = function.name().matches("DAYSTOFINISH.*|FERMENTSTATE");
    double sense = fits ? 0.15 : function.name().startsWith("RUN") ? 0.35 : 0.9;
    int answered = 0;
    Object[] raw = new Object[function.parameters().size()];
    for (int i = 0; i < TUPLES; i++) {
      for (int k = 0; k < raw.length; k++) {
        raw[k] = argument(function.parameters().get(k), random, sense);
      }
      Answer answer = function.call(raw);
      if (answer instanceof Answer.Number number) {
        assertTrue(Double.isFinite(number.value()));
        answered++;
      } else if (answer instanceof Answer.Refusal refusal) {
        assertTrue(refusal.code() != null && refusal.reason().length() > 10);
      } else {
        answered++;
      }
    }
    // Readings at random are hardly ever the course of a ferment that ends.
    int least = function.name().startsWith("DAYSTOFINISH") ? 0 : TUPLES / 1000;
    assertTrue(answered > least, function.name() + " answered only " + answered);
  }

  private static Object argument(Parameter p, SplittableRandom random, double sense) {
    boolean sensible = random.nextDouble() < sense;
    if (p.optional() && random.nextInt(4) == 0) {
      return null;
    }
    return switch (p.kind()) {
      case NUMBER -> number(p, random, sensible);
      case WORD -> sensible ? word(p, random) : "NOSUCH";
      case WORD_OR_NUMBER -> random.nextBoolean() ? word(p, random) : number(p, random, sensible);
      case NUMBERS -> cells(p, random, sensible);
      case ANYTHING -> Catalogue.all().get(random.nextInt(Catalogue.all().size() - 1)).name();
      case REST -> random.nextDouble() * 10;
    };
  }

  private static String word(Parameter p, SplittableRandom random) {
    return p.words().get(random.nextInt(p.words().size()));
  }

  private static Double number(Parameter p, SplittableRandom random, boolean sensible) {
    if (!sensible) {
      return NONSENSE[random.nextInt(NONSENSE.length)];
    }
    double min = p.quantity().min();
    double max = Math.min(p.quantity().max(), 1e3);
    return switch (random.nextInt(20)) {
      case 0 -> min;
      case 1 -> p.quantity().max();
      default -> min + (max - min) * random.nextDouble();
    };
  }

  private static List<Object> cells(Parameter p, SplittableRandom random, boolean sensible) {
    int count = sensible ? 4 : random.nextInt(6);
    List<Object> cells = new ArrayList<>(count);
    double value = number(p, random, true);
    // Days go on and gravities fall, as a ferment's do.
    double step =
        p.quantity() == Quantity.DAYS ? 1 : p.quantity() == Quantity.GRAVITY ? -0.02 : 0.001;
    for (int i = 0; i < count; i++) {
      double next = Math.max(p.quantity().min(), Math.min(p.quantity().max(), value + i * step));
      cells.add(
          sensible
              ? (Object) next
              : random.nextInt(3) == 0 ? "" : number(p, random, random.nextBoolean()));
    }
    return cells;
  }

  /** One value out of range at a time: the sentence names the argument, the value and the range. */
  @ParameterizedTest
  @MethodSource("functions")
  void refusalNamesValueAndRange(CatalogueFunction function) {
    for (int k = 0; k < function.parameters().size(); k++) {
      Parameter p = function.parameters().get(k);
      if (p.quantity() == null || p.quantity() == Quantity.ANY) {
        continue;
      }
      double below = p.quantity().min() - 1.25;
      double above = p.quantity().max() + 1.25;
      for (double wrong : new double[] {below, above}) {
        if (wrong == 0) {
          continue;
        }
        Object[] raw = new Object[function.parameters().size()];
        Object[] good = CommandWords.read(function, function.example());
        System.arraycopy(good, 0, raw, 0, good.length);
        raw[k] = p.kind() == Kind.NUMBERS ? List.of(wrong) : (Object) wrong;
        Answer answer = function.call(raw);
        assertTrue(answer instanceof Answer.Refusal, function.name() + " took " + wrong);
        Answer.Refusal refusal = (Answer.Refusal) answer;
        assertTrue(refusal.reason().contains(p.told().english()), refusal.reason());
        assertTrue(refusal.reason().contains(Numbers.show(wrong)), refusal.reason());
        assertTrue(refusal.reason().contains(p.quantity().range()), refusal.reason());
        assertEquals(wrong == below ? Answer.Code.TOO_LOW : Answer.Code.TOO_HIGH, refusal.code());
      }
    }
  }

  /** Every argument that is needed and blank is refused as blank, by its name. */
  @ParameterizedTest
  @MethodSource("functions")
  void blankIsNotZero(CatalogueFunction function) {
    for (int k = 0; k < function.parameters().size(); k++) {
      Parameter p = function.parameters().get(k);
      Object[] raw = CommandWords.read(function, function.example());
      if (p.optional() || k >= raw.length) {
        continue;
      }
      for (Object blank : new Object[] {null, "", "  "}) {
        raw[k] = blank;
        Answer answer = function.call(raw);
        assertTrue(
            answer instanceof Answer.Refusal refusal
                && refusal.code() == Answer.Code.BLANK
                && refusal.reason().contains(p.told().english()),
            function.name() + " " + p.name() + ": " + answer);
      }
    }
  }
}
