package washbook.functions.spirit;

import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;

/** Some of the jars of a run, from one to another, put together. */
public final class Cut {
  private Cut() {}

  /** Litres of each jar between the two, NaN where a jar is left out. */
  public static double[] between(double[] cells, double first, double last) {
    int from = (int) first;
    int to = Double.isNaN(last) ? cells.length : (int) last;
    if (from != first || (!Double.isNaN(last) && to != last)) {
      throw RefusedException.contradiction("jars.counted");
    }
    if (to > cells.length || from > to) {
      throw RefusedException.contradiction("jars.list", from, to, cells.length);
    }
    double[] some = new double[to - from + 1];
    System.arraycopy(cells, from - 1, some, 0, some.length);
    return some;
  }

  /** Litres of pure alcohol at 20 °C in the jars; rows where both cells are blank are no jars. */
  public static double alcohol(double[] litres, double[] strengths) {
    if (litres.length != strengths.length) {
      throw RefusedException.contradiction("cells.strengths", litres.length, strengths.length);
    }
    double sum = 0;
    int jars = 0;
    for (int i = 0; i < litres.length; i++) {
      if (Double.isNaN(litres[i]) != Double.isNaN(strengths[i])) {
        throw new RefusedException(Code.BLANK, "jar.half", i + 1);
      }
      if (!Double.isNaN(litres[i])) {
        sum += litres[i] * strengths[i] / 100;
        jars++;
      }
    }
    if (jars == 0) {
      throw new RefusedException(Code.BLANK, "jars.none");
    }
    return sum;
  }
}
