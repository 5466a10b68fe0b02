package washbook.log.words;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import washbook.functions.scale.Conversion;

/** The units of sugar and water in logs. */
public enum AmountUnit {
  KG(Concept.KG, "KG", "KG", 1),
  LB(Concept.LB, "LB", "KG", 1),
  G(Concept.G, "KG", "KG", 1000),
  ML(Concept.ML, "L", "L", 1000),
  GALUS(Concept.GALUS, "GALUS", "L", 1),
  GALUK(Concept.GALUK, "GALUK", "L", 1),
  L(Concept.L, "L", "L", 1);

  private final Concept word;
  private final String base;
  private final double factor;
  private final double part;

  /**
   * @param unit word of CONVERT of which this unit is a part
   * @param base word of CONVERT that amounts are calculated in
   * @param part how many of this unit make one of {@code unit}
   */
  AmountUnit(Concept word, String unit, String base, double part) {
    this.word = word;
    this.base = base;
    this.factor = Conversion.convert(1, unit, base);
    this.part = part;
  }

  /** Kilograms or litres of an amount in this unit. */
  public double toBase(double amount) {
    return amount * factor / part;
  }

  /** Whether it measures sugar, by mass; water is measured by volume. */
  public boolean isMass() {
    return base.equals("KG");
  }

  /** The unit that a column's unit names. */
  public static Optional<AmountUnit> of(String unit) {
    return Arrays.stream(values()).filter(u -> u.name().equals(unit)).findFirst();
  }

  /** Whether words after a number name a unit of sugar or water. */
  static boolean isOne(String words) {
    Set<Concept> meanings = Vocabulary.meanings(words);
    return in(meanings, true).isPresent() || in(meanings, false).isPresent();
  }

  /** The unit of mass, or of volume, in what a header or the word after a number means. */
  public static Optional<AmountUnit> in(Set<Concept> meanings, boolean mass) {
    return Arrays.stream(values())
        .filter(u -> u.isMass() == mass && meanings.contains(u.word))
        .findFirst();
  }
}
