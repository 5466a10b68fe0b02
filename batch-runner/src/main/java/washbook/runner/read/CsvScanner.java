package washbook.runner.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import washbook.runner.file.UnusableFileException;

/**
 * Splits a text table into records and fields and keeps every byte of them. A record ends at CR, LF
 * or CR LF outside quotes; a field is quoted when a quotation mark is its first character.
 */
public final class CsvScanner {
  /** No record of a sheet comes near this; a longer one is a damaged or foreign file. */
  private static final int LONGEST_RECORD = 1 << 24;

  private static final int END = -1;

  private final InputStream in;
  private final Charset charset;
  private final int width;
  private final boolean littleEndian;
  private final int separator;
  private final byte[] input = new byte[1 << 16];
  private int inputAt;
  private int inputEnd;
  private byte[] record = new byte[1024];
  private int recordEnd;
  private int[] fieldEnds = new int[32];
  private int fields;
  private long recordsRead;

  /**
   * @param in stands at the first record
   */
  public CsvScanner(InputStream in, Charset charset, char separator) {
    this.in = in;
    this.charset = charset;
    this.littleEndian = charset.equals(StandardCharsets.UTF_16LE);
    this.width = littleEndian || charset.equals(StandardCharsets.UTF_16BE) ? 2 : 1;
    this.separator = separator;
  }

  /** Goes to the next record; false at the end of the file. */
  public boolean next() throws IOException {
    recordEnd = 0;
    fields = 0;
    int fieldStart = 0;
    boolean inQuotes = false;
    while (true) {
      int unit = take();
      if (unit == END) {
        if (inQuotes) {
          throw UnusableFileException.of("csv.quote", recordsRead + 1);
        }
        if (recordEnd == 0) {
          return false;
        }
        endField(recordEnd);
        break;
      }
      if (inQuotes) {
        if (unit == '"') {
          if (peek() == '"') {
            take();
          } else {
            inQuotes = false;
          }
        }
      } else if (unit == separator) {
        endField(recordEnd - width);
        fieldStart = recordEnd;
      } else if (unit == '\n' || unit == '\r') {
        endField(recordEnd - width);
        if (unit == '\r' && peek() == '\n') {
          take();
        }
        break;
      } else if (unit == '"' && recordEnd - width == fieldStart) {
        inQuotes = true;
      }
    }
    recordsRead++;
    return true;
  }

  /** Fields of the record; an empty line has one, empty, field. */
  public int fieldCount() {
    return fields;
  }

  /** Whether the record is an empty line. */
  public boolean isEmptyLine() {
    return fields == 1 && fieldEnds[0] == 0;
  }

  /** The bytes of the record with its line end; valid up to {@link #recordEnd} until the next. */
  public byte[] record() {
    return record;
  }

  public int recordEnd() {
    return recordEnd;
  }

  public int fieldStart(int field) {
    return field == 0 ? 0 : fieldEnds[field - 1] + width;
  }

  public int fieldEnd(int field) {
    return fieldEnds[field];
  }

  /** The record's line end; "" at the end of a file without a last line end. */
  public String lineEnd() {
    int start = fieldEnds[fields - 1];
    return new String(record, start, recordEnd - start, charset);
  }

  public boolean isQuoted(int field) {
    String raw = raw(field);
    return !raw.isEmpty() && raw.charAt(0) == '"';
  }

  /** The content of a field without its quotation marks. */
  public String text(int field) {
    String raw = raw(field);
    if (raw.isEmpty() || raw.charAt(0) != '"') {
      return raw;
    }
    StringBuilder text = new StringBuilder(raw.length());
    int at = 1;
    while (at < raw.length()) {
      char c = raw.charAt(at++);
      if (c != '"') {
        text.append(c);
      } else if (at < raw.length() && raw.charAt(at) == '"') {
        text.append('"');
        at++;
      } else {
        return text.append(raw, at, raw.length()).toString();
      }
    }
    return text.toString();
  }

  private String raw(int field) {
    int start = fieldStart(field);
    ByteBuffer bytes = ByteBuffer.wrap(record, start, fieldEnds[field] - start);
    return charset.decode(bytes).toString();
  }

  private void endField(int end) {
    if (fields == fieldEnds.length) {
      fieldEnds = Arrays.copyOf(fieldEnds, 2 * fields);
    }
    fieldEnds[fields++] = end;
  }

  private int peek() throws IOException {
    if (inputEnd - inputAt < width && !fill()) {
      return END;
    }
    return width == 1
        ? input[inputAt] & 0xff
        : littleEndian
            ? input[inputAt] & 0xff | (input[inputAt + 1] & 0xff) << 8
            : (input[inputAt] & 0xff) << 8 | input[inputAt + 1] & 0xff;
  }

  private int take() throws IOException {
    int unit = peek();
    if (unit == END) {
      return END;
    }
    if (recordEnd + width > record.length) {
      if (record.length >= LONGEST_RECORD) {
        throw UnusableFileException.of("csv.long", recordsRead + 1);
      }
      record = Arrays.copyOf(record, 2 * record.length);
    }
    for (int i = 0; i < width; i++) {
      record[recordEnd++] = input[inputAt++];
    }
    return unit;
  }

  private boolean fill() throws IOException {
    int rest = inputEnd - inputAt;
    System.arraycopy(input, inputAt, input, 0, rest);
    inputAt = 0;
    inputEnd = rest + in.readNBytes(input, rest, input.length - rest);
    if (inputEnd == 1 && width == 2) {
      throw UnusableFileException.of("csv.cut");
    }
    return inputEnd > 0;
  }
}
