package washbook.functions.portable.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.portable.PortableFormulas;

/**
 * Every portable formula keeps its stated error at points that the fit and its grid did not use.
 */
class PortableBoundsTest {
  /** The largest errors that a log bears, by unit; litres and grams are checked by their forms. */
  private static final Map<String, Double> LIMITS =
      Map.of(
          "SG",
          0.0001,
          "°Bx",
          0.02,
          "BRIX",
          0.02,
          "PLATO",
          0.02,
          "BALLING",
          0.02,
          "% vol",
          0.02,
          "ABV",
          0.02,
          "POTENTIAL",
          0.02,
          "%",
          0.1,
          "% mass",
          0.02);

  private static final int POINTS = 20_000;

  @TestFactory
  List<DynamicTest> keepsItsErrorAtRandomPointsAndCorners() {
    return Forms.ALL.stream()
        .map(form -> DynamicTest.dynamicTest(form.key(), () -> check(form)))
        .toList();
  }

  private static void check(Form form) {
    double stated = Fitted.all().errors().get(form.key());
    double limit = LIMITS.getOrDefault(form.unit(), form.wanted());
    assertTrue(stated <= limit, () -> form.key() + " states " + stated + ", limit " + limit);
    Expression core = Fitted.resolve(form.core(), Fitted.all().terms());
    SplittableRandom random = new SplittableRandom(20);
    int answered = 0;
    double[] unit = new double[form.domain().dimensions()];
    for (int i = 0; i < POINTS; i++) {
      for (int d = 0; d < unit.length; d++) {
        double value = random.nextDouble();
        unit[d] = i % 4 == 0 ? Math.rint(value) : value;
      }
      double[] at = form.domain().arguments().apply(unit);
      double exact = form.exact(at);
      if (!Double.isNaN(exact)) {
        answered++;
        // A random point may hit between the grid's points; a twentieth more is within the
        // rounding up of the bound that people are told.
        double error = Math.abs(core.value(at) - exact) / form.size().applyAsDouble(at);
        assertTrue(error <= stated * 1.05 + 1e-10, () -> form.key() + " is off by " + error);
      }
    }
    assertTrue(answered > POINTS * 0.9, form.key() + " answered only " + answered);
  }

  @Test
  void functionsMarkedPortableAndNoOthersHaveForms() {
    for (CatalogueFunction function : Catalogue.all()) {
      assertEquals(
          function.portable(), !Forms.of(function.name()).isEmpty(), () -> function.name());
    }
  }

  @Test
  void theReferencePageIsToldTheBound() {
    assertEquals(
        "Portable formula: within 0.003 % vol of the exact value.", PortableFormulas.note("ABV"));
    assertTrue(
        PortableFormulas.note("CONVERT")
            .startsWith("Portable formula: within 0.000004 SG, 0.004 POINTS, 0.004 BRIX, "),
        PortableFormulas.note("CONVERT"));
    assertEquals(
        "Portable formula: within 0.00003 L for each litre after dilution of the exact value.",
        PortableFormulas.note("DILUTIONWATER"));
    assertEquals("", PortableFormulas.note("ABVBYPOTENTIAL"));
  }

  @Test
  void aSecondFitGivesTheSameNumbers() {
    Fitted again = FitForms.fit(FermentForms.ALL);
    assertTrue(again.terms().size() > FermentForms.ALL.size(), "one more for the lowest gravity");
    again.terms().forEach((key, terms) -> assertEquals(terms, Fitted.all().terms().get(key), key));
    again.errors().forEach((key, e) -> assertEquals(e, Fitted.all().errors().get(key), key));
  }
}
