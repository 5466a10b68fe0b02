package washbook.runner.read;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import washbook.runner.file.ReadFile;
import washbook.runner.file.UnusableFileException;

/**
 * Finds out how a text table is written.
 *
 * <ul>
 *   <li>Encoding: a byte order mark decides; without one the file is UTF-8 when all of it is valid
 *       UTF-8, else Windows-1252 (which holds all printable Latin-1).
 *   <li>Separator: a first line "sep=;" decides (spreadsheets hide that line, so it is no row);
 *       else comma, semicolon or tab, whichever divides the most records alike into fields that
 *       look like numbers and dates.
 *   <li>Decimal mark: what most numbers have. Numbers such as 1,085, which might be grouped
 *       thousands, count only where no other tells; where nothing tells, a semicolon means comma.
 * </ul>
 */
public final class CsvDetector {
  private static final char[] SEPARATORS = {',', ';', '\t'};
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  /** Bytes looked at to settle the separator. */
  private static final int HEAD = 1 << 18;

  private CsvDetector() {}

  /**
   * @throws UnusableFileException when the file is no text table
   */
  public static CsvDialect detect(Path file) throws IOException {
    byte[] head;
    try (InputStream in = ReadFile.stream(file)) {
      head = in.readNBytes(HEAD);
    }
    int bom = 0;
    Charset charset;
    if (startsWith(head, 0xff, 0xfe, 0, 0) || startsWith(head, 0, 0, 0xfe, 0xff)) {
      throw UnusableFileException.of("csv.utf32");
    } else if (startsWith(head, 0xff, 0xfe)) {
      bom = 2;
      charset = StandardCharsets.UTF_16LE;
    } else if (startsWith(head, 0xfe, 0xff)) {
      bom = 2;
      charset = StandardCharsets.UTF_16BE;
    } else {
      bom = startsWith(head, 0xef, 0xbb, 0xbf) ? 3 : 0;
      charset = isUtf8(file) ? StandardCharsets.UTF_8 : WINDOWS_1252;
    }
    if (bom == 3 && charset != StandardCharsets.UTF_8) {
      throw UnusableFileException.of("csv.utf8");
    }
    boolean whole = head.length < HEAD;
    int start = bom;
    char stated = statedSeparator(head, bom, charset);
    if (stated != 0) {
      CsvScanner line = new CsvScanner(from(head, bom), charset, '\0');
      line.next();
      start += line.recordEnd();
    }
    CsvSample best = null;
    UnusableFileException fault = null;
    for (char separator : stated != 0 ? new char[] {stated} : SEPARATORS) {
      try {
        CsvSample sample = CsvSample.take(from(head, start), charset, separator, whole);
        if (best == null || score(sample, file) > score(best, file)) {
          best = sample;
        }
      } catch (UnusableFileException e) {
        fault = e;
      }
    }
    if (best == null) {
      throw fault;
    }
    return best.dialect(start);
  }

  private static char statedSeparator(byte[] head, int bom, Charset charset) {
    int length = Math.min(head.length - bom, 16);
    String first = new String(head, bom, length, charset).toLowerCase(Locale.ROOT);
    boolean alone =
        first.length() == 5 || first.length() > 5 && "\r\n".indexOf(first.charAt(5)) >= 0;
    return first.startsWith("sep=") && alone ? first.charAt(4) : 0;
  }

  /** A file that calls itself tab-separated is taken at its word unless another fits better. */
  private static double score(CsvSample sample, Path file) {
    boolean tsv = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".tsv");
    return sample.score() + (tsv && sample.separator() == '\t' ? 0.25 : 0);
  }

  private static ByteArrayInputStream from(byte[] head, int start) {
    return new ByteArrayInputStream(head, start, head.length - start);
  }

  private static boolean startsWith(byte[] head, int... bytes) {
    for (int i = 0; i < bytes.length; i++) {
      if (i >= head.length || (head[i] & 0xff) != bytes[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean isUtf8(Path file) throws IOException {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer bytes = ByteBuffer.allocate(1 << 16);
    CharBuffer chars = CharBuffer.allocate(1 << 16);
    boolean valid = true;
    try (InputStream in = ReadFile.stream(file)) {
      while (true) {
        int got =
            in.readNBytes(bytes.array(), bytes.position(), bytes.capacity() - bytes.position());
        for (int i = bytes.position(); i < bytes.position() + got; i++) {
          if (bytes.get(i) == 0) {
            throw UnusableFileException.of("csv.zero");
          }
        }
        bytes.position(bytes.position() + got);
        boolean end = bytes.position() < bytes.capacity();
        bytes.flip();
        chars.clear();
        valid = valid && !decoder.decode(bytes, chars, end).isError();
        if (end) {
          return valid;
        }
        if (!valid) {
          bytes.clear();
        } else {
          bytes.compact();
        }
      }
    }
  }
}
