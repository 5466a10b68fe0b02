package washbook.log.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Languages by their codes, days and numbers as they are written in each, equal messages. */
class SaidInLanguagesTest {
  @ParameterizedTest
  @CsvSource({
    "de, DE",
    "DE, DE",
    "' fr ', FR",
    "de_AT.UTF-8, DE",
    "pt-BR, PT",
    "it@euro, IT",
    "nl.UTF-8, NL",
    "af, AF",
    "dec, ''",
    "sv, ''",
    "'', ''",
  })
  void aLanguageHasItsCodeWithOrWithoutACountry(String code, String language) {
    assertEquals(language, Language.of(code).map(Enum::name).orElse(""));
  }

  @Test
  void allCodesAreNamed() {
    assertEquals("en, de, fr, es, it, pt, nl, af", Language.codes());
    assertEquals("en", Language.EN.code());
  }

  @Test
  void aBlankVariableSaysNothing() {
    assertEquals(Language.IT, Language.ofUser(Map.of("LC_ALL", " ", "LANG", "it")));
  }

  @ParameterizedTest
  @CsvSource({
    "EN, 2025-11-04",
    "AF, 2025-11-04",
    "DE, 04.11.2025",
    "NL, 04-11-2025",
    "FR, 04/11/2025",
    "ES, 04/11/2025",
    "IT, 04/11/2025",
    "PT, 04/11/2025",
  })
  void aDayIsWrittenAsInTheLanguage(Language language, String day) {
    assertEquals(day, language.shown(LocalDate.of(2025, 11, 4)));
  }

  @ParameterizedTest
  @CsvSource({"EN, 1.085", "DE, '1,085'", "FR, '1,085'", "PT, '1,085'"})
  void aNumberTakesTheMarkOfTheLanguage(Language language, String shown) {
    assertEquals(shown, new Figure("1.085").in(language));
    assertEquals(shown, Message.of("plain", new Figure("1.085")).in(language));
  }

  @Test
  void messagesAreEqualWhereTextAndArgumentsAre() {
    Message one = Message.of("plain", "x");
    assertEquals(one, new Message("plain", List.of("x")));
    assertEquals(one.hashCode(), new Message("plain", List.of("x")).hashCode());
    assertNotEquals(one, Message.of("plain", "y"));
    assertNotEquals(one, Message.of("quoted", "x"));
    assertNotEquals(one, new Messages(Messages.class).message("plain", "x"));
    assertFalse(one.equals(null));
    assertNotEquals(one.hashCode(), Message.of("plain", "y").hashCode());
    assertNotEquals(one.hashCode(), Message.of("quoted", "x").hashCode());
    assertTrue(Message.NONE.isBlank());
    assertTrue(Message.of("blank").isBlank());
    assertFalse(one.isBlank());
  }

  @Test
  void aMessageMayStandInAnother() {
    assertEquals("'plum'", Message.of("plain", Message.of("quoted", "plum")).in(Language.EN));
    assertEquals("7", Message.of("plain", 7).in(Language.DE));
  }

  @Test
  void whatIsToldOfAMistakeIsToldInEveryLanguage() {
    ToldException told = new ToldException(Message.of("plain", new Figure("1.5")));
    assertEquals("1.5", told.getMessage());
    assertEquals("1,5", told.told().in(Language.DE));
    assertEquals(Optional.empty(), Optional.ofNullable(told.getCause()));
  }
}
