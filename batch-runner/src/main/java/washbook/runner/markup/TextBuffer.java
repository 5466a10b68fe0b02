package washbook.runner.markup;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import washbook.runner.file.UnusableFileException;

/** Collects the characters of XML texts as UTF-8, with entities and line ends resolved. */
public final class TextBuffer {
  private byte[] bytes = new byte[64];
  private int length;

  public void clear() {
    length = 0;
  }

  public int length() {
    return length;
  }

  public byte[] bytes() {
    return bytes;
  }

  /** Adds characters as they are, but CR LF and CR become LF (XML 1.0, section 2.11). */
  public void appendPlain(byte[] from, int start, int end) {
    room(end - start);
    for (int i = start; i < end; i++) {
      byte b = from[i];
      if (b == '\r') {
        b = '\n';
        if (i + 1 < end && from[i + 1] == '\n') {
          i++;
        }
      }
      bytes[length++] = b;
    }
  }

  /** Adds characters in which entities stand. */
  public void append(byte[] from, int start, int end) throws UnusableFileException {
    int plain = start;
    for (int i = start; i < end; i++) {
      if (from[i] == '&') {
        appendPlain(from, plain, i);
        int semicolon = i + 1;
        while (semicolon < end && from[semicolon] != ';') {
          semicolon++;
        }
        if (semicolon >= end || semicolon - i > 12) {
          throw UnusableFileException.damaged(null, "how.entity");
        }
        appendEntity(new String(from, i + 1, semicolon - i - 1, StandardCharsets.US_ASCII));
        i = semicolon;
        plain = semicolon + 1;
      }
    }
    appendPlain(from, plain, end);
  }

  private void appendEntity(String name) throws UnusableFileException {
    switch (name) {
      case "amp" -> appendCharacter('&');
      case "lt" -> appendCharacter('<');
      case "gt" -> appendCharacter('>');
      case "quot" -> appendCharacter('"');
      case "apos" -> appendCharacter('\'');
      default -> appendCharacter(numbered(name));
    }
  }

  private static int numbered(String name) throws UnusableFileException {
    try {
      if (name.startsWith("#")) {
        int code =
            name.startsWith("#x")
                ? Integer.parseInt(name.substring(2), 16)
                : Integer.parseInt(name.substring(1));
        if (Character.isValidCodePoint(code)) {
          return code;
        }
      }
    } catch (NumberFormatException e) {
      // refused below
    }
    throw UnusableFileException.damaged(null, "how.entityUnknown", name);
  }

  private void appendCharacter(int code) {
    byte[] encoded = Character.toString(code).getBytes(StandardCharsets.UTF_8);
    room(encoded.length);
    System.arraycopy(encoded, 0, bytes, length, encoded.length);
    length += encoded.length;
  }

  private void room(int more) {
    if (length + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(length + more, 2 * bytes.length));
    }
  }

  /**
   * Resolves the escapes {@code _xHHHH_} by which spreadsheet files keep characters that XML cannot
   * hold (ECMA-376-1:2016, 22.9.2.19 ST_Xstring).
   */
  public void unescape() {
    int at = 0;
    int to = 0;
    while (at < length) {
      int code = bytes[at] == '_' && at + 7 <= length ? escaped(at) : -1;
      if (code >= 0 && !Character.isSurrogate((char) code)) {
        byte[] encoded = Character.toString(code).getBytes(StandardCharsets.UTF_8);
        System.arraycopy(encoded, 0, bytes, to, encoded.length);
        to += encoded.length;
        at += 7;
      } else {
        bytes[to++] = bytes[at++];
      }
    }
    length = to;
  }

  private int escaped(int at) {
    if (bytes[at + 1] != 'x' || bytes[at + 6] != '_') {
      return -1;
    }
    int code = 0;
    for (int i = at + 2; i < at + 6; i++) {
      int digit = Character.digit(bytes[i], 16);
      if (digit < 0) {
        return -1;
      }
      code = 16 * code + digit;
    }
    return code;
  }

  /** The characters with white space at both ends left out, read as a number; NaN if it is none. */
  public double number() {
    return Decimal.parse(bytes, 0, length);
  }

  /** Whether the bytes are this ASCII word. */
  public boolean is(byte[] word) {
    return Arrays.equals(bytes, 0, length, word, 0, word.length);
  }

  @Override
  public String toString() {
    return new String(bytes, 0, length, StandardCharsets.UTF_8);
  }
}
