package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.functions.Calls.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Answer;
import washbook.functions.scale.StrengthScale;
import washbook.functions.scale.SugarScale;

/** What one function makes, another one takes back, to 1e-9 relative over the whole range. */
class InversePairsTest {
  private static final double CLOSE = 1e-9;
  private static final int STEPS = 400;

  private static void same(double expected, double found, String what) {
    assertEquals(expected, found, CLOSE * Math.max(1, Math.abs(expected)), what);
  }

  private static double at(double from, double to, int step) {
    return from + (to - from) * step / STEPS;
  }

  /** Nothing when it is refused. */
  private static Double ifAny(String name, Object... arguments) {
    return Catalogue.get(name).call(arguments) instanceof Answer.Number number
        ? number.value()
        : null;
  }

  @Test
  void everyPairOfSugarScales() {
    int checked = 0;
    for (SugarScale from : SugarScale.values()) {
      for (SugarScale to : SugarScale.values()) {
        boolean potential = from == SugarScale.POTENTIAL || to == SugarScale.POTENTIAL;
        for (int i = 0; i <= STEPS; i++) {
          double x = from.fromGravity(at(0.97, potential ? 1.19 : 1.4, i));
          double there = value("CONVERT", x, from.name(), to.name());
          same(x, value("CONVERT", there, to.name(), from.name()), from + " to " + to + " " + x);
          checked++;
        }
      }
    }
    assertEquals(144 * (STEPS + 1), checked);
  }

  @Test
  void everyPairOfStrengthScales() {
    int checked = 0;
    for (StrengthScale from : StrengthScale.values()) {
      for (StrengthScale to : StrengthScale.values()) {
        for (int i = 0; i <= STEPS; i++) {
          double x = from.fromMassFraction(at(0, 1, i));
          double there = value("CONVERT", x, from.name(), to.name());
          same(x, value("CONVERT", there, to.name(), from.name()), from + " to " + to + " " + x);
          checked++;
        }
      }
    }
    assertEquals(25 * (STEPS + 1), checked);
  }

  @Test
  void everyPairOfPlainUnits() {
    for (String[] pair :
        List.of(
            new String[] {"C", "F"},
            new String[] {"L", "GALUS"},
            new String[] {"GALUK", "GALUS"},
            new String[] {"GALUK", "L"},
            new String[] {"KG", "LB"})) {
      for (int i = 0; i <= STEPS; i++) {
        double x = at(-1000, 1000, i);
        same(x, value("CONVERT", value("CONVERT", x, pair[0], pair[1]), pair[1], pair[0]), "" + x);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"MALT", "FRUIT", "SUGAR", "HONEY", "MOLASSES", "80", "95"})
  void alcoholAndItsGravities(String kind) {
    Object wash = Character.isDigit(kind.charAt(0)) ? (Object) Double.valueOf(kind) : kind;
    int checked = 0;
    for (int i = 0; i <= STEPS; i++) {
      double og = at(1.001, 1.19, i);
      for (int k = 0; k < STEPS; k += 4) {
        double gravity = at(og, 0.97, k);
        Double abv = k == 0 ? null : ifAny("ABV", og, gravity, wash);
        if (abv == null || abv < 0.01) {
          continue;
        }
        Double again = ifAny("GRAVITYATABV", og, abv, wash);
        if (again != null) {
          same(gravity, again, "gravity of " + og + " at " + abv);
          checked++;
        } else {
          assertTrue(
              value("TRUEEXTRACT", og, gravity, wash) < 1e-9, "refused " + og + " at " + abv);
        }
        same(
            og,
            value("ORIGINALFORABV", abv, gravity, wash),
            "original of " + gravity + " at " + abv);
      }
    }
    assertTrue(checked > 10_000, "compared " + checked);
  }

  @ParameterizedTest
  @ValueSource(strings = {"MALT", "FRUIT", "SUGAR", "MOLASSES"})
  void gasAndAlcohol(String wash) {
    for (int i = 0; i <= STEPS; i++) {
      double og = at(1.001, 1.19, i);
      for (int k = 0; k <= STEPS; k += 8) {
        double gravity = at(og, 0.97, k);
        Double abv = ifAny("ABV", og, gravity, wash);
        if (abv != null && abv > 0.01) {
          double grams = value("CARBONDIOXIDE", og, gravity, 25.0, wash);
          same(abv, value("ABVFROMWEIGHTLOSS", og, grams, 25.0, null, wash), og + " to " + gravity);
        }
      }
    }
  }

  @Test
  void makeUp() {
    for (String kind : MakeupEntries.KINDS) {
      for (int i = 0; i <= STEPS; i += 4) {
        double gravity = at(0.97, 1.19, i);
        for (int k = 4; k <= STEPS; k += 4) {
          double target = at(gravity, 1.19, k);
          double kilograms =
              target > gravity ? value("SUGARFORGRAVITY", 20.0, gravity, target, kind) : 0;
          if (kilograms >= 0.001 && target < 1.1899) {
            same(target, value("WASHGRAVITY", 20.0, gravity, kilograms, kind), kind + " " + target);
          }
        }
      }
      for (int k = 4; k < STEPS; k++) {
        double target = at(1, 1.19, k);
        double kilograms = value("SUGARFORVOLUME", 25.0, target, kind);
        double water = value("WATERFORVOLUME", 25.0, target, kind);
        same(target, value("WASHGRAVITY", water, 1.0, kilograms, kind), kind + " " + target);
        same(25, value("VOLUMEAFTERSUGAR", water, 1.0, kilograms, kind), kind + " " + target);
      }
    }
  }

  @Test
  void waterIntoAWashIsABlendWithWater() {
    for (int i = 10; i <= STEPS; i++) {
      double gravity = at(1, 1.19, i);
      for (int k = 10; k < STEPS; k += 10) {
        double target = at(1, gravity, k);
        double water = value("WATERFORGRAVITY", 20.0, gravity, target);
        same(
            target,
            value("BLENDGRAVITY", List.of(20.0, water), List.of(gravity, 1.0)),
            gravity + " to " + target);
      }
    }
  }

  @Test
  void strengths() {
    for (int i = 1; i <= STEPS; i++) {
      double strength = at(0, 100, i);
      same(strength, value("ABWTOABV", value("ABVTOABW", strength)), "" + strength);
      for (int k = 1; k < STEPS; k += 3) {
        double target = at(0, strength, k);
        if (target < 0.01) {
          continue;
        }
        double water = value("DILUTIONWATER", 10.0, strength, target);
        same(target, value("WATEREDSTRENGTH", 10.0, strength, water), strength + " to " + target);
        double volume = value("DILUTEDVOLUME", 10.0, strength, target);
        same(10, value("SPIRITFORVOLUME", volume, target, strength), strength + " to " + target);
        List<Double> litres = List.of(10.0, water);
        List<Double> strengths = List.of(strength, 0.0);
        same(target, value("BLENDSTRENGTH", litres, strengths), strength + " to " + target);
        same(volume, value("BLENDVOLUME", litres, strengths), strength + " to " + target);
      }
    }
  }

  /** The reading that the true strength would show is the reading. */
  @Test
  void alcoholometerReadings() {
    int checked = 0;
    for (int t = -20; t <= 40; t += 2) {
      for (int i = 1; i <= STEPS; i++) {
        double reading = at(0, 100, i);
        Double strength = ifAny("TRUESTRENGTH", reading, (double) t);
        if (strength == null || strength < 0.01) {
          continue;
        }
        double density = value("SPIRITDENSITY", strength, (double) t) * (1 + 25e-6 * (t - 20));
        same(reading, value("CONVERT", density, "KGM3", "ABV"), reading + " at " + t);
        checked++;
      }
    }
    assertTrue(checked > 9000, "compared " + checked);
  }

  @Test
  void headTemperatureAndVapour() {
    for (int i = 0; i <= STEPS; i++) {
      double charge = at(0.5, 85, i);
      double temperature = value("BOILINGPOINT", charge);
      Double head = ifAny("HEADSTRENGTH", temperature);
      if (head != null) {
        same(value("VAPOURSTRENGTH", charge), head, charge + " boils at " + temperature);
      }
    }
  }

  /** Brix and gravity instruments are one glass: their corrections say the same. */
  @Test
  void hydrometersOfBothScales() {
    for (int t = 0; t <= 60; t += 5) {
      for (int i = 0; i <= STEPS; i++) {
        double brix = at(-7.7, 40, i);
        double gravity = value("CONVERT", brix, "BRIX", "SG");
        Double byBrix = ifAny("CORRECTEDBRIX", brix, (double) t);
        Double byGravity = ifAny("CORRECTEDGRAVITY", gravity, (double) t);
        if (byBrix != null && byGravity != null) {
          same(byBrix, value("CONVERT", byGravity, "SG", "BRIX"), brix + " at " + t);
        }
      }
    }
  }

  @Test
  void phosphateAndNitrogen() {
    for (int i = 1; i <= STEPS; i++) {
      double nitrogen = at(0, 400, i);
      double grams = value("PHOSPHATEFORNITROGEN", 25.0, 0.0, nitrogen);
      same(nitrogen, value("NITROGENFROMPHOSPHATE", 25.0, grams), "" + nitrogen);
    }
  }

  /** A hydrometer with an error is right again with the offset that is found in water. */
  @Test
  void offsetAndCorrectedReading() {
    for (int i = 0; i <= STEPS; i++) {
      double reading = at(0.99, 1.01, i);
      for (double t = 0; t <= 60; t += 7.5) {
        double offset = value("HYDROMETEROFFSET", reading, t);
        Double corrected = ifAny("CORRECTEDGRAVITY", reading, t, 20.0, null, offset);
        if (corrected != null) {
          same(1, corrected, reading + " at " + t);
        }
      }
    }
  }

  @Test
  void allJarsAreTheBlend() {
    List<Double> litres = List.of(0.5, 0.7, 0.9);
    for (int i = 0; i <= STEPS; i++) {
      List<Double> strengths = List.of(at(50, 90, i), at(40, 80, i), 30.0);
      same(value("BLENDVOLUME", litres, strengths), value("CUTVOLUME", litres, strengths), "" + i);
      same(
          value("BLENDSTRENGTH", litres, strengths),
          value("CUTSTRENGTH", litres, strengths),
          "" + i);
    }
  }
}
