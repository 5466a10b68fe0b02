package washbook.runner.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Where the columns or rows of a sheet end, in millimetres; equal ones are kept together. */
public final class OdsEdges {
  private record Run(int end, double size) {}

  private final List<Run> runs = new ArrayList<>();
  private final double usual;

  /** Behind what is declared all are of the usual size. */
  OdsEdges(double usual) {
    this.usual = usual;
  }

  void add(int repeated, double size) {
    runs.add(new Run(Math.min(count() + repeated, Integer.MAX_VALUE / 2), size));
  }

  int count() {
    return runs.isEmpty() ? 0 : runs.get(runs.size() - 1).end;
  }

  public double size(int index) {
    return runs.stream().filter(run -> index < run.end).findFirst().map(Run::size).orElse(usual);
  }

  /** Where one begins. */
  public double edge(int index) {
    double edge = 0;
    int from = 0;
    for (Run run : runs) {
      int to = Math.max(from, Math.min(run.end, index));
      edge += (to - from) * run.size;
      from = to;
    }
    return edge + Math.max(0, index - from) * usual;
  }

  /** The one in which a place lies; at its very end, still that one. */
  public int at(double place) {
    double rest = Math.max(0, place);
    int from = 0;
    for (Run run : runs) {
      double length = (run.end - from) * run.size;
      if (rest <= length) {
        return from + (run.size <= 0 ? 0 : (int) Math.max(0, Math.ceil(rest / run.size) - 1));
      }
      rest -= length;
      from = run.end;
    }
    return from + (int) Math.max(0, Math.ceil(rest / usual) - 1);
  }

  /** The same with other sizes for some. */
  public OdsEdges with(Map<Integer, Double> sizes) {
    OdsEdges other = new OdsEdges(usual);
    int end = Math.max(count(), sizes.keySet().stream().mapToInt(i -> i + 1).max().orElse(0));
    int from = 0;
    for (int index : sizes.keySet().stream().sorted().toList()) {
      copy(from, index, other);
      other.add(1, sizes.get(index));
      from = index + 1;
    }
    copy(from, end, other);
    return other;
  }

  private void copy(int start, int end, OdsEdges to) {
    int from = start;
    for (Run run : runs) {
      if (run.end > from && from < end) {
        to.add(Math.min(run.end, end) - from, run.size);
        from = Math.min(run.end, end);
      }
    }
    if (from < end) {
      to.add(end - from, usual);
    }
  }
}
