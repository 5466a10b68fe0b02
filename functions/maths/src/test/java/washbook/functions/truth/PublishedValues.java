package washbook.functions.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import washbook.functions.Calls;
import washbook.functions.Numbers;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;

/** Every published figure with the call that must give it, from the tests' reference tables. */
final class PublishedValues {
  private static final double WATER = 0.99823;
  private static final double SIXTY_F = 140.0 / 9;
  private static final String PLATO =
      "Plato's densities as in NBS Circular C440 table 114 (from memory)";
  private static final String LINE =
      "the line of brewing tables 0.1808 OE + 0.8192 AE (from memory)";

  private final List<PublishedValue> all = new ArrayList<>();

  private PublishedValues() {}

  static List<PublishedValue> all() {
    PublishedValues values = new PublishedValues();
    values.sugar();
    values.hydrometers();
    values.refractometers();
    values.ferments();
    values.stills();
    values.spirits();
    values.goods();
    return values.all;
  }

  private void add(
      double published, double allowed, String source, String function, Object... arguments) {
    StringJoiner words = new StringJoiner(";");
    for (Object argument : arguments) {
      words.add(argument instanceof Double d ? Numbers.show(d) : argument.toString());
    }
    all.add(new PublishedValue(function, words.toString(), published, allowed, source));
  }

  private void sugar() {
    double[][] plato = {{10, 1.03814}, {20, 1.08096}, {30, 1.12698}, {40, 1.17647}};
    for (double[] row : plato) {
      double percent = row[0];
      double gravity = row[1] / WATER;
      double water = (100 - percent) / WATER;
      double litres = 100 / row[1];
      add(gravity, 1e-4, PLATO, "CONVERT", percent, "BRIX", "SG");
      add(percent, 0.02, PLATO, "CONVERT", gravity, "SG", "BRIX");
      add(percent * row[1] * 10, 0.25, PLATO, "CONVERT", gravity, "SG", "GL");
      add(percent, 0.04, PLATO, "SUGARFORGRAVITY", water, 1.0, gravity);
      add(gravity, 1e-4, PLATO, "WASHGRAVITY", water, 1.0, percent);
      add(litres, 0.01, PLATO, "VOLUMEAFTERSUGAR", water, 1.0, percent);
      add(percent, 0.03, PLATO, "SUGARFORVOLUME", litres, gravity);
      add(water, 0.03, PLATO, "WATERFORVOLUME", litres, gravity);
      add(gravity, 1e-4, PLATO, "CHECKGRAVITY", percent, 100 - percent);
    }
    String litres = Numbers.show(1 / 1.03814) + "," + Numbers.show(1 / 1.12698);
    String gravities = Numbers.show(1.03814 / WATER) + "," + Numbers.show(1.12698 / WATER);
    add(1.08096 / WATER, 5e-5, PLATO, "BLENDGRAVITY", litres, gravities);
    add(1.08096 / WATER, 5e-5, PLATO, "FEDORIGINAL", litres, gravities);
    add(1 / WATER, 0.002, PLATO, "WATERFORGRAVITY", 1 / 1.08096, 1.08096 / WATER, 1.03814 / WATER);
  }

  private void hydrometers() {
    String source = "NBS Circular C440 correction table (from memory)";
    for (Row row : ReferenceTable.read("nbs-c440-brix-corrections.csv", 25).rows()) {
      double t = row.number("temperature_c");
      double allowed = 0.005 + (t < 10 ? 0.10 : t <= 30 ? 0.03 : 0.05);
      for (int brix = 5; brix <= 40; brix += 5) {
        double published = brix + row.number(Integer.toString(brix));
        add(published, allowed, source, "CORRECTEDBRIX", (double) brix, t);
        double reading = Calls.value("CONVERT", (double) brix, "BRIX", "SG");
        double gravity = Calls.value("CONVERT", published, "BRIX", "SG");
        add(gravity, allowed * 0.0047, source, "CORRECTEDGRAVITY", reading, t);
      }
    }
    for (Row row : ReferenceTable.read("tanaka-2001-water.csv", 10).rows()) {
      double t = row.number("temperature_c");
      double shown = row.number("density_kg_m3") / 998.2067 * (1 + 25e-6 * (t - 20));
      add(0, 2e-5, "Tanaka and others, Metrologia 38 (2001) 301", "HYDROMETEROFFSET", shown, t);
    }
  }

  private void refractometers() {
    for (Row row : ReferenceTable.read("oiv-refractometer-temperature.csv", 14).rows()) {
      for (int brix = 10; brix <= 35; brix += 5) {
        String printed = row.text(Integer.toString(brix));
        if (!printed.isEmpty()) {
          add(
              brix + Double.parseDouble(printed),
              0.035,
              "OIV-MA-AS2-02 (2012) table I, rows 5 to 17 °C",
              "REFRACTOMETERAT20",
              (double) brix,
              row.number("t_c"));
        }
      }
    }
  }

  private void ferments() {
    double from = 0;
    String notice = "UK HMRC Excise Notice 226, duty factors";
    for (Row row : ReferenceTable.read("uk-beer-duty-factor.csv", 11).rows()) {
      double difference = (from + row.number("difference_up_to")) / 2;
      from = row.number("difference_up_to");
      for (double og = 1.030; og <= 1.1101; og += 0.001) {
        double present = og - difference / 1000;
        if (present >= 1.000 && present <= 1.0085) {
          double published = row.number("factor") * difference;
          add(published, 0.07, notice, "ABV", og, present);
          add(published / 100, 0.0007, notice, "CHARGEALCOHOL", 1.0, og, present);
          add(present, 0.0006, notice, "GRAVITYATABV", og, published);
          add(og, 0.0006, notice, "ORIGINALFORABV", published, present);
        }
      }
    }
    double[][] lines = {{10, 1.5}, {11, 2}, {12, 2.5}, {12, 4}, {13, 3}, {14, 3.5}};
    for (double[] line : lines) {
      double og = Calls.value("CONVERT", line[0], "PLATO", "SG");
      double gravity = Calls.value("CONVERT", line[1], "PLATO", "SG");
      double extract = 0.1808 * line[0] + 0.8192 * line[1];
      double real = 100 * (1 - extract / line[0]);
      add(extract, 0.1, LINE, "TRUEEXTRACT", og, gravity);
      add(10 * extract * gravity, 1.2, LINE, "SUGARLEFT", og, gravity);
      add(real, 0.9, LINE, "REALATTENUATION", og, gravity);
      add(real / (1 - 0.005161 * extract), 1.0, LINE, "FERMENTATIONDEGREE", og, gravity);
      add(100 * (1 - line[1] / line[0]), 0.002, LINE, "APPARENTATTENUATION", og, gravity);
    }
    double moles = Calls.value("CARBONDIOXIDE", 1.085, 0.998, 25.0) / 88.019;
    add(
        moles * 24 * 4.184 / 3600,
        0.003,
        "about 24 kcal for a mole of hexose (Colombié 2007, as quoted)",
        "FERMENTHEAT",
        25.0,
        1.085,
        0.998);
  }

  private void stills() {
    String perry = "Perry's Chemical Engineers' Handbook, ethanol-water at 101.325 kPa";
    for (Row row : ReferenceTable.read("perry-ethanol-water-vle.csv", 15).rows()) {
      double charge = strengthOfMole(row.number("x_liquid"));
      if (charge <= 90) {
        double vapour = strengthOfMole(row.number("y_vapour"));
        double temperatureC = row.number("temperature_c");
        add(temperatureC, 0.6, perry, "BOILINGPOINT", charge);
        add(vapour, 1.6, perry, "VAPOURSTRENGTH", charge);
        if (temperatureC > 80) {
          add(vapour, 2.0, perry, "HEADSTRENGTH", temperatureC);
        }
      }
    }
    String steam = "IAPWS-IF97: 417.0 and 83.9 kJ/kg of water at 99.5 and 20 °C, 2675.5 of steam";
    add((417.0 - 83.9) * 0.998 / 3600, 0.0018, steam, "CHARGEHEAT", 1.0, 0.5, 20.0);
    add((2675.5 - 83.9) * 0.998 / 3600, 0.007, steam, "CONDENSERHEAT", 1.0, 0.5, 20.0);
  }

  private static double strengthOfMole(double x) {
    return Calls.value("ABWTOABV", 100 * x * 46.069 / (x * 46.069 + (1 - x) * 18.015));
  }

  private void spirits() {
    for (Row row : ReferenceTable.read("oiml-r22-density20.csv", 10).rows()) {
      String oiml = "OIML R 22:1975 table IVa";
      double strength = row.number("percent_volume");
      double density = row.number("density_kg_m3");
      double percentMass = strength * 789.24 / density;
      add(density, 0.005, oiml, "SPIRITDENSITY", strength);
      add(percentMass, 0.001, oiml, "ABVTOABW", strength);
      add(strength, 0.001, oiml, "ABWTOABV", percentMass);
    }
    double[][] proofs = {{193, 75, 189.5}, {193, 72, 190.2}, {192, 72, 189.1}, {192, 73, 188.9}};
    for (double[] proof : proofs) {
      add(
          Calls.value("CONVERT", proof[2], "PROOFUS", "ABV"),
          0.05,
          "27 CFR 30.23 and 30.61",
          "TRUESTRENGTH",
          proof[0] / 2,
          (proof[1] - 32) / 1.8,
          SIXTY_F);
    }
    add(100 * 785.1 / 789.3, 0.02, "CRC Handbook (from memory)", "VOLUMEAT20", 100.0, 25.0, 100.0);
    add(40.2, 1e-9, "27 CFR 30.32", "OBSCURATION", 40.0, 0.1);
    add(41.2, 1e-9, "27 CFR 30.32", "OBSCURATION", 40.0, 0.6);
    dilution();
  }

  /** 27 CFR 30.66: water to reduce 188 to 112 proof, from the water in 100 volumes of each. */
  private void dilution() {
    String manual = "27 CFR 30.66, water in 100 volumes of 188 and 112 proof";
    double strong = Calls.value("CONVERT", 188.0, "PROOFUS", "ABV");
    double weak = Calls.value("CONVERT", 112.0, "PROOFUS", "ABV");
    double spirit = Calls.value("VOLUMEAT20", 100.0, SIXTY_F, strong);
    double diluted = Calls.value("VOLUMEAT20", 9400.0 / 56, SIXTY_F, weak);
    double water = (94.0 / 56 * 47.75 - 7.36) * 999.016 / 998.2;
    add(water, 0.05, manual, "DILUTIONWATER", spirit, strong, weak);
    add(diluted, 0.05, manual, "DILUTEDVOLUME", spirit, strong, weak);
    add(spirit, 0.05, manual, "SPIRITFORVOLUME", diluted, weak, strong);
    add(weak, 0.02, manual, "WATEREDSTRENGTH", spirit, strong, water);
    String litres = Numbers.show(spirit) + "," + Numbers.show(water);
    String strengths = Numbers.show(strong) + ",0";
    add(weak, 0.02, manual, "BLENDSTRENGTH", litres, strengths);
    add(diluted, 0.05, manual, "BLENDVOLUME", litres, strengths);
  }

  private void goods() {
    for (Row row : ReferenceTable.read("balling-grain-extract.csv", 13).rows()) {
      String kind = row.text("material").toUpperCase(Locale.ROOT);
      kind = kind.equals("POTATOES") ? "POTATO" : kind;
      if (List.of("WHEAT", "RYE", "BARLEY", "OATS", "MAIZE", "RICE", "POTATO").contains(kind)) {
        double kilograms = Double.parseDouble(row.text("extract_kg").split("-", 2)[0]);
        add(kilograms, 1e-9, "Balling's table of grain", "GRAINEXTRACT", 100.0, kind);
      }
    }
    add(56.82 / 0.78924, 0.01, "molar masses (IUPAC)", "STARCHALCOHOL", 100.0, 1.0, 1.0);
    String usual = "AWRI: 100 to 300 mg of phosphate are 21 to 64 mg of nitrogen";
    for (double[] pair : new double[][] {{0.1, 21}, {0.3, 64}}) {
      add(pair[1], 0.5, usual, "NITROGENFROMPHOSPHATE", 1.0, pair[0]);
      add(pair[0], 0.003, usual, "PHOSPHATEFORNITROGEN", 1.0, 100.0, 100 + pair[1]);
    }
  }
}
