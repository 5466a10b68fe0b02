package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;

/** Common practice, no source: the scales of a triple-scale hydrometer and the trade's figures. */
class CommonPracticeTest {
  static Stream<Row> rows() {
    return ReferenceTable.read("common-practice.csv", 9).rows().stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void tradesFigures(Row row) {
    double published = row.number("value");
    double tolerance = row.number("tolerance");
    double computed =
        switch (row.text("what")) {
          case "a triple-scale hydrometer's potential alcohol at 35 degBx in % vol" ->
              potential(35);
          case "a triple-scale hydrometer's potential alcohol at 10 degBx in % vol" ->
              potential(10);
          case "a triple-scale hydrometer's potential alcohol at 5 degBx in % vol" -> potential(5);
          case "alcohol so far from 35 degBx down to 10 degBx in % vol by the difference of"
                  + " potentials" ->
              Calls.value("ABVBYPOTENTIAL", gravity(35), gravity(10));
          case "alcohol so far from 10 degBx down to 5 degBx in % vol by the difference of"
                  + " potentials" ->
              Calls.value("ABVBYPOTENTIAL", gravity(10), gravity(5));
          // The juice has a gravity in range and its potential is a light cider's.
          case "usual sugar of fruit juice in degBx" ->
              Calls.value("CONVERT", gravity(published), "SG", "BRIX");
          case "SG scale of a triple-scale hydrometer from",
              "SG scale of a triple-scale hydrometer to" ->
              Calls.value("CORRECTEDGRAVITY", published, 20.0);
          case "Brix scale of a triple-scale hydrometer to in degBx" ->
              Calls.value("CORRECTEDBRIX", published, 20.0);
          default -> fail("no such figure: " + row);
        };
    assertEquals(published, computed, Math.max(tolerance, 1e-12), row.toString());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void juiceOfTheUsualSugarGivesAUsualAlcohol(Row row) {
    if (row.text("what").equals("usual sugar of fruit juice in degBx")) {
      double dry = Calls.value("POTENTIALABV", gravity(row.number("value")), "DRY");
      assertTrue(dry > 4 && dry < 8, "dry: " + dry);
    }
  }

  private static double gravity(double brix) {
    return Calls.value("CONVERT", brix, "BRIX", "SG");
  }

  private static double potential(double brix) {
    double potential = Calls.value("POTENTIALABV", gravity(brix));
    assertEquals(potential, Calls.value("CONVERT", brix, "BRIX", "POTENTIAL"), 1e-9);
    return potential;
  }
}
