package washbook.functions.liquid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;

/** The constants in the code are the published ones, each of them and no more. */
class CoefficientsTest {
  /** Council Directive 76/766/EEC, annex, section 4 = OIML R 22:1975, general formula. */
  @Test
  void ethanolWater() {
    int rows = 0;
    for (Row row : ReferenceTable.read("oiml-r22-coefficients.csv", 54).rows()) {
      String group = row.text("group");
      int k = (int) row.number("k");
      double inCode =
          switch (group) {
            case "A" -> EthanolWater.A[k - 1];
            case "B" -> EthanolWater.B[k];
            default -> EthanolWater.C[group.charAt(1) - '1'][k - 1];
          };
      assertEquals(row.number("value"), inCode, 0, group + k);
      rows++;
    }
    int inCode = EthanolWater.A.length + EthanolWater.B.length - 1;
    for (double[] terms : EthanolWater.C) {
      inCode += terms.length;
    }
    assertEquals(inCode, rows);
  }

  /** Sugar Technologists Manual (1995); ICUMSA SPS-4 (1998). */
  @Test
  void sucrose() {
    int rows = 0;
    for (Row row : ReferenceTable.read("icumsa-sucrose-coefficients.csv", 20).rows()) {
      double inCode = SucroseSolution.C[(int) row.number("i")][(int) row.number("k") - 1];
      assertEquals(row.number("value"), inCode, 0);
      rows++;
    }
    int inCode = 0;
    for (double[] terms : SucroseSolution.C) {
      inCode += terms.length;
    }
    assertEquals(inCode, rows);
  }

  /** Kell, J. Chem. Eng. Data 20 (1975) 97. */
  @Test
  void kellsWater() {
    for (Row row : ReferenceTable.read("kell-1975-water.csv", 6).rows()) {
      assertEquals(row.number("value"), Water.KELL[row.text("coefficient").charAt(1) - '0'], 0);
    }
    assertEquals(6, Water.KELL.length);
  }
}
