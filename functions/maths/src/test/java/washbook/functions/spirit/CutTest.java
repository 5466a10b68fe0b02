package washbook.functions.spirit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer.Code;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;

class CutTest {
  private static final List<Double> LITRES = List.of(1.0, 2.0, 3.0, 1.5);
  private static final List<Double> STRENGTHS = List.of(80.0, 70.0, 40.0, 20.0);

  /** OIML R 22:1975, table IVa: masses add up, and alcohol does (27 CFR 30.63 and 30.66). */
  @Test
  void aCutIsTheBlendOfItsJars() {
    List<Row> densities = ReferenceTable.read("oiml-r22-density20.csv", 10).rows();
    double mass = 2 * density(densities, 70) + 3 * density(densities, 40);
    double alcohol = 2 * 0.7 + 3 * 0.4;
    assertEquals(alcohol, Calls.value("CUTALCOHOL", LITRES, STRENGTHS, 2.0, 3.0), 1e-12);
    double strength = Calls.value("CUTSTRENGTH", LITRES, STRENGTHS, 2.0, 3.0);
    double litres = Calls.value("CUTVOLUME", LITRES, STRENGTHS, 2.0, 3.0);
    assertEquals(alcohol, litres * strength / 100, 1e-9);
    assertEquals(mass, litres * Calls.value("SPIRITDENSITY", strength), 0.02);
    assertTrue(litres < 5);
    assertEquals(7.5, Calls.value("CUTVOLUME", LITRES, STRENGTHS), 0.15);
  }

  private static double density(List<Row> rows, double strength) {
    return rows.stream()
        .filter(row -> row.number("percent_volume") == strength)
        .findFirst()
        .orElseThrow()
        .number("density_kg_m3");
  }

  @Test
  void jarsThatAreNotThereAreRefused() {
    assertEquals(
        Code.CONTRADICTION, Calls.refusal("CUTVOLUME", LITRES, STRENGTHS, 2.0, 5.0).code());
    assertEquals(
        Code.CONTRADICTION, Calls.refusal("CUTVOLUME", LITRES, STRENGTHS, 3.0, 2.0).code());
    assertEquals(Code.CONTRADICTION, Calls.refusal("CUTVOLUME", LITRES, STRENGTHS, 1.5).code());
  }

  /**
   * OIV-MA-AS2-03B: the gravity of the whole less that of its % vol, plus one, is its extract's.
   */
  @Test
  void aLiqueurObeysTabariesRelation() {
    for (double sugar = 50; sugar <= 400; sugar += 50) {
      double strength = Calls.value("LIQUEURSTRENGTH", 1.0, 60.0, sugar, 0.4);
      double litres = Calls.value("LIQUEURVOLUME", 1.0, 60.0, sugar, 0.4);
      double mass = Calls.value("SPIRITDENSITY", 60.0) + sugar + 0.4 * 998.2;
      double whole = mass / litres / 998.2;
      double alcoholOnly = Calls.value("SPIRITDENSITY", strength) / 998.2;
      double extract = Calls.value("CONVERT", whole - alcoholOnly + 1, "SG", "GL");
      assertEquals(sugar / litres, extract, 0.1, sugar + " g");
      assertEquals(60, litres * strength, 1e-6);
    }
    assertEquals(
        Calls.value("WATEREDSTRENGTH", 1.0, 60.0, 0.4),
        Calls.value("LIQUEURSTRENGTH", 1.0, 60.0, 0.001, 0.4),
        0.001);
    assertEquals(Code.CONTRADICTION, Calls.refusal("LIQUEURSTRENGTH", 1.0, 90.0, 900.0).code());
  }
}
