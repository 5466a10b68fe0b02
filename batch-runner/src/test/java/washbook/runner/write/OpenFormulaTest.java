package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpenFormulaTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "A1~[.A1]",
        "$B$2*C3+D$4~[.$B$2]*[.C3]+[.D$4]",
        "IF(A2>0,B2,\"a,b A1\")~IF([.A2]>0;[.B2];\"a,b A1\")",
        "SUM(A1:B$9,3.5E-2)~SUM([.A1:.B$9];3.5E-2)",
        "LOG10(A1)+ATAN2(1,2)~LOG10([.A1])+ATAN2(1;2)",
        "WASHBOOK.ABV(B4,B5)~WASHBOOK.ABV([.B4];[.B5])",
        "Notes!A1+Batch.3!B2~[$Notes.A1]+[$Batch.3.B2]",
        "'Plum ''3'''!A1:B2~[$'Plum ''3'''.A1:.B2]",
        "IF(TRUE,FALSE(),NOT(true))~IF(TRUE();FALSE();NOT(true()))",
        "A:C~[.A:.C]",
        "SUM($1:3)~SUM([.$1:.3])",
        "{1,2;3,4}~{1;2|3;4}",
        "IF(ISNA(#N/A),1E5,A1B)~IF(ISNA(#N/A);1E5;A1B)",
        "A1&\"say \"\"x\"\"\"~[.A1]&\"say \"\"x\"\"\"",
        "rate_1+A1.5~rate_1+A1.5",
      })
  void a1(String formula, String expected) {
    assertEquals("of:=" + expected, OpenFormula.of(formula));
  }
}
