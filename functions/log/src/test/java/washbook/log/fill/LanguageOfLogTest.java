package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.language.Language;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** What is written into a log is in its own language. */
class LanguageOfLogTest {
  private static final Pattern ENGLISH =
      Pattern.compile("\\b(the|and|reading|must|too|which|with|above|gravity|blank)\\b");

  private static Filling fill(TestGrid grid, FillOptions options) {
    return LogFiller.fill(grid, SheetUnderstanding.understand(grid, LogMap.none()), options);
  }

  private static List<String> headers(Filling filling) {
    return filling.patch().columns().stream().map(ColumnPatch::header).toList();
  }

  private static TestGrid log(String date, String reading, String temperature, String note) {
    return TestGrid.of(
        "x",
        String.join(" | ", date, reading, temperature, note)
            + "\n#2025-01-01 | 1.085 | 20 |\n#2025-01-02 | 1.075 | |\n#2025-01-03 | 1.5 | 20 |"
            + "\n#2025-01-04 | 1.055 | 371 |\n#2025-01-05 | foam | 20 |"
            + "\n#2025-01-06 | 1.045 | 21 |\n#2025-01-07 | 1.040 | 21 |\n#2025-01-08 | 1.030 | 20 |"
            + "\n#2025-01-09 | 1.020 | 20 |\n#2025-01-10 | 1.010 | 20 |");
  }

  @ParameterizedTest
  @CsvSource({
    "EN, Date, Specific gravity, Temperature °C, Remarks, Corrected gravity (SG), Washbook note",
    "DE, Datum, Spindelwert, Gärtemperatur °C, Bemerkungen, Korrigierte Dichte (SG), Washbook-Hinweis",
    "FR, Date, Densité, Température °C, Remarques, Densité corrigée (d 20/20), Note Washbook",
    "ES, Fecha, Densidad, Temperatura °C, Observaciones, Densidad corregida (d 20/20), Nota de Washbook",
    "IT, Data, Densità, Temperatura °C, Osservazioni, Densità corretta (d 20/20), Nota di Washbook",
    "PT, Data, Densidade, Temperatura °C, Observações, Densidade corrigida (d 20/20), Nota do Washbook",
    "NL, Datum, Dichtheid, Temperatuur °C, Opmerkingen, Gecorrigeerde dichtheid (SG), Washbook-opmerking",
    "AF, Datum, Digtheid, Temperatuur °C, Aantekeninge, Gekorrigeerde digtheid (SG), Washbook-nota",
  })
  void headersAndNotesAreInTheLanguageOfTheHeaders(
      Language language,
      String date,
      String reading,
      String temperature,
      String note,
      String corrected,
      String noteOfOurs) {
    TestGrid grid = log(date, reading, temperature, note);
    Filling filling = fill(grid, FillOptions.usual());
    assertEquals(corrected, headers(filling).get(0));
    assertEquals(noteOfOurs, headers(filling).get(4));
    ColumnPatch notes = filling.patch().columns().get(4);
    for (int row = 2; row <= 5; row++) {
      String text = notes.cells().text(row);
      assertTrue(text.startsWith((row == 2 || row == 4 ? "C" : "B") + (row + 1) + ": "), text);
      assertEquals(language == Language.EN, ENGLISH.matcher(text).find(), text);
      assertFalse(text.contains("{"), text);
    }
    if (language != Language.EN) {
      assertTrue(notes.cells().text(3).contains("1,5"), notes.cells().text(3));
    }
  }

  /** A refill in any language finds the columns that were written in any other. */
  @Test
  void aRefillInAnotherLanguageDoublesNoColumn() {
    TestGrid grid = log("Datum", "Spindelwert", "Temperatur °C", "Bemerkungen");
    for (Language first : Language.values()) {
      TestGrid filled = grid.with(fill(grid, FillOptions.usual().in(first)).patch());
      assertTrue(filled.columnCount() > grid.columnCount());
      for (Language second : Language.values()) {
        Filling again = fill(filled, FillOptions.usual().in(second));
        TestGrid twice = filled.with(again.patch());
        assertEquals(filled.columnCount(), twice.columnCount(), first + " then " + second);
        assertEquals(headers(fill(grid, FillOptions.usual().in(second))), headers(again));
        assertEquals(
            grid.with(fill(grid, FillOptions.usual().in(second)).patch()).all(), twice.all());
      }
    }
  }

  @Test
  void atATieTheUsersLanguageDecidesIfItIsOneOfThem() {
    TestGrid grid =
        TestGrid.of("x", "Datum | SG | Temp C\n#2025-01-01 | 1.085 | 20\n#2025-01-03 | 1.040 | 20");
    assertEquals("Corrected gravity (SG)", headers(fill(grid, FillOptions.usual())).get(0));
    assertEquals(
        "Gecorrigeerde dichtheid (SG)",
        headers(fill(grid, FillOptions.usual().forUser(Language.NL))).get(0));
    assertEquals(
        "Corrected gravity (SG)",
        headers(fill(grid, FillOptions.usual().forUser(Language.FR))).get(0));
  }

  @Test
  void aPersonsColumnOfOurNameIsLeftAlone() {
    TestGrid grid =
        TestGrid.of(
            "x",
            """
            Day | SG | Temp C | Alcohol to date (% vol) | Real attenuation (%)
            0 | 1.085 | 22 | 0.5 | 1
            3 | 1.050 | 24 | 4.5 | 2""");
    Filling filling = fill(grid, FillOptions.usual());
    assertEquals(5, filling.patch().columns().get(0).column(), "" + headers(filling));
    TestGrid filled = grid.with(filling.patch());
    Filling again = fill(filled, FillOptions.usual());
    assertEquals(filled.all(), filled.with(again.patch()).all());
  }

  @Test
  void sortedColumnsAreFoundAgain() {
    TestGrid grid = log("Date", "Specific gravity", "Temperature °C", "Remarks");
    TestGrid filled = grid.with(fill(grid, FillOptions.usual()).patch());
    TestGrid sorted = TestGrid.copyWith(filled, 1, 1, 1.084);
    Filling again = fill(sorted, FillOptions.usual());
    assertEquals(sorted.columnCount(), sorted.with(again.patch()).columnCount());
  }
}
