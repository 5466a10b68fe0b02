package washbook.functions.portable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.functions.portable.form.Form;
import washbook.functions.portable.form.Forms;
import washbook.functions.portable.form.NotPortableException;
import washbook.functions.portable.form.StrengthForm;
import washbook.functions.quantity.Quantity;

class PortableFormulasTest {
  private static final int LONGEST = 8192;

  /**
   * 4,000 is aimed at; an alcoholometer for 15 °C needs a little more, and one whose calibration
   * stands in a cell has the formulas of both usual ones.
   */
  private static final int LONG = 4100;

  @Test
  void standsOnReferencesOnly() throws NotPortableException {
    String formula = formula("POTENTIALABV", "A1", "\"17\"");
    assertTrue(formula.startsWith("IF(OR(A1=\"\",A1=0),\"\",IF(AND(A1>=0.97,A1<=1.19),"), formula);
    assertTrue(formula.endsWith(",NA()))"), formula);
  }

  @Test
  void everyFormStaysShort() throws NotPortableException {
    for (Form form : Forms.ALL) {
      CatalogueFunction function = Catalogue.get(form.function());
      boolean twoInOne = form.words().contains(StrengthForm.IN_A_CELL);
      assertTrue(length(form, function, "B12") <= (twoInOne ? LONGEST : LONG), form::key);
      assertTrue(twoInOne || length(form, function, "$AB$1000000") <= LONGEST, form::key);
    }
  }

  private static int length(Form form, CatalogueFunction function, String reference)
      throws NotPortableException {
    List<String> arguments = new ArrayList<>();
    int word = 0;
    for (Parameter parameter : function.parameters()) {
      if (parameter.quantity() == Quantity.CALIBRATION_TEMPERATURE
          && !Forms.calibrations(function).isEmpty()) {
        Double calibration = Forms.calibrations(function).get(form.words().get(0));
        arguments.add(calibration == null ? reference : calibration.toString());
        continue;
      }
      arguments.add(parameter.words().isEmpty() ? reference : word(form.words().get(word++)));
    }
    String formula = PortableFormulas.formula(function, arguments);
    assertFalse(formula.contains("E-"), formula);
    return formula.length();
  }

  private static String word(String word) {
    return word.equals(Form.NUMBER) ? "91.5" : '"' + word + '"';
  }

  /** The kind of wash stands in the formula as a word or as a number. */
  @ParameterizedTest
  @ValueSource(strings = {"\"SUGAR\"", "\"honey\"", "91.5", ""})
  void kindsOfWashHaveFormulas(String kind) throws NotPortableException {
    Object wash =
        kind.isEmpty() ? null : kind.equals("91.5") ? (Object) 91.5 : kind.replace("\"", "");
    CatalogueFunction function = Catalogue.get("ABV");
    CompiledCall call = PortableFormulas.compile(function, List.of("A1", "B1", kind));
    double exact = ((Answer.Number) function.call(1.085, 0.998, wash)).value();
    assertEquals(exact, ((Answer.Number) call.answer(List.of(1.085, 0.998))).value(), 0.005);
  }

  @ParameterizedTest
  @CsvSource({
    "ABV, 1.085, 0.998",
    "ABV, 1.085, ",
    "ABV, , 0.998",
    "ABV, 1.085, 0",
    "ABV, 1.085, 1.09",
    "ABV, 1.02, 0.971",
    "ABV, 1.2, 1.0",
    "ABV, 1.085, text",
    "ABV, text, 1.0",
    "CORRECTEDGRAVITY, 1.04, 0",
    "CORRECTEDGRAVITY, 1.04, ",
    "CORRECTEDGRAVITY, 1.04, 60.5",
    "CORRECTEDGRAVITY, 1.19, 60",
  })
  void refusesAndAnswersAsTheFunction(String name, String first, String second)
      throws NotPortableException {
    CatalogueFunction function = Catalogue.get(name);
    List<Object> values = new ArrayList<>();
    values.add(read(first));
    values.add(read(second));
    Answer exact = function.call(values.toArray());
    Answer portable = PortableFormulas.compile(function, List.of("A1", "B1")).answer(values);
    if (exact instanceof Answer.Number n) {
      assertEquals(n.value(), ((Answer.Number) portable).value(), 0.002);
    } else if (((Answer.Refusal) exact).code() == Answer.Code.BLANK) {
      assertEquals(new Answer.Text(""), portable);
    } else {
      assertTrue(portable instanceof Answer.Refusal, () -> "" + portable);
    }
  }

  private static Object read(String text) {
    return text == null ? null : text.equals("text") ? text : (Object) Double.valueOf(text);
  }

  @Test
  void aBlankOptionalCellCountsAsLeftOut() throws NotPortableException {
    CatalogueFunction function = Catalogue.get("CORRECTEDGRAVITY");
    CompiledCall call = PortableFormulas.compile(function, List.of("A1", "B1", "C1", "D1", "E1"));
    List<Object> values = new ArrayList<>(List.of(1.04, 30.0));
    values.addAll(Arrays.asList(null, null, null));
    double expected = ((Answer.Number) function.call(1.04, 30.0)).value();
    assertEquals(expected, ((Answer.Number) call.answer(values)).value(), 0.00003);
    values.set(3, 1.085);
    expected = ((Answer.Number) function.call(1.04, 30.0, null, 1.085)).value();
    assertEquals(expected, ((Answer.Number) call.answer(values)).value(), 0.00005);
    values.set(2, 9.0);
    assertTrue(call.answer(values) instanceof Answer.Refusal);
  }

  @Test
  void saysWhyACallHasNoFormula() {
    assertRefused("ABV needs a number as its gravity.", "ABV", "A1");
    assertRefused("ABV is given too many arguments.", "ABV", "A1", "A2", "", "A3");
    assertRefused(
        "ABV needs its kind of wash as a word or number in the formula, not from a cell.",
        "ABV",
        "A1",
        "A2",
        "A3");
    assertRefused("ABV refuses a number in this formula.", "ABV", "A1", "A2", "60");
    assertRefused("ABV has no portable form for TEA.", "ABV", "A1", "A2", "\"tea\"");
    assertRefused("ABV refuses a number in this formula.", "ABV", "2", "A1");
    assertRefused("ABVBYPOTENTIAL has no portable form.", "ABVBYPOTENTIAL", "A1", "B1");
    assertRefused(
        "POTENTIALABV needs its way of calculating as a word in the formula, not from a cell.",
        "POTENTIALABV",
        "A1",
        "B1");
    assertRefused("POTENTIALABV has no portable form for X, MALT.", "POTENTIALABV", "A1", "\"x\"");
  }

  private static void assertRefused(String reason, String name, String... arguments) {
    assertEquals(
        reason,
        assertThrows(NotPortableException.class, () -> formula(name, arguments)).getMessage());
  }

  private static String formula(String name, String... arguments) throws NotPortableException {
    return PortableFormulas.formula(Catalogue.get(name), List.of(arguments));
  }
}
