package washbook.log.words;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import washbook.functions.scale.Conversion;
import washbook.functions.scale.SugarScale;

/** The scales of readings in logs: those of CONVERT, and density in g/cm3. */
public enum ReadingScale {
  /** Specific gravity 20/20, as 1.085 or as 1085. */
  SG(SugarScale.SG, ""),
  POINTS(SugarScale.POINTS, " points"),
  BRIX(SugarScale.BRIX, " \u00b0Bx"),
  PLATO(SugarScale.PLATO, " \u00b0P"),
  BALLING(SugarScale.BALLING, " \u00b0Balling"),
  BAUME(SugarScale.BAUME, " \u00b0B\u00e9"),
  OECHSLE(SugarScale.OECHSLE, " \u00b0Oe"),
  KMW(SugarScale.KMW, " \u00b0KMW"),
  TWADDELL(SugarScale.TWADDELL, " \u00b0Tw"),
  KGM3(SugarScale.KGM3, " kg/m\u00b3"),
  /** Density as some instruments show it, a thousandth of KGM3; CONVERT does not know it. */
  GCM3(SugarScale.KGM3, " g/cm\u00b3"),
  GL(SugarScale.GL, " g/L"),
  POTENTIAL(SugarScale.POTENTIAL, " % vol");

  /** A specific gravity from here on is written in thousandths. */
  private static final double LEAST_IN_THOUSANDTHS = 100;

  private final SugarScale sugar;
  private final String sign;

  ReadingScale(SugarScale sugar, String sign) {
    this.sugar = sugar;
    this.sign = sign;
  }

  /** The scale that a column's unit names; SG where it names none. */
  public static ReadingScale of(String unit) {
    return unit.isEmpty() ? SG : valueOf(unit);
  }

  /** The scale that the word after a number means. */
  public static Optional<ReadingScale> behind(String word) {
    Set<Concept> meanings = Vocabulary.meanings(word.length() <= 2 ? "\u00b0" + word : word);
    if (meanings.isEmpty()) {
      meanings = Vocabulary.meanings(word);
    }
    return meanings.stream()
        .filter(m -> Concept.SUGAR_SCALES.contains(m) && m != Concept.GCM3)
        .findFirst()
        .map(m -> valueOf(m.name()));
  }

  /** The scale in what a header means; a scale of sugar before specific gravity. */
  public static Optional<ReadingScale> in(Set<Concept> meanings) {
    return Concept.SUGAR_SCALES.stream()
        .filter(scale -> meanings.contains(scale) && scale != Concept.SG)
        .findFirst()
        .or(() -> Optional.of(Concept.GL).filter(meanings::contains))
        .or(() -> Optional.of(Concept.SG).filter(meanings::contains))
        .map(scale -> valueOf(scale.name()));
  }

  /** SG 20/20 of a reading as it stands in the log, where 1085 means 1.085. */
  public double toGravity(double shown) {
    return switch (this) {
      case SG -> isInThousandths(shown) ? shown / 1000 : shown;
      case GCM3 -> sugar.toGravity(shown * 1000);
      default -> sugar.toGravity(shown);
    };
  }

  /** The same; what is outside the scale's range is refused. */
  public double toCheckedGravity(double shown) {
    return this == SG
        ? toGravity(shown)
        : Conversion.convert(this == GCM3 ? shown * 1000 : shown, sugar.name(), SG.name());
  }

  /** The reading on this scale of an SG 20/20. */
  public double fromGravity(double gravity) {
    return this == GCM3 ? sugar.fromGravity(gravity) / 1000 : sugar.fromGravity(gravity);
  }

  /** Whether a specific gravity is written as 1085 for 1.085. */
  public boolean isInThousandths(double shown) {
    return this == SG && shown >= LEAST_IN_THOUSANDTHS;
  }

  /** Whether its degrees are % by mass of extract, as a refractometer's are. */
  public boolean isPercentOfExtract() {
    return this == BRIX || this == PLATO || this == BALLING;
  }

  public boolean isDensity() {
    return sugar == SugarScale.KGM3;
  }

  /** Its word in CONVERT. */
  public String wordOfConvert() {
    return sugar.name();
  }

  /** Its sign as it stands after a number, with the space before it; "" for SG. */
  public String sign() {
    return sign;
  }

  /** Whether a word names one of them. */
  public static boolean isName(String unit) {
    return Arrays.stream(values()).anyMatch(s -> s.name().equals(unit));
  }

  /** A number whose scale is not settled yet, with 1085 as 1.085; any other as it stands. */
  public static double withoutThousandths(double value) {
    return value >= 900 && value <= 1200 ? value / 1000 : value;
  }

  /** Whether a number without a unit looks like a specific gravity: 1.085 or 1085. */
  public static boolean looksLikeGravity(double value) {
    return (value >= 0.97 && value <= 1.2) || (value >= 970 && value <= 1200);
  }
}
