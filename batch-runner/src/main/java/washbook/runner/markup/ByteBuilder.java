package washbook.runner.markup;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import washbook.functions.XmlText;

/** Puts markup together as UTF-8 bytes. */
public final class ByteBuilder {
  private byte[] bytes = new byte[256];
  private int length;

  public void clear() {
    length = 0;
  }

  public byte[] bytes() {
    return bytes;
  }

  public int length() {
    return length;
  }

  /** Adds ASCII characters as they are: what this way of copying does with others is no matter. */
  @SuppressWarnings("deprecation")
  public ByteBuilder raw(String ascii) {
    int count = ascii.length();
    room(count);
    ascii.getBytes(0, count, bytes, length);
    length += count;
    return this;
  }

  /** Adds bytes as they are. */
  public ByteBuilder raw(byte[] from, int start, int end) {
    room(end - start);
    System.arraycopy(from, start, bytes, length, end - start);
    length += end - start;
    return this;
  }

  /** Adds a whole number that is not negative. */
  public ByteBuilder number(int number) {
    return raw(Integer.toString(number));
  }

  /** Adds characters with those that XML needs for itself, or cannot hold, replaced. */
  public ByteBuilder text(String text) {
    byte[] encoded = XmlText.escaped(text).getBytes(StandardCharsets.UTF_8);
    return raw(encoded, 0, encoded.length);
  }

  private void room(int more) {
    if (length + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(length + more, 2 * bytes.length));
    }
  }
}
