package washbook.functions.ferment;

import java.util.ArrayList;
import java.util.List;

/**
 * Shapes of the fall of a gravity: {@code dL/dx = -k e(L) (1 - L)^p} for the share L that is still
 * to fall, the generalised logistic law (Tsoularis and Wallace, Math. Biosci. 179 (2002) 21). p
 * says how the growth of the yeast limits the beginning: 1 is the logistic curve, less starts at
 * once. e says how it ends. x counts from the middle (L = 1/2), and from L = 3/4 to 1/4 it takes
 * one.
 */
final class FallShape {
  /** The powers p. */
  private enum Beginning {
    AT_ONCE(0.02),
    MIDDLING(0.5),
    LOGISTIC(1);

    private final double power;

    Beginning(double power) {
      this.power = power;
    }

    /** The share that has fallen to the power p: Math.pow takes ten times as long. */
    double growth(double fallen) {
      return switch (this) {
        case AT_ONCE -> Math.pow(fallen, power);
        case MIDDLING -> Math.sqrt(fallen);
        case LOGISTIC -> fallen;
      };
    }
  }

  /**
   * How the rate of a full crop of yeast follows from the share that is left. Each has the odds of
   * a ferment's ending so, for each beginning, before anything is read: chosen on generated
   * courses. SLOWED leads, as it alone has both of the laws that are published of yeast. Yeast that
   * grows on the way is more at the end, which is the more abrupt; LOGISTIC is rare, because its
   * yeast would grow as long as there is sugar, and a crop is full long before.
   */
  private enum Ending {
    ABRUPT(0.03, 0.03, 0.003),
    BETWEEN(0.1, 0.8, 0.02),
    TAIL(0.8, 0.3, 0.05),
    LONG_TAIL(0.03, 0.15, 0.01),
    SLOWED(1, 0.7, 0.05);

    private final double[] odds;

    Ending(double... odds) {
      this.odds = odds;
    }

    double rate(double left) {
      return switch (this) {
        case ABRUPT -> Math.pow(left, 0.35);
        case BETWEEN -> Math.pow(left, 0.7);
        case TAIL -> left;
        // The yeast tires to 0.15 as the sugar goes: invented.
        case LONG_TAIL -> (0.15 + 0.85 * left) * left;
        // Alcohol slows the yeast to 0.4 (Levenspiel), then the sugar gives out (Monod): invented,
        // of the size that such models use.
        case SLOWED -> (0.4 + 0.6 * left) * left / (left + 0.08);
      };
    }
  }

  /** Logits of L run from here to as much below zero: L to within 0.0003 of 1 and of 0. */
  private static final double LAST_LOGIT = 8;

  private static final int LOGITS_PER_UNIT = 32;
  private static final int NODES = 2 * (int) LAST_LOGIT * LOGITS_PER_UNIT;
  private static final int STEPS_PER_UNIT = 64;

  /** Every shape that is fitted. */
  static final List<FallShape> ALL = all();

  private final Beginning beginning;
  private final Ending ending;
  private final double pace;
  private final double fastest;

  /** x at each logit, from the highest down. */
  private final double[] xOf = new double[NODES + 1];

  /** L at even steps of x from the first of {@link #xOf}. */
  private final double[] leftAt;

  private FallShape(Beginning beginning, Ending ending) {
    this.beginning = beginning;
    this.ending = ending;
    for (int i = 1; i <= NODES; i++) {
      double sum = (integrand(logit(i - 1)) + integrand(logit(i)) + 4 * integrand(logit(i - 0.5)));
      xOf[i] = xOf[i - 1] + sum / 6 / LOGITS_PER_UNIT;
    }
    double middle = xOf[NODES / 2];
    double threeToOne = at(Math.log(1.0 / 3)) - at(Math.log(3));
    for (int i = 0; i <= NODES; i++) {
      xOf[i] = (xOf[i] - middle) / threeToOne;
    }
    pace = threeToOne;
    double highest = 0;
    double where = 0;
    for (int i = 0; i <= NODES; i++) {
      double left = 1 / (1 + Math.exp(-logit(i)));
      if (slopeAt(left) > highest) {
        highest = slopeAt(left);
        where = left;
      }
    }
    fastest = where;
    leftAt = new double[(int) ((xOf[NODES] - xOf[0]) * STEPS_PER_UNIT) + 2];
    int node = 0;
    for (int i = 0; i < leftAt.length; i++) {
      double x = xOf[0] + (double) i / STEPS_PER_UNIT;
      while (node < NODES - 1 && xOf[node + 1] < x) {
        node++;
      }
      double share = Math.min(1, (x - xOf[node]) / (xOf[node + 1] - xOf[node]));
      leftAt[i] = 1 / (1 + Math.exp(-logit(node + share)));
    }
  }

  private static List<FallShape> all() {
    List<FallShape> shapes = new ArrayList<>();
    for (Beginning beginning : Beginning.values()) {
      for (Ending ending : Ending.values()) {
        shapes.add(new FallShape(beginning, ending));
      }
    }
    return List.copyOf(shapes);
  }

  private static double logit(double node) {
    return LAST_LOGIT - node / LOGITS_PER_UNIT;
  }

  /** dx of one unit of the logit. */
  private double integrand(double logit) {
    double left = 1 / (1 + Math.exp(-logit));
    return left / ending.rate(left) * Math.pow(1 - left, 1 - beginning.power);
  }

  private double at(double logit) {
    double node = (LAST_LOGIT - logit) * LOGITS_PER_UNIT;
    int i = Math.max(0, Math.min(NODES - 1, (int) node));
    return xOf[i] + (xOf[i + 1] - xOf[i]) * Math.max(0, Math.min(1, node - i));
  }

  /** Share still to fall, 1 to 0. */
  double left(double x) {
    double step = (x - xOf[0]) * STEPS_PER_UNIT;
    if (!(step > 0)) {
      return leftAt[0];
    }
    int i = (int) step;
    if (i >= leftAt.length - 1) {
      return leftAt[leftAt.length - 1];
    }
    return leftAt[i] + (leftAt[i + 1] - leftAt[i]) * (step - i);
  }

  /** How fast that share falls, per unit of x. */
  double slope(double x) {
    return slope(x, left(x));
  }

  /** The same where the share left at x is known. */
  double slope(double x, double left) {
    return x < xOf[0] || x > xOf[NODES] ? 0 : slopeAt(left);
  }

  private double slopeAt(double left) {
    return pace * ending.rate(left) * beginning.growth(1 - left);
  }

  /** Odds of such a fall before anything is read. */
  double odds() {
    return ending.odds[beginning.ordinal()];
  }

  /** The share that is left where it falls fastest. */
  double fastest() {
    return fastest;
  }

  /** The x at which a share is left. */
  double when(double left) {
    return at(Math.log(left / (1 - left)));
  }

  @Override
  public String toString() {
    return beginning + "/" + ending;
  }
}
