package washbook.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import washbook.functions.Numbers;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.language.ToldException;

/** When a batch is worth a warning. Every limit has a usual value and can be set. */
public final class WarningLimits {
  /** The limits; the usual values are common practice, no source. */
  public enum Limit {
    /** Yeast suffers above this, °C. */
    WARMEST("warmest", 32, -20, 60, "°C"),
    /** Most yeasts rest below this, °C. */
    COLDEST("coldest", 10, -20, 60, "°C"),
    /** Days after which the gravity should have begun to fall. */
    LAG("lag-days", 3, 0.1, 60, "days"),
    /** Days without a reading while the wash works. */
    OVERDUE("overdue-days", 4, 0.1, 365, "days"),
    /** Days without a reading after which a log counts as put away and is not overdue. */
    CLOSED("closed-days", 90, 1, 36500, "days"),
    /** Alcohol that was planned, % vol; nothing is planned unless it is set. */
    PLANNED("planned-abv", Double.NaN, 0.1, 25, "% vol"),
    /**
     * Where a wash is taken to end, SG; the catalogue's own default. One that stops above is stuck.
     */
    FINAL("final-gravity", 1, 0.98, 1.1, "SG"),
    /** Points (1000 x SG) that a reading may be off its neighbours or the fitted course. */
    OFF_COURSE("off-points", 8, 1, 200, "points");

    private final String word;
    private final double usual;
    private final double least;
    private final double most;
    private final String unit;

    Limit(String word, double usual, double least, double most, String unit) {
      this.word = word;
      this.usual = usual;
      this.least = least;
      this.most = most;
      this.unit = unit;
    }
  }

  /** What all limits of ours rest on; each of them can be set. */
  public static final Message PRACTICE = Message.of("warning.practice");

  private static final WarningLimits USUAL = new WarningLimits(Map.of());

  private final Map<Limit, Double> given = new EnumMap<>(Limit.class);

  private WarningLimits(Map<Limit, Double> given) {
    this.given.putAll(given);
  }

  /** Nothing is set. */
  public static WarningLimits usual() {
    return USUAL;
  }

  /**
   * Reads settings such as {@code warmest=28}.
   *
   * @throws ToldException with a sentence for the person
   */
  public static WarningLimits parse(List<String> settings) {
    Map<Limit, Double> given = new EnumMap<>(Limit.class);
    for (String setting : settings) {
      String[] sides = setting.split("=", 2);
      Limit limit = named(sides[0].strip().toLowerCase(Locale.ROOT));
      Double value = sides.length < 2 ? null : Numbers.parse(sides[1].strip());
      if (value == null || !(value >= limit.least && value <= limit.most)) {
        throw new ToldException(
            Message.of(
                "limit.number",
                Message.of("quoted", setting),
                limit.word + "=NUMBER",
                new Figure(Numbers.show(limit.least)),
                new Figure(Numbers.show(limit.most)),
                said(limit.unit)));
      }
      given.put(limit, value);
    }
    return new WarningLimits(given);
  }

  /** The same with those of another for all that is not set here. */
  public WarningLimits over(WarningLimits other) {
    Map<Limit, Double> all = new EnumMap<>(Limit.class);
    all.putAll(other.given);
    all.putAll(given);
    return all.isEmpty() ? USUAL : new WarningLimits(all);
  }

  /** Whether nothing is set. */
  public boolean isUsual() {
    return given.isEmpty();
  }

  /** What was set, each as {@link #parse} reads it. */
  public List<String> settings() {
    List<String> all = new ArrayList<>();
    given.forEach((limit, value) -> all.add(limit.word + "=" + Numbers.show(value)));
    return all;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WarningLimits limits && limits.given.equals(given);
  }

  @Override
  public int hashCode() {
    return given.hashCode();
  }

  private static Limit named(String word) {
    return Arrays.stream(Limit.values())
        .filter(limit -> limit.word.equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new ToldException(
                    Message.of("limit.unknown", Message.of("quoted", word), words())));
  }

  private static Object said(String unit) {
    return switch (unit) {
      case "days" -> Message.of("warning.days");
      case "points" -> Message.of("scale.POINTS");
      default -> unit;
    };
  }

  private static String words() {
    return Arrays.stream(Limit.values()).map(l -> l.word).collect(Collectors.joining(", "));
  }

  /** The limit's value; NaN for one that holds only when it is set. */
  public double of(Limit limit) {
    return given.getOrDefault(limit, limit.usual);
  }

  /** Where the limit comes from. */
  public Message source(Limit limit) {
    return given.containsKey(limit) ? Message.of("warning.given") : PRACTICE;
  }

  /** The value with its unit. */
  public Message shown(Limit limit) {
    return Message.of("warning.limit", new Figure(Numbers.show(of(limit))), said(limit.unit));
  }

  /** What was set, for telling one run's settings from another's. */
  @Override
  public String toString() {
    return String.join(",", settings());
  }
}
