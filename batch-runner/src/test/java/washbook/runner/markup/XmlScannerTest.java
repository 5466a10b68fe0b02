package washbook.runner.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner.Token;

class XmlScannerTest {
  private static final String MARKUP =
      "<?xml version=\"1.0\"?><a x='1>2' y=\"it's\"><!-- <no> --><p:b n='&lt;\"'/>text &amp; more"
          + "<![CDATA[<raw>]]><c\n id = \"7\" ></c></a>\n";

  /** Gives a few bytes at a time. */
  private static InputStream slow(String markup, int bytes) {
    return new FilterInputStream(
        new ByteArrayInputStream(markup.getBytes(StandardCharsets.UTF_8))) {
      @Override
      public int read(byte[] to, int offset, int length) throws IOException {
        return super.read(to, offset, Math.min(length, bytes));
      }
    };
  }

  private static List<String> tokens(String markup, int bytes, int expectedSize)
      throws IOException {
    XmlScanner scanner = new XmlScanner(slow(markup, bytes), "part", expectedSize);
    List<String> found = new ArrayList<>();
    for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
      StringBuilder line = new StringBuilder(token.name()).append(' ');
      line.append(
          new String(
              scanner.bytes(),
              scanner.tokenStart(),
              scanner.tokenEnd() - scanner.tokenStart(),
              StandardCharsets.UTF_8));
      if (token == Token.START || token == Token.EMPTY) {
        while (scanner.nextAttribute()) {
          line.append(" [").append(scanner.value()).append(']');
        }
      }
      found.add(line.toString());
    }
    return found;
  }

  @Test
  void theSameTokensHoweverTheBytesComeIn() throws IOException {
    List<String> expected =
        List.of(
            "START <a x='1>2' y=\"it's\"> [1>2] [it's]",
            "EMPTY <p:b n='&lt;\"'/> [<\"]",
            "TEXT text &amp; more",
            "CDATA <![CDATA[<raw>]]>",
            "START <c\n id = \"7\" > [7]",
            "END </c>",
            "END </a>",
            "TEXT \n");
    for (int bytes = 1; bytes < 40; bytes++) {
      assertEquals(expected, tokens(MARKUP, bytes, MARKUP.length()), bytes + " at a time");
    }
  }

  @Test
  void tokensLongerThanTheFirstBufferAreWhole() throws IOException {
    String long1 = "<a v=\"" + ">".repeat(5000) + "\">" + "t".repeat(5000) + "</a>";
    assertEquals(tokens(long1, 9000, 20_000), tokens(long1, 7, 1));
  }

  @Test
  void whatIsNotClosedIsRefusedWhereverItEnds() throws IOException {
    int end = MARKUP.indexOf("</a>");
    for (int length = 1; length < end + 4; length++) {
      String cut = MARKUP.substring(0, length);
      assertThrows(UnusableFileException.class, () -> tokens(cut, 64, 64), cut);
    }
    assertTrue(tokens(MARKUP.substring(0, end + 4), 64, 64).size() > 5);
  }
}
