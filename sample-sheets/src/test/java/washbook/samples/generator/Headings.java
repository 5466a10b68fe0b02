package washbook.samples.generator;

import java.util.List;
import washbook.functions.scale.SugarScale;
import washbook.samples.ferment.Thermometer;

/** How the columns of one log are headed, and where their units are said. */
final class Headings {
  /** Where the units of reading and temperature are said. */
  enum UnitPlace {
    HEADER,
    UNIT_ROW,
    TITLE,
    CELLS,
    NOWHERE
  }

  final UnitPlace units;
  final String readingUnit;
  final String temperatureUnit;
  final String reading;
  final String refractometer;
  final String temperature;

  private final Choice choice;

  Headings(Choice choice, Words words, Gauge gauge, UnitPlace units, boolean wordless) {
    this.choice = choice;
    this.units = units;
    readingUnit = choice.of(units(gauge.scale(), gauge.kind()));
    temperatureUnit =
        gauge.thermometer() == Thermometer.F
            ? choice.among("°F", "F", "deg F")
            : choice.among("°C", "C", "°C", "ºC");
    temperature =
        wordless
            ? words.all("temperature").get(1) + " (" + temperatureUnit + ")"
            : typed(withUnit(words.one("temperature", choice), temperatureUnit));
    refractometer =
        typed(withUnit(words.one("refractometer", choice), choice.among("°Bx", "Brix")));
    String plain = wordless ? words.all("bare").get(2) : reading(words, gauge);
    reading =
        gauge.kind() == Gauge.Kind.CORRECTED
            ? words.one("corrected", choice).replace("{n}", plain)
            : plain;
  }

  private String reading(Words words, Gauge gauge) {
    if (gauge.kind() == Gauge.Kind.REFRACTOMETER) {
      return choice.chance(0.25) ? choice.among("Brix", "°Bx", "°Brix") : refractometer;
    }
    if (gauge.scale() == SugarScale.SG) {
      return typed(words.one(choice.chance(0.5) ? "gravity" : "gravityshort", choice));
    }
    boolean ofExtract =
        switch (gauge.scale()) {
          case BRIX, PLATO, BALLING -> true;
          default -> false;
        };
    if (units == UnitPlace.HEADER && choice.chance(0.5)) {
      return readingUnit;
    }
    return typed(withUnit(words.one(ofExtract ? "extract" : "gravity", choice), readingUnit));
  }

  private String withUnit(String word, String unit) {
    if (units != UnitPlace.HEADER || unit.isEmpty()) {
      return word;
    }
    return choice.among(
        word + " (" + unit + ")",
        word + " " + unit,
        word + " [" + unit + "]",
        word + ", " + unit,
        word + " in " + unit);
  }

  /** Once in thirty times with a slip of the finger. */
  private String typed(String word) {
    if (word.length() < 7 || !choice.chance(0.03)) {
      return word;
    }
    int at = choice.whole(2, 5);
    if (!Character.isLetter(word.charAt(at)) || !Character.isLetter(word.charAt(at + 1))) {
      return word;
    }
    return choice.chance(0.5)
        ? word.substring(0, at) + word.substring(at + 1)
        : word.substring(0, at) + word.charAt(at + 1) + word.charAt(at) + word.substring(at + 2);
  }

  private static List<String> units(SugarScale scale, Gauge.Kind kind) {
    if (kind == Gauge.Kind.REFRACTOMETER) {
      return List.of("°Bx", "Brix");
    }
    return switch (scale) {
      case POINTS -> List.of("points", "gravity points", "pts");
      case BRIX -> List.of("°Bx", "Brix", "°Brix");
      case PLATO -> List.of("°P", "Plato", "°Plato");
      case BALLING -> List.of("Balling", "°Blg", "°Balling");
      case OECHSLE -> List.of("°Oe", "Oe", "Oechsle", "Grad Oe", "Oechslegrad", "°Oechsle");
      case KMW -> List.of("°KMW", "KMW", "Babo");
      case BAUME -> List.of("°Bé", "Baumé", "Bé");
      default -> List.of("");
    };
  }

  /** Whether value and header leave open which scale it is. */
  boolean leavesScaleOpen(Gauge gauge) {
    return units == UnitPlace.NOWHERE
        && switch (gauge.scale()) {
          case SG, OECHSLE, POINTS -> false;
          default -> gauge.kind() != Gauge.Kind.REFRACTOMETER;
        };
  }
}
