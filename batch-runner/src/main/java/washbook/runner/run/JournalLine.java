package washbook.runner.run;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32C;

/**
 * One line of a journal: a checksum of eight hexadecimal digits, a blank and the text, in UTF-8. A
 * loss of power, a full disk or an editor can leave anything there; only whole lines count.
 */
final class JournalLine {
  /** A line that is longer is not ours; one file's report comes nowhere near it. */
  private static final int LONGEST = 64 << 20;

  private static final int DIGITS = 8;

  private JournalLine() {}

  /** The line with its end. */
  static byte[] of(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream line = new ByteArrayOutputStream(bytes.length + DIGITS + 2);
    line.writeBytes(sum(bytes, 0).getBytes(StandardCharsets.US_ASCII));
    line.write(' ');
    line.writeBytes(bytes);
    line.write('\n');
    return line.toByteArray();
  }

  /** The text of a line; null when it is torn or not ours. */
  static String text(byte[] line) {
    int start = DIGITS + 1;
    if (line.length < start || line[DIGITS] != ' ') {
      return null;
    }
    String stated = new String(line, 0, DIGITS, StandardCharsets.ISO_8859_1);
    return stated.equals(sum(line, start))
        ? new String(line, start, line.length - start, StandardCharsets.UTF_8)
        : null;
  }

  /** The next line without its end; null when there is none. */
  static byte[] next(InputStream in) throws IOException {
    int read = in.read();
    if (read < 0) {
      return null;
    }
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (; read >= 0 && read != '\n'; read = in.read()) {
      if (line.size() < LONGEST) {
        line.write(read);
      }
    }
    return line.toByteArray();
  }

  /** Whether there is nothing in it: some file systems leave zeros after a loss of power. */
  static boolean isBlank(byte[] line) {
    for (byte b : line) {
      if (b != 0) {
        return false;
      }
    }
    return true;
  }

  /** Whether what is left of a line begins like this one, of which no check sum fits any more. */
  static boolean isTorn(byte[] line, String begins) {
    int start = DIGITS + 1;
    if (line.length <= start || line[DIGITS] != ' ' || text(line) != null) {
      return false;
    }
    byte[] wanted = begins.getBytes(StandardCharsets.UTF_8);
    int length = Math.min(wanted.length, line.length - start);
    return Arrays.equals(line, start, start + length, wanted, 0, length);
  }

  private static String sum(byte[] bytes, int from) {
    CRC32C sum = new CRC32C();
    sum.update(bytes, from, bytes.length - from);
    return String.format("%08x", sum.getValue());
  }
}
