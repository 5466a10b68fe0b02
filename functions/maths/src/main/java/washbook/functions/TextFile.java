package washbook.functions;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntFunction;

/** Texts for people in one language: lines {@code key = text} with placeholders {@code {0}}. */
public final class TextFile {
  private TextFile() {}

  /**
   * Lines {@code key = text}, as {@link java.util.Properties} reads them, only sooner: a log's
   * headers are looked for in all languages at every start. Of what that class knows beyond such
   * lines there is only the backslash before a first blank.
   *
   * @param owner the class that the file lies beside
   */
  public static Map<String, String> read(Class<?> owner, String name) {
    Map<String, String> texts = new HashMap<>();
    try (InputStream in = owner.getResourceAsStream(name)) {
      read(new String(in.readAllBytes(), StandardCharsets.UTF_8), texts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }

  private static void read(String lines, Map<String, String> texts) {
    int start = 0;
    while (start < lines.length()) {
      int end = lines.indexOf('\n', start);
      end = end < 0 ? lines.length() : end;
      int equals = lines.indexOf('=', start);
      if (equals > start && equals < end && lines.charAt(start) != '#') {
        String text = lines.substring(equals + 1, end).strip();
        texts.put(
            lines.substring(start, equals).strip(),
            text.startsWith("\\ ") ? text.substring(1) : text);
      }
      start = end + 1;
    }
  }

  /** The text with each placeholder replaced by what stands for its number. */
  public static String filled(String text, IntFunction<String> value) {
    StringBuilder sentence = new StringBuilder();
    int at = 0;
    for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', at)) {
      int close = text.indexOf('}', open);
      sentence.append(text, at, open);
      sentence.append(value.apply(Integer.parseInt(text, open + 1, close, 10)));
      at = close + 1;
    }
    return sentence.append(text, at, text.length()).toString();
  }
}
