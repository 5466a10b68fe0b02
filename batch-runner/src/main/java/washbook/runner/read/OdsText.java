package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import washbook.runner.markup.TextBuffer;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;

/**
 * The characters of a cell's paragraphs. OpenDocument 1.3 part 3, 6.1.2 would have runs of white
 * space count as one space; but spreadsheet programs write them plainly in cells and show all of
 * them, so they count here too, beside the elements that stand for spaces.
 */
final class OdsText {
  private static final byte[] S = ascii("s");
  private static final byte[] TAB = ascii("tab");
  private static final byte[] LINE_BREAK = ascii("line-break");
  private static final byte[] COUNT = ascii("text:c");
  private static final byte[] RUBY_TEXT = ascii("ruby-text");
  private static final byte[] CHARACTERS = ascii(" \t\n");

  /** More spaces in a row than a cell can hold characters are not taken from the file's word. */
  private static final int MOST_SPACES = 32_767;

  private final TextBuffer characters = new TextBuffer();
  private int paragraphs;

  void clear() {
    characters.clear();
    paragraphs = 0;
  }

  boolean isEmpty() {
    return characters.length() == 0;
  }

  /** Reads the paragraph whose tag is the current token; paragraphs are divided by line feeds. */
  void readParagraph(XmlScanner scanner, Token first) throws IOException {
    if (paragraphs++ > 0) {
      characters.appendPlain(CHARACTERS, 2, 3);
    }
    if (first == Token.EMPTY) {
      return;
    }
    int outside = scanner.depth() - 1;
    while (true) {
      Token token = scanner.next();
      switch (token) {
        case TEXT -> characters.append(scanner.bytes(), scanner.tokenStart(), scanner.tokenEnd());
        case CDATA ->
            characters.appendPlain(
                scanner.bytes(), scanner.tokenStart() + 9, scanner.tokenEnd() - 3);
        case START, EMPTY -> element(scanner, token);
        case END -> {
          if (scanner.depth() == outside) {
            return;
          }
        }
        case DONE -> throw scanner.damaged("how.paragraphOpen");
      }
    }
  }

  private void element(XmlScanner scanner, Token token) throws IOException {
    boolean inText = scanner.prefix().equals("text:");
    if (inText && scanner.is(S)) {
      int count = scanner.attribute(COUNT) ? OdsCell.count(scanner) : 1;
      for (int i = 0; i < Math.min(count, MOST_SPACES); i++) {
        characters.appendPlain(CHARACTERS, 0, 1);
      }
    } else if (inText && scanner.is(TAB)) {
      characters.appendPlain(CHARACTERS, 1, 2);
    } else if (inText && scanner.is(LINE_BREAK)) {
      characters.appendPlain(CHARACTERS, 2, 3);
    } else if (!inText || scanner.is(RUBY_TEXT)) {
      // Comments, pictures and the like are no part of the text.
      OdsCell.skip(scanner, token);
    }
  }

  @Override
  public String toString() {
    return characters.toString();
  }
}
