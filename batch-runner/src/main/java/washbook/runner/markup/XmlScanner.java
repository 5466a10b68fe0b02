package washbook.runner.markup;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import washbook.runner.file.UnusableFileException;

/**
 * Finds the tags and texts of an XML part in its bytes, without making objects. It reads UTF-8
 * only, refuses document types (so there are no entities but the five of XML), passes over comments
 * and processing instructions, and insists that every element is closed.
 *
 * <p>A token's bytes are {@code bytes()[tokenStart() .. tokenEnd())} until the next call of {@link
 * #next}.
 */
public class XmlScanner extends XmlBytes {
  /** What {@link #next} found. */
  public enum Token {
    /** A start tag. */
    START,
    /** A tag that starts and ends an element. */
    EMPTY,
    END,
    /** Characters with entities in them. */
    TEXT,
    /** Characters as they are. */
    CDATA,
    DONE
  }

  private static final byte[] COMMENT_END = ascii("-->");
  private static final byte[] CDATA_START = ascii("<![CDATA[");
  private static final byte[] CDATA_END = ascii("]]>");
  private static final byte[] INSTRUCTION_END = ascii("?>");

  /** One bit for each character that ends a tag or begins a value; all come before the letters. */
  private static final long TAG_MARKS = 1L << '>' | 1L << '<' | 1L << '"' | 1L << '\'';

  private int nameStart;
  private int nameEnd;
  private int fullNameStart;
  private int attributePosition;
  private int attributeNameStart;
  private int attributeNameEnd;
  private int valueStart;
  private int valueEnd;
  private int depth;
  private boolean rootSeen;

  /**
   * @param partName for messages
   * @param expectedSize of the part in bytes; a wrong one costs time only
   */
  public XmlScanner(InputStream in, String partName, long expectedSize) throws IOException {
    super(in, partName, expectedSize);
  }

  /** Moves to the next token. */
  public final Token next() throws IOException {
    while (true) {
      tokenStart = position;
      if (position == limit && !more()) {
        if (depth != 0 || !rootSeen) {
          throw damaged("how.early");
        }
        tokenEnd = position;
        return Token.DONE;
      }
      if (buffer[position] != '<') {
        return text();
      }
      if (position + 1 == limit && !more()) {
        throw damaged("how.early");
      }
      switch (buffer[position + 1]) {
        case '/':
          return endTag();
        case '?':
          find(INSTRUCTION_END, 2);
          break;
        case '!':
          if (bang()) {
            return Token.CDATA;
          }
          break;
        default:
          return startTag();
      }
    }
  }

  private Token text() throws IOException {
    int i = position + 1;
    while (true) {
      byte[] bytes = buffer;
      int end = limit;
      while (i < end && bytes[i] != '<') {
        i++;
      }
      if (i < end) {
        break;
      }
      int length = i - tokenStart;
      boolean atEnd = !more();
      i = tokenStart + length;
      if (atEnd) {
        break;
      }
    }
    tokenEnd = i;
    position = i;
    return Token.TEXT;
  }

  private Token endTag() throws IOException {
    int i = position + 2;
    while (true) {
      while (i < limit && buffer[i] != '>') {
        i++;
      }
      if (i < limit) {
        break;
      }
      int length = i - tokenStart;
      needMore();
      i = tokenStart + length;
    }
    nameOf(tokenStart + 2, i);
    tokenEnd = i + 1;
    position = tokenEnd;
    if (--depth < 0) {
      throw damaged("how.elementClosed");
    }
    return Token.END;
  }

  private Token startTag() throws IOException {
    int i = position + 1;
    while (true) {
      i = tagMark(i);
      byte mark = buffer[i];
      if (mark == '>') {
        break;
      }
      if (mark == '<') {
        throw damaged("how.tagOpen");
      }
      i = quoteEnd(i + 1, mark) + 1;
    }
    tokenEnd = i + 1;
    position = tokenEnd;
    boolean empty = buffer[i - 1] == '/';
    nameOf(tokenStart + 1, empty ? i - 1 : i);
    if (!empty) {
      depth++;
    }
    rootSeen = true;
    return empty ? Token.EMPTY : Token.START;
  }

  /** Where the next byte stands that ends a tag or begins a value. */
  private int tagMark(int from) throws IOException {
    int i = from;
    while (true) {
      byte[] bytes = buffer;
      int end = limit;
      for (; i < end; i++) {
        byte b = bytes[i];
        if (b <= '>' && b >= '"' && (TAG_MARKS >>> b & 1) != 0) {
          return i;
        }
      }
      i = reachOn(i);
    }
  }

  private int quoteEnd(int from, byte quote) throws IOException {
    int i = from;
    while (true) {
      byte[] bytes = buffer;
      int end = limit;
      while (i < end && bytes[i] != quote) {
        i++;
      }
      if (i < end) {
        return i;
      }
      i = reachOn(i);
    }
  }

  /** Reads more bytes and gives the new place of the byte that stood, or would stand, here. */
  private int reachOn(int place) throws IOException {
    int length = place - tokenStart;
    needMore();
    return tokenStart + length;
  }

  private void nameOf(int from, int end) throws UnusableFileException {
    fullNameStart = from;
    nameStart = from;
    int i = from;
    while (i < end && !isSpace(buffer[i])) {
      if (buffer[i] == ':') {
        nameStart = i + 1;
      }
      i++;
    }
    nameEnd = i;
    attributePosition = i;
    if (nameStart == nameEnd) {
      throw damaged("how.tagName");
    }
  }

  /** Handles what starts with "<!"; true when it is a stretch of plain characters. */
  private boolean bang() throws IOException {
    while (limit - position < CDATA_START.length && more()) {
      // until the kind can be told
    }
    if (startsWith(CDATA_START)) {
      find(CDATA_END, CDATA_START.length);
      return true;
    }
    if (limit - position >= 4 && buffer[position + 2] == '-' && buffer[position + 3] == '-') {
      find(COMMENT_END, 4);
      return false;
    }
    throw damaged("how.docType");
  }

  /** Whether the local name of the present tag is this. */
  public final boolean is(byte[] localName) {
    return nameEnd - nameStart == localName.length
        && Arrays.equals(buffer, nameStart, nameEnd, localName, 0, localName.length);
  }

  /** Whether the local name of the present tag is this one letter. */
  public final boolean is(char letter) {
    return nameEnd - nameStart == 1 && buffer[nameStart] == letter;
  }

  /** The local name of the present tag. */
  public final String localName() {
    return new String(buffer, nameStart, nameEnd - nameStart, StandardCharsets.UTF_8);
  }

  /** The prefix of the present tag with its colon, or "". */
  public final String prefix() {
    return new String(buffer, fullNameStart, nameStart - fullNameStart, StandardCharsets.UTF_8);
  }

  /** Whether the prefix of the present tag, with its colon, is this. */
  public final boolean hasPrefix(byte[] prefix) {
    return Arrays.equals(buffer, fullNameStart, nameStart, prefix, 0, prefix.length);
  }

  /** Moves to the next attribute of the present start tag; false when there is none. */
  public final boolean nextAttribute() throws UnusableFileException {
    int end = tokenEnd - 1;
    int i = attributePosition;
    while (i < end && isSpace(buffer[i])) {
      i++;
    }
    if (i >= end || buffer[i] == '/') {
      attributePosition = i;
      return false;
    }
    attributeNameStart = i;
    while (i < end && buffer[i] != '=' && !isSpace(buffer[i])) {
      i++;
    }
    attributeNameEnd = i;
    while (i < end && isSpace(buffer[i])) {
      i++;
    }
    if (i >= end || buffer[i] != '=') {
      throw damaged("how.attributeValue");
    }
    i++;
    while (i < end && isSpace(buffer[i])) {
      i++;
    }
    byte quote = i < end ? buffer[i] : 0;
    if (quote != '"' && quote != '\'') {
      throw damaged("how.attributeQuotes");
    }
    valueStart = ++i;
    while (i < end && buffer[i] != quote) {
      i++;
    }
    if (i >= end) {
      throw damaged("how.attributeOpen");
    }
    valueEnd = i;
    attributePosition = i + 1;
    return true;
  }

  /** Makes {@link #nextAttribute} begin with the first attribute again. */
  public final void rewindAttributes() {
    attributePosition = nameEnd;
  }

  /** Goes to the attribute of this name (with its prefix, if any), searching from the first. */
  public final boolean attribute(byte[] name) throws UnusableFileException {
    attributePosition = nameEnd;
    while (nextAttribute()) {
      if (Arrays.equals(buffer, attributeNameStart, attributeNameEnd, name, 0, name.length)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the present attribute has this name (with its prefix, if any). */
  public final boolean attributeIs(byte[] name) {
    return attributeNameEnd - attributeNameStart == name.length
        && Arrays.equals(buffer, attributeNameStart, attributeNameEnd, name, 0, name.length);
  }

  /** Whether the value of the present attribute is this, without entities. */
  public final boolean valueIs(byte[] value) {
    return Arrays.equals(buffer, valueStart, valueEnd, value, 0, value.length);
  }

  /** Whether the present attribute has this name, whatever its prefix; the name is ASCII. */
  public final boolean attributeHasLocalName(String name) {
    int start = attributeNameEnd - name.length();
    if (start < attributeNameStart || (start > attributeNameStart && buffer[start - 1] != ':')) {
      return false;
    }
    for (int i = 0; i < name.length(); i++) {
      if (buffer[start + i] != name.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** First byte of the present attribute's name. */
  public final int attributeStart() {
    return attributeNameStart;
  }

  /** The name of the present attribute when it is one letter, else 0. */
  public final char attributeLetter() {
    return attributeNameEnd - attributeNameStart == 1 ? (char) buffer[attributeNameStart] : 0;
  }

  /** First byte of the present attribute's value. */
  public final int valueStart() {
    return valueStart;
  }

  public final int valueEnd() {
    return valueEnd;
  }

  /** How many elements are open after the current token. */
  public final int depth() {
    return depth;
  }

  /** The present attribute's value. */
  public final String value() throws UnusableFileException {
    if (isPlain(valueStart, valueEnd)) {
      return new String(buffer, valueStart, valueEnd - valueStart, StandardCharsets.UTF_8);
    }
    TextBuffer text = new TextBuffer();
    text.append(buffer, valueStart, valueEnd);
    return text.toString();
  }

  private boolean isPlain(int start, int end) {
    for (int i = start; i < end; i++) {
      if (buffer[i] == '&' || buffer[i] == '\r') {
        return false;
      }
    }
    return true;
  }

  static boolean isSpace(byte b) {
    return b == ' ' || b == '\n' || b == '\t' || b == '\r';
  }

  /** The bytes of an ASCII word, for comparing names. */
  public static byte[] ascii(String word) {
    return word.getBytes(StandardCharsets.US_ASCII);
  }
}
