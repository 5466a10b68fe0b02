package washbook.runner.markup;

import java.util.Arrays;
import washbook.runner.file.UnusableFileException;

/** Attribute values that are mostly those of the element before: one object for all of them. */
public final class RepeatedWord {
  private byte[] bytes = new byte[0];
  private String word = "";

  /** The current attribute's value. */
  public String of(XmlScanner scanner) throws UnusableFileException {
    int start = scanner.valueStart();
    int end = scanner.valueEnd();
    if (!Arrays.equals(scanner.bytes(), start, end, bytes, 0, bytes.length)) {
      word = scanner.value();
      bytes = Arrays.copyOfRange(scanner.bytes(), start, end);
    }
    return word;
  }
}
