package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.TextBuffer;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.sheet.Texts;

/** Reads rich and plain strings (ECMA-376-1:2016, 18.4.8 si and 18.3.1.53 is). */
public final class XlsxStrings {
  private static final byte[] SI = ascii("si");
  private static final byte[] T = ascii("t");
  private static final byte[] PHONETIC = ascii("rPh");

  private XlsxStrings() {}

  /** Adds all strings of the shared strings part in their order. */
  static void read(Archive archive, Part part, Texts texts) throws IOException {
    TextBuffer text = new TextBuffer();
    try (InputStream in = archive.read(part)) {
      XmlScanner scanner = new XmlScanner(in, part.name(), part.size());
      for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
        if (token == Token.EMPTY && scanner.is(SI)) {
          texts.add("");
        } else if (token == Token.START && scanner.is(SI)) {
          text.clear();
          readString(scanner, text);
          texts.add(text.bytes(), 0, text.length());
        }
      }
    }
  }

  /** Adds the text of the element whose start tag is the current token, up to its end tag. */
  public static void readString(XmlScanner scanner, TextBuffer text) throws IOException {
    int outside = scanner.depth() - 1;
    int phonetic = Integer.MAX_VALUE;
    boolean inText = false;
    while (true) {
      Token token = scanner.next();
      switch (token) {
        case START -> {
          if (scanner.is(PHONETIC)) {
            phonetic = Math.min(phonetic, scanner.depth());
          }
          inText = scanner.depth() < phonetic && scanner.is(T);
        }
        case END -> {
          inText = false;
          if (scanner.depth() == outside) {
            text.unescape();
            return;
          }
          if (scanner.depth() < phonetic) {
            phonetic = Integer.MAX_VALUE;
          }
        }
        case TEXT, CDATA -> {
          if (inText) {
            append(scanner, token, text);
          }
        }
        case EMPTY -> {}
        case DONE -> throw scanner.damaged("how.textOpen");
      }
    }
  }

  /** Adds the characters of the current token. */
  public static void append(XmlScanner scanner, Token token, TextBuffer text)
      throws UnusableFileException {
    if (token == Token.TEXT) {
      text.append(scanner.bytes(), scanner.tokenStart(), scanner.tokenEnd());
    } else {
      text.appendPlain(scanner.bytes(), scanner.tokenStart() + 9, scanner.tokenEnd() - 3);
    }
  }
}
