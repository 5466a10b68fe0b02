package washbook.functions.spirit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import washbook.functions.Answer;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.reading.Alcoholometer;

/**
 * US 27 CFR part 30 (Gauging Manual), worked examples of the sections named in each row. Proof is
 * twice the % vol with volumes at 60 °F; weights are in air; pounds and US gallons.
 */
class GaugingManualTest {
  private static final double SIXTY_F = 140.0 / 9;
  private static final double POUND = 0.45359237;
  private static final double GALLON = 3.785411784;
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  static Stream<Row> rows() {
    return ReferenceTable.read("us-27cfr30-examples.csv", 16).rows().stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void workedExamples(Row row) {
    double[] in = numbers(row.text("inputs"));
    double computed =
        switch (row.text("what")) {
          case "true proof",
              "true proof of a spirit hydrometer reading",
              "true proof by interpolation" ->
              trueProof(in[0], in[1]);
          case "wine gallons per pound" -> gallonsPerPound(in[0]);
          case "proof gallons per pound" -> gallonsPerPound(in[0]) * in[0] / 100;
          case "proof gallons" -> in[0] * gallonsPerPound(in[1]) * in[1] / 100;
          case "pounds of water to reduce" ->
              in[0] * (massFraction(in[1]) / massFraction(in[2]) - 1);
          case "water in 100 volumes" -> waterIn100(in[0]);
          case "wine gallons per pound of water" ->
              POUND * (1 - 1.2 / 8000) / (EthanolWater.density(0, SIXTY_F) - 1.2) * 1000 / GALLON;
          default -> fail("no such kind of example: " + row);
        };
    assertEquals(row.number("published"), computed, row.number("tolerance"), row.toString());
  }

  private static double[] numbers(String text) {
    Matcher matcher = NUMBER.matcher(text);
    return matcher.results().mapToDouble(m -> Double.parseDouble(m.group())).toArray();
  }

  /** Reads a proof hydrometer and turns the strength back into proof. */
  private static double trueProof(double reading, double temperatureF) {
    double p = Alcoholometer.massFraction(reading / 2, (temperatureF - 32) / 1.8, SIXTY_F);
    assertEquals(
        EthanolWater.percentVolume(p),
        Calls.value("TRUESTRENGTH", reading / 2, (temperatureF - 32) / 1.8, SIXTY_F),
        1e-12);
    return Calls.value("CONVERT", EthanolWater.percentVolume(p), "ABV", "PROOFUS");
  }

  private static double abv(double proof) {
    return Calls.value("CONVERT", proof, "PROOFUS", "ABV");
  }

  private static double massFraction(double proof) {
    return Calls.value("ABVTOABW", abv(proof)) / 100;
  }

  /** Litres at 20 °C from the scale, brought to 60 °F. */
  private static double gallonsPerPound(double proof) {
    double at20 = Calls.value("LITRESBYWEIGHT", POUND, abv(proof));
    return at20 / Calls.value("VOLUMEAT20", 1.0, SIXTY_F, abv(proof)) / GALLON;
  }

  private static double waterIn100(double proof) {
    double p = massFraction(proof);
    return 100 * (1 - p) * EthanolWater.density(p, SIXTY_F) / EthanolWater.density(0, SIXTY_F);
  }

  /**
   * 27 CFR 30.66: water to reduce is found from the water in 100 volumes before and after. With the
   * published figures of the table that is for 188 to 112 proof: 94 / 56 x 47.75 - 7.36 volumes.
   */
  @Test
  void dilutionByThePublishedWaterContents() {
    double strong = abv(188);
    double weak = abv(112);
    // 100 volumes at 60 °F; the functions have all volumes at 20 °C.
    double spirit = Calls.value("VOLUMEAT20", 100.0, SIXTY_F, strong);
    double water =
        (94.0 / 56 * 47.75 - 7.36) * EthanolWater.density(0, SIXTY_F) / EthanolWater.density(0, 20);
    double diluted = Calls.value("VOLUMEAT20", 9400.0 / 56, SIXTY_F, weak);
    assertEquals(water, Calls.value("DILUTIONWATER", spirit, strong, weak), 0.05);
    assertEquals(diluted, Calls.value("DILUTEDVOLUME", spirit, strong, weak), 0.05);
    assertEquals(spirit, Calls.value("SPIRITFORVOLUME", diluted, weak, strong), 0.05);
    assertEquals(weak, Calls.value("WATEREDSTRENGTH", spirit, strong, water), 0.02);
    List<Double> litres = List.of(spirit, water);
    List<Double> strengths = List.of(strong, 0.0);
    assertEquals(weak, Calls.value("BLENDSTRENGTH", litres, strengths), 0.02);
    assertEquals(diluted, Calls.value("BLENDVOLUME", litres, strengths), 0.05);
  }

  /** 27 CFR 30.63: 60378 lb of 190 proof hold 16884.1 proof gallons, half of them alcohol. */
  @Test
  void pureAlcoholInAWeighedSpirit() {
    double litres = Calls.value("LITRESBYWEIGHT", 60378 * POUND, abv(190));
    double published = 16884.1 / 2 * GALLON;
    // Alcohol measured at 60 °F grows by half a percent up to 20 °C.
    double grown = EthanolWater.density(1, SIXTY_F) / EthanolWater.density(1, 20);
    assertEquals(published * grown, Calls.value("PUREALCOHOL", litres, abv(190)), 4);
  }

  /** 27 CFR 30.32: 0.1 g of solids in 100 mL hide 0.4 proof. */
  @Test
  void obscuration() {
    assertEquals(80.4 / 2, Calls.value("OBSCURATION", 40.0, 0.1), 1e-12);
    assertEquals(82.4 / 2, Calls.value("OBSCURATION", 40.0, 0.6), 1e-12);
    // 0.125 g in 25 mL are 2 proof.
    assertEquals(90.0 / 2 + 1, Calls.value("OBSCURATION", 45.0, 0.5), 1e-12);
  }

  /** 27 CFR 30.32(a): for spirits of 80 to 100 proof. */
  @ParameterizedTest
  @CsvSource({"39, 0.4", "49.5, 0.4", "60, 0.1", "30, 0.1"})
  void obscurationHoldsFor80To100Proof(double apparent, double solids) {
    assertTrue(Catalogue.get("OBSCURATION").call(apparent, solids) instanceof Answer.Refusal);
  }

  /** A strength of 20 and a temperature of 65 stand in each other's place. */
  @Test
  void aSwapOfTemperatureAndStrengthIsNamed() {
    for (Answer answer :
        List.of(
            Catalogue.get("VOLUMEAT20").call(100.0, 65.0, 20.0),
            Catalogue.get("PUREALCOHOL").call(100.0, 20.0, 65.0),
            Catalogue.get("PUREALCOHOL").call(100.0, -5.0, 65.0))) {
      String reason = ((Answer.Refusal) answer).reason();
      assertTrue(reason.contains("swapped? The order is volume, "), reason);
    }
    Answer neither = Catalogue.get("VOLUMEAT20").call(100.0, 65.0, 65.0);
    assertFalse(((Answer.Refusal) neither).reason().contains("swapped"));
  }

  /** OIML R 22:1975, table IVa: density of 10 to 100 % vol at 20 °C. */
  @Test
  void densityTable() {
    ReferenceTable.read("oiml-r22-density20.csv", 10)
        .rows()
        .forEach(
            row -> {
              double strength = row.number("percent_volume");
              double density = row.number("density_kg_m3");
              assertEquals(density, Calls.value("SPIRITDENSITY", strength), 0.005);
              double percentMass = strength * 789.24 / density;
              assertEquals(percentMass, Calls.value("ABVTOABW", strength), 0.001);
              assertEquals(strength, Calls.value("ABWTOABV", percentMass), 0.001);
            });
  }

  /** Ethanol 785.1 kg/m3 at 25 °C and 789.3 at 20: CRC Handbook, from memory. */
  @Test
  void volumeOfEthanolAt20() {
    assertEquals(100 * 785.1 / 789.3, Calls.value("VOLUMEAT20", 100.0, 25.0, 100.0), 0.02);
  }
}
