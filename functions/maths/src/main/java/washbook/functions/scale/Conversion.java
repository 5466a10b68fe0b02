package washbook.functions.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;

/** Conversion between any two scales or units of one kind. */
public final class Conversion {
  /** Lowest and highest SG that a sugar scale is converted for; syrups included. */
  public static final double LOWEST_GRAVITY = 0.970;

  public static final double HIGHEST_GRAVITY = 1.400;

  /** The model behind the potential-alcohol scale ends here. */
  public static final double HIGHEST_POTENTIAL_GRAVITY = 1.190;

  /** Plain units: factor to the kind's base unit. */
  private enum Unit {
    L("volume", 1),
    GALUS("volume", 3.785411784),
    GALUK("volume", 4.54609),
    KG("mass", 1),
    LB("mass", 0.45359237);

    private final String kind;
    private final double inBase;

    Unit(String kind, double inBase) {
      this.kind = kind;
      this.inBase = inBase;
    }
  }

  private static final String KINDS =
      String.join(", ", names(SugarScale.values()))
          + " | "
          + String.join(", ", names(StrengthScale.values()))
          + " | C, F | L, GALUS, GALUK | KG, LB.";

  private Conversion() {}

  /** Every word that {@link #convert} knows. */
  public static List<String> words() {
    List<String> words = new ArrayList<>();
    Stream.of(
            names(SugarScale.values()),
            names(StrengthScale.values()),
            names(TemperatureUnit.values()),
            names(Unit.values()))
        .flatMap(List::stream)
        .distinct()
        .forEach(words::add);
    return words;
  }

  private static List<String> names(Enum<?>[] values) {
    return Stream.of(values).map(Enum::name).toList();
  }

  /** Converts; refuses a pair of different kinds and values outside a scale's range. */
  public static double convert(double value, String from, String to) {
    SugarScale sugarFrom = find(SugarScale.values(), from);
    SugarScale sugarTo = find(SugarScale.values(), to);
    if (sugarFrom == SugarScale.KGM3 && sugarTo == SugarScale.KGM3) {
      return density(value);
    }
    if (sugarFrom != null && sugarTo != null) {
      return sugar(value, sugarFrom, sugarTo);
    }
    StrengthScale strengthFrom = find(StrengthScale.values(), from);
    StrengthScale strengthTo = find(StrengthScale.values(), to);
    if (strengthFrom != null && strengthTo != null) {
      return strength(value, strengthFrom, strengthTo);
    }
    Unit unitFrom = find(Unit.values(), from);
    Unit unitTo = find(Unit.values(), to);
    if (unitFrom != null && unitTo != null && unitFrom.kind.equals(unitTo.kind)) {
      return from.equals(to) ? value : value * unitFrom.inBase / unitTo.inBase;
    }
    TemperatureUnit temperatureFrom = find(TemperatureUnit.values(), from);
    TemperatureUnit temperatureTo = find(TemperatureUnit.values(), to);
    if (temperatureFrom != null && temperatureTo != null) {
      return temperatureFrom == temperatureTo
          ? value
          : temperatureTo.fromCelsius(temperatureFrom.toCelsius(value));
    }
    throw new RefusedException(Code.UNKNOWN_WORD, "convert.kinds", from, to, KINDS);
  }

  private static double sugar(double value, SugarScale from, SugarScale to) {
    boolean potential = from == SugarScale.POTENTIAL || to == SugarScale.POTENTIAL;
    double highest = potential ? HIGHEST_POTENTIAL_GRAVITY : HIGHEST_GRAVITY;
    double valid =
        inRange(value, from.name(), from.fromGravity(LOWEST_GRAVITY), from.fromGravity(highest));
    return from == to ? valid : to.fromGravity(from.toGravity(valid));
  }

  /** A density stands on both kinds of scale; it stays what it is. */
  private static double density(double value) {
    return inRange(
        value,
        "KGM3",
        StrengthScale.KGM3.fromMassFraction(1),
        SugarScale.KGM3.fromGravity(HIGHEST_GRAVITY));
  }

  private static double strength(double value, StrengthScale from, StrengthScale to) {
    double atWater = from.fromMassFraction(0);
    double atEthanol = from.fromMassFraction(1);
    double valid =
        inRange(value, from.name(), Math.min(atWater, atEthanol), Math.max(atWater, atEthanol));
    return from == to ? valid : to.fromMassFraction(from.toMassFraction(valid));
  }

  private static double inRange(double value, String scale, double low, double high) {
    double slack = 1e-12 * Math.max(1, Math.abs(high));
    if (value < low - slack || value > high + slack) {
      throw new RefusedException(
          value < low ? Code.TOO_LOW : Code.TOO_HIGH,
          "convert.range",
          scale,
          value,
          Numbers.rounded(low, 4),
          Numbers.rounded(high, 4));
    }
    return Math.max(low, Math.min(high, value));
  }

  private static <E extends Enum<E>> E find(E[] values, String name) {
    for (E value : values) {
      if (value.name().equals(name)) {
        return value;
      }
    }
    return null;
  }
}
