package washbook.functions.portable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Answer;
import washbook.functions.Sentence;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.portable.FormulaRewriter.Rewritten;
import washbook.functions.portable.form.NotPortableException;

class FormulaRewriterTest {
  private static final FormulaRewriter A1 = new FormulaRewriter(FormulaSyntax.A1);
  private static final FormulaRewriter OPEN = new FormulaRewriter(FormulaSyntax.OPEN);

  /** A short form to compare with. */
  private static String litres(String cell, char separator) {
    return "IF(%s=\"\"#\"\"#IF(AND(%s>=-1000000000000000#%s<=1000000000000000)#3.785411784*%s#NA()))"
        .replace('#', separator)
        .replace("%s", cell);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "WASHBOOK.CONVERT(A1,\"GALUS\",\"L\") | @A1@",
        "washbook.Convert( A1 , \"galus\",\"l\" ) | @A1@",
        "WASHBOOK.CONVERT (A1,\"GALUS\",\"L\") | @A1@",
        "ROUND(WASHBOOK.CONVERT($A$1,\"GALUS\",\"L\"),1)&\"x\" | ROUND(@$A$1@,1)&\"x\"",
        "WASHBOOK.CONVERT('My, (log)'!B2,\"GALUS\",\"L\") | @'My, (log)'!B2@",
        "WASHBOOK.CONVERT('It''s'!B2,\"GALUS\",\"L\") | @'It''s'!B2@",
        "WASHBOOK.CONVERT(Log!B2,\"GALUS\",\"L\") | @Log!B2@",
        "WASHBOOK.CONVERT(A1+B1,\"GALUS\",\"L\") | @(A1+B1)@",
        "WASHBOOK.CONVERT(SUM(A1:A3,B1),\"GALUS\",\"L\") | @SUM(A1:A3,B1)@",
        "WASHBOOK.CONVERT(T[[#This Row],[a, b]],\"GALUS\",\"L\") | @(T[[#This Row],[a, b]])@",
        "\"WASHBOOK.CONVERT(A1)\"&A1 | \"WASHBOOK.CONVERT(A1)\"&A1",
        "MYWASHBOOK.CONVERT(A1,\"GALUS\",\"L\") | MYWASHBOOK.CONVERT(A1,\"GALUS\",\"L\")",
        "WASHBOOK.CONVERT+1 | WASHBOOK.CONVERT+1",
      })
  void replacesCallsAndNothingElse(String formula, String expected) {
    assertRewritten(A1, ',', formula.strip(), expected.strip());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "WASHBOOK.CONVERT([.A1];\"GALUS\";\"L\") # @[.A1]@",
        "SUM(washbook.convert(['My ]; log'.$B$2];\"GALUS\";\"L\");1) # SUM(@['My ]; log'.$B$2]@;1)",
        "WASHBOOK.CONVERT([.A1]+1;\"GALUS\";\"L\") # @([.A1]+1)@",
      })
  void readsOpenFormulaToo(String both) {
    String[] parts = both.split(" # ");
    assertRewritten(OPEN, ';', parts[0], parts[1]);
  }

  private static void assertRewritten(
      FormulaRewriter rewriter, char separator, String formula, String expected) {
    String[] parts = expected.split("@");
    String text = expected;
    if (parts.length > 1) {
      text = parts[0] + litres(parts[1], separator) + (parts.length > 2 ? parts[2] : "");
    }
    Rewritten rewritten = rewriter.rewrite(formula);
    assertEquals(text, rewritten.text());
    assertEquals(List.of(), rewritten.left());
    assertEquals(parts.length > 1 ? 1 : 0, rewritten.calls());
    assertEquals(
        formula.toUpperCase(Locale.ROOT).startsWith("WASHBOOK.CONVERT(A1,") || parts.length > 1,
        FormulaRewriter.concerns(formula));
  }

  @Test
  void anInnerCallSharesItsGuards() {
    Rewritten rewritten =
        A1.rewrite(
            "WASHBOOK.ABV($F$2,WASHBOOK.CORRECTEDGRAVITY(B2,WASHBOOK.CONVERT(C2,\"F\",\"C\")))");
    assertTrue(
        rewritten.text().startsWith("IF(OR($F$2=\"\",$F$2=0,B2=\"\",B2=0,C2=\"\"),\"\",IF("),
        rewritten.text());
    assertEquals(1, rewritten.text().split("\"\",IF\\(AND", -1).length - 1);
    assertFalse(FormulaRewriter.concerns(rewritten.text()));
    assertTrue(rewritten.text().length() < 4000, () -> "" + rewritten.text().length());
  }

  @Test
  void theLongestUsualNestingFits() {
    Rewritten rewritten =
        A1.rewrite(
            "WASHBOOK.ABV($F$2,WASHBOOK.CORRECTEDGRAVITY(B2,WASHBOOK.CONVERT(C2,\"F\",\"C\"),,$F$2))");
    assertEquals(List.of(), rewritten.left());
    assertEquals(1, rewritten.calls());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "WASHBOOK.ABV(A1:A9,B1:B9)",
        "WASHBOOK.ABVBYPOTENTIAL(A1,B1)",
        "WASHBOOK.CONVERT(A1,B1,\"L\")",
        "WASHBOOK.ABV(A1)",
        "WASHBOOK.ABV(A1,{1.01,1.02})",
        "WASHBOOK.ABV(A1,\"x\")",
      })
  void leavesWhatCannotBePortable(String formula) {
    Rewritten rewritten = A1.rewrite(formula);
    assertEquals(formula, rewritten.text());
    assertEquals(0, rewritten.calls());
    assertEquals(1, rewritten.left().size());
  }

  @Test
  void leavesTheOuterCallAndRewritesTheInnerOne() {
    Rewritten rewritten =
        A1.rewrite("WASHBOOK.ABVBYPOTENTIAL(WASHBOOK.CONVERT(A1,\"GALUS\",\"L\"),B1)");
    assertEquals("WASHBOOK.ABVBYPOTENTIAL(" + litres("A1", ',') + ",B1)", rewritten.text());
    assertEquals(List.of(Sentence.of("portable.none", "ABVBYPOTENTIAL")), rewritten.left());
  }

  @Test
  void ofACallWithoutAPortableFormThatIsTheReasonAlsoOverRanges() {
    assertEquals(
        List.of(Sentence.of("portable.none", "FERMENTSTATE")),
        A1.rewrite("WASHBOOK.FERMENTSTATE(A2:A9,B2:B9)").left());
  }

  @Test
  void refusesWhatWouldBeTooLong() {
    String inner = "WASHBOOK.CORRECTEDGRAVITY(WASHBOOK.CONVERT(B2,\"BRIX\",\"SG\"),C2,D2,E2,F2)";
    Rewritten rewritten = A1.rewrite("WASHBOOK.ABV(" + inner + "," + inner + ")");
    assertEquals(0, rewritten.calls());
    String why = rewritten.left().get(0).english();
    assertTrue(why.contains("8192 are possible"), why);
  }

  @Test
  void nestedCallsComputeAsTheFunctionsDo() throws NotPortableException {
    CompiledCall call =
        PortableFormulas.compile(
            Catalogue.get("ABV"),
            List.of(
                "WASHBOOK.CONVERT(A1,\"BRIX\",\"SG\")",
                "WASHBOOK.CORRECTEDGRAVITY(B1,WASHBOOK.CONVERT(C1,\"F\",\"C\"),15.5556)"));
    double original = number(Catalogue.get("CONVERT").call(20.4, "BRIX", "SG"));
    double warm = number(Catalogue.get("CONVERT").call(84.0, "F", "C"));
    double gravity = number(Catalogue.get("CORRECTEDGRAVITY").call(1.012, warm, 15.5556));
    assertEquals(
        number(Catalogue.get("ABV").call(original, gravity)),
        number(call.answer(List.of(20.4, 1.012, 84.0))),
        0.01);
  }

  private static double number(Answer answer) {
    return ((Answer.Number) answer).value();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "SUM(A1:A3*WASHBOOK.PUREALCOHOL(B2,40))|1",
        "WASHBOOK.PUREALCOHOL(Sheet2!$B$2,C2)|1",
        "WASHBOOK.PUREALCOHOL(B2:B9,40)|0",
        "WASHBOOK.PUREALCOHOL(IF(B2:B9>0,B2,1),40)|0",
        "WASHBOOK.PUREALCOHOL(litres,40)|0",
        "WASHBOOK.PUREALCOHOL(B2,{40})|0",
      })
  void anArrayFormulaTakesSingleCells(String formula, int calls) {
    Rewritten rewritten = A1.rewriteArray(formula);
    assertEquals(calls, rewritten.calls(), formula);
    assertEquals(1 - calls, rewritten.left().size(), formula);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "WASHBOOK.TRUESTRENGTH(B2,C2,D2)",
        "WASHBOOK.CORRECTEDGRAVITY(B2,C2,D2,E2,F2)",
        "WASHBOOK.CORRECTEDGRAVITY(B2,WASHBOOK.CONVERT(C2,\"F\",\"C\"),D2,E2,F2)",
        "WASHBOOK.CORRECTEDGRAVITY(B2,WASHBOOK.CONVERT(C2,\"F\",\"C\"),"
            + "WASHBOOK.CONVERT(D2,\"F\",\"C\"),E2,F2)",
        "WASHBOOK.CORRECTEDBRIX(B2,WASHBOOK.CONVERT(C2,\"F\",\"C\"),"
            + "WASHBOOK.CONVERT(D2,\"F\",\"C\"),E2)",
      })
  void calibrationAndOffsetMayStandInCells(String formula) {
    Rewritten rewritten = A1.rewrite(formula);
    assertEquals(List.of(), rewritten.left());
    assertEquals(1, rewritten.calls());
    int most = formula.contains("TRUESTRENGTH") ? 8192 : 4096;
    assertTrue(rewritten.text().length() <= most, () -> formula + rewritten.text().length());
  }
}
