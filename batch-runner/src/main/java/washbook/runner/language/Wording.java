package washbook.runner.language;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import washbook.log.language.Figure;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.language.Messages;

/**
 * Speaks one language. A text that stands with a count has two forms in the files, {@code .one} and
 * {@code .many}, which is enough for all of our languages; every other text is written so that it
 * needs no plural.
 */
public final class Wording {
  private static final Messages TEXTS = new Messages(Wording.class, "usage/", "card/");

  private final Language language;

  public Wording(Language language) {
    this.language = language;
  }

  /** Speaks to the user: in the language of this code, where it is none in that of the locale. */
  public static Wording ofUser(String code) {
    return new Wording(Language.of(code).orElseGet(() -> Language.ofUser(System.getenv())));
  }

  public Language language() {
    return language;
  }

  /** One of the runner's texts, before it is known who reads it. */
  public static Message message(String key, Object... arguments) {
    return TEXTS.message(key, arguments);
  }

  /** One of the runner's texts with what its placeholders stand for. */
  public String say(String key, Object... arguments) {
    return TEXTS.message(key, arguments).in(language);
  }

  public String say(Message message) {
    return message.in(language);
  }

  /** A number with its noun: {@code 1 file}, {@code 3 files}. */
  public String count(String key, long number) {
    return say(key + (number == 1 ? ".one" : ".many"), number);
  }

  /** A number in a format of Java, with the language's decimal mark; "NaN" for none. */
  public String number(String format, double value) {
    return decimal(String.format(Locale.ROOT, format, value));
  }

  /** A number written with a point, with the language's decimal mark. */
  public String decimal(String plain) {
    return new Figure(plain).in(language);
  }

  /** A day written as 2025-11-30; "" stays "". */
  public String day(String iso) {
    return iso.isEmpty() ? "" : language.shown(LocalDate.parse(iso));
  }

  /** One of the runner's texts in all languages, to know again what was written in another one. */
  public static List<String> inAllLanguages(String key) {
    return Arrays.stream(Language.values()).map(one -> new Wording(one).say(key)).toList();
  }
}
