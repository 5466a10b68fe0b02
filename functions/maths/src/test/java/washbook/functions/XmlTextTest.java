package washbook.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class XmlTextTest {
  @Test
  void signsOfXmlAreEscaped() {
    assertEquals("a &lt; b &amp; &quot;c&quot; &gt; d's", XmlText.escaped("a < b & \"c\" > d's"));
  }

  @Test
  void whatXmlCannotHoldBecomesTheReplacementCharacter() {
    assertEquals("\uFFFD\uFFFD\uFFFD\uFFFD", XmlText.escaped("\u0001\u001f\uFFFE\uFFFF"));
    assertEquals("a\uFFFD", XmlText.escaped("a\uD83C"));
    assertEquals("\uFFFDa", XmlText.escaped("\uDF4Ea"));
  }

  @Test
  void linesTabulatorsAndWholePairsStay() {
    assertEquals("a\tb\r\nc \uD83C\uDF4E", XmlText.escaped("a\tb\r\nc \uD83C\uDF4E"));
  }
}
