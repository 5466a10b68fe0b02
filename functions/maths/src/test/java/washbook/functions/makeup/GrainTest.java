package washbook.functions.makeup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;

class GrainTest {
  /** Balling's table, extract in kg from 100 kg; the lower figure where it prints two. */
  @Test
  void extractIsBallings() {
    int checked = 0;
    for (ReferenceTable.Row row : ReferenceTable.read("balling-grain-extract.csv", 13).rows()) {
      String kind =
          switch (row.text("material")) {
            case "kilned malt" -> "MALT";
            case "potatoes" -> "POTATO";
            case "potato starch" -> "POTATOSTARCH";
            case "wheat", "rye", "barley", "oats", "maize", "rice" ->
                row.text("material").toUpperCase(Locale.ROOT);
            default -> "";
          };
      if (!kind.isEmpty()) {
        double printed = Double.parseDouble(row.text("extract_kg").split("-", 2)[0]);
        assertEquals(printed, Calls.value("GRAINEXTRACT", 100.0, kind), 1e-9);
        checked++;
      }
    }
    assertEquals(9, checked);
  }

  /** 100 g of starch, 111.11 g of glucose, 56.82 g of ethanol; 0.78924 kg a litre (OIML R 22). */
  @Test
  void starchGivesWhatItsAtomsAllow() {
    assertEquals(56.82 / 0.78924, Calls.value("STARCHALCOHOL", 100.0, 1.0, 1.0), 0.01);
    assertEquals(0.9 * 0.6, Calls.value("STARCHALCOHOL", 1.0, 0.6) / (0.5682 / 0.78924), 1e-3);
  }

  /** Usual additions 100 to 300 mg of phosphate are 21 to 64 mg of nitrogen a litre (AWRI). */
  @ParameterizedTest
  @CsvSource({"0.1, 21", "0.3, 64"})
  void phosphateIsAFifthNitrogen(double gramsPerLitre, double nitrogen) {
    assertEquals(nitrogen, Calls.value("NITROGENFROMPHOSPHATE", 1.0, gramsPerLitre), 0.5);
    assertEquals(
        gramsPerLitre, Calls.value("PHOSPHATEFORNITROGEN", 1.0, 100.0, 100 + nitrogen), 0.003);
    // Two nitrogens in a salt of 132.1 g/mol.
    assertEquals(2 * 14.007 / 132.06, Nitrogen.OF_PHOSPHATE, 2e-4);
  }
}
