package washbook.runner.markup;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import washbook.functions.XmlText;
import washbook.runner.archive.PartOutput;

/**
 * A scanner that passes on the bytes it reads, with some replaced. What is not replaced comes out
 * byte for byte; nothing comes out of {@link PartOutput#write} before the first real difference.
 */
public final class XmlSplicer extends XmlScanner {
  private final PartOutput out;
  private int passedOn;
  private int hold = -1;
  private boolean changed;

  public XmlSplicer(InputStream in, String partName, PartOutput out) throws IOException {
    super(in, partName, out.oldSize());
    this.out = out;
  }

  /** Passes nothing on: for a first look at what would be spliced. */
  public XmlSplicer(InputStream in, String partName, long size) throws IOException {
    super(in, partName, size);
    this.out = null;
  }

  /** Keeps all bytes from here on in reach until {@link #release}. */
  public void holdFrom(int position) {
    hold = position;
  }

  /** Where the held bytes begin now. */
  public int held() {
    return hold;
  }

  public void release() {
    hold = -1;
  }

  @Override
  protected int keepFrom(int start) {
    return hold >= 0 ? Math.min(hold, start) : start;
  }

  @Override
  protected void leaving(int end) throws IOException {
    passOn(end);
    passedOn -= end;
    if (hold >= 0) {
      hold -= end;
    }
  }

  private void passOn(int end) throws IOException {
    if (end > passedOn) {
      emit(bytes(), passedOn, end - passedOn);
      passedOn = end;
    }
  }

  private void emit(byte[] from, int start, int length) throws IOException {
    if (out == null) {
      return;
    }
    if (changed) {
      out.write(from, start, length);
    } else {
      out.same(length);
    }
  }

  /** Replaces the bytes from start to end, none of which may have left the buffer. */
  public void replace(int start, int end, byte[] by, int length) throws IOException {
    if (start < passedOn) {
      throw new IllegalStateException("these bytes have already been passed on");
    }
    passOn(start);
    passedOn = end;
    if (out == null) {
      return;
    }
    if (!changed && Arrays.equals(bytes(), start, end, by, 0, length)) {
      out.same(length);
    } else {
      changed = true;
      out.write(by, 0, length);
    }
  }

  public void replace(int start, int end, byte[] by) throws IOException {
    replace(start, end, by, by.length);
  }

  /** Replaces the value of an attribute, which may stand between single quotes. */
  public void replaceValue(int start, int end, String value) throws IOException {
    String markup = XmlText.escaped(value);
    boolean single = bytes()[start - 1] == '\'';
    String whole = single ? markup.replace("'", "&apos;") : markup;
    replace(start, end, whole.getBytes(StandardCharsets.UTF_8));
  }

  public void insert(int position, byte[] bytes, int length) throws IOException {
    if (length > 0) {
      replace(position, position, bytes, length);
    }
  }

  /** Leaves out the element whose tag is the current token, with all that is in it. */
  public void remove(Token tag) throws IOException {
    holdFrom(tokenStart());
    int outside = depth() - 1;
    while (tag == Token.START && depth() > outside) {
      if (next() == Token.DONE) {
        throw damaged("how.elementOpen");
      }
    }
    replace(hold, tokenEnd(), new byte[0]);
    release();
  }

  /** Scans to the end and passes on all that is left. */
  public void finish() throws IOException {
    while (next() != Token.DONE) {
      // the scanner proves that the rest is whole
    }
    passOn(tokenEnd());
  }
}
