package washbook.runner.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What the runs of one tool on one job took, and whether its results are right. */
final class Runs {
  /** Fewer to try whether all works. */
  static final int MOST = Integer.getInteger("washbook.bench.runs", 5);

  private static final double SHORT_SECONDS = 10;

  /** What takes longer is run once, so that all ends within half an hour. */
  private static final double LONG_SECONDS = 45;

  final Tool tool;
  private final List<Timed> done = new ArrayList<>();
  private final boolean ratio;
  private String verdict = "";

  /** Whether a limit is about it, so that it is run three times however long it takes. */
  Runs(Tool tool, boolean ratio) {
    this.tool = tool;
    this.ratio = ratio;
  }

  boolean wants(int round) {
    if (!tool.lacks().isEmpty()) {
      return false;
    }
    if (round == 0) {
      return true;
    }
    Timed first = done.get(0);
    if (first.isGivenUp() || isWrong()) {
      return false;
    }
    if (first.seconds() < SHORT_SECONDS) {
      return round < MOST;
    }
    return (ratio || first.seconds() < LONG_SECONDS) && round < Math.min(MOST, 3);
  }

  void add(Timed one) {
    done.add(one);
  }

  void says(String checked) {
    verdict = checked;
  }

  /** How the results were checked, or what was not done. */
  String verdict() {
    return tool.lacks().isEmpty() ? verdict : "not done: " + tool.lacks();
  }

  boolean isWrong() {
    return verdict.startsWith("WRONG");
  }

  boolean isMeasured() {
    return !done.isEmpty() && !done.get(0).isGivenUp() && !isWrong();
  }

  int number() {
    return done.size();
  }

  double seconds() {
    return median(Timed::seconds);
  }

  double processor() {
    return median(Timed::processor);
  }

  double megabytes() {
    return median(Timed::megabytes);
  }

  /** NaN where nothing was measured. */
  private double median(ToDoubleFunction<Timed> of) {
    double[] figures =
        done.stream().mapToDouble(of).filter(figure -> !Double.isNaN(figure)).sorted().toArray();
    return figures.length == 0 ? Double.NaN : figures[figures.length / 2];
  }
}
