package washbook.functions.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CommandWords;
import washbook.functions.catalogue.Example;

/** One call of a function with the arguments of its worked example, as the add-in makes it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class CallBench {
  /** A function's name, and with a blank behind it other arguments than its example's. */
  @Param({"ABV"})
  public String call;

  private CatalogueFunction function;
  private Object[] arguments;
  private Answer last;

  @Setup
  public void setUp() {
    String[] words = call.split(" ");
    function = Catalogue.get(words[0]);
    List<String> given =
        words.length > 1 ? List.of(words).subList(1, words.length) : function.example();
    arguments = CommandWords.read(function, given);
    for (int i = 0; i < arguments.length; i++) {
      arguments[i] = number(arguments[i]);
    }
  }

  private static Object number(Object raw) {
    if (raw instanceof List<?> cells) {
      return cells.stream().map(CallBench::number).toList();
    }
    Double number = raw instanceof String text ? Numbers.parse(text) : null;
    return number == null ? raw : number;
  }

  @Benchmark
  public Answer call() {
    last = function.call(arguments);
    return last;
  }

  /** The answer that was measured is the worked example's. */
  @TearDown
  public void check() {
    boolean example = call.equals(function.name());
    String expected = example ? Example.of(function).answer() : "1.04275";
    String found =
        last instanceof Answer.Number number ? Numbers.round(number.value(), 5) : last.toString();
    boolean right =
        !example
            ? found.equals(expected)
            : last instanceof Answer.Number number
                ? Math.abs(number.value() - Double.parseDouble(expected.split(" ")[0])) < 0.006
                : last instanceof Answer.Text text && expected.contains(text.text());
    if (!right) {
      throw new IllegalStateException(call + " gave " + found + ", not " + expected);
    }
  }
}
