package washbook.log.evidence;

import washbook.functions.RefusedException;
import washbook.functions.scale.Conversion;
import washbook.log.LogColumn;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/** A figure of a column as a gravity, before its scale is settled. */
final class RoughGravity {
  /** Points of SG that a degree of a scale of sugar is roughly. */
  private static final double PER_DEGREE = 0.004;

  /** Higher figures are thousandths of a gravity. */
  private static final double MOST_DEGREES = 40;

  private RoughGravity() {}

  /** A reading as a gravity; roughly where its scale is not settled. */
  static double of(double value, LogColumn reading) {
    if (value >= 900) {
      return ReadingScale.SG.toGravity(value);
    }
    if (reading.unit().isEmpty()
        && Vocabulary.meanings(reading.header()).contains(Concept.POINTS)) {
      return ReadingScale.POINTS.toGravity(value);
    }
    boolean density = reading.unit().equals(ReadingScale.GCM3.name());
    boolean plain = reading.unit().isEmpty() || reading.unit().equals(ReadingScale.SG.name());
    if (density || plain && value > 0.9 && value < 1.5) {
      return value;
    }
    try {
      return reading.unit().isEmpty()
          ? 1 + value * (value > MOST_DEGREES ? 0.001 : PER_DEGREE)
          : Conversion.convert(value, reading.unit(), "SG");
    } catch (RefusedException refused) {
      return 1 + value * PER_DEGREE;
    }
  }
}
