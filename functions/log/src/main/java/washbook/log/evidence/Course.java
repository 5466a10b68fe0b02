package washbook.log.evidence;

import java.util.Arrays;
import java.util.List;
import washbook.log.ReadingError;

/** How the readings of a table run, batch by batch in the order of time. */
final class Course {
  /** Fewer readings show no course. */
  private static final int FEWEST = 4;

  /** As many readings that do not fall are no beginning any more. */
  private static final int LONG_ENOUGH = 6;

  /** What a wash begins with at least and at most, and what a young one has; SG. */
  private static final double LEAST_START = 1.030;

  private static final double MOST_START = 1.180;

  /** Heavier ones begin so seldom that a few readings don't tell; SG. */
  private static final double MOST_BEGUN = 1.135;

  /** Lighter than any wash that has fermented, SG. */
  private static final double LIGHTEST = 0.97;

  /** The part of its extract that must be gone. */
  private static final double FALL = 1.0 / 3;

  /** A single reading so far above the one before it is a slip when the next one falls on, SG. */
  private static final double SLIP = 0.010;

  /** What moves less over many readings rests, SG. */
  private static final double RESTS = 0.0015;

  /** Nothing that is about to ferment is so light, SG. */
  private static final double THIN = 1.015;

  /** What no error of reading explains over a whole log, SG. */
  private static final double RISE = 0.010;

  /** The part of the steepest fall that the last one has at most. */
  private static final double LEVEL = 0.6;

  /** The part of its extract that is left at most where a ferment shows by itself. */
  private static final double LITTLE = 0.55;

  /** What has fermented out stays below it, SG. */
  private static final double FINISHED = 1.003;

  private double highestOfAll;
  private int batches;
  private int single;
  private int readings;
  private int like;
  private int unlike;
  private int begun;
  private int shortFalls;
  private int outside;
  private int resting;
  private int rising;
  private int thin;
  private boolean rose;
  private boolean level;
  private boolean low;

  /**
   * @param gravities readings of each batch as SG, in the order of time
   */
  Course(List<double[]> gravities) {
    for (double[] batch : gravities) {
      highestOfAll = Math.max(highestOfAll, Arrays.stream(batch).max().orElse(0));
      double[] inside =
          Arrays.stream(batch).filter(g -> g >= LIGHTEST && g <= MOST_START).toArray();
      outside += batch.length - inside.length;
      readings += batch.length;
      if (inside.length > 0) {
        add(withoutSlips(inside));
      }
    }
  }

  /** Without one reading in eight that stands out above both its neighbours: slips of the pen. */
  private static double[] withoutSlips(double[] gravities) {
    double[] kept = new double[gravities.length];
    int count = 0;
    int slips = 0;
    for (int i = 0; i < gravities.length; i++) {
      boolean inner = count > 0 && i + 1 < gravities.length && gravities.length >= FEWEST;
      boolean slip =
          inner
              && gravities[i] > kept[count - 1] + SLIP
              && gravities[i + 1] <= kept[count - 1] + ReadingError.USUAL
              && slips * 8 < gravities.length;
      if (slip) {
        slips++;
      } else {
        kept[count++] = gravities[i];
      }
    }
    return Arrays.copyOf(kept, count);
  }

  private void add(double[] gravities) {
    batches++;
    single += gravities.length == 1 ? 1 : 0;
    double highest = 0;
    double up = 0;
    double down = 0;
    int rises = 0;
    double before = gravities[0];
    double held = before;
    for (double gravity : gravities) {
      highest = Math.max(highest, gravity);
      if (gravity > held + ReadingError.USUAL) {
        up += gravity - held;
        rises++;
        held = gravity;
      } else if (gravity < held) {
        down += held - gravity;
        held = gravity;
      }
      before = gravity;
    }
    rose |= rises > 1;
    double fall = highest - before;
    resting += gravities.length >= FEWEST && highest - held <= RESTS && up <= RESTS ? 1 : 0;
    double rise = before - gravities[0];
    rising += gravities.length >= FEWEST && rise >= RISE && down <= 0.25 * up ? 1 : 0;
    thin += gravities.length > 1 && highest < THIN ? 1 : 0;
    boolean canBegin = highest >= LEAST_START && highest <= MOST_BEGUN;
    boolean falls = fall >= FALL * (highest - 1);
    boolean fed = rises <= 1 + gravities.length / 8 && up <= 0.55 * down;
    if (gravities.length < FEWEST) {
      shortFalls += canBegin && rises == 0 && falls ? 1 : 0;
      begun += canBegin && rises == 0 ? 1 : 0;
    } else if (highest >= LEAST_START && falls && (up <= 0.35 * down || fed)) {
      like++;
      level |= endsLevel(gravities);
      low |= before - 1 <= LITTLE * (highest - 1);
    } else if (rises >= 2 && up > 0.4 * down || !falls && gravities.length >= LONG_ENOUGH) {
      unlike++;
    } else {
      begun += canBegin && rises == 0 ? 1 : 0;
    }
  }

  /** Whether a batch fell less from its last reading but one to the last than it once did. */
  private static boolean endsLevel(double[] gravities) {
    double most = 0;
    for (int i = 1; i < gravities.length; i++) {
      most = Math.max(most, gravities[i - 1] - gravities[i]);
    }
    int last = gravities.length - 1;
    return gravities[last - 1] - gravities[last] <= LEVEL * most;
  }

  /** Whether every batch of several readings rises. */
  boolean rises() {
    return rising > 0 && rising == batches - single;
  }

  /** Whether several readings of a batch stand above those before them. */
  boolean rose() {
    return rose;
  }

  boolean levelsOff() {
    return level;
  }

  /** Whether a batch has lost most of its extract. */
  boolean endsLow() {
    return low;
  }

  /** Whether most batches run as a ferment does. */
  boolean isLikeFerment() {
    return like > 0 && like > unlike;
  }

  boolean isUnlike() {
    return unlike > 0 && unlike >= like;
  }

  /** Whether nothing was read that could still ferment, or nothing that moves. */
  boolean isFinished() {
    return readings > 0 && highestOfAll < FINISHED
        || highestOfAll < LEAST_START && resting == batches && batches > 0;
  }

  /** Whether it can be the beginning of a ferment. */
  boolean mayHaveBegun() {
    return begun > 0 && unlike == 0 && begun >= thin;
  }

  boolean isOneEach() {
    return batches >= 3 && single == batches;
  }

  /** Whether many readings are none of a wash; a few may be slips of the pen. */
  boolean isOutside() {
    return outside > 0.3 * readings;
  }

  boolean fallsShortly() {
    return shortFalls > 0 && unlike == 0;
  }
}
