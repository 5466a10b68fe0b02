package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.language.Language;

/** What words in headers mean; the words of one row mean the same in eight languages. */
class VocabularyTest {
  @ParameterizedTest
  @CsvSource({
    "GRAVITY, density, Dichte, densité, densidad, densità, densidade, dichtheid, digtheid",
    "EXTRACT, extract, Extrakt, extrait, extracto, estratto, extrato, extract, ekstrak",
    "READING, reading, Messwert, lecture, lectura, lettura, leitura, meting, lesing",
    "HYDROMETER, hydrometer, Spindel, densimètre, densímetro, densimetro, densímetro, hydrometer,"
        + " hidrometer",
    "REFRACTOMETER, refractometer, Refraktometer, réfractomètre, refractómetro, rifrattometro,"
        + " refratómetro, refractometer, refraktometer",
    "TEMPERATURE, temperature, Temperatur, température, temperatura, temperatura, temperatura,"
        + " temperatuur, temperatuur",
    "CALIBRATION, calibrated, geeicht, étalonné, calibrado, tarato, calibrado, geijkt, gekalibreer",
    "CORRECTED, corrected, korrigiert, corrigé, corregido, corretto, corrigido, gecorrigeerd,"
        + " gekorrigeer",
    "UNCORRECTED, uncorrected, unkorrigiert, brut, bruto, grezzo, bruto, ongecorrigeerd,"
        + " ongekorrigeer",
    "NEGATION, not, nicht, pas, no, non, não, niet, nie",
    "ALCOHOL, alcohol, Alkohol, alcool, alcohol, alcol, álcool, alcohol, alkohol",
    "SUGAR, sugar, Zucker, sucre, azúcar, zucchero, açúcar, suiker, suiker",
    "WATER, water, Wasser, eau, agua, acqua, água, water, water",
    "ADDED, added, zugegeben, ajouté, añadido, aggiunto, adicionado, toegevoegd, bygevoeg",
    "VOLUME, volume, Volumen, volume, volumen, volume, volume, volume, volume",
    "DATE, date, Datum, date, fecha, data, data, datum, datum",
    "TIME, time, Uhrzeit, heure, hora, ora, hora, tijd, tyd",
    "DAY, day, Tag, jour, día, giorno, dia, dag, dag",
    "HOURS, hours, Stunden, heures, horas, ore, horas, uren, ure",
    "BATCH, batch, Ansatz, lot, lote, lotto, lote, partij, lot",
    "TOTAL, average, Mittelwert, moyenne, promedio, media, média, gemiddelde, gemiddelde",
    "FACTOR, factor, Faktor, facteur, factor, fattore, fator, factor, faktor",
    "TARGET, target, Ziel, cible, objetivo, obiettivo, alvo, doel, teiken",
    "ORIGINALGRAVITY, original gravity, Stammwürze, densité initiale, densidad inicial, densità"
        + " iniziale, densidade inicial, begindichtheid, begindigtheid",
    "FINALGRAVITY, final gravity, Enddichte, densité finale, densidad final, densità finale,"
        + " densidade final, einddichtheid, einddigtheid",
    "SAMPLE, sample, Probe, échantillon, muestra, campione, amostra, monster, monster",
  })
  void aWordMeansTheSameInEightLanguages(
      Concept concept,
      String en,
      String de,
      String fr,
      String es,
      String it,
      String pt,
      String nl,
      String af) {
    for (String word : List.of(en, de, fr, es, it, pt, nl, af)) {
      assertTrue(Vocabulary.meanings(word).contains(concept), word);
      assertTrue(Vocabulary.meaningsOf(Vocabulary.tokens(word)).contains(concept), word);
      assertTrue(Vocabulary.meanings(word.toUpperCase(Locale.ROOT)).contains(concept));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "°C | C",
        "deg F | F",
        "°Bx | BRIX",
        "°P | PLATO",
        "° Oechsle | OECHSLE",
        "°Bé | BAUME",
        "kg/m³ | KGM3",
        "g/cm3 | GCM3",
        "g/L | GL",
        "us gal | GALUS",
        "gal (uk) | GALUK",
        "imp gal | GALUK",
        "gallons | GAL",
        "litres | VOLUME, L",
        "ml | ML",
        "kg | KG",
        "g | G",
        "lbs | LB",
        "% | PERCENT",
        "c | C",
        "f | F",
        "Temp (C) | TEMPERATURE, C",
        "Temp F | TEMPERATURE, F",
        "calibrated F | CALIBRATION, F",
        "C note | NOTE",
        "Room F | AMBIENT, F",
        "corrected C | CORRECTED, C",
        "Messtemperatur | TEMPERATURE",
        "temp and batch and room | TEMPERATURE, BATCH, AMBIENT",
        "date and original gravity | DATE, ORIGINALGRAVITY",
        "original | ORIGINAL",
        "SG (20 °C) | SG, C",
        "s.g. | GRAVITY, SG",
        "xylophone |",
        "'' |",
      })
  void aUnitMeansThisAlone(String text, String meanings) {
    Set<Concept> expected =
        meanings == null
            ? Set.of()
            : Stream.of(meanings.split(", "))
                .map(Concept::valueOf)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Concept.class)));
    Set<Concept> found = EnumSet.noneOf(Concept.class);
    found.addAll(Vocabulary.meaningsOf(Vocabulary.tokens(text)));
    if (expected.contains(Concept.SG)) {
      expected.add(Concept.GRAVITY);
    }
    assertEquals(expected, found);
    assertEquals(found, Vocabulary.meanings(text));
  }

  @Test
  void theLongestMatchWins() {
    // "original gravity" is one thing, not a gravity that is original.
    assertEquals(EnumSet.of(Concept.ORIGINALGRAVITY), Vocabulary.meanings("original gravity"));
    assertEquals(EnumSet.of(Concept.AMBIENT), Vocabulary.meanings("Kellertemperatur"));
  }

  @Test
  void proseHasNoMeaning() {
    String prose = "temperature ".repeat(11);
    assertEquals(132, prose.length());
    assertEquals(Set.of(), Vocabulary.meanings(prose));
    assertTrue(Vocabulary.meanings("temperature ".repeat(10)).contains(Concept.TEMPERATURE));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Température °C | temperature,°,c",
        "20/20 | 20,/,20",
        "5gal | 5,gal",
        "Maße 3.5% | masse,3,5,%",
        "SO2 | so2",
        "20ºC | 20,°,c",
      })
  void aTextIsTakenApart(String text, String tokens) {
    assertEquals(List.of(tokens.split(",")), Vocabulary.tokens(text));
  }

  /** A star in a data file stands for any letters at that end, also for none. */
  @ParameterizedTest
  @CsvSource({
    "*most, apfelmost, true",
    "*most, most, true",
    "*most, mosto, false",
    "ferment*, fermenting, true",
    "ferment*, ferment, true",
    "ferment*, conferment, false",
    "cider, cider, true",
    "cider, ciders, false",
  })
  void aWordOfADataFileFits(String word, String token, boolean fits) {
    assertEquals(fits, WordList.isWord(word, token));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Gärtemperatur | DE",
        "Specific gravity | EN",
        "original gravity, Messwert | EN DE",
        "Remarques | FR",
        "Fecha | ES",
        "Giorno | IT",
        "Notas | ES PT AF",
        "Opmerkings | AF",
        "°Bx |",
        "kg/m3 |",
        "xylophone |",
        "'' |",
      })
  void aWordTellsItsLanguages(String text, String languages) {
    List<Language> expected =
        languages == null
            ? List.of()
            : Stream.of(languages.split(" ")).map(Language::valueOf).toList();
    assertEquals(expected, Vocabulary.languages(text));
  }

  @Test
  void proseTellsNoLanguage() {
    String most = "Gärtemperatur" + " x".repeat(53) + "y";
    assertEquals(120, most.length());
    assertEquals(List.of(Language.DE), Vocabulary.languages(most));
    assertEquals(List.of(), Vocabulary.languages(most + "z"));
  }

  /** A thread of its own has seen no text yet, so that it works out what the text means. */
  @Test
  void whatATextMeansIsRememberedUntilThereAreTooMany() throws Exception {
    ExecutorService thread = Executors.newSingleThreadExecutor();
    try {
      thread.submit(VocabularyTest::rememberAndForget).get();
    } finally {
      thread.shutdown();
    }
  }

  private static void rememberAndForget() {
    Set<Concept> first = Vocabulary.meanings("Date 1");
    assertEquals(EnumSet.of(Concept.DATE), first);
    for (int i = 2; i <= 4096; i++) {
      Vocabulary.meanings("Date " + i);
    }
    assertSame(first, Vocabulary.meanings("Date 1"));
    assertEquals(EnumSet.of(Concept.DAY), Vocabulary.meanings("Day 1"));
    assertNotSame(first, Vocabulary.meanings("Date 1"));
    assertEquals(first, Vocabulary.meanings("Date 1"));
  }

  /** An accent sends the same text the longer way. */
  @Test
  void aTextWithoutAccentsIsTakenApartAsOneWithThem() {
    Random random = new Random(11);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int left = random.nextInt(12); left > 0; left--) {
        text.append("aZ09bY5 %/-._()".charAt(random.nextInt(15)));
      }
      List<String> longer = new ArrayList<>(Vocabulary.tokens(text + " \u00e9"));
      longer.remove(longer.size() - 1);
      assertEquals(longer, Vocabulary.tokens(text.toString()), text.toString());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Densid., GRAVITY",
    "Densim., HYDROMETER",
    "Refraktom., REFRACTOMETER",
    // an everyday word
    "Deksel terug., ''",
    "Schillen samen., ''",
    // too short, no beginning of a word, no point, a sentence
    "Gra., ''",
    "Blorpt., ''",
    "Densid, ''",
    "we saw none in the densid., NEGATION",
  })
  void aLongWordMayBeCutShortWithAPoint(String text, String meanings) {
    assertEquals(
        Set.of(meanings.split(" ")).stream().filter(m -> !m.isEmpty()).collect(Collectors.toSet()),
        Vocabulary.meanings(text).stream().map(Enum::name).collect(Collectors.toSet()));
  }

  @ParameterizedTest
  @CsvSource({
    "niet omgerekend, true",
    "no fruit brought in, false",
    "Hydrometer (not converted), false",
    "Sulphite reduced: none needed, false",
    "nicht umgerechnet, true",
    "no convertido, true",
    "pas ramené, true",
    "omgerekend, false",
    "omgerekend naar 20 C, true",
  })
  void whatIsNotConvertedIsNotCorrected(String text, boolean speaksOfIt) {
    Set<Concept> meanings = Vocabulary.meanings(text);
    assertEquals(speaksOfIt, meanings.contains(Concept.CORRECTED));
    assertEquals(text.contains("20"), Statement.saysCorrected(text));
  }
}
