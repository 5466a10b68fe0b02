package washbook.office.language;

import washbook.log.language.Message;
import washbook.log.language.Messages;

/** What the extension says; the texts stand beside this class, in a file for each language. */
public final class OfficeText {
  private static final Messages TEXTS = new Messages(OfficeText.class);

  private OfficeText() {}

  /** A text with what its placeholders stand for. */
  public static Message of(String key, Object... arguments) {
    return TEXTS.message(key, arguments);
  }
}
