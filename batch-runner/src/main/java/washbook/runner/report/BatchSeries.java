package washbook.runner.report;

/**
 * The course of one batch, for a chart.
 *
 * @param title batch and sheet
 * @param unit of {@code x}: days, hours or reading
 * @param x ascending
 * @param gravity SG 20/20; NaN where refused
 * @param abv % vol; NaN where refused
 */
public record BatchSeries(String title, String unit, double[] x, double[] gravity, double[] abv) {
  /** More points than these cannot be told apart in a chart. */
  public static final int MOST_POINTS = 400;

  /** More charts of one sheet than these nobody looks at. */
  public static final int MOST_BATCHES = 50;
}
