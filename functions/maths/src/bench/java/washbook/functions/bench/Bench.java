package washbook.functions.bench;

import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;

/**
 * Measures every function and compares the median call with its limit. The median is taken so that
 * other work on the machine does not show.
 */
public final class Bench {
  private static final String PLAIN_GRAVITY = "CORRECTEDGRAVITY 1.040 30";

  private Bench() {}

  public static void main(String[] args) throws RunnerException {
    String[] calls =
        args.length > 0
            ? args
            : Stream.concat(
                    Stream.of(PLAIN_GRAVITY), Catalogue.all().stream().map(CatalogueFunction::name))
                .toArray(String[]::new);
    TreeMap<String, Double> medians = new TreeMap<>();
    for (RunResult result :
        new Runner(
                new OptionsBuilder()
                    .include(CallBench.class.getName())
                    .param("call", calls)
                    .shouldFailOnError(true)
                    .verbosity(VerboseMode.SILENT)
                    .build())
            .run()) {
      medians.put(
          result.getParams().getParam("call"),
          result.getPrimaryResult().getStatistics().getPercentile(50) / 1000);
    }
    boolean slow = false;
    for (String call : calls) {
      double limit = limit(call);
      boolean over = medians.get(call) > limit;
      slow |= over;
      System.out.printf(
          Locale.ROOT,
          "| %s | %.2f | %.0f |%s%n",
          call,
          medians.get(call),
          limit,
          over ? " TOO SLOW" : "");
    }
    if (slow) {
      System.exit(1);
    }
  }

  /** Microseconds. */
  private static double limit(String call) {
    if (call.startsWith("RUN")) {
      return 5000;
    }
    return call.startsWith("CORRECTEDGRAVITY") ? 2 : call.equals("ABV") ? 3 : 20;
  }
}
