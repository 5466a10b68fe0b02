package washbook.functions.ferment;

import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;

/**
 * The gravity at which a wash ends: what does not ferment and the by-products of what does weigh on
 * it, the alcohol lightens it.
 */
public final class ExpectedEnd {
  /** Sugars that most yeasts leave in a dry wash, SG; common practice, no source. */
  private static final double REST = 0.001;

  private ExpectedEnd() {}

  /** SG 20/20 when the share {@code fermentable} of the extract has fermented. */
  public static double gravity(double originalGravity, double fermentable, WashKind kind) {
    double extract = SucroseSolution.brix(originalGravity);
    return FermentingWash.gravity(extract, kind.extractLeft(extract, fermentable), kind);
  }

  /**
   * One standard deviation of {@link #gravity}: the share may be off by {@code shareError}, the
   * alcohol by the kind's uncertainty, and a little sugar always stays.
   */
  public static double plusMinus(
      double originalGravity, double fermentable, double shareError, WashKind kind) {
    double least = Math.max(0, fermentable - shareError);
    double most = Math.min(1, fermentable + shareError);
    double byShare =
        most == least
            ? 0
            : (gravity(originalGravity, least, kind) - gravity(originalGravity, most, kind))
                / (most - least)
                * shareError;
    double extract = SucroseSolution.brix(originalGravity);
    double sugar = SucroseSolution.gravity(kind.extractLeft(extract, fermentable));
    double lightening = sugar - gravity(originalGravity, fermentable, kind);
    return Math.hypot(Math.hypot(byShare, lightening * kind.uncertainty()), REST);
  }
}
