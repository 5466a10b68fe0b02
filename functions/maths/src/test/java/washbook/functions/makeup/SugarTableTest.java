package washbook.functions.makeup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.liquid.Water;

/**
 * Make-up against Plato's density of sucrose solutions at 20 °C in g/mL, as in NBS Circular C440
 * (1942), table 114; from memory. Water has 0.99823 there. By mass a solution of 20 % is 20 kg of
 * sugar in 80 kg of water, whatever the model says.
 */
class SugarTableTest {
  private static final double WATER = 0.99823;

  @ParameterizedTest
  @CsvSource({"10, 1.03814", "20, 1.08096", "30, 1.12698", "40, 1.17647"})
  void makeUpFromWater(double percent, double density) {
    double gravity = density / WATER;
    double litresOfWater = (100 - percent) / WATER;
    double litres = 100 / density;
    assertEquals(gravity, Calls.value("CONVERT", percent, "BRIX", "SG"), 1e-4);
    assertEquals(percent, Calls.value("CONVERT", gravity, "SG", "BRIX"), 0.02);
    assertEquals(percent, Calls.value("SUGARFORGRAVITY", litresOfWater, 1.0, gravity), 0.04);
    assertEquals(gravity, Calls.value("WASHGRAVITY", litresOfWater, 1.0, percent), 1e-4);
    assertEquals(litres, Calls.value("VOLUMEAFTERSUGAR", litresOfWater, 1.0, percent), 0.01);
    assertEquals(percent, Calls.value("SUGARFORVOLUME", litres, gravity), 0.03);
    assertEquals(litresOfWater, Calls.value("WATERFORVOLUME", litres, gravity), 0.03);
    assertEquals(percent * density * 10, Calls.value("CONVERT", gravity, "SG", "GL"), 0.25);
    assertEquals(
        gravity,
        Calls.value("FEDORIGINAL", litresOfWater, 1.0, List.of(percent / 4, percent * 3 / 4)),
        1e-4);
  }

  @Test
  void blendsByMass() {
    // A kilogram of 10 % and one of 30 % are two of 20 %.
    List<Double> litres = List.of(1 / 1.03814, 1 / 1.12698);
    List<Double> gravities = List.of(1.03814 / WATER, 1.12698 / WATER);
    assertEquals(1.08096 / WATER, Calls.value("BLENDGRAVITY", litres, gravities), 5e-5);
    assertEquals(1.08096 / WATER, Calls.value("FEDORIGINAL", litres, gravities), 5e-5);
    // A kilogram of 20 % and one of water are two of 10 %.
    assertEquals(
        1 / WATER,
        Calls.value("WATERFORGRAVITY", 1 / 1.08096, 1.08096 / WATER, 1.03814 / WATER),
        0.002);
  }

  /** 2 kg of dextrose monohydrate hold 1.818 kg; a syrup of 65 % by mass weighs 1.3163 g/mL. */
  @Test
  void feedsOfOtherSugarsAndSyrups() {
    assertEquals(
        Calls.value(
            "FEDORIGINAL", List.of(20.0, 2 * 0.0909 / WATER), List.of(1.06, 1.0), 2 * 0.9091),
        Calls.value("FEDORIGINAL", 20.0, 1.06, 2.0, "DEXTROSE"),
        1e-6);
    List<Double> gravities = List.of(1.0, 1.3163 / WATER);
    List<Double> litres = List.of(55 / WATER, 20 / 0.65 / 1.3163);
    double percent = 100 * 20 / (55 + 20 / 0.65);
    double mixed = Calls.value("CONVERT", percent, "BRIX", "SG");
    assertEquals(mixed, Calls.value("BLENDGRAVITY", litres, gravities), 2e-4);
    assertEquals(mixed, Calls.value("FEDORIGINAL", litres, gravities), 2e-4);
  }

  /** Molar masses by the IUPAC: dextrose monohydrate holds 90.91 % dextrose. */
  @Test
  void dextroseHoldsItsWater() {
    double sucrose = Calls.value("SUGARFORVOLUME", 25.0, 1.08);
    assertEquals(sucrose / 0.9091, Calls.value("SUGARFORVOLUME", 25.0, 1.08, "DEXTROSE"), 0.001);
    assertEquals(sucrose / 0.82, Calls.value("SUGARFORVOLUME", 25.0, 1.08, "HONEY"), 1e-9);
    assertEquals(sucrose / 0.82, Calls.value("SUGARFORVOLUME", 25.0, 1.08, 0.82), 1e-9);
  }

  /**
   * OIV-MA-AS2-02 table II: must is not pure sucrose, its density runs 0.0006 to 0.0017 kg/L above;
   * sugar in g/kg is g/L over the density, and the potential alcohol is sugar over 16.83.
   */
  @Test
  void mustTable() {
    ReferenceTable.read("oiv-must.csv", 41)
        .rows()
        .forEach(
            row -> {
              double density = Calls.value("CONVERT", row.number("brix"), "BRIX", "KGM3") / 1000;
              double above = row.number("must_density_kg_l") - density;
              assertEquals(0.00115, above, 0.00055, row.toString());
              double sugar = row.number("sugar_g_l");
              assertEquals(sugar / row.number("must_density_kg_l"), row.number("sugar_g_kg"), 0.1);
              double gravity = row.number("must_density_kg_l") * 1000 / Water.density(20);
              double published = row.number("potential_vol_1683");
              assertEquals(published, Calls.value("POTENTIALABV", gravity, "16.83"), 0.013);
              assertEquals(published, sugar / 16.83, 0.011);
            });
  }
}
