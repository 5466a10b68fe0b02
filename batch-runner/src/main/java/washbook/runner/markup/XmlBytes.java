package washbook.runner.markup;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;
import washbook.runner.file.UnusableFileException;

/** The bytes of an XML part as they come in, of which the current token is kept whole. */
abstract class XmlBytes {
  private static final int LONGEST_TOKEN = 16 << 20;

  private static final Pattern DECLARED = Pattern.compile("encoding\\s*=\\s*|[\"']");
  private static final int SMALLEST = 1 << 9;
  private static final int LARGEST_FIRST = 1 << 16;

  private final InputStream in;
  private final String partName;
  byte[] buffer;
  int limit;
  int position;
  int tokenStart;
  int tokenEnd;

  XmlBytes(InputStream in, String partName, long expectedSize) throws IOException {
    this.in = in;
    this.partName = partName;
    // One more than the whole, so that its end is found without making room.
    this.buffer = new byte[(int) Math.max(SMALLEST, Math.min(expectedSize + 1, LARGEST_FIRST))];
    while (limit < 256 && fill()) {
      // until the declaration can be read
    }
    checkEncoding();
  }

  private void checkEncoding() throws UnusableFileException {
    String start = new String(buffer, 0, Math.min(limit, 256), StandardCharsets.ISO_8859_1);
    if (start.startsWith("\u00EF\u00BB\u00BF")) {
      position = 3;
    }
    if (start.startsWith("\u00FE\u00FF")
        || start.startsWith("\u00FF\u00FE")
        || start.startsWith("\0<")
        || start.startsWith("<\0")) {
      throw UnusableFileException.of("part.encoding", partName, "UTF-16");
    }
    int declared = start.startsWith("<?xml", position) ? start.indexOf("?>") : -1;
    int at = declared < 0 ? -1 : start.substring(0, declared).indexOf("encoding");
    if (at >= 0 && !start.startsWith("encoding=\"UTF-8\"", at)) {
      String encoding = DECLARED.matcher(start.substring(at, declared)).replaceAll("");
      String name = encoding.strip().split("\\s", 2)[0];
      if (!name.equalsIgnoreCase("UTF-8") && !name.equalsIgnoreCase("US-ASCII")) {
        throw UnusableFileException.of("part.encoding", partName, name);
      }
    }
  }

  final boolean startsWith(byte[] expected) {
    return limit - position >= expected.length
        && Arrays.equals(
            buffer, position, position + expected.length, expected, 0, expected.length);
  }

  final void find(byte[] end, int after) throws IOException {
    int i = tokenStart + after;
    while (true) {
      while (i + end.length <= limit) {
        if (buffer[i] == end[0] && Arrays.equals(buffer, i, i + end.length, end, 0, end.length)) {
          tokenEnd = i + end.length;
          position = tokenEnd;
          return;
        }
        i++;
      }
      int length = i - tokenStart;
      needMore();
      i = tokenStart + length;
    }
  }

  final void needMore() throws IOException {
    if (!more()) {
      throw damaged("how.early");
    }
  }

  /** Reads on, keeping the bytes from {@link #keepFrom}; false at the end of the part. */
  final boolean more() throws IOException {
    int keep = keepFrom(tokenStart);
    if (keep > 0) {
      leaving(keep);
      System.arraycopy(buffer, keep, buffer, 0, limit - keep);
      limit -= keep;
      position -= keep;
      tokenStart -= keep;
    }
    if (limit == buffer.length) {
      if (limit >= LONGEST_TOKEN) {
        throw damaged("how.longToken");
      }
      buffer = Arrays.copyOf(buffer, 2 * limit);
    }
    return fill();
  }

  private boolean fill() throws IOException {
    int got = in.read(buffer, limit, buffer.length - limit);
    if (got <= 0) {
      return false;
    }
    limit += got;
    return true;
  }

  /** The first byte that must stay in the buffer; a subclass may want more than the token. */
  protected int keepFrom(int start) {
    return start;
  }

  /** The bytes before {@code end} are about to leave the buffer; later ones move to its start. */
  protected void leaving(int end) throws IOException {}

  public final byte[] bytes() {
    return buffer;
  }

  public final int tokenStart() {
    return tokenStart;
  }

  public final int tokenEnd() {
    return tokenEnd;
  }

  /**
   * That this part is damaged.
   *
   * @param how a key of {@link UnusableFileException}
   */
  public final UnusableFileException damaged(String how, Object... arguments) {
    return UnusableFileException.damaged(
        null, "how.in", partName, UnusableFileException.message(how, arguments));
  }
}
