package washbook.log.language;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The languages that logs are understood and written in. */
public enum Language {
  EN,
  DE,
  FR,
  ES,
  IT,
  PT,
  NL,
  AF;

  private static final List<Language> ALL = List.of(values());

  private final String code = name().toLowerCase(Locale.ROOT);

  /** The code of ISO 639, as in file names and environment variables. */
  public String code() {
    return code;
  }

  /** All codes, for people. */
  public static String codes() {
    return String.join(", ", ALL.stream().map(Language::code).toList());
  }

  /** The language of a code with or without a country: {@code de}, {@code de_AT.UTF-8}. */
  public static Optional<Language> of(String code) {
    String whole = code.strip().toLowerCase(Locale.ROOT);
    int end = 0;
    while (end < whole.length() && "_.@-".indexOf(whole.charAt(end)) < 0) {
      end++;
    }
    String start = whole.substring(0, end);
    for (Language language : ALL) {
      if (language.code.equals(start)) {
        return Optional.of(language);
      }
    }
    return Optional.empty();
  }

  /**
   * The language in which a user wants to be spoken to, by the first of LC_ALL, LC_MESSAGES and
   * LANG that says something; English where that is none of ours.
   */
  public static Language ofUser(Map<String, String> environment) {
    for (String name : List.of("LC_ALL", "LC_MESSAGES", "LANG")) {
      String value = environment.getOrDefault(name, "");
      if (!value.isBlank()) {
        return of(value).orElse(EN);
      }
    }
    return EN;
  }

  /** A day as it is written in numbers. */
  public String shown(LocalDate day) {
    String pattern =
        switch (this) {
          case EN, AF -> "uuuu-MM-dd";
          case DE -> "dd.MM.uuuu";
          case NL -> "dd-MM-uuuu";
          case FR, ES, IT, PT -> "dd/MM/uuuu";
        };
    return day.format(DateTimeFormatter.ofPattern(pattern, Locale.ROOT));
  }
}
