package washbook.functions.portable;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaShiftTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "A1+$B$2+C$3+$D4 | B3+$B$2+D$3+$D6",
        "SUM(A1:B2,3) | SUM(B3:C4,3)",
        "SUM(A:A,$B:B,1:1,$2:3) | SUM(B:B,$B:C,3:3,$2:5)",
        "LOG10(A1)&\"A1\" | LOG10(B3)&\"A1\"",
        "'A1'!A1+Z1!Z1 | 'A1'!B3+Z1!AA3",
        "WASHBOOK.ABV($C$1,C1) | WASHBOOK.ABV($C$1,D3)",
      })
  void movesRelativeReferencesOnly(String formula, String moved) {
    assertEquals(moved.strip(), FormulaShift.shift(formula.strip(), 2, 1));
  }
}
