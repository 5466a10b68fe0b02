package washbook.runner.read;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.TextBuffer;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;

/**
 * Reads the small parts of a package, which programs also store as UTF-16; document types are
 * refused, and every end tag has to name the element that it ends.
 */
final class SmallXml {
  /** Larger ones are refused. */
  private static final int LIMIT = 32 << 20;

  private SmallXml() {}

  /** Is told every start and end of an element. */
  interface Handler {
    void start(Element at) throws IOException;

    /** By its local name. */
    default void end(String element) throws IOException {}

    /** Whether the characters that come next are wanted. */
    default boolean takesText() {
      return false;
    }

    /** Characters, as far as they are wanted. */
    default void text(String characters) {}
  }

  /** The element that starts at the current token. */
  static final class Element {
    private final XmlScanner scanner;
    private String name = "";

    private Element(XmlScanner scanner) {
      this.scanner = scanner;
    }

    /** Without its prefix. */
    String name() {
      return name;
    }

    /** The attribute of that local name in no or any namespace; "" when there is none. */
    String attribute(String localName) throws UnusableFileException {
      scanner.rewindAttributes();
      while (scanner.nextAttribute()) {
        if (scanner.attributeHasLocalName(localName)) {
          return scanner.value();
        }
      }
      return "";
    }

    /** Whether the attribute says yes, in one of the ways of XML Schema. */
    boolean isTrue(String localName) throws UnusableFileException {
      String value = attribute(localName);
      return value.equals("1") || value.equals("true") || value.equals("on");
    }

    /** A whole number that is not negative, or -1. */
    int count(String localName) throws UnusableFileException {
      try {
        return Math.max(-1, Integer.parseInt(attribute(localName).strip()));
      } catch (NumberFormatException e) {
        return -1;
      }
    }
  }

  static void read(Archive archive, Part part, Handler handler) throws IOException {
    XmlScanner scanner = new XmlScanner(characters(archive, part), part.name(), part.size());
    Element element = new Element(scanner);
    Deque<String> open = new ArrayDeque<>();
    for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
      switch (token) {
        case START, EMPTY -> {
          element.name = scanner.localName();
          handler.start(element);
          if (token == Token.EMPTY) {
            handler.end(element.name);
          } else {
            open.push(element.name);
          }
        }
        case END -> {
          String name = open.pop();
          if (!name.equals(scanner.localName())) {
            throw scanner.damaged("how.namedOpen", name);
          }
          handler.end(name);
        }
        case TEXT, CDATA -> {
          if (handler.takesText()) {
            handler.text(text(scanner, token));
          }
        }
        default -> {}
      }
    }
  }

  private static String text(XmlScanner scanner, Token token) throws IOException {
    TextBuffer characters = new TextBuffer();
    if (token == Token.TEXT) {
      characters.append(scanner.bytes(), scanner.tokenStart(), scanner.tokenEnd());
    } else {
      characters.appendPlain(scanner.bytes(), scanner.tokenStart() + 9, scanner.tokenEnd() - 3);
    }
    return characters.toString();
  }

  /** The part as UTF-8. */
  private static InputStream characters(Archive archive, Part part) throws IOException {
    byte[] bytes = archive.bytes(part, LIMIT);
    boolean wide =
        bytes.length >= 2
            && ((bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)
                || (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF));
    if (!wide) {
      return new ByteArrayInputStream(bytes);
    }
    try {
      String text = StandardCharsets.UTF_16.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      String body = text.replaceFirst("^\\s*<\\?xml[^>]*\\?>", "");
      return new ByteArrayInputStream(body.getBytes(StandardCharsets.UTF_8));
    } catch (CharacterCodingException e) {
      throw UnusableFileException.damaged(e, "how.characters", part.name());
    }
  }
}
