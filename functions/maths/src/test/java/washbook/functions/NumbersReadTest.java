package washbook.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class NumbersReadTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"0", "1.085", "-5", "+.5", "5.", "1e3", "1.5E-3", "-0.0", " 7 ", "12e+0005"})
  void readsPlainNumbers(String text) {
    assertEquals(Double.valueOf(text.strip()), Numbers.parse(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        ".",
        "-",
        "1,085",
        "1.0.0",
        "e3",
        "1e",
        "1e+",
        "1e12345",
        "NaN",
        "Infinity",
        "0x1p3",
        "1d",
        "1 2",
        "--1",
        "٣"
      })
  void takesNothingElse(String text) {
    assertNull(Numbers.parse(text));
  }
}
